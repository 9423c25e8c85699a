"""The heads and nuts of a joint, to what stands where a driver or spanner is held over them."""

from __future__ import annotations

import re
from dataclasses import dataclass
from typing import TYPE_CHECKING

from binder.api import HardwareFact
from binder_solid.facts import FormFact
from binder_solid.forms import Cylinder, Frame, Raised
from binder_solid.placed import PlacedFact
from binder_solid.space import dot, frame_y, length, minus, placed, plus
from binder_trade.hardware.listing import NotListed
from binder_trade.hardware.wood_screws import wood_screw

if TYPE_CHECKING:
    from collections.abc import Iterator

    from binder.api import Design, Joint
    from binder_solid.facts import Located
    from binder_solid.forms import Vector

# Half of a blade, half of the handle above it, and how far up from the head is looked, all in
# mm; common practice, no source.
_BLADE_MM, HANDLE_MM, _REACH_MM = 3.0, 14.0, 200.0
# A nut goes on, and a spanner over it, where nothing stands within its corners, so many diameters
# of its thread from the axis, as high up as nut, thread end and a finger take: common practice, no
# source; a full nut is 0.8 d high and 1.6 to 2 d over corners (ISO 4032, from memory).
_CORNERS, _LIFTED = 1.0, 2.5
# What lies in one plane with a head stands beside it, not over it.
_LEAST_MM, _FACES, _HALVINGS = 1.0, 0.05, 40
_CLEAR = frozenset({"drilled", "slotted"})
_ALONG = (Cylinder, Raised)  # a hole, and a slot for the screws of a board
_GAUGE = re.compile(r"\bno\. (\d+)\b.* wood screw")
# The joints whose heads and nuts are driven home from outside.
DRIVEN = frozenset({"screwed", "bolted", "buttoned"})


@dataclass(frozen=True, slots=True)
class Beside:
    """A copy of an item that stands beside or over a head: its nearest `gap` to the axis in mm.

    `top` is how far over the head it ends, in mm, for a nut as far as it matters there. `bars`
    tells that the tool, `wide` mm to either side of the axis, does not get past it.
    """

    item: str
    gap: float
    top: float
    wide: float = _BLADE_MM

    @property
    def bars(self) -> bool:
        """Whether it stands in the blade itself, or where the nut goes."""
        return self.gap < self.wide


@dataclass(frozen=True, slots=True)
class _Head:
    """The outer end of a hole, z the way that the tool stands; what room that takes, in mm.

    `wide` to either side of the axis bars it, `near` is told of, `high` is how far up is looked.
    """

    frame: Frame
    wide: float = _BLADE_MM
    near: float = HANDLE_MM
    high: float = _REACH_MM


def beside_heads(joint: Joint, design: Design) -> tuple[Beside, ...]:
    """What stands within a driver's handle of the axis of each head of a screwed joint.

    Of a bolted one, what stands over either end of a bolt where a nut and its spanner go.

    Nothing where the joint holds several copies, or the model is not placed: no head has a place.
    """
    return design.once(_beside, joint.name)


def _beside(design: Design, name: str) -> tuple[Beside, ...]:
    joint = design.joints[name]
    met = (
        _over(head, one, design)
        for head in _heads(joint, design)
        for one in design.facts.all(PlacedFact)
        if one.item not in joint.items
    )
    return tuple(each for each in met if each is not None)


def _heads(joint: Joint, design: Design) -> Iterator[_Head]:
    """The outer ends of the clearing holes; a bolt has one at each half that it holds."""
    outer = (joint.items[0], joint.items[-1]) if joint.kind == "bolted" else joint.items
    wide = _blade(joint, design)
    for name in dict.fromkeys(outer) if joint.kind in DRIVEN else ():
        part, form = design.parts.get(name), design.facts.about(FormFact, name)
        copies = [one for one in design.facts.all(PlacedFact) if one.item == name]
        if part is None or form is None or len(copies) != 1 or copies[0].is_opposite:
            continue
        own = {one.name for one in part.features if one.implied_by == joint.name}
        for hole in form.located:
            if hole.name in own and hole.kind in _CLEAR:
                for end in _outer_ends(hole, copies[0]):
                    yield _spanner(end, hole) if joint.kind == "bolted" else _Head(end, wide)


def _blade(joint: Joint, design: Design) -> float:
    """Half of what goes down to a screw's seat: its driver, or the head of a wood screw if wider.

    Heads by their gauge number (ASME B18.6.1), a round one as wide as a countersunk one.
    """
    bought = (one.what for one in design.facts.all(HardwareFact) if one.joint == joint.name)
    found = [_GAUGE.search(what) for what in bought]
    try:
        heads = [wood_screw(int(one[1])).head_mm / 2 for one in found if one is not None]
    except NotListed:
        heads = []
    return max([_BLADE_MM, *heads])


