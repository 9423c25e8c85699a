"""Straight bevel gears by Tredgold: cones, blanks, back-cone teeth and the cutter for them."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Final

from binder_trade.explained import NotDefined, Step, mm, positive, within
from binder_trade.gears.racks import Rack, rack

TREDGOLD: Final = "Tredgold's back cone"
GEOMETRY: Final = "geometry of the cones"
FACE_RULE: Final = "face at most a third of the cone distance"


@dataclass(frozen=True, slots=True)
class BevelGear:
    """One of a pair; mm and degrees, at the large end where not said.

    `pitch_cone_deg` is half the cone, from the axis; `face_cone_deg` what the blank is turned
    to; `root_cone_deg` what the head is set to; `crown_mm` from apex to the tip's edge along
    the axis; `seen_teeth` those of the back cone, for which the cutter is chosen.
    """

    teeth: int
    pitch_mm: float
    outside_mm: float
    pitch_cone_deg: float
    face_cone_deg: float
    root_cone_deg: float
    crown_mm: float
    seen_teeth: float
    inner_outside_mm: float
    crown_depth_mm: float


@dataclass(frozen=True, slots=True)
class BevelPair:
    """Two bevel gears in mesh; mm. `inner_module_mm` is the module at the small end."""

    pinion: BevelGear
    wheel: BevelGear
    ratio: float
    module_mm: float
    cone_mm: float
    face_mm: float
    most_face_mm: float
    inner_module_mm: float
    addendum_mm: float
    dedendum_mm: float
    steps: tuple[Step, ...]


def bevel(
    pinion_teeth: int,
    wheel_teeth: int,
    module_mm: float,
    *,
    shafts_deg: float = 90.0,
    face_mm: float | None = None,
    basic: Rack | None = None,
) -> BevelPair:
    """A pair of straight bevel gears, module at the large end; mm, degrees.

    Raises NotDefined for a face wider than a third of the cone distance, or an internal bevel.
    Source: tan δ₁ = sin Σ / (z₂ / z₁ + cos Σ); Tredgold.
    """
    for teeth in (pinion_teeth, wheel_teeth):
        within(teeth, 6, 500, "a number of teeth of a bevel gear")
    positive(module_mm, "a module")
    angle = math.radians(within(shafts_deg, 10, 170, "the angle of the shafts", "°"))
    ratio = wheel_teeth / pinion_teeth
    first = math.atan2(math.sin(angle), ratio + math.cos(angle))
    if max(first, angle - first) > math.pi / 2 + 1e-9:
        raise NotDefined(
            "at that angle one of the gears is an internal bevel, which no cutter reaches",
            "bring the shafts nearer to a right angle",
        )
    cone = module_mm * pinion_teeth / 2 / math.sin(first)
    face = _face(face_mm, cone, module_mm)
    kept = basic or rack()
    heights = (module_mm * kept.addendum, module_mm * kept.dedendum)
    pair = [
        _gear(teeth, module_mm, part, cone, face, heights)
        for teeth, part in ((pinion_teeth, first), (wheel_teeth, angle - first))
    ]
    steps = _steps(pair[0], pair[1], cone, face)
    inner = module_mm * (cone - face) / cone
    most = min(cone / 3, 10 * module_mm)
    return BevelPair(pair[0], pair[1], ratio, module_mm, cone, face, most, inner, *heights, steps)


def _face(face_mm: float | None, cone: float, module: float) -> float:
    if face_mm is None:
        return min(cone / 3, 10 * module)
    if positive(face_mm, "a face width") > cone / 3 + 1e-9:
        raise NotDefined(
            f"a face of {face_mm:g} mm is more than a third of the cone distance {cone:.2f} mm",
            f"make it {cone / 3:.2f} mm or less; the small ends of the teeth would be too thin",
        )
    return face_mm


def _gear(
    teeth: int,
    module: float,
    half: float,
    cone: float,
    face: float,
    heights: tuple[float, float],
) -> BevelGear:
    addendum, dedendum = heights
    rise, fall = math.atan(addendum / cone), math.atan(dedendum / cone)
    outside = module * teeth + 2 * addendum * math.cos(half)
    along = face / math.cos(rise)
    return BevelGear(
        teeth,
        module * teeth,
        outside,
        math.degrees(half),
        math.degrees(half + rise),
        math.degrees(half - fall),
        cone * math.cos(half) - addendum * math.sin(half),
        teeth / math.cos(half) if half < math.pi / 2 - 1e-9 else math.inf,
        outside - 2 * along * math.sin(half + rise),
        along * math.cos(half + rise),
    )


def _steps(pinion: BevelGear, wheel: BevelGear, cone: float, face: float) -> tuple[Step, ...]:
    rows = [
        Step("cone distance", "d₁ / (2 sin δ₁)", mm(cone), GEOMETRY),
        Step("face", "a third of it, at most 10 m", mm(face), FACE_RULE),
    ]
    for name, gear in (("pinion", pinion), ("wheel", wheel)):
        angle = f"{gear.pitch_cone_deg:.3f}°"
        rows += [
            Step(f"{name}'s pitch cone", "tan δ = sin Σ / (i + cos Σ)", angle, GEOMETRY),
            Step(f"{name}'s outside", "d + 2 h_a cos δ", mm(gear.outside_mm), GEOMETRY),
            Step(f"{name}'s back-cone teeth", "z / cos δ", f"{gear.seen_teeth:.1f}", TREDGOLD),
        ]
    return tuple(rows)
