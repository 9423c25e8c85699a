"""Four links to the class of the linkage, its positions, rocker angles and dead points."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Final, Literal

from binder_trade.explained import NotDefined, Step, positive

GEOMETRY: Final = "geometry of two circles"
GRASHOF: Final = "Grashof: shortest + longest against the other two"
Kind = Literal["crank-rocker", "double-crank", "double-rocker", "change-point", "triple-rocker"]
Branch = Literal["open", "crossed"]
# A rocker is driven well while coupler and rocker stand at least so far from one line.
LEAST_TRANSMISSION_DEG: Final = 40.0
TRANSMISSION_SOURCE: Final = "common practice, no source"


@dataclass(frozen=True, slots=True)
class FourBarState:
    """One position: joints in mm from the crank's pivot, angles in rad from the ground link.

    `speed_ratio` is turns of the rocker for one of the crank, at this instant; it is infinite
    in a dead point. `transmission_rad` is the smaller angle of coupler and rocker.
    """

    crank_rad: float
    coupler_rad: float
    rocker_rad: float
    crank_pin_mm: tuple[float, float]
    rocker_pin_mm: tuple[float, float]
    transmission_rad: float
    speed_ratio: float


@dataclass(frozen=True, slots=True)
class FourBar:
    """A four-bar linkage; mm. The ground link lies along x from the crank's to the rocker's pivot.

    `crank_span_rad` holds the ends of the crank's swing where it does not go right round.
    `rocker_span_rad` holds the ends of the rocker's swing of a crank-rocker (branch `open`).
    """

    ground_mm: float
    crank_mm: float
    coupler_mm: float
    rocker_mm: float
    kind: Kind
    crank_span_rad: tuple[float, float] | None
    rocker_span_rad: tuple[float, float] | None
    least_transmission_rad: float
    steps: tuple[Step, ...]

    def at(self, crank_rad: float, branch: Branch = "open") -> FourBarState:
        """The linkage at an angle of the crank in rad; raises NotDefined where it cannot be."""
        return _state(self, crank_rad, branch)

    def dead_points_rad(self) -> tuple[float, ...]:
        """Crank angles at which crank and coupler lie in one line: the rocker turns back there."""
        far = _angle_opposite(self.rocker_mm, self.ground_mm, self.coupler_mm + self.crank_mm)
        fold = abs(self.coupler_mm - self.crank_mm)
        near = _angle_opposite(self.rocker_mm, self.ground_mm, fold)
        # Folded on itself, a crank shorter than its coupler points away from the rocker's pin.
        turned = math.pi if self.coupler_mm > self.crank_mm else 0.0
        return (
            *(() if far is None else (far,)),
            *(() if near is None else (near + turned,)),
        )


def four_bar(ground_mm: float, crank_mm: float, coupler_mm: float, rocker_mm: float) -> FourBar:
    """The linkage of four lengths in mm. Raises NotDefined where they do not close.

    Source: `GRASHOF`, `GEOMETRY`.
    """
    names = ("the ground link", "the crank", "the coupler", "the rocker")
    sides = (ground_mm, crank_mm, coupler_mm, rocker_mm)
    ground, crank, coupler, rocker = (
        positive(size, name) for size, name in zip(sides, names, strict=True)
    )
    longest = max(sides)
    if longest >= sum(sides) - longest:
        raise NotDefined(
            f"the link of {longest:g} mm is longer than the other three together", "shorten it"
        )
    kind = _kind(ground, crank, coupler, rocker)
    span = _crank_span(ground, crank, coupler, rocker)
    least = _least_transmission(ground, crank, coupler, rocker)
    swing = _rocker_span(ground, crank, coupler, rocker) if kind == "crank-rocker" else None
    short = min(sides)
    rest = sum(sides) - longest - short
    steps = (
        Step("class", f"{short:g} + {longest:g} against {rest:g}", kind, GRASHOF),
        Step(
            "least transmission angle",
            "crank and ground in line",
            f"{math.degrees(least):.1f}°",
            GEOMETRY,
        ),
    )
    return FourBar(ground, crank, coupler, rocker, kind, span, swing, least, steps)


def coupler_point(state: FourBarState, along_mm: float, aside_mm: float) -> tuple[float, float]:
    """Where a point of the coupler stands: mm along it from the crank's pin, and to its left."""
    cosine, sine = math.cos(state.coupler_rad), math.sin(state.coupler_rad)
    return (
        state.crank_pin_mm[0] + along_mm * cosine - aside_mm * sine,
        state.crank_pin_mm[1] + along_mm * sine + aside_mm * cosine,
    )


