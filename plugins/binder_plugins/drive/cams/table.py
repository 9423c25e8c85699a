"""A cam to the table that its maker works by: lift, radius and the setting of the cutter."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise

from binder_plugins.drive.cams.made import Cam, Spot

STEP_DEG = 5
_TURN = 2 * math.pi


@dataclass(frozen=True, slots=True)
class Place:
    """One angle of the cam in degrees; lift, radius of the outline there, and setting in mm.

    The setting is from the cam's middle to that of the roller, or to the face of a flat
    follower; that of a pointed one is the radius.
    """

    angle_deg: int
    lift_mm: float
    radius_mm: float
    setting_mm: float


def table_of(cam: Cam, every_deg: int = STEP_DEG) -> tuple[Place, ...]:
    """The places of one turn."""
    angles = range(0, 360, every_deg)
    radii = _radii(cam.outline, every_deg)
    rest = cam.base_mm + cam.roller_mm
    lifts = [cam.motion.at(math.radians(angle))[0] for angle in angles]
    return tuple(
        Place(angle, lift, radius, rest + lift)
        for angle, lift, radius in zip(angles, lifts, radii, strict=True)
    )


def _radii(outline: Sequence[Spot], every_deg: int) -> list[float]:
    """How far the outline lies from the middle at each step: of several places the farthest."""
    count, step = 360 // every_deg, math.radians(every_deg)
    found = [0.0] * count
    for one, other in pairwise([*outline, outline[0]]):
        start = math.atan2(one[1], one[0])
        wide = math.remainder(math.atan2(other[1], other[0]) - start, _TURN)
        low, high = sorted((start, start + wide))
        for n in range(math.ceil(low / step - 1e-9), math.floor(high / step + 1e-9) + 1):
            far = _crossing(one, other, n * step)
            found[n % count] = max(found[n % count], far)
    return found


def _crossing(one: Spot, other: Spot, angle: float) -> float:
    """Where the line between two near points crosses a ray from the middle."""
    along, aside = math.cos(angle), math.sin(angle)
    over = one[1] * along - one[0] * aside
    under = other[1] * along - other[0] * aside
    part = over / (over - under) if over != under else 0.0
    x, y = (a + (b - a) * part for a, b in zip(one, other, strict=True))
    return x * along + y * aside
