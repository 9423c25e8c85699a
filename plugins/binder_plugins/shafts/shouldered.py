"""A row between two shoulders of its own shaft: what play their drawn places leave to it."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from typing import TYPE_CHECKING

from binder.api import Located, Role, exact, shown_length
from binder_solid.facts import FormFact
from binder_solid.set_there import tube_for

if TYPE_CHECKING:
    from binder.api import Design, Piece, ShaftFact
    from binder_solid.facts import Stretch

_SAME = 1e-6
# A hub that is nipped where it is wanted stands off the shoulder as well.
_BY_HAND = frozenset({"clamped", "clipped"})


@dataclass(frozen=True, slots=True)
class Row:
    """The play in mm that two shoulders leave, how far apart they are, and what stands between."""

    play: Fraction
    between: Fraction
    sizes: str


def shouldered(fact: ShaftFact, design: Design) -> Row | None:
    """None where a stop is set by hand, or a piece of the row is made to close it."""
    form = design.facts.about(FormFact, fact.subject)
    is_stopped = fact.located in (Located.OUTSIDE, Located.ONE) and len(fact.stops) > 1
    if form is None or fact.span is None or not is_stopped or fact.to_suit is not None:
        return None
    first, last = min(fact.stops), max(fact.stops)
    left = _face(fact.subject, fact.pieces[first], form, design, way=1)
    right = _face(fact.subject, fact.pieces[last], form, design, way=-1)
    if left is None or right is None:
        return None
    between = exact(round(right - left, 3))
    return Row(between - fact.span, between, _sizes(fact, first, last, design.units))


def _face(shaft: str, piece: Piece, form: FormFact, design: Design, *, way: int) -> float | None:
    """Where along the shaft a stop looks at the row: its own step, or a hub on a shoulder."""
    steps = form.stretches
    if piece.item == shaft:
        own = next((one for one in steps if one.name == piece.place), None)
        return None if own is None else own.end if way > 0 else own.start
    joint = design.joints.get(piece.joint)
    if joint is None or joint.kind in _BY_HAND or tube_for(joint, design) is not None:
        return None
    names = {end.place for end in joint.ends if end.item == shaft}
    seat = next((one for one in steps if one.name in names), None)
    if seat is None:
        return None
    at = seat.end if way > 0 else seat.start
    return at if _is_shoulder(steps, seat, at) else None


def _is_shoulder(steps: tuple[Stretch, ...], seat: Stretch, at: float) -> bool:
    """Whether a thicker step begins where the seat ends, towards the row."""
    beside = (one for one in steps if one is not seat and _meets(one, at))
    return any(min(one.across, one.end_across) > seat.across + _SAME for one in beside)


def _meets(one: Stretch, at: float) -> bool:
    return min(abs(one.start - at), abs(one.end - at)) < _SAME


def _sizes(fact: ShaftFact, first: int, last: int, units: str) -> str:
    """`cheek 3 mm + gap 12 mm + cheek 3 mm`: what the sum is made of."""
    loose = [fact.pieces[n] for n in range(first + 1, last)]
    if fact.located is Located.OUTSIDE and fact.apart is not None:
        carrying = [n for n, one in enumerate(loose) if one.role is Role.BEARING]
        outer = [*loose[: carrying[0] + 1], *loose[carrying[-1] :]]
        told = [_told(one, units) for one in outer]
        told.insert(carrying[0] + 1, f"gap {shown_length(fact.apart, units)}")
        return " + ".join(told)
    return " + ".join(_told(one, units) for one in loose)


def _told(piece: Piece, units: str) -> str:
    return f"{piece.title} {shown_length(piece.length or Fraction(0), units)}"
