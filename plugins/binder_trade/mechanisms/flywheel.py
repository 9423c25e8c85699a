"""A wheel to its inertia, energy and rim stress; a torque diagram to the wheel that it wants."""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from itertools import pairwise
from typing import Any, Final

from binder.api import load_data
from binder_trade.explained import (
    NotDefined,
    Step,
    amount,
    amount_or_nothing,
    not_negative,
    positive,
    within,
)
from binder_trade.fits.printed import figures

INERTIA: Final = "ring m (R² + r²)/2, rod m l²/12 + m a²"
FLUCTUATION: Final = "ΔE = I ω² Cs; Khurmi, Theory of Machines"
HOOP: Final = "hoop stress = density × speed², thin ring"
_MM: Final = 1e-9


@dataclass(frozen=True, slots=True)
class Wheel:
    """A wheel's mass in kg and inertia in kg mm²."""

    mass_kg: float
    inertia_kgmm2: float
    steps: tuple[Step, ...]

    def energy_nmm(self, rpm: float) -> float:
        """The energy in it at a speed in r/min; N mm."""
        return self.inertia_kgmm2 / 1000 * _omega(rpm) ** 2 / 2


@dataclass(frozen=True, slots=True)
class Fluctuation:
    """A torque diagram over one cycle: mean torque, energy given and taken; N mm.

    `wheel_kgmm2` is the inertia that keeps the speed within the coefficient asked for.
    """

    mean_nmm: float
    energy_nmm: float
    wheel_kgmm2: float
    steps: tuple[Step, ...]


@dataclass(frozen=True, slots=True)
class Rim:
    """A rim's speed in m/s, its hoop stress in N/mm², and the part of the usual limit it uses."""

    speed_ms: float
    hoop_mpa: float
    limit_ms: float
    use: float
    most_rpm: float
    steps: tuple[Step, ...]


def spoked_wheel(
    outside_mm: float,
    rim_inside_mm: float,
    rim_width_mm: float,
    hub: tuple[float, float, float],
    spokes: tuple[int, float],
    density_kg_m3: float,
) -> Wheel:
    """A rim, a hub (outside, bore, width in mm) and spokes (number, area in mm²); kg, kg mm².

    Raises NotDefined where the hub is wider than the rim's inside. Source: `INERTIA`.
    """
    dense = amount(density_kg_m3, "the density") * _MM
    outside, inside = (
        positive(outside_mm, "the outside"),
        positive(rim_inside_mm, "the rim's inside"),
    )
    hub_outside, bore, hub_width = hub
    not_negative(bore, "the bore of the hub")
    if not bore < hub_outside < inside < outside:
        raise NotDefined("the wheel's diameters do not lie in one another", "put them in order")
    ring = _ring(outside, inside, positive(rim_width_mm, "the rim's width"), dense)
    boss = _ring(hub_outside, bore, positive(hub_width, "the hub's width"), dense)
    number, area = spokes
    long, middle = (inside - hub_outside) / 2, (inside + hub_outside) / 4
    arms = within(number, 0, 60, "the number of spokes") * dense * not_negative(area, "area") * long
    spread = arms * (long**2 / 12 + middle**2)
    return _wheel({"rim": ring, "hub": boss, "spokes": (arms, spread)})


def disc_wheel(
    outside_mm: float, width_mm: float, density_kg_m3: float, bore_mm: float = 0.0
) -> Wheel:
    """A solid disc; kg, kg mm². Source: `INERTIA`."""
    outside = positive(outside_mm, "the outside")
    bore = not_negative(bore_mm, "the bore")
    if bore >= outside:
        raise NotDefined("the bore is as large as the disc", "give a smaller bore")
    dense = amount(density_kg_m3, "the density") * _MM
    mass, inertia = _ring(outside, bore, positive(width_mm, "the width"), dense)
    return _wheel({"disc": (mass, inertia)})


def governor_inertia(balls: int, mass_kg: float, radius_mm: float) -> float:
    """The inertia of governor balls in kg mm², as points; all that a governor is here."""
    count = within(balls, 1, 12, "the number of balls")
    return count * amount(mass_kg, "a ball's mass in kg") * positive(radius_mm, "radius") ** 2


def reflected(inertia_kgmm2: float, ratio: float) -> float:
    """Inertia felt at a shaft, of a wheel that turns `ratio` times as fast; kg mm²."""
    return amount_or_nothing(inertia_kgmm2, "the inertia") * ratio**2


