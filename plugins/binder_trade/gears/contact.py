"""Where two gears at a distance are in touch, what clearance is left, whether a tip digs in."""

from __future__ import annotations

import math

from binder_trade.explained import NotDefined
from binder_trade.gears.centres import reference, tight_centres
from binder_trade.gears.gear import Gear
from binder_trade.gears.involute import involute


def check_reach(pinion: Gear, wheel: Gear, centres_mm: float) -> None:
    """Raises NotDefined where two gears stand so far apart that their teeth do not meet."""
    if wheel.is_internal:
        meets = centres_mm + pinion.tip_mm / 2 > wheel.tip_mm / 2
    else:
        meets = centres_mm < (pinion.tip_mm + wheel.tip_mm) / 2
    if not meets:
        raise NotDefined(
            f"at {centres_mm:.3f} mm the teeth do not reach one another",
            f"without play the centres are {tight_centres(pinion, wheel):.3f} mm apart",
        )


def lengths(pinion: Gear, wheel: Gear, centres_mm: float, angle: float) -> tuple[float, float]:
    """Approach (pinion drives) and recess along the line of contact; mm."""
    scale = centres_mm / reference(pinion, wheel)
    sine = math.sin(angle)
    first = _reach(pinion) - pinion.pitch_mm * scale / 2 * sine
    last = _reach(wheel) - wheel.pitch_mm * scale / 2 * sine
    return (-last if wheel.is_internal else last), first


def clearance(pinion: Gear, wheel: Gear, centres_mm: float) -> float:
    """What is left between a tip and the other's root, the less of the two; mm."""
    if wheel.is_internal:
        return min(
            (wheel.root_mm - pinion.tip_mm) / 2 - centres_mm,
            (wheel.tip_mm - pinion.root_mm) / 2 - centres_mm,
        )
    return min(
        centres_mm - (pinion.tip_mm + wheel.root_mm) / 2,
        centres_mm - (wheel.tip_mm + pinion.root_mm) / 2,
    )


def interferes(pinion: Gear, wheel: Gear, centres_mm: float, angle: float) -> bool:
    """Whether a tip reaches past the point where the line of contact leaves the base circle."""
    line = centres_mm * math.sin(angle)
    if wheel.is_internal:
        return _reach(wheel) < line - 1e-9 or _fouls(pinion, wheel, centres_mm, angle)
    return _reach(pinion) > line + 1e-9 or _reach(wheel) > line + 1e-9


def overlap(gear: Gear, face_mm: float) -> float:
    """What the helix adds to the contact ratio, b sin β / (π m). Source: ISO 21771."""
    return face_mm * math.sin(math.radians(gear.helix_deg)) / (math.pi * gear.module_mm)


def _reach(gear: Gear) -> float:
    return math.sqrt(max(0.0, gear.tip_mm**2 - gear.base_mm**2)) / 2


def _fouls(pinion: Gear, wheel: Gear, centres_mm: float, angle: float) -> bool:
    """Whether tips strike where they leave one another, in an internal pair of near sizes.

    The two tips at the crossing of the tip circles, turned back to the line of contact.
    """
    small, large = pinion.tip_mm / 2, wheel.tip_mm / 2
    cosine = (large**2 - small**2 - centres_mm**2) / (2 * centres_mm * small)
    if abs(cosine) >= 1:
        return False
    other = (centres_mm**2 + large**2 - small**2) / (2 * centres_mm * large)
    first = math.acos(cosine) + _roll(pinion) - involute(angle)
    second = math.acos(other) - (involute(angle) - _roll(wheel))
    return first * pinion.teeth / wheel.teeth < second - 1e-9


def _roll(gear: Gear) -> float:
    return involute(math.acos(min(1.0, gear.base_mm / gear.tip_mm)))
