"""Bores with a flat floor: the drill stops short by its point, and the tool faces what is left."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from binder_plugins.operations.hole_kinds import Where
    from binder_plugins.operations.work import Work
    from binder_solid.facts import Located

# A drill's point of 118 degrees stands ahead of its corners by so much of its radius.
POINT_RISE = math.tan(math.radians(31.0))
# What the boring tool has left to take off the floor, and the least that a drill goes in with its
# full diameter, in mm. Common practice, no source.
FLOOR_MM, _LEAST = 0.2, 0.3
# A floor so thin, in mm, is told of, for whoever goes too deep has no part left. Common practice,
# no source.
_THIN = 3.0


def has_floor(one: Located) -> bool:
    """Whether a hole is bored to a flat floor: those that are drilled or reamed keep the cone."""
    return one.kind == "bored" and one.depth is not None


def short_of_floor(one: Located, where: Where, size: float) -> float:
    """How deep in mm a drill goes with its full diameter, for its point to stay off the floor.

    In a hole that is there already only what stands beyond that hole's wall counts.
    """
    if not has_floor(one):
        return where.deep
    short = where.deep - FLOOR_MM - POINT_RISE * max(size - where.first, 0.0) / 2
    return round(short, 1) if short >= _LEAST else where.deep


def enters(one: Located, where: Where, size: float) -> bool:
    """Whether a drill of a size gets in at all before its point is at the floor."""
    return not has_floor(one) or short_of_floor(one, where, size) < where.deep


def floor_words(work: Work, one: Located, where: Where) -> str:
    """`, its floor faced flat`, and how much is left behind it where that is little."""
    if not has_floor(one) or one.depth is None or work.form is None:
        return ""
    if where.is_together:
        return ", up to its floor, not into it"
    axis = max(range(3), key=lambda n: abs(one.frame.z[n]))
    left = work.form.size[axis] - one.depth
    flat = ", its floor faced flat"
    if not 1e-6 < left < _THIN:
        return flat
    return f"{flat}: {work.mm(left)} of it is left, so measure the depth before the last cut"