def fluctuation(
    diagram: Sequence[tuple[float, float]], rpm: float, coefficient: float
) -> Fluctuation:
    """What a torque diagram asks of a flywheel; points (angle in rad, torque in N mm).

    The points are joined by straight lines; first and last are the ends of one cycle. Speed
    is the mean, the coefficient (most − least) / mean. Source: `FLUCTUATION`.
    """
    if not all(abs(each) < 1e12 for point in diagram for each in point):
        raise NotDefined("the torque diagram has a place without a number", "give it again")
    if len(diagram) < 2 or any(b[0] < a[0] for a, b in pairwise(diagram)):
        raise NotDefined("the torque diagram goes back on itself", "give its angles in order")
    turn = diagram[-1][0] - diagram[0][0]
    share = within(coefficient, 1e-5, 1, "the coefficient of speed")
    if turn <= 0:
        raise NotDefined("the torque diagram has no length", "give its whole cycle")
    mean = sum((b[0] - a[0]) * (a[1] + b[1]) / 2 for a, b in pairwise(diagram)) / turn
    levels = _levels(diagram, mean)
    energy = max(levels) - min(levels)
    inertia = energy / (share * _omega(rpm) ** 2) * 1000
    steps = (
        Step("mean torque", "area / cycle", figures(mean, "N mm"), FLUCTUATION),
        Step(
            "energy given and taken", "highest − lowest sum", figures(energy, "N mm"), FLUCTUATION
        ),
        Step("inertia wanted", "ΔE / (Cs ω²)", figures(inertia, "kg mm²"), FLUCTUATION),
    )
    return Fluctuation(mean, energy, inertia, steps)


def coefficient_of(energy_nmm: float, inertia_kgmm2: float, rpm: float) -> float:
    """The coefficient of speed, (most − least) / mean, of a wheel. Source: `FLUCTUATION`."""
    inertia = amount(inertia_kgmm2, "the inertia")
    return amount_or_nothing(energy_nmm, "the energy") * 1000 / (inertia * _omega(rpm) ** 2)


def run_up_s(inertia_kgmm2: float, torque_nmm: float, rpm: float) -> float:
    """The time in s in which a steady torque brings a wheel to speed."""
    return (
        amount(inertia_kgmm2, "the inertia")
        / 1000
        * _omega(rpm)
        / amount(torque_nmm, "the torque in N mm")
    )


def rim(outside_mm: float, rpm: float, density_kg_m3: float, made_of: str) -> Rim:
    """Rim speed and hoop stress against the customary ceiling. Source: `HOOP`; table as told."""
    table = load_data("binder_trade.mechanisms", "hoist.yaml")["rim_speeds"]
    if made_of not in table["rows"]:
        known = ", ".join(table["rows"])
        raise NotDefined(f"no rim speed kept for “{made_of[:40]}”", f"one of: {known}")
    limit = float(table["rows"][made_of])
    size = positive(outside_mm, "the outside")
    speed = _omega(rpm) * size / 2000
    stress = amount(density_kg_m3, "the density") * speed**2 * 1e-6
    most = limit * 60_000 / (math.pi * size)
    steps = (
        Step("rim speed", "π D n / 60 000", f"{speed:.2f} m/s", "geometry"),
        Step("hoop stress", "density × speed²", figures(stress, "N/mm²"), HOOP),
        Step("customary ceiling", made_of, f"{limit:g} m/s", table["source"]),
    )
    return Rim(speed, stress, limit, speed / limit, most, steps)


def rim_kinds() -> tuple[str, ...]:
    """What a rim can be made of, as the table of ceilings has it."""
    rows: dict[str, Any] = load_data("binder_trade.mechanisms", "hoist.yaml")["rim_speeds"]["rows"]
    return tuple(rows)


def _levels(diagram: Sequence[tuple[float, float]], mean: float) -> tuple[float, ...]:
    """The sum of torque over the mean at each point, and where the torque crosses the mean."""
    found = [0.0]
    for (start, one), (stop, two) in pairwise(diagram):
        above, below = one - mean, two - mean
        if above * below < 0:
            cross = above / (above - below) * (stop - start)
            found.append(found[-1] + above * cross / 2)
            found.append(found[-1] + below * (stop - start - cross) / 2)
        else:
            found.append(found[-1] + (above + below) / 2 * (stop - start))
    return tuple(found)


def _ring(outside: float, inside: float, width: float, dense: float) -> tuple[float, float]:
    mass = dense * math.pi / 4 * (outside**2 - inside**2) * width
    return mass, mass * (outside**2 + inside**2) / 8


def _wheel(parts: Mapping[str, tuple[float, float]]) -> Wheel:
    """A wheel of parts, each its mass in kg and its inertia in kg mm²."""
    mass = sum(part[0] for part in parts.values())
    inertia = sum(part[1] for part in parts.values())
    named = (
        Step(f"mass of the {name}", "volume × density", figures(part[0] * 1000, "g"), INERTIA)
        for name, part in parts.items()
    )
    whole = Step("inertia", "sum of the parts", figures(inertia, "kg mm²"), INERTIA)
    return Wheel(mass, inertia, (*named, whole))


def _omega(rpm: float) -> float:
    return amount(rpm, "the speed in r/min") * math.pi / 30
