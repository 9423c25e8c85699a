"""How long an edge lasts, and how rough a finish the feed leaves."""

from __future__ import annotations

import math

from binder_trade.explained import positive


def life(known_min: float, known_mpm: float, mpm: float, exponent: float) -> float:
    """The minutes that an edge lasts at another speed: v Tⁿ = C.

    `exponent` n is about 0.125 for high-speed steel and 0.25 for carbide. Source: Taylor.
    """
    ratio = positive(known_mpm, "a speed") / positive(mpm, "a speed")
    power = math.pow(ratio, 1 / positive(exponent, "the exponent"))
    return positive(known_min, "a life") * power


def roughness(feed_mm: float, nose_mm: float) -> float:
    """The height in mm of the ridges that a round-nosed tool leaves: f²/(8 r)."""
    return positive(feed_mm, "a feed") ** 2 / (8 * positive(nose_mm, "the nose radius"))
