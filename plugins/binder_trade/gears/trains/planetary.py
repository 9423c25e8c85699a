"""Planetary trains by Willis: speeds with a member held, torques, and whether it goes together."""

from __future__ import annotations

import math
from dataclasses import dataclass
from fractions import Fraction
from typing import Final, Literal

from binder_trade.explained import NotDefined, Step, within

Member = Literal["sun", "ring", "arm"]
MEMBERS: Final[tuple[Member, ...]] = ("sun", "ring", "arm")
WILLIS: Final = "Willis: (n_last − n_arm) / (n_first − n_arm) = basic ratio"
ASSEMBLY: Final = "equally spaced planets go in when (z_s + z_r) / planets is whole"


@dataclass(frozen=True, slots=True)
class Planetary:
    """A sun, a ring and planets between; `ratio` is turns of the driver for one of the driven.

    It is under nothing where the driven turns the other way. `torques` are those on sun, ring
    and arm for one on the driver, without losses; that of the held member is what holds it.
    `gap_mm` lies between the tips of neighbouring planets, for the module given.
    """

    sun: int
    planet: int
    ring: int
    planets: int
    held: Member
    driver: Member
    driven: Member
    ratio: Fraction
    planet_turns: Fraction
    torques: tuple[Fraction, Fraction, Fraction]
    goes_together: bool
    gap_mm: float
    steps: tuple[Step, ...]


def last_speed(basic: Fraction, first: float, arm: float) -> float:
    """The last wheel's speed from the first wheel's and the arm's, in their unit. Source: Willis.

    `basic` is the last wheel's turns for one of the first while the arm stands, with its sign.
    """
    return arm + float(basic) * (first - arm)


def first_speed(basic: Fraction, last: float, arm: float) -> float:
    """The first wheel's speed from the last wheel's and the arm's. Source: Willis."""
    return arm + (last - arm) / float(basic)


def arm_speed(basic: Fraction, first: float, last: float) -> float:
    """The arm's speed from those of both wheels. Raises NotDefined at a basic ratio of 1."""
    if basic == 1:
        raise NotDefined("at a basic ratio of 1 the arm is free", "change a wheel")
    return (last - float(basic) * first) / (1 - float(basic))


def basic_ratio(*pairs: tuple[int, int, bool]) -> Fraction:
    """The product of driver / driven with the arm held; True where a pair reverses (external)."""
    value = Fraction(1)
    for driver, driven, reverses in pairs:
        for teeth in (driver, driven):
            within(teeth, 1, 2000, "a number of teeth")
        value *= Fraction(-driver if reverses else driver, driven)
    return value


def planetary(
    sun: int,
    ring: int,
    held: Member,
    driver: Member,
    *,
    planets: int = 3,
    module_mm: float = 1.0,
) -> Planetary:
    """A simple planetary train with a member held and a member driven by hand or motor; mm.

    Raises NotDefined where the planets have no whole teeth. Source: Willis, basic ratio −z_s / z_r.
    """
    planet = _planet(sun, ring)
    within(planets, 1, 24, "a number of planets")
    if held == driver:
        raise NotDefined(f"the {held} cannot be held and drive", "hold another member")
    driven = next(each for each in MEMBERS if each not in {held, driver})
    speeds = _speeds(Fraction(-sun, ring), held, driver)
    ratio = speeds[driver] / speeds[driven]
    turns = speeds["arm"] + Fraction(-sun, planet) * (speeds["sun"] - speeds["arm"])
    gap = _gap(sun, planet, planets, module_mm)
    whole = (sun + ring) % planets == 0
    return Planetary(
        sun,
        planet,
        ring,
        planets,
        held,
        driver,
        driven,
        ratio,
        turns,
        _torques(sun, ring, driver),
        whole and gap > 0,
        gap,
        (
            Step("planet", "(z_r − z_s) / 2", f"{planet} teeth", "the planet fills the gap"),
            Step("ratio", f"driver's turns, {held} held", f"{ratio}".replace("-", "−"), WILLIS),
            Step("fits", "(z_s + z_r) / planets", f"{Fraction(sun + ring, planets)}", ASSEMBLY),
            Step("between planets", "2 a sin (180° / n) − d_a", f"{gap:.3f} mm", "geometry"),
        ),
    )


def _planet(sun: int, ring: int) -> int:
    for teeth, what in ((sun, "teeth of the sun"), (ring, "teeth of the ring")):
        within(teeth, 4, 2000, f"a number of {what}")
    if ring - sun < 8 or (ring - sun) % 2:
        raise NotDefined(
            f"a sun of {sun} and a ring of {ring} leave no whole planet between",
            "make their difference even, and 8 or more",
        )
    return (ring - sun) // 2


def _speeds(basic: Fraction, held: Member, driver: Member) -> dict[Member, Fraction]:
    """Speeds with the driver at one: z_s n_s + z_r n_r = (z_s + z_r) n_arm."""
    weights: dict[Member, Fraction] = {"sun": -basic, "ring": Fraction(1), "arm": basic - 1}
    other = next(each for each in MEMBERS if each not in {held, driver})
    return {
        held: Fraction(0),
        driver: Fraction(1),
        other: -weights[driver] / weights[other],
    }


def _torques(sun: int, ring: int, driver: Member) -> tuple[Fraction, Fraction, Fraction]:
    """They stand as z_s : z_r : −(z_s + z_r), whichever is held; the driver's made one."""
    parts = {"sun": sun, "ring": ring, "arm": -(sun + ring)}
    one = parts[driver]
    return Fraction(sun, one), Fraction(ring, one), Fraction(-(sun + ring), one)


def _gap(sun: int, planet: int, planets: int, module: float) -> float:
    within(module, 0.02, 100, "a module")
    if planets == 1:
        return math.inf
    apart = (sun + planet) * module * math.sin(math.pi / planets)
    return apart - (planet + 2) * module
