"""The row on a shaft to its tolerance chain: what the lengths leave as end float."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Sequence

from binder.api import Bought, ChainFact, ChainLink, Design, Located, Piece, ShaftFact
from binder_plugins.shafts.stacking import bearings
from binder_solid.facts import FormFact, Stretch
from binder_solid.set_there import Tube, tube_for
from binder_trade.limits import stray_mm

GENERAL = "ISO 2768-1 m"
# What two sums may differ by and be one, in mm.
_NEAR = 0.02


def chain_of(fact: ShaftFact, design: Design) -> ChainFact | None:
    """The chain of a row that stands between two bearings, where all its lengths are told."""
    if fact.play is None or fact.apart is None:
        return None
    links = [gap_of(float(fact.apart), fact.subject), *_pieces(fact, design)]
    title = design.parts[fact.subject].title
    closing = _closing(fact, links)
    return ChainFact(
        subject=f"{fact.subject}: end float",
        kind="end float",
        title=f"End float of the {title}",
        items=tuple(dict.fromkeys([fact.subject, *(one.item for one in fact.pieces)])),
        links=tuple(links),
        least=float(fact.least),
        most=float(fact.most),
        jams=0.0,
        closing=closing,
        way_out=f"write `to_suit: {_offered(fact)}`, and turn that last",
        at=fact.at,
    )


def tube_chain(fact: ShaftFact, design: Design) -> ChainFact | None:
    """The chain of a row that a stop closes which a distance tube sets, where no shoulder does.

    The tube stands level with the end of the shaft, so that what is turned down beyond the other
    stop adds to it.
    """
    found = _set_by_tube(fact, design)
    if found is None:
        return None
    number, tube, ends = found
    piece, shaft = fact.pieces[number], design.parts[fact.subject]
    low, high = sorted((number, fact.stops[0] if number != fact.stops[0] else fact.stops[-1]))
    alike = Counter(one.title for one in fact.pieces)
    between = [
        link_of(n, named(fact, n, alike), fact.pieces[n], fact.subject, design)
        for n in range(low + 1, high)
    ]
    own = [_turned_down(one, shaft.title, fact.subject) for one in ends]
    closing = f"distance tube of the {piece.title}"
    half = stray_mm(tube.long)
    key = f"{fact.subject} tube"
    return ChainFact(
        subject=f"{fact.subject}: end float",
        kind="end float",
        title=f"End float of the {shaft.title}",
        items=tuple(dict.fromkeys([fact.subject, *(one.item for one in fact.pieces)])),
        links=(ChainLink(closing, tube.long, half, -half, 1.0, key, GENERAL), *own, *between),
        least=float(fact.least),
        most=float(fact.most),
        jams=0.0,
        closing=closing,
        closed_by=piece.joint,
        at=fact.at,
    )


def _set_by_tube(fact: ShaftFact, design: Design) -> tuple[int, Tube, list[Stretch]] | None:
    """The stop that a tube sets, the tube, and the steps of the shaft between it and its end.

    None where the tube as drawn does not leave the middle of the float: nobody knows its sum.
    """
    form = design.facts.about(FormFact, fact.subject)
    if fact.located is not Located.ONE or fact.span is None or len(fact.stops) != 2 or form is None:
        return None
    for number in fact.stops:
        joint = design.joints.get(fact.pieces[number].joint)
        tube = tube_for(joint, design) if joint is not None else None
        toward = "right" if number == min(fact.stops) else "left"
        if tube is None or tube.end != toward:
            continue
        ends = _thinner(form.stretches, tube.across, toward)
        row = float(fact.span + (fact.least + fact.most) / 2) + sum(_long(one) for one in ends)
        if abs(row - tube.long) < _NEAR:
            return number, tube, ends
    return None


def _thinner(steps: Sequence[Stretch], across: float, end: str) -> list[Stretch]:
    """The steps at an end that are thinner than the seat of the tube."""
    found = []
    for one in reversed(steps) if end == "right" else steps:
        if one.across >= across - _NEAR:
            break
        found.append(one)
    return found


def _long(step: Stretch) -> float:
    return step.end - step.start


def _turned_down(step: Stretch, title: str, shaft: str) -> ChainLink:
    name = f"{step.name.replace('_', ' ')} of the {title}, from its shoulder to the end"
    half = stray_mm(_long(step))
    return ChainLink(name, _long(step), half, -half, -1.0, f"{shaft} {step.name}", GENERAL)


def named(fact: ShaftFact, n: int, alike: Counter[str]) -> str:
    """The title of a piece; alike ones are told apart by their number."""
    title = fact.pieces[n].title
    return f"{title} (no. {n + 1} on the shaft)" if alike[title] > 1 else title


def gap_of(apart: float, shaft: str, factor: float = 1.0) -> ChainLink:
    """The gap between two bearings: it opens what lies in it, and closes what grips round them."""
    half = stray_mm(apart)
    return ChainLink(
        "gap between the bearings", apart, half, -half, factor, f"{shaft} gap", GENERAL
    )


def _pieces(fact: ShaftFact, design: Design) -> Iterator[ChainLink]:
    """What stands between the outer bearings; alike pieces are told apart by their number."""
    places = bearings(fact.pieces)
    inside = range(places[0] + 1, places[-1])
    alike = Counter(fact.pieces[n].title for n in inside)
    for n in inside:
        piece = fact.pieces[n]
        name = f"{piece.title} (no. {n + 1})" if alike[piece.title] > 1 else piece.title
        yield link_of(n, name, piece, fact.subject, design)


def link_of(n: int, name: str, piece: Piece, shaft: str, design: Design) -> ChainLink:
    """The length of a piece of a row, which closes what is left; a bought one as measured."""
    length = float(piece.length or 0)
    item = design.item(piece.item)
    is_measured = isinstance(item, Bought) and bool(item.measured)
    half = 0.0 if is_measured else stray_mm(length)
    why = "measured first" if is_measured else GENERAL
    return ChainLink(name, length, half, -half, -1.0, f"{shaft} {n + 1}", why)


def _closing(fact: ShaftFact, links: Sequence[ChainLink]) -> str:
    if fact.to_suit is None:
        return ""
    key = f"{fact.subject} {fact.to_suit + 1}"
    return next((one.name for one in links if one.key == key), "")


def _offered(fact: ShaftFact) -> str:
    """The shortest piece between the bearings: the least work to make again."""
    places = bearings(fact.pieces)
    inside = fact.pieces[places[0] + 1 : places[-1]]
    return min(inside, key=lambda one: one.length or 0).item
