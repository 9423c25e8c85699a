"""A pinion on a rack: travel for a turn, the height of its centre, the teeth for a length."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Final

from binder_trade.explained import NotDefined, Step, mm, not_negative
from binder_trade.gears.gear import Gear

GEOMETRY: Final = "the pitch circle rolls on the rack"


@dataclass(frozen=True, slots=True)
class RackDrive:
    """A pinion on a rack; mm. `height_mm` is from the rack's pitch line to the pinion's centre.

    `tooth_mm` is the travel for one tooth; `over_tips_mm` from the rack's tips to the centre.
    """

    travel_mm: float
    tooth_mm: float
    height_mm: float
    over_tips_mm: float
    rack_teeth: int
    contact_ratio: float
    steps: tuple[Step, ...]


def rack_drive(pinion: Gear, stroke_mm: float = 0.0) -> RackDrive:
    """A pinion on its rack, long enough for a stroke; mm. Raises NotDefined for a ring.

    The rack has teeth for the stroke and for the pairs in touch at both its ends. Source:
    travel = π d.
    """
    if pinion.is_internal:
        raise NotDefined("an internal gear has no rack", "give the pinion")
    travel, tooth = math.pi * pinion.pitch_mm, math.pi * pinion.transverse_mm
    height = pinion.pitch_mm / 2 + pinion.shift * pinion.module_mm
    tips = height - pinion.rack.addendum * pinion.module_mm
    ratio = _contact(pinion)
    teeth = math.ceil(not_negative(stroke_mm, "a stroke") / tooth) + 2 * math.ceil(ratio)
    return RackDrive(
        travel,
        tooth,
        height,
        tips,
        teeth,
        ratio,
        (
            Step("travel in a turn", "π m z", mm(travel), GEOMETRY),
            Step("centre over the pitch line", "d / 2 + x m", mm(height), GEOMETRY),
            Step(
                "teeth of the rack",
                "stroke / (π m), and the pairs in touch at each end",
                f"{teeth}",
                GEOMETRY,
            ),
        ),
    )


def _contact(pinion: Gear) -> float:
    sine = math.sin(pinion.angle)
    reach = math.sqrt(max(0.0, pinion.tip_mm**2 - pinion.base_mm**2)) / 2
    recess = reach - pinion.pitch_mm / 2 * sine
    approach = pinion.module_mm * (pinion.rack.addendum - pinion.shift) / sine
    return (recess + approach) / pinion.base_pitch_mm
