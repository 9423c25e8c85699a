"""The flanks of a step to the face at which it ends, where extension lines ought to begin."""

from __future__ import annotations

from dataclasses import replace
from itertools import pairwise

from binder_drafting.edges import Chain, Point
from binder_drafting.sides import ABOVE, LEFT, RIGHT
from binder_drafting.sizes import Across
from binder_drafting.views import View

_HAIR = 1e-6


def slid_to_face(size: Across, view: View, side: str) -> Across:
    """The same diameter with its points at the ends of their edges, towards a side."""
    axis = 0 if side in {LEFT, RIGHT} else 1
    forward = side in {RIGHT, ABOVE}
    return replace(
        size,
        start=_slid(size.start, view, axis, forward=forward),
        end=_slid(size.end, view, axis, forward=forward),
    )


def _slid(point: Point, view: View, axis: int, *, forward: bool) -> Point:
    best = point[axis]
    for edge in view.edges:
        if not isinstance(edge, Chain):
            continue
        for one, two in pairwise(edge.points):
            if abs(one[1 - axis] - point[1 - axis]) > _HAIR:
                continue
            if abs(two[1 - axis] - point[1 - axis]) > _HAIR:
                continue
            low, high = min(one[axis], two[axis]), max(one[axis], two[axis])
            if low - _HAIR <= point[axis] <= high + _HAIR:
                best = max(best, high) if forward else min(best, low)
    return (best, point[1]) if axis == 0 else (point[0], best)
