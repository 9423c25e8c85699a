"""How a part that is fixed for good gets to its place: which way round, and what stops it there."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from binder.api import ChainFact
from binder_solid.eased_along import comes_from
from binder_solid.facts import FormFact
from binder_solid.laid_on import facing
from binder_solid.placed import PlacedFact
from binder_solid.space import dot, minus, plus
from binder_solid.stands_at import along_rod, faces_at, fixed_pair, shown_mm, stands_at
from binder_solid.way_round import way_round

if TYPE_CHECKING:
    from collections.abc import Sequence

    from binder.api import Design, Joint
    from binder_solid.facts import Stretch
    from binder_solid.forms import Vector
    from binder_solid.way_round import WayRound

# What counts as one place and as one thickness, in mm.
_NEAR = 0.05
# Those that slide along what they are fixed to until something stops them.
_SLID = frozenset({"retained", "bonded", "glued", "pressed"})
_PARALLEL = 0.999


def set_there(joint: Joint, design: Design) -> str:
    """Where the one part of a joint stands on the other, its head, and its stop; '' if not known.

    As `stands_at`, with the side on which the head of turned work lies, or else which end of it
    goes where, the end that it goes on from where the rod is eased from that end alone, and, where
    no shoulder is met, the distance tube in mm that it is set by. Common practice, no source.
    """
    place = stands_at(joint, design)
    if not place:
        return ""
    turned = str(turned_round(joint, design) or "")
    said = (place, _head(joint, design), turned, goes_on(joint, design), _stop(joint, design))
    return "; ".join(filter(None, said))


def put_on(joint: Joint, design: Design) -> str:
    """How what comes off again is put on: the hand of its teeth, and the end that it comes from."""
    return "; ".join(filter(None, (faces_at(joint, design), goes_on(joint, design))))


def goes_on(joint: Joint, design: Design) -> str:
    """`it goes on from the left-hand end of the cam shaft, which is eased for it`; '' for either.

    The way from the other end is as bought, or eased for another bore: it sticks there, coated.
    """
    end, pair = comes_from(joint, design), fixed_pair(joint, design)
    if not end or pair is None:
        return ""
    rod, other = (_title(one.item, design) for one in pair)
    return f"{other} goes on from the {end}-hand end of {rod}, which is eased for it from there"


def turned_round(joint: Joint, design: Design) -> WayRound | None:
    """As `way_round`; None as well where the head of turned work tells it by itself."""
    return None if _head(joint, design) else way_round(joint, design)


def _head(joint: Joint, design: Design) -> str:
    """`the rim on the top of the winch cheek: the two rims face one another`."""
    pair = fixed_pair(joint, design)
    form = design.facts.about(FormFact, pair[0].item) if pair is not None else None
    if pair is None or form is None or len(form.stretches) < 2:
        return ""
    rod, other = pair
    first, *_, last = form.stretches
    is_right = last.across > form.stretches[-2].across + _NEAR
    if is_right == (first.across > form.stretches[1].across + _NEAR):
        return ""
    low, high = along_rod(rod, other)
    step = last if is_right else first
    if (step.start < high - _NEAR) if is_right else (step.end > low + _NEAR):
        return ""
    side = facing(other, rod.frame.x, positive=is_right)
    if not side or not step.name:
        return ""
    name = step.name.replace("_", " ")
    of = _title(other.item, design)
    return f"the {name} on the {side} of {of}{_two(rod, name, design, is_right=is_right)}"


def _two(rod: PlacedFact, name: str, design: Design, *, is_right: bool) -> str:
    """Of two that are alike, whether their heads face one another."""
    copies = [one for one in design.facts.all(PlacedFact) if one.item == rod.item]
    if len(copies) != 2:
        return ""
    ways = [_times(one.frame.x, 1.0 if is_right else -1.0) for one in copies]
    if dot(*ways) > -_PARALLEL:
        return ""
    between = dot(minus(copies[1].frame.origin, copies[0].frame.origin), ways[0])
    return f": the two {name}s face {'one another' if between > 0 else 'away from one another'}"


@dataclass(frozen=True, slots=True)
class Tube:
    """A distance tube, `long` mm, over a seat of `across` mm, its far end level with an end."""

    long: float
    across: float
    end: str


def tube_for(joint: Joint, design: Design) -> Tube | None:
    """The distance tube that sets what no shoulder and no end stops; None where one does."""
    pair = fixed_pair(joint, design) if joint.kind in _SLID else None
    form = design.facts.about(FormFact, pair[0].item) if pair is not None else None
    if pair is None or form is None or not form.stretches:
        return None
    low, high = along_rod(*pair)
    whole = form.size[0]
    if low < _NEAR or high > whole - _NEAR or _is_stopped(form.stretches, low, high):
        return None
    seat = _across(form.stretches, (low + high) / 2)
    ends = [(low, "left", 0.0, low), (whole - high, "right", high, whole)]
    free = [
        (off, end)
        for off, end, start, stop in ends
        if all(
            one.across <= seat + _NEAR
            for one in form.stretches
            if one.end > start + _NEAR and one.start < stop - _NEAR
        )
    ]
    if not free:
        return None
    off, end = min(free)
    return Tube(off, seat, end)


def _stop(joint: Joint, design: Design) -> str:
    found = tube_for(joint, design)
    if found is None:
        return ""
    long = _sum(joint, design) or f"{shown_mm(found.long, design)} long"
    return (
        f"no shoulder stops it: a distance tube {long}, its far end "
        f"level with the {found.end}-hand end, sets it; wipe off what would bond the tube"
    )


def _sum(joint: Joint, design: Design) -> str:
    """The length of a tube that sets an end float, by what is measured; '' where it sets none."""
    for chain in design.facts.all(ChainFact):
        tube = next((one for one in chain.links if one.name == chain.closing), None)
        if chain.closed_by != joint.name or chain.kind != "end float" or tube is None:
            continue
        others = " + ".join(one.name for one in chain.links if one is not tube)
        middle = shown_mm((chain.least + chain.most) / 2, design)
        drawn = shown_mm(tube.nominal, design)
        return f"faced to ({others}), each as measured, + {middle} = ______ long, {drawn} as drawn"
    return ""


def _is_stopped(steps: Sequence[Stretch], low: float, high: float) -> bool:
    """Whether a thicker step begins where the part ends, on either side."""
    seat = _across(steps, (low + high) / 2)
    return any(
        one.across > seat + _NEAR and (abs(one.end - low) < _NEAR or abs(one.start - high) < _NEAR)
        for one in steps
    )


def _across(steps: Sequence[Stretch], x: float) -> float:
    return next((one.across for one in steps if one.start - _NEAR <= x <= one.end + _NEAR), 0.0)


def _times(way: Vector, times: float) -> Vector:
    return plus((0.0, 0.0, 0.0), way, times)


def _title(name: str, design: Design) -> str:
    item = design.item(name)
    return f"the {item.title if item is not None else name}"
