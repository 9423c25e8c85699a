"""Holes evenly round a circle to what dividers are set to."""

from __future__ import annotations

import math

from binder_trade.explained import NotDefined, positive


def chord(circle_mm: float, count: int) -> float:
    """From hole to hole in mm, of so many evenly on a pitch circle: D sin(180° / n).

    Source: Machinery's Handbook, length of chords. NotDefined for fewer than two holes, or a
    circle of no size.
    """
    if count < 2:
        raise NotDefined(f"{count} holes have no next one", "give two or more")
    return positive(circle_mm, "a pitch circle") * math.sin(math.pi / count)
