"""Centres of two gears: whether they mate, how far apart, with what play, and what shifts fit."""

from __future__ import annotations

import math

from binder_trade.explained import NotDefined, positive
from binder_trade.gears.gear import Gear
from binder_trade.gears.involute import angle_of, involute


def check_mates(pinion: Gear, wheel: Gear) -> None:
    """Raises NotDefined where two gears cannot run together at all."""
    if not math.isclose(pinion.module_mm, wheel.module_mm, rel_tol=1e-6):
        raise NotDefined(
            f"teeth of module {pinion.module_mm:.4g} do not mesh with {wheel.module_mm:.4g}",
            "make both of one module, or both of one DP",
        )
    if pinion.rack.angle_deg != wheel.rack.angle_deg:
        raise NotDefined("the two have different pressure angles", "make both of one angle")
    if pinion.helix_deg != wheel.helix_deg:
        raise NotDefined("on parallel shafts both need one helix angle", "one hand to each gear")
    if pinion.is_internal or (wheel.is_internal and wheel.teeth <= pinion.teeth):
        raise NotDefined("the internal gear is not the larger of the two", "exchange them")


def reference(pinion: Gear, wheel: Gear) -> float:
    """The distance of the pitch circles' centres when they touch; mm."""
    sign = -1 if wheel.is_internal else 1
    return abs(pinion.pitch_mm + sign * wheel.pitch_mm) / 2


def tight_centres(pinion: Gear, wheel: Gear) -> float:
    """The centre distance without play for full teeth; mm. Source: ISO 21771."""
    check_mates(pinion, wheel)
    angle = angle_of(_involute_at_tight(pinion, wheel))
    return reference(pinion, wheel) * math.cos(pinion.angle) / math.cos(angle)


def shift_for(pinion: Gear, wheel: Gear, centres_mm: float) -> float:
    """The sum of shifts (internal: wheel less pinion), in modules, that fits a distance in mm.

    x₁ + x₂ = (z₁ + z₂)(inv α_w − inv α) / (2 tan α). Source: ISO 21771.
    """
    check_mates(pinion, wheel)
    angle = angle_at(pinion, wheel, centres_mm)
    teeth = wheel.teeth + (-pinion.teeth if wheel.is_internal else pinion.teeth)
    gap = involute(angle) - involute(pinion.angle)
    return teeth * gap / (2 * math.tan(pinion.rack.angle))


def usual_backlash(module_mm: float) -> tuple[float, float]:
    """The least and the most play along the pitch circle that gears cut at home are given; mm.

    Three to five hundredths of a module. Source: makers' practice.
    """
    module = positive(module_mm, "a module")
    return 0.03 * module, 0.05 * module


def angle_at(pinion: Gear, wheel: Gear, centres_mm: float) -> float:
    """The working pressure angle at a distance in mm; radians. Raises NotDefined too near.

    Source: ISO 21771, cos α_w = a cos α / a_w.
    """
    positive(centres_mm, "a centre distance")
    cosine = reference(pinion, wheel) * math.cos(pinion.angle) / centres_mm
    if cosine >= 1:
        raise NotDefined(
            f"at {centres_mm:.3f} mm the base circles run into each other",
            f"without play the centres are {tight_centres(pinion, wheel):.3f} mm apart",
        )
    return math.acos(cosine)


def backlash_at(pinion: Gear, wheel: Gear, centres_mm: float, angle: float) -> float:
    """The play along the working pitch circles at a distance and its angle; mm, radians."""
    scale = centres_mm / reference(pinion, wheel)
    working = [each.pitch_mm * scale for each in (pinion, wheel)]
    spaces = 2 * math.pi * working[0] / 2 / pinion.teeth
    thick = [_thick(each, size, angle) for each, size in zip((pinion, wheel), working, strict=True)]
    return spaces - sum(thick)


def apart_for(pinion: Gear, wheel: Gear, backlash_mm: float) -> float:
    """The distance at which the play is as wanted, or no less; mm. Raises NotDefined for none."""
    tight, module = tight_centres(pinion, wheel), pinion.module_mm
    sign = -1 if wheel.is_internal else 1
    most = module
    if wheel.is_internal:
        # The pinion cannot come nearer than where the base circles touch.
        most = min(module, tight - (wheel.base_mm - pinion.base_mm) / 2 - 1e-9)
    near, far = 0.0, most
    for _ in range(80):
        middle = (near + far) / 2
        at = tight + sign * middle
        enough = backlash_at(pinion, wheel, at, angle_at(pinion, wheel, at)) >= backlash_mm
        near, far = (near, middle) if enough else (middle, far)
    if far == most:
        raise NotDefined(
            f"a backlash of {backlash_mm:g} mm is more than the centres can give",
            "a twentieth of the module is usual",
        )
    return tight + sign * far


def _involute_at_tight(pinion: Gear, wheel: Gear) -> float:
    sign = -1 if wheel.is_internal else 1
    shift = wheel.shift + sign * pinion.shift
    teeth = wheel.teeth + sign * pinion.teeth
    return involute(pinion.angle) + 2 * shift * math.tan(pinion.rack.angle) / teeth


def _thick(gear: Gear, size_mm: float, angle: float) -> float:
    turn = involute(gear.angle) - involute(angle)
    part = -turn if gear.is_internal else turn
    return size_mm * (gear.thickness_mm / gear.pitch_mm + part)
