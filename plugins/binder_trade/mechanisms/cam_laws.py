"""Rises, dwells and falls of a cam to its lift at each angle, by the laws of motion."""

from __future__ import annotations

import math
from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from types import MappingProxyType
from typing import Final, Literal

from binder_trade.explained import NotDefined, Step, mm, within

Law = Literal["uniform", "parabolic", "harmonic", "cycloidal", "3-4-5"]
LAWS: Final = "textbook laws of cam motion, normalised to one lift over one angle"
Motion = tuple[float, float, float]


@dataclass(frozen=True, slots=True)
class Segment:
    """A part of a cam's turn: its angle in degrees, and the change of lift in mm (0: dwell)."""

    angle_deg: float
    change_mm: float = 0.0
    law: Law = "harmonic"


@dataclass(frozen=True, slots=True)
class CamMotion:
    """A cam's motion through one turn; mm and rad.

    `most_speed` is in mm a radian, `most_acceleration` in mm a radian² (infinite where the
    law jumps): times ω and ω² they are mm/s and mm/s².
    """

    segments: tuple[Segment, ...]
    lift_mm: float
    most_speed: float
    most_acceleration: float
    steps: tuple[Step, ...]

    def at(self, angle_rad: float) -> Motion:
        """Lift, speed and acceleration at an angle of the cam: mm, mm/rad, mm/rad²."""
        rest = math.degrees(angle_rad) % 360
        height = 0.0
        for each in self.segments:
            if rest <= each.angle_deg:
                lift, speed, push = _in(each, rest)
                return height + lift, speed, push
            rest -= each.angle_deg
            height += each.change_mm
        return height, 0.0, 0.0


def cam_motion(segments: Sequence[Segment]) -> CamMotion:
    """A cam that comes back to where it began in one turn. Raises NotDefined. Source: `LAWS`."""
    parts = tuple(segments)
    turn = sum(within(each.angle_deg, 0.01, 360, "an angle of the cam", "°") for each in parts)
    if not math.isclose(turn, 360, abs_tol=1e-6):
        raise NotDefined(f"the cam's angles make {turn:g}°, not one turn", "let them make 360°")
    if not math.isclose(sum(each.change_mm for each in parts), 0, abs_tol=1e-9):
        raise NotDefined("the cam does not come back to where it began", "let falls undo rises")
    for each in parts:
        within(each.change_mm, -1e4, 1e4, "a rise or fall of the cam in mm")
    heights = [0.0]
    for each in parts:
        heights.append(heights[-1] + each.change_mm)
    if min(heights) < -1e-9:
        raise NotDefined("the cam falls below where it began", "begin at the lowest place")
    speed = max((_peak(each)[0] for each in parts), default=0.0)
    push = max((_peak(each)[1] for each in parts), default=0.0)
    steps = (
        Step("lift", "highest − lowest", mm(max(heights)), LAWS),
        Step("most speed", "C v × lift / angle", f"{speed:.3f} mm/rad", LAWS),
        Step("most acceleration", "C a × lift / angle²", f"{push:.3f} mm/rad²", LAWS),
    )
    return CamMotion(parts, max(heights), speed, push, steps)


def law_at(law: Law, part: float) -> Motion:
    """Lift, first and second derivative at a part of one of the angle, for a lift of one."""
    return _LAWS[law](within(part, 0, 1, "the part of the angle"))


def peaks(law: Law) -> tuple[float, float]:
    """The greatest speed and acceleration for a lift of one over an angle of one."""
    return _PEAKS[law]


def _in(segment: Segment, degrees: float) -> Motion:
    if segment.change_mm == 0:
        return 0.0, 0.0, 0.0
    angle = math.radians(segment.angle_deg)
    lift, speed, push = _LAWS[segment.law](min(1.0, degrees / segment.angle_deg))
    high = segment.change_mm
    return high * lift, high / angle * speed, high / angle**2 * push


def _peak(segment: Segment) -> tuple[float, float]:
    if segment.change_mm == 0:
        return 0.0, 0.0
    angle, high = math.radians(segment.angle_deg), abs(segment.change_mm)
    speed, push = _PEAKS[segment.law]
    return high / angle * speed, high / angle**2 * push


def _parabolic(u: float) -> Motion:
    if u < 0.5:
        return 2 * u * u, 4 * u, 4.0
    return 1 - 2 * (1 - u) ** 2, 4 * (1 - u), -4.0


def _harmonic(u: float) -> Motion:
    sine, cosine = math.sin(math.pi * u), math.cos(math.pi * u)
    return (1 - cosine) / 2, math.pi / 2 * sine, math.pi**2 / 2 * cosine


def _cycloidal(u: float) -> Motion:
    turn = 2 * math.pi
    sine, cosine = math.sin(turn * u), math.cos(turn * u)
    return u - sine / turn, 1 - cosine, turn * sine


def _polynomial(u: float) -> Motion:
    return (
        u**3 * (10 - 15 * u + 6 * u * u),
        30 * u * u * (1 - u) ** 2,
        60 * u * (1 - u) * (1 - 2 * u),
    )


_LAWS: Final[Mapping[Law, Callable[[float], Motion]]] = MappingProxyType(
    {
        "uniform": lambda u: (u, 1.0, 0.0),
        "parabolic": _parabolic,
        "harmonic": _harmonic,
        "cycloidal": _cycloidal,
        "3-4-5": _polynomial,
    }
)
_PEAKS: Final[Mapping[Law, tuple[float, float]]] = MappingProxyType(
    {
        "uniform": (1.0, math.inf),
        "parabolic": (2.0, 4.0),
        "harmonic": (math.pi / 2, math.pi**2 / 2),
        "cycloidal": (2.0, 2 * math.pi),
        "3-4-5": (15 / 8, 10 / math.sqrt(3)),
    }
)
