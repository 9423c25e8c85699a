"""A wanted diameter and a choice of drills to the drill next to it."""

from __future__ import annotations

from collections.abc import Iterable

from binder_trade.drills.drill import Drill, hole_size

# Sizes given in different systems are the same where no tool could tell them apart.
_SAME_MM = 1e-6


def nearest(mm: float, drills: Iterable[Drill]) -> Drill | None:
    """The drill nearest to a diameter in mm, the larger of two as near; None of no drills."""
    wanted = hole_size(mm)
    return min(drills, key=lambda d: (round(abs(d.mm - wanted), 6), -d.mm), default=None)


def at_or_above(mm: float, drills: Iterable[Drill]) -> Drill | None:
    """The smallest drill that is not below a diameter in mm, or None."""
    wanted = hole_size(mm) - _SAME_MM
    return min((d for d in drills if d.mm >= wanted), key=lambda d: d.mm, default=None)


def at_or_below(mm: float, drills: Iterable[Drill]) -> Drill | None:
    """The largest drill that is not above a diameter in mm, or None."""
    wanted = hole_size(mm) + _SAME_MM
    return max((d for d in drills if d.mm <= wanted), key=lambda d: d.mm, default=None)
