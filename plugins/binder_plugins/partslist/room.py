"""How large a bought wheel may be before it fouls what stands beside its shaft."""

from __future__ import annotations

import math
from itertools import product
from typing import TYPE_CHECKING

from binder.api import Role, ShaftFact
from binder_solid.placed import PlacedFact
from binder_solid.space import dot, frame_y, minus, placed

if TYPE_CHECKING:
    from collections.abc import Iterator

    from binder.api import Design
    from binder_solid.forms import Vector

# Kept clear all round, in mm; common practice, no source.
_CLEAR = 0.5


def most_outside(item: str, design: Design) -> int | None:
    """The largest whole mm over the outside of a wheel outside the bearings of its shaft.

    From the boxes that the other parts stand in, so on the safe side; None where nothing
    stands beside that end, or its place in the row is not known.
    """
    for fact in design.facts.all(ShaftFact):
        names = [piece.item for piece in fact.pieces]
        shaft = [one for one in design.facts.all(PlacedFact) if one.item == fact.subject]
        if item not in names or len(shaft) != 1:
            continue
        span = _free_end(fact, names.index(item), shaft[0], design)
        if span is None:
            return None
        others = (one for one in design.facts.all(PlacedFact) if one.item not in names)
        far = [
            across
            for one in others
            if one.item != fact.subject and (across := _beside(one, shaft[0], span)) is not None
        ]
        return math.floor(2 * (min(far) - _CLEAR)) if far else None
    return None


def _free_end(
    fact: ShaftFact, place: int, shaft: PlacedFact, design: Design
) -> tuple[float, float] | None:
    """From the outer bearing to the end of the shaft, on its own axis; None between bearings."""
    carrying = [n for n, one in enumerate(fact.pieces) if one.role is Role.BEARING]
    if not carrying or carrying[0] < place < carrying[-1]:
        return None
    items = {fact.pieces[n].item for n in carrying}
    ends = [
        x
        for one in design.facts.all(PlacedFact)
        if one.item in items
        for x, _, _ in _corners(one, shaft)
    ]
    if not ends:
        return None
    low, high = shaft.corners[0][0], shaft.corners[1][0]
    return (max(ends), high) if place > carrying[-1] else (low, min(ends))


def _corners(one: PlacedFact, shaft: PlacedFact) -> Iterator[Vector]:
    """The corners of a part's box, along the shaft and across it."""
    frame = shaft.frame
    ranges = zip(*one.corners, strict=True)
    for x, y, z in product(*ranges):
        way = minus(placed((x, y, z), one.frame), frame.origin)
        yield dot(way, frame.x), dot(way, frame_y(frame)), dot(way, frame.z)


def _beside(one: PlacedFact, shaft: PlacedFact, span: tuple[float, float]) -> float | None:
    """How far from the axis a part begins; None where it is not beside that stretch of it."""
    along, *across = zip(*_corners(one, shaft), strict=True)
    if max(along) <= span[0] or min(along) >= span[1]:
        return None
    return math.hypot(*(max(min(each), -max(each), 0.0) for each in across))
