"""Two gears in mesh: centres, working angle, backlash, contact, interference, sliding."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from typing import Final

from binder_trade.explained import NotDefined, Step, mm, positive
from binder_trade.gears.gear import ISO, Gear
from binder_trade.gears.involute import angle_of, involute

SMOOTH: Final = 1.2
SMOOTH_RULE: Final = "at least 1.2 pairs of teeth in touch (common practice)"


@dataclass(frozen=True, slots=True)
class Mesh:
    """Two gears at a centre distance; mm and degrees.

    `tight_mm` is the distance without play for teeth of full thickness, `backlash_mm` the play
    along the pitch circles at `centres_mm`, under nothing where
    they bind. `clearance_mm` is left between a tip and the other's
    root, the less of the two. `has_interference` says that a tip digs under the involute.
    """

    pinion: Gear
    wheel: Gear
    ratio: float
    centres_mm: float
    reference_mm: float
    tight_mm: float
    working_angle_deg: float
    backlash_mm: float
    contact_ratio: float
    approach_mm: float
    recess_mm: float
    clearance_mm: float
    has_interference: bool
    reverses: bool
    steps: tuple[Step, ...]

    @property
    def path_mm(self) -> float:
        """How far a pair travels in touch, along the line that they push on."""
        return self.approach_mm + self.recess_mm

    @property
    def arc_mm(self) -> float:
        """The same along the pitch circle."""
        return self.path_mm / math.cos(self.pinion.angle)

    def sliding_mm_s(self, pinion_rpm: float) -> tuple[float, float]:
        """The sliding speed where a pair comes in touch, and where it leaves; mm/s."""
        turn = 2 * math.pi * abs(pinion_rpm) / 60
        sign = -1 if self.wheel.is_internal else 1
        both = turn * (1 + sign / self.ratio)
        return both * self.approach_mm, both * self.recess_mm


def mesh(
    pinion: Gear,
    wheel: Gear,
    *,
    centres_mm: float | None = None,
    backlash_mm: float = 0.0,
) -> Mesh:
    """Two gears in mesh, at a centre distance or at the one that gives a backlash; mm.

    Raises NotDefined for gears that are no mates or a distance at which they cannot mesh.
    Source: ISO 21771.
    """
    check_mates(pinion, wheel)
    if centres_mm is None:
        centres_mm = _apart_for(pinion, wheel, backlash_mm)
    angle = _angle_at(pinion, wheel, centres_mm)
    play = _backlash(pinion, wheel, centres_mm, angle)
    approach, recess = _lengths(pinion, wheel, centres_mm, angle)
    made = Mesh(
        pinion,
        wheel,
        wheel.teeth / pinion.teeth,
        centres_mm,
        reference(pinion, wheel),
        tight_centres(pinion, wheel),
        math.degrees(angle),
        play,
        (approach + recess) / pinion.base_pitch_mm,
        approach,
        recess,
        _clearance(pinion, wheel, centres_mm),
        _interferes(pinion, wheel, centres_mm, angle),
        not wheel.is_internal,
        (),
    )
    return _with_steps(made)


def usual_backlash(module_mm: float) -> tuple[float, float]:
    """The least and the most play along the pitch circle that gears cut at home are given; mm.

    Three to five hundredths of a module. Source: makers' practice.
    """
    module = positive(module_mm, "a module")
    return 0.03 * module, 0.05 * module


def reference(pinion: Gear, wheel: Gear) -> float:
    """The distance of the pitch circles' centres when they touch; mm."""
    sign = -1 if wheel.is_internal else 1
    return abs(pinion.pitch_mm + sign * wheel.pitch_mm) / 2


def tight_centres(pinion: Gear, wheel: Gear) -> float:
    """The centre distance without play for full teeth; mm. Source: ISO 21771."""
    angle = angle_of(_involute_at_tight(pinion, wheel))
    return reference(pinion, wheel) * math.cos(pinion.angle) / math.cos(angle)


def shift_for(pinion: Gear, wheel: Gear, centres_mm: float) -> float:
    """The sum of shifts (internal: wheel less pinion), in modules, that fits a distance in mm.

    x₁ + x₂ = (z₁ + z₂)(inv α_w − inv α) / (2 tan α). Source: ISO 21771.
    """
    angle = _angle_at(pinion, wheel, centres_mm)
    teeth = wheel.teeth + (-pinion.teeth if wheel.is_internal else pinion.teeth)
    gap = involute(angle) - involute(pinion.angle)
    return teeth * gap / (2 * math.tan(pinion.rack.angle))


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


def _involute_at_tight(pinion: Gear, wheel: Gear) -> float:
    sign = -1 if wheel.is_internal else 1
    shift = wheel.shift + sign * pinion.shift
    teeth = wheel.teeth + sign * pinion.teeth
    return involute(pinion.angle) + 2 * shift * math.tan(pinion.rack.angle) / teeth


