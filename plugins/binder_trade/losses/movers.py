"""A hand or a small motor to the speed and torque that it gives."""

from __future__ import annotations

import math
from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any, Final

from binder.api import load_data
from binder_trade.explained import NotDefined, Step, amount, amount_or_nothing, positive, within
from binder_trade.fits.printed import figures

LINE: Final = "straight line from no-load speed to stalling torque, as of a DC motor"
PLATE: Final = "P = T ω"
PLAN: Final = "P = p L A N, mean pressure × stroke × area × strokes a second"
HERTZ: Final = "n = 60 f / pole pairs"


@dataclass(frozen=True, slots=True)
class Hand:
    """What a hand gives on a crank: N, mm, r/min, N mm, W."""

    name: str
    force_n: float
    arm_mm: float
    rpm: tuple[float, float]
    torque_nmm: float
    power_w: float
    source: str


@dataclass(frozen=True, slots=True)
class Motor:
    """A motor whose speed falls in a straight line with its torque; r/min, N mm."""

    no_load_rpm: float
    stall_nmm: float

    def speed_at(self, torque_nmm: float) -> float:
        """Speed in r/min under a torque in N mm; nothing at stall. Source: `LINE`."""
        load = amount_or_nothing(torque_nmm, "the torque in N mm")
        return max(0.0, self.no_load_rpm * (1 - load / self.stall_nmm))

    def torque_at(self, rpm: float) -> float:
        """Torque in N mm at a speed in r/min. Source: `LINE`."""
        speed = amount_or_nothing(rpm, "the speed in r/min")
        return max(0.0, self.stall_nmm * (1 - speed / self.no_load_rpm))

    @property
    def most_power_w(self) -> float:
        """The most that it gives, at half of its no-load speed; W."""
        return self.stall_nmm / 2 * self.no_load_rpm / 2 * math.pi / 30_000


@dataclass(frozen=True, slots=True)
class Working:
    """A motor under a load that turns with it; r/min, N mm, W, and the part of stall used."""

    rpm: float
    torque_nmm: float
    power_w: float
    of_stall: float
    steps: tuple[Step, ...]


def hand(name: str) -> Hand:
    """What a hand gives, by the kind of crank. Raises NotDefined for one that is not kept."""
    rows = _data()["hand"]["rows"]
    if name not in rows:
        raise NotDefined(f"no hand crank “{name[:40]}” is kept", "one of: " + ", ".join(rows))
    row = rows[name]
    torque = float(row["force"] * row["arm"])
    low, high = row["rpm"]
    return Hand(
        name,
        row["force"],
        row["arm"],
        (low, high),
        torque,
        torque * low * math.pi / 30_000,
        row["source"],
    )


def hand_kinds() -> tuple[str, ...]:
    """The kinds of hand crank that are kept."""
    return tuple(_data()["hand"]["rows"])


def motor_kinds() -> Mapping[str, Any]:
    """Families of small motors: speeds in r/min and torques in N mm as ranges, for a check."""
    kinds: Mapping[str, Any] = _data()["motors"]["rows"]
    return kinds


def motor(no_load_rpm: float, stall_nmm: float) -> Motor:
    """A motor by its speed without load in r/min and its torque at stall in N mm."""
    return Motor(amount(no_load_rpm, "the no-load speed"), amount(stall_nmm, "the torque at stall"))


def motor_from_plate(no_load_rpm: float, rated_rpm: float, power_w: float) -> Motor:
    """A motor by its plate: r/min without load and rated, W at the shaft. Source: `PLATE`, `LINE`.

    Raises NotDefined where the rated speed is not below that without load.
    """
    free, rated = amount(no_load_rpm, "the no-load speed"), amount(rated_rpm, "the rated speed")
    if rated >= free:
        raise NotDefined("the rated speed is not below that without load", "read the plate again")
    torque = amount(power_w, "the power in W") * 30_000 / (math.pi * rated)
    return Motor(free, torque / (1 - rated / free))


def synchronous_rpm(hertz: float, pole_pairs: int) -> float:
    """The speed in r/min that the mains gives; an induction motor slips 3 to 6 % below. `HERTZ`."""
    return 60 * amount(hertz, "the frequency") / within(pole_pairs, 1, 50, "the pole pairs")


def engine_power_w(
    bore_mm: float, stroke_mm: float, mean_mpa: float, rpm: float, strokes_per_turn: float = 1.0
) -> tuple[float, Step]:
    """The indicated power in W of a piston: mean pressure in N/mm², working strokes for a turn.

    Two strokes a turn where steam works on both sides, a half in a four-stroke. Source: `PLAN`.
    """
    area = math.pi / 4 * positive(bore_mm, "the bore") ** 2
    work = amount(mean_mpa, "the mean pressure") * area * positive(stroke_mm, "the stroke")
    strokes = within(strokes_per_turn, 0.25, 40, "the working strokes of a turn")
    power = work * strokes * amount(rpm, "the speed in r/min") / 60_000
    return power, Step("indicated power", "p L A N", figures(power, "W"), PLAN)


def under_load(of: Motor, torque_nmm: float) -> Working:
    """The motor under a steady torque in N mm. Raises NotDefined where it stalls."""
    load = amount_or_nothing(torque_nmm, "the torque in N mm")
    if load >= of.stall_nmm:
        raise NotDefined(
            f"{load:g} N mm stalls a motor of {of.stall_nmm:g} N mm",
            "gear it down, lighten the load or take a stronger motor",
        )
    speed = of.speed_at(load)
    power = load * speed * math.pi / 30_000
    steps = (
        Step("speed", "n0 (1 − T / T stall)", f"{speed:.0f} r/min", LINE),
        Step("power", "T ω", figures(power, "W"), PLATE),
    )
    return Working(speed, load, power, load / of.stall_nmm, steps)


def _data() -> Mapping[str, Any]:
    data: Mapping[str, Any] = load_data("binder_trade.losses", "movers.yaml")
    return data
