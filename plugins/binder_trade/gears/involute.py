"""The involute function, and the angle that has a given involute; radians."""

from __future__ import annotations

import math

from binder_trade.explained import NotDefined, within

_HALVINGS = 200


def involute(angle: float) -> float:
    """Inv α = tan α − α; radians. Raises NotDefined for no number. Source: ISO 21771."""
    if not math.isfinite(angle):
        raise NotDefined("an angle of no size has no involute", "give an angle")
    return math.tan(angle) - angle


def angle_of(value: float) -> float:
    """The angle in radians, under a right angle, whose involute is `value`.

    Raises NotDefined for a value under nothing. Source: bisection of ISO 21771's inv α.
    """
    within(value, 0, 1e4, "an involute")
    low, high = 0.0, math.pi / 2
    for _ in range(_HALVINGS):
        middle = (low + high) / 2
        if middle in (low, high):
            break
        low, high = (middle, high) if involute(middle) < value else (low, middle)
    return (low + high) / 2
