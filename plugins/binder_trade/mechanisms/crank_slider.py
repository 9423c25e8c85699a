"""Crank, connecting rod and slide to positions, speeds and dead points through one turn."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Final

from binder_trade.explained import NotDefined, Step, mm, positive

GEOMETRY: Final = "geometry of crank and rod, exact"


@dataclass(frozen=True, slots=True)
class SliderState:
    """The slide at one angle of the crank.

    `x_mm` is along the slide from the square to the crank's centre; speed in mm for a radian,
    acceleration in mm for a radian²: times ω and ω² they are mm/s and mm/s². `rod_rad` is the
    slope of the rod to the slide.
    """

    angle_rad: float
    x_mm: float
    speed_mm: float
    acceleration_mm: float
    rod_rad: float
    pin_mm: tuple[float, float]


@dataclass(frozen=True, slots=True)
class CrankSlider:
    """A crank that goes right round; mm. Angles in rad from the slide's outward direction.

    `time_ratio` is the time of the outward over the inward stroke at even turning.
    """

    crank_mm: float
    rod_mm: float
    offset_mm: float
    stroke_mm: float
    outer_mm: float
    inner_mm: float
    outer_dead_rad: float
    inner_dead_rad: float
    most_rod_rad: float
    time_ratio: float
    steps: tuple[Step, ...]

    def at(self, angle_rad: float) -> SliderState:
        """The slide at an angle of the crank in rad."""
        radius, rod = self.crank_mm, self.rod_mm
        sine, cosine = math.sin(angle_rad), math.cos(angle_rad)
        off = radius * sine - self.offset_mm
        reach = math.sqrt(rod**2 - off**2)
        swing = radius * cosine
        return SliderState(
            angle_rad,
            swing + reach,
            -radius * sine - off * swing / reach,
            -swing - (swing**2 - off * radius * sine) / reach - (off * swing) ** 2 / reach**3,
            math.asin(off / rod),
            (swing, radius * sine),
        )

    def torque_nmm(self, angle_rad: float, force_n: float) -> float:
        """Torque in N mm at the crank that holds a force in N on the slide, friction left out."""
        return force_n * abs(self.at(angle_rad).speed_mm)


def crank_slider(crank_mm: float, rod_mm: float, offset_mm: float = 0.0) -> CrankSlider:
    """A crank and rod whose slide passes its centre at an offset; mm.

    Raises NotDefined where the crank cannot go right round. Source: `GEOMETRY`.
    """
    radius, rod = positive(crank_mm, "the throw of the crank"), positive(rod_mm, "the rod")
    offset = offset_mm if math.isfinite(offset_mm) else rod
    if rod - radius <= abs(offset):
        raise NotDefined(
            f"a rod of {rod:g} mm does not let a throw of {radius:g} mm pass its dead points",
            f"make the rod longer than {radius + abs(offset):g} mm, or the throw shorter",
        )
    outer, inner = (math.sqrt((rod + s * radius) ** 2 - offset**2) for s in (1, -1))
    ahead, behind = math.asin(offset / (rod + radius)), math.asin(offset / (rod - radius))
    inward = math.pi + behind - ahead
    most = max(abs(radius - offset), abs(radius + offset)) / rod
    steps = (
        Step("outer end", "√((l + r)² − e²)", mm(outer), GEOMETRY),
        Step("inner end", "√((l − r)² − e²)", mm(inner), GEOMETRY),
        Step("stroke", "outer − inner", mm(outer - inner), GEOMETRY),
        Step(
            "steepest rod", "asin((r + e) / l)", f"{math.degrees(math.asin(most)):.1f}°", GEOMETRY
        ),
    )
    return CrankSlider(
        radius,
        rod,
        offset,
        outer - inner,
        outer,
        inner,
        ahead,
        math.pi + behind,
        math.asin(most),
        (2 * math.pi - inward) / inward,
        steps,
    )