def _angle_at(pinion: Gear, wheel: Gear, centres_mm: float) -> float:
    positive(centres_mm, "a centre distance")
    cosine = reference(pinion, wheel) * math.cos(pinion.angle) / centres_mm
    if cosine >= 1:
        raise NotDefined(
            f"at {centres_mm:.3f} mm the base circles run into each other",
            f"without play the centres are {tight_centres(pinion, wheel):.3f} mm apart",
        )
    return math.acos(cosine)


def _backlash(pinion: Gear, wheel: Gear, centres_mm: float, angle: float) -> float:
    """Along the pitch circles at the working distance; mm."""
    scale = centres_mm / reference(pinion, wheel)
    working = [each.pitch_mm * scale for each in (pinion, wheel)]
    spaces = 2 * math.pi * working[0] / 2 / pinion.teeth
    thick = [_thick(each, size, angle) for each, size in zip((pinion, wheel), working, strict=True)]
    return spaces - sum(thick)


def _thick(gear: Gear, size_mm: float, angle: float) -> float:
    turn = involute(gear.angle) - involute(angle)
    part = -turn if gear.is_internal else turn
    return size_mm * (gear.thickness_mm / gear.pitch_mm + part)


def _apart_for(pinion: Gear, wheel: Gear, backlash_mm: float) -> float:
    """The distance at which the play is as wanted, found by halving; mm."""
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
        enough = _backlash(pinion, wheel, at, _angle_at(pinion, wheel, at)) >= backlash_mm
        near, far = (near, middle) if enough else (middle, far)
    if far == most:
        raise NotDefined(
            f"a backlash of {backlash_mm:g} mm is more than the centres can give",
            "a twentieth of the module is usual",
        )
    return tight + sign * far


def _lengths(pinion: Gear, wheel: Gear, centres_mm: float, angle: float) -> tuple[float, float]:
    """Approach (pinion drives) and recess along the line of contact; mm."""
    scale = centres_mm / reference(pinion, wheel)
    sine = math.sin(angle)
    first = _reach(pinion) - pinion.pitch_mm * scale / 2 * sine
    last = _reach(wheel) - wheel.pitch_mm * scale / 2 * sine
    return (-last if wheel.is_internal else last), first


def _reach(gear: Gear) -> float:
    return math.sqrt(max(0.0, gear.tip_mm**2 - gear.base_mm**2)) / 2


def _clearance(pinion: Gear, wheel: Gear, centres_mm: float) -> float:
    if wheel.is_internal:
        return min(
            (wheel.root_mm - pinion.tip_mm) / 2 - centres_mm,
            (wheel.tip_mm - pinion.root_mm) / 2 - centres_mm,
        )
    return min(
        centres_mm - (pinion.tip_mm + wheel.root_mm) / 2,
        centres_mm - (wheel.tip_mm + pinion.root_mm) / 2,
    )


def _interferes(pinion: Gear, wheel: Gear, centres_mm: float, angle: float) -> bool:
    """Whether a tip reaches past the point where the line of contact leaves the base circle."""
    line = centres_mm * math.sin(angle)
    if wheel.is_internal:
        return _reach(wheel) < line - 1e-9 or _fouls(pinion, wheel, centres_mm, angle)
    return _reach(pinion) > line + 1e-9 or _reach(wheel) > line + 1e-9


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


def shifted(pinion: Gear, wheel: Gear) -> tuple[Gear, Gear]:
    """Both with their tips cut back so that the clearance stays whole at shifted centres.

    y = (a_w − a) / m, tips short by x₁ + x₂ − y. Source: ISO 21771, external pairs.
    """
    check_mates(pinion, wheel)
    if wheel.is_internal:
        raise NotDefined("tips of an internal pair are not cut back", "lessen the shift")
    moved = (tight_centres(pinion, wheel) - reference(pinion, wheel)) / pinion.module_mm
    short = max(0.0, pinion.shift + wheel.shift - moved)
    return replace(pinion, topping=short), replace(wheel, topping=short)


def overlap(gear: Gear, face_mm: float) -> float:
    """What the helix adds to the contact ratio, b sin β / (π m). Source: ISO 21771."""
    return face_mm * math.sin(math.radians(gear.helix_deg)) / (math.pi * gear.module_mm)


def _with_steps(made: Mesh) -> Mesh:
    sign = "−" if made.wheel.is_internal else "+"
    return replace(
        made,
        steps=(
            Step("pitch circles touch at", f"(d₂ {sign} d₁) / 2", mm(made.reference_mm), ISO),
            Step("centres without play", "a cos α / cos α_w", mm(made.tight_mm), ISO),
            Step("centres", "without play + play", mm(made.centres_mm), ISO),
            Step("working angle", "cos α_w = a cos α / a_w", f"{made.working_angle_deg:.3f}°", ISO),
            Step("backlash", "p_w − s₁ − s₂", mm(made.backlash_mm), ISO),
            Step("contact ratio", "path / base pitch", f"{made.contact_ratio:.3f}", SMOOTH_RULE),
        ),
    )
