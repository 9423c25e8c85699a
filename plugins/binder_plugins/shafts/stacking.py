"""Pieces along a shaft to what stops it, and the play that is left."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from fractions import Fraction

from binder.api import (
    Contribution,
    Design,
    Given,
    Located,
    Part,
    Piece,
    Role,
    ShaftFact,
    Working,
    shown_length,
)
from binder_plugins.shafts.closing import made_last
from binder_plugins.shafts.kinds import ShaftEntry
from binder_plugins.shafts.roles import pieces_of

# Common practice, no source: the float of a small spindle that is set by hand.
LEAST_FLOAT = Fraction(1, 10)
MOST_FLOAT = Fraction(2, 10)
# With more room than this a piece between the bearings stands clear of one of them.
SLACK = Fraction(1)
SOURCE = "sum of the lengths along the axis"


def entries(design: Design) -> dict[str, ShaftEntry]:
    """The section `shafts` as written."""
    return getattr(design.spec.written, "shafts", None) or {}


def stack_shafts(design: Design) -> Contribution:
    """A `ShaftFact` for each shaft of the section that names a part."""
    facts: list[ShaftFact] = []
    for name, entry in entries(design).items():
        part = design.parts.get(name)
        is_known = all(design.item(one.item) is not None for one in entry.along)
        if part is not None and is_known:
            facts.append(_fact(part, entry, design))
    return Contribution(
        facts=facts,
        befores=[one for fact in facts for one in made_last(fact, design)],
        workings=[one for fact in facts for one in _workings(fact, design)],
    )


def _fact(part: Part, entry: ShaftEntry, design: Design) -> ShaftFact:
    pieces = pieces_of(part, list(entry.along), design)
    apart = entry.apart.exact if entry.apart is not None else None
    located, stops = _stops(pieces, apart)
    inside = _inside(pieces)
    wanted = entry.end_float
    return ShaftFact(
        subject=part.name,
        pieces=pieces,
        located=located,
        stops=stops,
        apart=apart,
        inside=inside,
        play=_play(located, apart, inside),
        span=_span(pieces, located, apart, stops),
        least=wanted.start.exact if wanted is not None else LEAST_FLOAT,
        most=wanted.end.exact if wanted is not None else MOST_FLOAT,
        to_suit=_closing(pieces, entry, located),
        at=entry.along[0].span,
    )


def _play(located: Located, apart: Fraction | None, inside: Fraction | None) -> Fraction | None:
    if located is not Located.INSIDE or apart is None or inside is None:
        return None
    return apart - inside


def bearings(pieces: Sequence[Piece]) -> list[int]:
    """The positions of the pieces that carry the shaft."""
    return [n for n, piece in enumerate(pieces) if piece.role is Role.BEARING]


def _stops(pieces: Sequence[Piece], apart: Fraction | None) -> tuple[Located, tuple[int, ...]]:
    """How the shaft is located, and the positions of the fixed pieces that stop it.

    What stands between the bearings stops the shaft both ways only where it fills the gap;
    a fixed piece with room beside it is set against one of them.
    """
    places = bearings(pieces)
    if not places:
        return Located.NOT, ()
    left, right = _fixed(pieces, places[0], -1), _fixed(pieces, places[-1], +1)
    inner = [n for n in range(places[0], places[-1]) if pieces[n].role is Role.FIXED]
    outer = tuple(n for n in (left, right) if n is not None)
    if inner and (_fills(pieces, apart) or not outer):
        return (Located.TWICE if len(outer) > 1 else Located.INSIDE), tuple(inner)
    if len(outer) > 1:
        one = len(places) == 1
        return (Located.ONE if one else Located.OUTSIDE), outer
    if outer and inner:
        return Located.ONE, (*outer, inner[0] if left is not None else inner[-1])
    return Located.NOT, outer


def _fills(pieces: Sequence[Piece], apart: Fraction | None) -> bool:
    inside = _inside(pieces)
    return apart is not None and inside is not None and apart - inside <= SLACK


def _fixed(pieces: Sequence[Piece], bearing: int, way: int) -> int | None:
    """The fixed piece that meets a bearing from one side, over what is loose between them."""
    n = bearing + way
    while 0 <= n < len(pieces) and pieces[n].role is Role.LOOSE:
        n += way
    return n if 0 <= n < len(pieces) and pieces[n].role is Role.FIXED else None


def _between(pieces: Sequence[Piece]) -> Sequence[Piece]:
    places = bearings(pieces)
    return pieces[places[0] + 1 : places[-1]] if len(places) > 1 else ()


def _inside(pieces: Sequence[Piece]) -> Fraction | None:
    """The length of all that is between the outer bearings, None where one is not known."""
    lengths = [piece.length for piece in _between(pieces)]
    known = [length for length in lengths if length is not None]
    return sum(known, Fraction(0)) if lengths and len(known) == len(lengths) else None


def _span(
    pieces: Sequence[Piece], located: Located, apart: Fraction | None, stops: tuple[int, ...]
) -> Fraction | None:
    """What lies between the faces of the shaft that stop it, in mm."""
    places = bearings(pieces)
    if located is Located.ONE:
        place = min(places, key=lambda n: abs(2 * n - sum(stops)))
        return _with_loose(pieces, place, place)
    if located is Located.OUTSIDE and apart is not None:
        ends = _with_loose(pieces, places[0], places[-1])
        return apart + ends if ends is not None else None
    return apart if located is Located.INSIDE else None


def _with_loose(pieces: Sequence[Piece], first: int, last: int) -> Fraction | None:
    """The length of bearings and of what is loose outside them, up to the stops."""
    chosen = [first, last] if first != last else [first]
    n = first - 1
    while n >= 0 and pieces[n].role is Role.LOOSE:
        chosen.append(n)
        n -= 1
    n = last + 1
    while n < len(pieces) and pieces[n].role is Role.LOOSE:
        chosen.append(n)
        n += 1
    lengths = [pieces[one].length for one in chosen]
    known = [one for one in lengths if one is not None]
    return sum(known, Fraction(0)) if len(known) == len(lengths) else None


def _closing(pieces: Sequence[Piece], entry: ShaftEntry, located: Located) -> int | None:
    """The piece that is made to suit: the named one, else a loose one that closes the row."""
    if entry.to_suit is not None:
        found = (n for n, piece in enumerate(pieces) if piece.item == entry.to_suit)
        return next(found, None)
    if located is not Located.INSIDE:
        return None
    places = bearings(pieces)
    loose = [n for n in range(places[0], places[-1]) if pieces[n].role is Role.LOOSE]
    return loose[-1] if loose else None


def _workings(fact: ShaftFact, design: Design) -> Iterator[Working]:
    if fact.play is None or fact.apart is None or fact.inside is None:
        return
    given = [Given("between the bearings", shown_length(fact.apart, design.units), fact.at)]
    given += [
        Given(piece.title, shown_length(piece.length, design.units), piece.at)
        for piece in _between(fact.pieces)
        if piece.length is not None
    ]
    yield Working(
        id=f"{fact.subject}.float",
        title=f"end float of the {fact.subject.replace('_', ' ')}",
        given=tuple(given),
        formula="between the bearings − all that stands between them",
        result=shown_length(fact.play, design.units),
        because="what the lengths leave along the axis",
        source=SOURCE,
        span=fact.at,
    )
