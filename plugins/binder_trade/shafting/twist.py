"""Power, speed and bending to the stress and twist of a thin shaft, or to its diameter."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Final

from binder_trade.explained import (
    NotDefined,
    Step,
    amount,
    amount_or_nothing,
    mm,
    not_negative,
    positive,
    within,
)
from binder_trade.fits.printed import figures

STRENGTH: Final = "τ = 16 T d / π (d⁴ − b⁴); strength of materials"
TRESCA: Final = "greatest shear, √(M² + T²); strength of materials"
TWIST: Final = "θ = T L / G J; strength of materials"
STEEL_E: Final = 206_000.0
STEEL_G: Final = 80_000.0
# Shear that a plain shaft of mild steel is given in a model, N/mm²; keyway or cross hole: × 0.75.
ALLOWED_MPA: Final = 40.0
ALLOWED_SOURCE: Final = "common practice, no source; × 0.75 at a keyway or cross hole"
WEAKENED: Final = 0.75


@dataclass(frozen=True, slots=True)
class ShaftStress:
    """Stress in N/mm²: bending, shear from the torque, and greatest shear of both."""

    bending_mpa: float
    shear_mpa: float
    greatest_shear_mpa: float
    steps: tuple[Step, ...]


@dataclass(frozen=True, slots=True)
class Twisted:
    """How far a shaft winds up: degrees over its length, and a metre."""

    degrees: float
    degrees_per_metre: float
    steps: tuple[Step, ...]


def torque_nmm(power_w: float, rpm: float) -> float:
    """Torque in N mm of a power in W at a speed in r/min."""
    return amount(power_w, "the power in W") / (amount(rpm, "the speed in r/min") * _RAD) * 1000


def power_w(torque: float, rpm: float) -> float:
    """Power in W of a torque in N mm at a speed in r/min."""
    return amount_or_nothing(torque, "the torque in N mm") * amount(rpm, "the speed") * _RAD / 1000


def shaft_stress(
    torque: float, diameter_mm: float, moment_nmm: float = 0.0, bore_mm: float = 0.0
) -> ShaftStress:
    """Stress of a round shaft from torque and bending moment in N mm; N/mm².

    An order of magnitude: no notch, no shock. Raises NotDefined. Source: `STRENGTH`, `TRESCA`.
    """
    turn = amount_or_nothing(torque, "the torque in N mm")
    bend = amount_or_nothing(moment_nmm, "the bending moment in N mm")
    modulus = _polar(diameter_mm, bore_mm) / (diameter_mm / 2)
    shear, bending = turn / modulus, 2 * bend / modulus
    greatest = math.hypot(turn, bend) / modulus
    steps = (
        Step("shear from the torque", "16 T / π d³", figures(shear, "N/mm²"), STRENGTH),
        Step("bending", "32 M / π d³", figures(bending, "N/mm²"), STRENGTH),
        Step("greatest shear", "16 √(M² + T²) / π d³", figures(greatest, "N/mm²"), TRESCA),
    )
    return ShaftStress(bending, shear, greatest, steps)


def least_diameter(
    torque: float,
    moment_nmm: float = 0.0,
    allowed_mpa: float = ALLOWED_MPA,
    *,
    weakened: bool = False,
) -> tuple[float, Step]:
    """The least solid diameter in mm for torque and bending in N mm and an allowed shear.

    `weakened` stands for a keyway or a cross hole. Source: `TRESCA`, `ALLOWED_SOURCE`.
    """
    both = math.hypot(
        amount_or_nothing(torque, "the torque in N mm"), amount_or_nothing(moment_nmm, "the moment")
    )
    if both == 0:
        raise NotDefined("a shaft without a load", "give its torque or its bending moment")
    allowed = amount(allowed_mpa, "the shear allowed") * (WEAKENED if weakened else 1.0)
    size = (16 * both / (math.pi * allowed)) ** (1 / 3)
    return size, Step("least diameter", f"∛(16 √(M² + T²) / π {allowed:g})", mm(size), TRESCA)


def twist(
    torque: float, lengths: tuple[tuple[float, float], ...], shear_modulus_mpa: float = STEEL_G
) -> Twisted:
    """How far a shaft winds up; `lengths` are (length, diameter) in mm of its pieces in a row.

    Raises NotDefined. Source: `TWIST`.
    """
    turn = amount_or_nothing(torque, "the torque in N mm")
    stiff = amount(shear_modulus_mpa, "the shear modulus")
    total = sum(positive(length, "a length") for length, _ in lengths)
    if not lengths:
        raise NotDefined("a shaft without a length", "give its pieces")
    angle = sum(turn * length / (stiff * _polar(size, 0.0)) for length, size in lengths)
    degrees = math.degrees(angle)
    step = Step("winds up by", "Σ T L / G J", f"{degrees:.3f}°", TWIST)
    return Twisted(degrees, degrees / total * 1000, (step,))


def belt_load(tight_n: float, slack_n: float, wrap_rad: float) -> float:
    """The load in N that both strands of a belt bring on the shaft, by the angle between them."""
    one, two = amount(tight_n, "the tight strand"), amount_or_nothing(slack_n, "the slack strand")
    return math.sqrt(
        max(0.0, one**2 + two**2 - 2 * one * two * math.cos(within(wrap_rad, 0, 7, "the wrap")))
    )


_RAD: Final = math.pi / 30


def _polar(diameter_mm: float, bore_mm: float) -> float:
    size, bore = positive(diameter_mm, "the shaft's diameter"), not_negative(bore_mm, "the bore")
    if bore >= size:
        raise NotDefined("the bore is as large as the shaft", "give a smaller bore")
    return math.pi / 32 * (size**4 - bore**4)
