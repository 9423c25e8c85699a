"""Crossed helical gears: two helical gears on shafts that neither meet nor lie parallel."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Final

from binder_trade.explained import NotDefined, Step, mm
from binder_trade.gears.gear import Gear

GEOMETRY: Final = "geometry of crossed helices"


@dataclass(frozen=True, slots=True)
class CrossedPair:
    """Two crossed helical gears; mm, degrees. They touch at a point and carry little."""

    first: Gear
    second: Gear
    ratio: float
    centres_mm: float
    shafts_deg: float
    same_hand: bool
    steps: tuple[Step, ...]


def crossed(first: Gear, second: Gear, *, same_hand: bool = True) -> CrossedPair:
    """Two helical gears of one normal module and angle in mesh; mm, degrees.

    The shafts stand at β₁ + β₂ for gears of one hand, at their difference otherwise. Raises
    NotDefined for gears that are no mates. Source: a = m (z₁ / cos β₁ + z₂ / cos β₂) / 2.
    """
    if first.is_internal or second.is_internal:
        raise NotDefined("an internal gear does not run crossed", "take external gears")
    if not math.isclose(first.module_mm, second.module_mm, rel_tol=1e-6) or (
        first.rack.angle_deg != second.rack.angle_deg
    ):
        raise NotDefined(
            "the two have different teeth in the normal plane", "give them one normal module"
        )
    sign = 1 if same_hand else -1
    shafts = abs(first.helix_deg + sign * second.helix_deg)
    centres = (first.pitch_mm + second.pitch_mm) / 2
    return CrossedPair(
        first,
        second,
        second.teeth / first.teeth,
        centres,
        shafts,
        same_hand,
        (
            Step("angle of the shafts", "β₁ ± β₂", f"{shafts:.3f}°", GEOMETRY),
            Step("centres", "m (z₁ / cos β₁ + z₂ / cos β₂) / 2", mm(centres), GEOMETRY),
        ),
    )