def _kind(ground: float, crank: float, coupler: float, rocker: float) -> Kind:
    sides = (ground, crank, coupler, rocker)
    short, long = min(sides), max(sides)
    gap = short + long - (sum(sides) - short - long)
    if math.isclose(gap, 0, abs_tol=1e-9 * long):
        return "change-point"
    if gap > 0:
        return "triple-rocker"
    if short == ground:
        return "double-crank"
    return "double-rocker" if short == coupler else "crank-rocker"


def _angle_opposite(side: float, one: float, two: float) -> float | None:
    """The angle of a triangle between sides `one` and `two`; None where they do not close."""
    if min(one, two) <= 0:
        return None
    cosine = (one**2 + two**2 - side**2) / (2 * one * two)
    return math.acos(cosine) if -1 <= cosine <= 1 else None


def _crank_span(
    ground: float, crank: float, coupler: float, rocker: float
) -> tuple[float, float] | None:
    """The ends of the crank's swing in the upper half; None where it goes right round."""
    far = _angle_opposite(coupler + rocker, ground, crank)
    near = _angle_opposite(abs(coupler - rocker), ground, crank)
    # Links that only just reach, as a parallelogram's, let the crank pass.
    low = 0.0 if near is None or near < 1e-6 else near
    high = math.pi if far is None or far > math.pi - 1e-6 else far
    return None if (low, high) == (0.0, math.pi) else (low, high)


def _least_transmission(ground: float, crank: float, coupler: float, rocker: float) -> float:
    """Reached where the diagonal is shortest or longest; in rad."""
    low = max(abs(ground - crank), abs(coupler - rocker))
    high = min(ground + crank, coupler + rocker)
    return min(_transmission(coupler, rocker, each) for each in (low, high))


def _transmission(coupler: float, rocker: float, diagonal: float) -> float:
    cosine = (coupler**2 + rocker**2 - diagonal**2) / (2 * coupler * rocker)
    angle = math.acos(max(-1.0, min(1.0, cosine)))
    return min(angle, math.pi - angle)


def _rocker_span(
    ground: float, crank: float, coupler: float, rocker: float
) -> tuple[float, float] | None:
    ends = [_angle_opposite(reach, ground, rocker) for reach in (coupler - crank, coupler + crank)]
    if ends[0] is None or ends[1] is None:
        return None
    # The rocker's angle is told from the ground link's direction, away from the crank.
    return math.pi - ends[1], math.pi - ends[0]


def _state(bar: FourBar, crank_rad: float, branch: Branch) -> FourBarState:
    pin = bar.crank_mm * math.cos(crank_rad), bar.crank_mm * math.sin(crank_rad)
    across, up = bar.ground_mm - pin[0], -pin[1]
    diagonal = math.hypot(across, up)
    reach_least, reach_most = abs(bar.coupler_mm - bar.rocker_mm), bar.coupler_mm + bar.rocker_mm
    slack = 1e-9 * reach_most
    if not reach_least - slack <= diagonal <= reach_most + slack or diagonal == 0:
        raise NotDefined(
            f"the links do not reach with the crank at {math.degrees(crank_rad):.1f}°",
            "keep the crank within its swing, or change a length",
        )
    along = (diagonal**2 + bar.coupler_mm**2 - bar.rocker_mm**2) / (2 * diagonal)
    height = math.sqrt(max(0.0, bar.coupler_mm**2 - along**2))
    side = height if branch == "open" else -height
    joint = (
        pin[0] + (along * across - side * up) / diagonal,
        pin[1] + (along * up + side * across) / diagonal,
    )
    coupler = math.atan2(joint[1] - pin[1], joint[0] - pin[0])
    rocker = math.atan2(joint[1], joint[0] - bar.ground_mm)
    lever = bar.rocker_mm * math.sin(rocker - coupler)
    ratio = (
        math.copysign(math.inf, lever)
        if abs(lever) < 1e-12 * bar.rocker_mm
        else bar.crank_mm * math.sin(crank_rad - coupler) / lever
    )
    transmission = _transmission(bar.coupler_mm, bar.rocker_mm, diagonal)
    return FourBarState(crank_rad, coupler, rocker, pin, joint, transmission, ratio)
