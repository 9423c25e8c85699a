"""The heads of the screws of a joint, to what stands where a driver is held over them."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from binder_solid.facts import FormFact
from binder_solid.forms import Cylinder, Frame
from binder_solid.placed import PlacedFact
from binder_solid.space import dot, frame_y, length, minus, placed, plus

if TYPE_CHECKING:
    from collections.abc import Iterator

    from binder.api import Design, Joint
    from binder_solid.facts import Located
    from binder_solid.forms import Vector

# Half of a blade, half of the handle above it, and how far up from the head is looked, all in
# mm; common practice, no source.
_BLADE_MM, HANDLE_MM, _REACH_MM = 3.0, 14.0, 200.0
# What lies in one plane with a head stands beside it, not over it.
_LEAST_MM, _FACES, _HALVINGS = 1.0, 0.05, 40
_CLEAR = frozenset({"drilled", "slotted"})


@dataclass(frozen=True, slots=True)
class Beside:
    """A copy of an item that stands beside or over a head: its nearest `gap` to the axis in mm.

    `top` is how far over the head it ends, in mm. `bars` tells that no blade gets past it.
    """

    item: str
    gap: float
    top: float

    @property
    def bars(self) -> bool:
        """Whether it stands in the blade itself."""
        return self.gap < _BLADE_MM


def beside_heads(joint: Joint, design: Design) -> Iterator[Beside]:
    """What stands within a driver's handle of the axis of each head of a screwed joint.

    Nothing where the joint holds several copies, or the model is not placed: no head has a place.
    """
    for head in _heads(joint, design):
        for one in design.facts.all(PlacedFact):
            if one.item in joint.items:
                continue
            found = _over(head, one, design)
            if found is not None:
                yield found


def _heads(joint: Joint, design: Design) -> Iterator[Frame]:
    """The outer ends of the clearing holes, z the way that the driver stands."""
    for name in joint.items if joint.kind == "screwed" else ():
        part, form = design.parts.get(name), design.facts.about(FormFact, name)
        copies = [one for one in design.facts.all(PlacedFact) if one.item == name]
        if part is None or form is None or len(copies) != 1 or copies[0].is_opposite:
            continue
        own = {one.name for one in part.features if one.implied_by == joint.name}
        for hole in form.located:
            if hole.name in own and hole.kind in _CLEAR:
                yield from _outer_ends(hole, copies[0])


def _outer_ends(hole: Located, one: PlacedFact) -> Iterator[Frame]:
    deep = max((tool.height for tool in hole.tools if isinstance(tool, Cylinder)), default=0.0)
    origin = (0.0, 0.0, 0.0)
    way = minus(placed(minus(origin, hole.frame.z), one.frame), one.frame.origin)
    across = minus(placed(hole.frame.x, one.frame), one.frame.origin)
    for spot in hole.spots:
        yield Frame(plus(placed(spot, one.frame), way, deep), way, across)


def _over(head: Frame, one: PlacedFact, design: Design) -> Beside | None:
    """How near a copy comes to the axis over a head; None where it stays clear of the handle."""
    start, way = _own(head.origin, one.frame), _own(plus(one.frame.origin, head.z), one.frame)
    low, high = one.corners
    middle = plus(low, minus(high, low), 0.5)
    off = minus(middle, start)
    aside = length(minus(off, plus((0.0, 0.0, 0.0), way, dot(off, way))))
    if aside > length(minus(high, low)) / 2 + HANDLE_MM:
        return None

    def away(up: float) -> float:
        return _from_box(plus(start, way, up), one.corners)

    # The distance from a box is convex along a line, so thirds close in on the nearest place.
    below, above = _LEAST_MM, _REACH_MM
    for _ in range(_HALVINGS):
        a, b = below + (above - below) / 3, above - (above - below) / 3
        below, above = (below, b) if away(a) <= away(b) else (a, above)
    gap, near = away(below), below
    if gap >= HANDLE_MM or _lets_through(head, one, design):
        return None
    top, past = near, _REACH_MM
    for _ in range(_HALVINGS):
        half = (top + past) / 2
        top, past = (half, past) if away(half) <= gap + _FACES else (top, half)
    return Beside(one.item, gap, top)


def _own(point: Vector, frame: Frame) -> Vector:
    off = minus(point, frame.origin)
    return dot(off, frame.x), dot(off, frame_y(frame)), dot(off, frame.z)


def _from_box(point: Vector, corners: tuple[Vector, Vector]) -> float:
    low, high = corners
    a, b, c = (max(a - x, x - b, 0.0) for x, a, b in zip(point, low, high, strict=True))
    return length((a, b, c))


def _lets_through(head: Frame, one: PlacedFact, design: Design) -> bool:
    """Whether a hole of the copy stands over the head, wide enough for a blade."""
    form = design.facts.about(FormFact, one.item)
    for hole in form.located if form is not None and not one.is_opposite else ():
        wide = hole.depth is None and (hole.diameter or 0.0) >= 2 * _BLADE_MM
        for spot in hole.spots if wide else ():
            off = minus(placed(spot, one.frame), head.origin)
            aside = length(minus(off, plus((0.0, 0.0, 0.0), head.z, dot(off, head.z))))
            z = minus(placed(hole.frame.z, one.frame), one.frame.origin)
            if abs(dot(z, head.z)) > 1 - _FACES and aside <= (hole.diameter or 0.0) / 2 - _BLADE_MM:
                return True
    return False
