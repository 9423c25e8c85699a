"""The rods with which rows of bores are tried in line, named as tools with their sizes."""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from typing import TYPE_CHECKING

from binder.api import TogetherFact
from binder_plugins.operations.drilled import left_at
from binder_plugins.operations.rows import holes_of
from binder_solid.placed import PlacedFact
from binder_solid.space import dot, minus, placed

if TYPE_CHECKING:
    from binder_plugins.operations.rows import Hole
    from binder_plugins.operations.work import Work

# What such a rod is longer than its row, and the steps in which its length is told, both in mm;
# common practice, no source.
_OVER_MM, _ROUND_MM = 20.0, 5.0


def trying_rods(rows: Sequence[Sequence[Hole]], works: Mapping[str, Work]) -> str:
    """`trying rod ⌀3.8 mm × 60 mm`, one for each size that the bores have before they are finished.

    One of a size is as long as the longest row of the model asks, and does them all. '' where a
    part does not stand in the model: the length is not known.
    """
    sizes = list(dict.fromkeys(left_at(one.work, one.one) for row in rows for one in row))
    asked = _longest(works)
    mm = rows[0][0].work.mm
    if not all(asked.get(size) for size in sizes):
        return ""
    steps = {size: math.ceil((asked[size] + _OVER_MM) / _ROUND_MM) for size in sizes}
    return ", ".join(f"trying rod ⌀{mm(size)} × {mm(_ROUND_MM * steps[size])}" for size in sizes)


def _longest(works: Mapping[str, Work]) -> dict[float, float]:
    """The span in mm of the longest row that is reamed in line, for each size of its bores."""
    found: dict[float, float] = {}
    design = next(iter(works.values())).design
    for fact in design.facts.all(TogetherFact):
        for line in fact.lines if fact.how == "reamed in line" else ():
            row = list(holes_of(line, works))
            for one in row:
                size = left_at(one.work, one.one)
                found[size] = max(_spans(row), found.get(size, 0.0))
    return found


def _spans(row: Sequence[Hole]) -> float:
    """From mouth to mouth of a row in mm as its parts stand, 0 where they are not placed."""
    lead = row[0]
    copies = list(lead.work.design.facts.all(PlacedFact))
    first = next((one for one in copies if one.item == lead.work.name), None)
    if first is None:
        return 0.0
    way = minus(placed(lead.one.frame.z, first.frame), first.frame.origin)
    along = [
        (dot(placed(spot, copy.frame), way), hole.deep)
        for hole in row
        for copy in copies
        if copy.item == hole.work.name
        for spot in hole.one.spots
    ]
    # A hole is told by one of its mouths: it reaches its depth to the one side or the other.
    deep = max(depth for _, depth in along)
    return max(at for at, _ in along) - min(at for at, _ in along) + 2 * deep
