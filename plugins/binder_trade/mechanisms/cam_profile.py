"""A cam's motion and its follower to the outline of the cam, pressure angle and undercut."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Final, Literal

from binder_trade.explained import NotDefined, Step, mm, not_negative, positive, within
from binder_trade.mechanisms.cam_laws import CamMotion
from binder_trade.roots import root_between

ENVELOPE: Final = "envelope of the follower round the cam, exact"
PRESSURE: Final = "tan φ = (ds/dθ − e) / (√(R² − e²) + s)"
CURVATURE: Final = "curvature of the path of the follower's middle"
# A follower that slides in a guide jams above this.
MOST_PRESSURE_DEG: Final = 30.0
PRESSURE_SOURCE: Final = "common practice, no source"
Follower = Literal["roller", "knife", "flat"]
_POINTS: Final = 720


@dataclass(frozen=True, slots=True)
class CamPoint:
    """One point of the outline: cam angle in rad, mm from the cam's centre, pressure angle in rad.

    `curvature_mm` is the outline's radius there: below nothing is hollow, and infinite flat.
    """

    angle_rad: float
    x_mm: float
    y_mm: float
    pressure_rad: float
    curvature_mm: float


@dataclass(frozen=True, slots=True)
class CamProfile:
    """A cam's outline; mm, rad. `is_undercut` says that the follower cannot follow its law.

    `face_mm` is the least width of a flat follower's face (nothing for others).
    """

    follower: Follower
    base_mm: float
    points: tuple[CamPoint, ...]
    most_pressure_rad: float
    least_radius_mm: float
    is_undercut: bool
    face_mm: float
    steps: tuple[Step, ...]


def cam_profile(
    motion: CamMotion,
    base_mm: float,
    follower: Follower = "roller",
    roller_mm: float = 0.0,
    offset_mm: float = 0.0,
    points: int = _POINTS,
) -> CamProfile:
    """The outline for a follower that slides in a guide; base circle and roller are radii, mm.

    The cam turns anticlockwise; the guide passes its centre at the offset. A flat follower
    lies square to its guide. A uniform law has corners, which no curvature tells. Raises
    NotDefined. Source: `ENVELOPE`.
    """
    base = positive(base_mm, "the base circle")
    roller = not_negative(roller_mm, "the radius of the roller") if follower == "roller" else 0.0
    offset_mm = within(offset_mm, -1e6, 1e6, "the offset of the guide in mm")
    count = int(within(points, 12, 20_000, "the number of points"))
    if follower != "flat" and abs(offset_mm) >= base + roller:
        raise NotDefined("the guide passes the base circle by", "take a smaller offset")
    turns = [2 * math.pi * each / count for each in range(count)]
    if follower == "flat":
        outline = tuple(_flat(motion, base, turn) for turn in turns)
    else:
        outline = tuple(_rolled(motion, base + roller, roller, offset_mm, t) for t in turns)
    pressure = max(abs(each.pressure_rad) for each in outline)
    least = min((p.curvature_mm for p in outline if p.curvature_mm > 0), default=0.0)
    undercut = _is_undercut(follower, roller, outline)
    face = 2 * motion.most_speed if follower == "flat" else 0.0
    steps = (
        Step("most pressure angle", PRESSURE, f"{math.degrees(pressure):.1f}°", ENVELOPE),
        Step("least radius of the outline", "by the curvature", mm(least), CURVATURE),
    )
    return CamProfile(follower, base, outline, pressure, least, undercut, face, steps)


def least_base(
    motion: CamMotion,
    follower: Follower = "roller",
    roller_mm: float = 0.0,
    offset_mm: float = 0.0,
    most_pressure_deg: float = MOST_PRESSURE_DEG,
) -> float:
    """The least base circle's radius in mm that keeps the pressure angle and is not undercut.

    Raises NotDefined where none up to a hundred lifts serves.
    """
    limit = math.radians(within(most_pressure_deg, 1, 80, "the pressure angle", "°"))
    most = 100 * max(motion.lift_mm, roller_mm, abs(offset_mm), 1.0)

    def spare(base: float) -> float:
        made = cam_profile(motion, base, follower, roller_mm, offset_mm, 360)
        return -1.0 if made.is_undercut or made.most_pressure_rad > limit else 1.0

    low = abs(offset_mm) + 1e-3
    if spare(low) > 0:
        return low
    try:
        return math.nextafter(root_between(spare, low, most), math.inf)
    except ValueError:
        raise NotDefined(
            "no base circle serves this motion", "lengthen the angle or take a softer law"
        ) from None


def _rolled(motion: CamMotion, pitch: float, roller: float, offset: float, turn: float) -> CamPoint:
    lift, speed, push = motion.at(turn)
    high = math.sqrt(pitch**2 - offset**2) + lift
    # The path of the roller's middle in the cam's own frame, turned back by `turn`: its first
    # and second derivative are (high, speed − e) and (2 speed − e, push − high) in that frame.
    along = math.hypot(high, speed - offset)
    bend = high * (high - push) + (speed - offset) * (2 * speed - offset)
    radius = math.inf if bend == 0 else along**3 / bend
    # The outline lies one roller's radius inward along the normal.
    x = offset + roller * (speed - offset) / along
    y = high - roller * high / along
    point = _turned(x, y, turn)
    pressure = math.atan2(speed - offset, high)
    return CamPoint(turn, *point, pressure, radius - roller)


def _flat(motion: CamMotion, base: float, turn: float) -> CamPoint:
    lift, speed, push = motion.at(turn)
    point = _turned(speed, base + lift, turn)
    return CamPoint(turn, *point, 0.0, base + lift + push)


def _turned(x: float, y: float, turn: float) -> tuple[float, float]:
    cosine, sine = math.cos(turn), math.sin(turn)
    return x * cosine + y * sine, y * cosine - x * sine


def _is_undercut(follower: Follower, roller: float, outline: tuple[CamPoint, ...]) -> bool:
    if follower == "flat":
        return any(each.curvature_mm <= 0 for each in outline)
    # Hollow places (a path radius below nothing) suit any roller from outside.
    return any(-roller < each.curvature_mm <= 0 for each in outline)
