"""The way in which a unit is drawn off what it is on, where the way of its joint goes through that.

Two sides on a pin before and behind a post do not come off along the pin: what joins them would go
through the post. What hangs in a cord under a sheave does not come off upwards past it.
"""

from __future__ import annotations

from collections.abc import Sequence

from binder_solid.forms import Vector

Box = tuple[Vector, Vector]
_PARALLEL, _TOUCHES = 1 - 1e-6, 1e-6


def way_clear(way: Vector, copies: Sequence[Box], onto: Box) -> Vector:
    """The way of a joint, or the one that is free instead; boxes in mm as all stands together.

    `copies` are the boxes of the unit's own copies, `onto` that of the copy which it is put on.
    """
    axis = next((n for n in range(3) if abs(way[n]) > _PARALLEL), None)
    if axis is None:
        return way
    sign = 1.0 if way[axis] > 0 else -1.0
    if way[2] > _PARALLEL and all(_gap(one, onto, 2, -1.0) > _TOUCHES for one in copies):
        return _along(2, -1.0)
    if not _is_astride(copies, onto, axis):
        return way
    between = [one for one in copies if _gap(one, onto, axis, 1.0) < -_TOUCHES
               and _gap(one, onto, axis, -1.0) < -_TOUCHES]  # fmt: skip
    # The open end of a fork looks away from what joins its sides.
    free = [
        (min(_gap(one, onto, other, side) for one in between), other, side)
        for other in range(3)
        for side in (1.0, -1.0)
        if between and other != axis
    ]
    gap, other, side = max(free, default=(-1.0, axis, sign))
    return _along(other, side) if gap >= -_TOUCHES else way


def _is_astride(copies: Sequence[Box], onto: Box, axis: int) -> bool:
    """Whether copies stand on both sides of what the unit is on, over against it."""
    over = [
        one
        for one in copies
        if all(
            one[0][n] < onto[1][n] - _TOUCHES and onto[0][n] < one[1][n] - _TOUCHES
            for n in range(3)
            if n != axis
        )
    ]
    return all(
        any(_gap(one, onto, axis, side) >= -_TOUCHES for one in over) for side in (1.0, -1.0)
    )


def _gap(one: Box, other: Box, axis: int, side: float) -> float:
    """How far one box stands off the other on that side of it, in mm; under 0 where it does not."""
    return one[0][axis] - other[1][axis] if side > 0 else other[0][axis] - one[1][axis]


def _along(axis: int, sign: float) -> Vector:
    found = [0.0, 0.0, 0.0]
    found[axis] = sign
    return found[0], found[1], found[2]