def _spanner(end: Frame, hole: Located) -> _Head:
    """The room of a nut and its spanner, by the hole that the bolt goes through."""
    across = hole.diameter or hole.width or 0.0
    wide = _CORNERS * across
    return _Head(end, wide, wide, _LIFTED * across)


def _outer_ends(hole: Located, one: PlacedFact) -> Iterator[Frame]:
    deep = max((tool.height for tool in hole.tools if isinstance(tool, _ALONG)), default=0.0)
    origin = (0.0, 0.0, 0.0)
    way = minus(placed(minus(origin, hole.frame.z), one.frame), one.frame.origin)
    across = minus(placed(hole.frame.x, one.frame), one.frame.origin)
    for spot in hole.spots:
        yield Frame(plus(placed(spot, one.frame), way, deep), way, across)


def _over(head: _Head, one: PlacedFact, design: Design) -> Beside | None:
    """How near a copy comes to the axis over a head; None where it stays clear of the tool.

    Turned work is looked at step by step: a neck under a wide deck leaves room.
    """
    if _lets_through(head, one, design):
        return None
    met = [_past_box(head, one, box) for box in _boxes(one, design)]
    found = [each for each in met if each is not None]
    if not found:
        return None
    gap, top = min(each.gap for each in found), max(each.top for each in found)
    return Beside(one.item, gap, top, head.wide)


def _boxes(one: PlacedFact, design: Design) -> Iterator[tuple[Vector, Vector]]:
    """The box of a copy, or of each of its steps that lies on its axis."""
    form = design.facts.about(FormFact, one.item)
    steps = form.stretches if form is not None else ()
    if not steps or any(any(step.aside) for step in steps):
        yield one.corners
        return
    for step in steps:
        half = step.across / 2
        yield (step.start, -half, -half), (step.end, half, half)


def _past_box(head: _Head, one: PlacedFact, box: tuple[Vector, Vector]) -> Beside | None:
    """How near a box of a copy comes; None where it stays clear of the tool."""
    frame = head.frame
    start, way = _own(frame.origin, one.frame), _own(plus(one.frame.origin, frame.z), one.frame)
    low, high = box
    middle = plus(low, minus(high, low), 0.5)
    off = minus(middle, start)
    aside = length(minus(off, plus((0.0, 0.0, 0.0), way, dot(off, way))))
    if aside > length(minus(high, low)) / 2 + head.near:
        return None

    def away(up: float) -> float:
        return _from_box(plus(start, way, up), box)

    # The distance from a box is convex along a line, so thirds close in on the nearest place.
    below, above = min(_LEAST_MM, head.high), head.high
    for _ in range(_HALVINGS):
        a, b = below + (above - below) / 3, above - (above - below) / 3
        below, above = (below, b) if away(a) <= away(b) else (a, above)
    gap, near = away(below), below
    if gap >= head.near:
        return None
    top, past = near, head.high
    for _ in range(_HALVINGS):
        half = (top + past) / 2
        top, past = (half, past) if away(half) <= gap + _FACES else (top, half)
    return Beside(one.item, gap, top, head.wide)


def _own(point: Vector, frame: Frame) -> Vector:
    off = minus(point, frame.origin)
    return dot(off, frame.x), dot(off, frame_y(frame)), dot(off, frame.z)


def _from_box(point: Vector, corners: tuple[Vector, Vector]) -> float:
    low, high = corners
    a, b, c = (max(a - x, x - b, 0.0) for x, a, b in zip(point, low, high, strict=True))
    return length((a, b, c))


def _lets_through(over: _Head, one: PlacedFact, design: Design) -> bool:
    """Whether a hole of the copy stands over the head, wide enough for the tool."""
    head, wide_mm = over.frame, over.wide
    form = design.facts.about(FormFact, one.item)
    for hole in form.located if form is not None and not one.is_opposite else ():
        wide = hole.depth is None and (hole.diameter or 0.0) >= 2 * wide_mm
        for spot in hole.spots if wide else ():
            off = minus(placed(spot, one.frame), head.origin)
            aside = length(minus(off, plus((0.0, 0.0, 0.0), head.z, dot(off, head.z))))
            z = minus(placed(hole.frame.z, one.frame), one.frame.origin)
            if abs(dot(z, head.z)) > 1 - _FACES and aside <= (hole.diameter or 0.0) / 2 - wide_mm:
                return True
    return False
