"""Long parts that are fixed to one another, to the angle at which they stand."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING

from binder_solid.placed import PlacedFact
from binder_solid.space import dot, length, minus, placed, plus, unit

if TYPE_CHECKING:
    from binder.api import Design, Joint
    from binder_solid.forms import Vector

_LONG = 1.5  # the longest side over the next: what is shorter has no line to set by
_SQUARE_DEG = 0.05


def leans_at(joint: Joint, design: Design) -> str:
    """`the jib at 40° to the slewing post, towards its right-hand end`; '' where not known.

    Told of two long parts that meet at a slant: the second is the one that the angle is set off
    from. An angle is that between their long sides, 0 to 90 degrees, to a tenth.
    """
    if len(joint.items) != 2:
        return ""
    lines = [_line(item, design) for item in joint.items]
    if lines[0] is None or lines[1] is None:
        return ""
    names = [_title(item, design) for item in joint.items]
    (start, end), (left, right) = lines[0], lines[1]
    base = unit(minus(right, left))
    if _off(end, left, base) < _off(start, left, base):
        start, end = end, start
    along = dot(unit(minus(end, start)), base)
    angle = math.degrees(math.acos(min(1.0, abs(along))))
    if not _SQUARE_DEG < angle < 90 - _SQUARE_DEG:
        return ""
    side = "right" if along > 0 else "left"
    return (
        f"{names[0]} at {angle:.3g}° to {names[1]}, its far end towards the {side}-hand end of "
        f"that ({90 - angle:.3g}° from square across it)"
    )


def _off(point: Vector, on: Vector, along: Vector) -> float:
    """How far a point lies from a line."""
    way = minus(point, on)
    return length(plus(way, along, -dot(way, along)))


def _line(item: str, design: Design) -> tuple[Vector, Vector] | None:
    """The middle line of the longest piece of an item, from its left end to its right."""
    whole = design.fabrications.get(item)
    names = [piece.item for piece in whole.pieces] if whole is not None else [item]
    copies = [one for one in design.facts.all(PlacedFact) if one.item in names]
    longest = max(copies, key=lambda one: max(_size(one)), default=None)
    if longest is None:
        return None
    size = _size(longest)
    axis = size.index(max(size))
    if size[axis] < _LONG * sorted(size)[1]:
        return None
    low, high = longest.corners
    ends = []
    for corner in (low, high):
        middle = [(a + b) / 2 for a, b in zip(low, high, strict=True)]
        middle[axis] = corner[axis]
        ends.append(placed((middle[0], middle[1], middle[2]), longest.frame))
    return ends[0], ends[1]


def _size(one: PlacedFact) -> tuple[float, float, float]:
    (a, b, c), (d, e, f) = one.corners
    return (d - a, e - b, f - c)


def _title(name: str, design: Design) -> str:
    item = design.item(name)
    return f"the {item.title if item is not None else name}"
