"""The space between two teeth of a spur gear, for what cuts it: its flank, widths and radii.

Lengths in mm. The flank is the involute of ISO 21771-1, radial below the base circle as form
cutters leave it.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from .gears import Gear, thickness_at

Point = tuple[float, float]
_STEPS = 24
# The fillet at the root in modules: ISO 53, basic rack profile A.
_FILLET = 0.38


@dataclass(frozen=True, slots=True)
class Space:
    """Half of a space: `flank` from the bottom up as (from the middle, below the tips), in mm.

    Widths are across the chord; `radius` is that of the circle through the flank's ends and its
    pitch point, `fillet` the most that the corners of the bottom may be rounded.
    """

    flank: tuple[Point, ...]
    at_tip: float
    at_pitch: float
    at_root: float
    pitch_below: float
    depth: float
    radius: float
    fillet: float


def space_of(gear: Gear) -> Space:
    """The space of an external gear."""
    low, high = gear.root_diameter, gear.tip_diameter
    flank = tuple(_point(gear, low + (high - low) * n / _STEPS) for n in range(_STEPS + 1))
    foot = max(low, gear.base_diameter)
    root, pitch, tip = (_point(gear, across) for across in (low, gear.pitch_diameter, high))
    return Space(
        flank,
        at_tip=2 * tip[0],
        at_pitch=2 * pitch[0],
        at_root=2 * root[0],
        pitch_below=pitch[1] - tip[1],
        depth=gear.whole_depth,
        radius=_through(_point(gear, foot), pitch, tip),
        fillet=_FILLET * gear.module,
    )


def _point(gear: Gear, across: float) -> Point:
    """On the flank at a diameter: how far from the middle of the space, and below the tips."""
    at = max(across, gear.base_diameter)
    half = math.pi / gear.teeth - thickness_at(gear, at) / at
    radius = across / 2.0
    return radius * math.sin(half), gear.tip_diameter / 2.0 - radius * math.cos(half)


def _through(one: Point, two: Point, three: Point) -> float:
    """The radius of the circle through three points; infinite where they lie in a row."""
    a, b, c = math.dist(two, three), math.dist(one, three), math.dist(one, two)
    twice = abs((two[0] - one[0]) * (three[1] - one[1]) - (three[0] - one[0]) * (two[1] - one[1]))
    return a * b * c / (2.0 * twice) if twice > 1e-12 else math.inf
