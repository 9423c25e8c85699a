"""A shaft and the masses on it to the speeds at which it whirls."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from typing import Final, Literal

from binder_trade.explained import NotDefined, Step, amount, positive, within
from binder_trade.shafting.beam import Load, bend_overhung, held_line
from binder_trade.shafting.eigen import eigenvalues
from binder_trade.shafting.line import Piece
from binder_trade.shafting.twist import STEEL_E

INFLUENCE: Final = (
    "influence coefficients, ω² = 1 / eigenvalue of a m; Groover, Mechanical Vibrations"
)
DUNKERLEY: Final = "Dunkerley: 1/ω² = Σ a m (never above the true speed)"
RAYLEIGH: Final = "Rayleigh: ω² = g Σ m y / Σ m y² (never below the true speed)"
STIFFNESS: Final = "strength of materials: deflection under a single load"
# A shaft is run well away from its whirling speed.
KEEP_AWAY: Final = (0.7, 1.4)
KEEP_AWAY_SOURCE: Final = "common practice, no source"
_G: Final = 9.80665
Ends = Literal["free", "held", "overhung"]


@dataclass(frozen=True, slots=True)
class Mass:
    """A mass in kg at a place in mm from the shaft's left end."""

    at_mm: float
    mass_kg: float


@dataclass(frozen=True, slots=True)
class Critical:
    """Whirling speeds in r/min, lowest first, with two approximations to the lowest."""

    speeds_rpm: tuple[float, ...]
    dunkerley_rpm: float
    rayleigh_rpm: float
    steps: tuple[Step, ...]

    @property
    def first_rpm(self) -> float:
        """The lowest whirling speed; r/min."""
        return self.speeds_rpm[0]


def critical_speeds(
    pieces: Sequence[Piece],
    bearings_mm: tuple[float, float] | None,
    masses: Sequence[Mass],
    modulus_mpa: float = STEEL_E,
) -> Critical:
    """The whirling speeds of masses on a shaft without mass in two short bearings; r/min.

    Without bearings the left end is held in one long bearing, and all overhangs. Give the
    shaft's own mass as masses (`shaft_masses`). Gyroscopic effect is left out. Raises
    NotDefined. Source: `INFLUENCE`.
    """
    if not masses:
        raise NotDefined("a shaft without a mass does not whirl", "give what sits on it")
    kilos = [amount(each.mass_kg, "a mass in kg") for each in masses]
    unit = [_unit(pieces, bearings_mm, masses, j, modulus_mpa) for j in range(len(masses))]
    # mm/N × kg is a thousandth of s².
    matrix = [
        [unit[j][i] * math.sqrt(kilos[i] * kilos[j]) / 1000 for j in range(len(masses))]
        for i in range(len(masses))
    ]
    found = sorted((each for each in eigenvalues(matrix) if each > 1e-18), reverse=True)
    if not found:
        raise NotDefined("all masses sit in the bearings", "give those between them")
    speeds = tuple(_rpm(1 / math.sqrt(each)) for each in found)
    low = _rpm(1 / math.sqrt(sum(matrix[i][i] for i in range(len(masses)))))
    high = _rayleigh(unit, kilos)
    steps = (
        Step("lowest whirling speed", "eigenvalue", f"{speeds[0]:.0f} r/min", INFLUENCE),
        Step("from below", "1/ω² = Σ a m", f"{low:.0f} r/min", DUNKERLEY),
        Step("from above", "ω² = g Σ m y / Σ m y²", f"{high:.0f} r/min", RAYLEIGH),
    )
    return Critical(speeds, low, high, steps)


def shaft_masses(
    lengths: Sequence[tuple[float, float]], density_kg_m3: float = 7850.0, parts: int = 6
) -> tuple[Mass, ...]:
    """The shaft's own mass, each (length, diameter) in mm cut into parts."""
    found: list[Mass] = []
    start = 0.0
    for length, size in lengths:
        whole = density_kg_m3 * 1e-9 * math.pi / 4 * positive(size, "the diameter") ** 2
        each = positive(length, "a length") / parts
        found += [Mass(start + each * (n + 0.5), whole * each) for n in range(parts)]
        start += length
    return tuple(found)


def single_disc(
    mass_kg: float,
    inertia_mm4: float,
    span_mm: float,
    at_mm: float,
    ends: Ends = "free",
    modulus_mpa: float = STEEL_E,
) -> tuple[float, tuple[Step, ...]]:
    """The whirling speed in r/min of one disc, `at_mm` from one bearing (overhung: the arm).

    `free` are short bearings that let the shaft tilt, `held` long ones that do not. Source:
    `STIFFNESS`.
    """
    span = positive(span_mm, "the span")
    at = within(at_mm, 1e-6, span, "the place of the disc in mm")
    stiff = amount(modulus_mpa, "the modulus") * amount(inertia_mm4, "the second moment")
    rest = span - at
    if ends != "overhung" and rest <= 0:
        raise NotDefined("the disc sits in the bearing", "set it between the bearings")
    rate = {
        "free": lambda: 3 * stiff * span / (at * rest) ** 2,
        "held": lambda: 3 * stiff * span**3 / (at * rest) ** 3,
        "overhung": lambda: 3 * stiff / at**3,
    }[ends]()
    speed = _rpm(math.sqrt(rate * 1000 / amount(mass_kg, "the mass in kg")))
    steps = (
        Step("stiffness at the disc", f"shaft, {ends}", f"{rate:.3g} N/mm", STIFFNESS),
        Step("whirling speed", "√(k / m)", f"{speed:.0f} r/min", STIFFNESS),
    )
    return speed, steps


def _unit(
    pieces: Sequence[Piece],
    bearings: tuple[float, float] | None,
    masses: Sequence[Mass],
    pulled: int,
    modulus: float,
) -> tuple[float, ...]:
    """Deflections at all masses, mm, under one newton at one of them."""
    loads = [Load(each.at_mm, float(i == pulled)) for i, each in enumerate(masses)]
    if bearings is None:
        return bend_overhung(pieces, loads, modulus).at_loads_mm
    line, _, _ = held_line(pieces, bearings, loads, modulus)
    return tuple(line.deflection(each.at_mm) for each in masses)


def _rayleigh(unit: Sequence[Sequence[float]], kilos: Sequence[float]) -> float:
    sag = [
        sum(unit[j][i] * _G * kilo for j, kilo in enumerate(kilos)) / 1000
        for i in range(len(kilos))
    ]
    above = sum(kilo * y for kilo, y in zip(kilos, sag, strict=True))
    below = sum(kilo * y**2 for kilo, y in zip(kilos, sag, strict=True))
    return _rpm(math.sqrt(_G * abs(above) / below))


def _rpm(omega: float) -> float:
    return omega * 30 / math.pi
