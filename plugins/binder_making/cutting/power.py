"""A cut to the force and power that it takes, and what the motor can carry."""

from __future__ import annotations

import math
from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache
from itertools import pairwise
from typing import Any

from binder.api import load_data
from binder_making.cutting.group import PACKAGE, Group
from binder_trade.explained import Step, positive


@cache
def forces() -> Mapping[str, Any]:
    """The data file of forces, read once."""
    content: Mapping[str, Any] = load_data(PACKAGE, "forces.yaml")
    return content


def specific_force(material: Group, feed_mm: float) -> float:
    """The specific cutting force in N/mm² at a feed in mm for a turn.

    Finer feeds take more. Source: published table by feed; groups without a row of their own
    by ratios, some of them from memory (see the data file).
    """
    data = forces()["cutting"]
    rows = data["rows"]
    row = rows.get(material.name)
    ratio = 1.0 if row else float(data["ratios"][material.name]["ratio"])
    values = [float(one) for one in row or rows["mild steel"]]
    return ratio * _on_line(list(zip(data["feeds"], values, strict=True)), feed_mm)


def _on_line(points: list[tuple[float, float]], feed_mm: float) -> float:
    feed = positive(feed_mm, "a feed")
    pairs = list(pairwise(points))
    low, high = next((pair for pair in pairs if feed <= pair[1][0]), pairs[-1])
    slope = math.log(high[1] / low[1]) / math.log(high[0] / low[0])
    return low[1] * math.exp(slope * math.log(feed / low[0]))


def cutting_force(specific: float, depth_mm: float, feed_mm: float) -> float:
    """The force on the edge in N: k × depth × feed."""
    return specific * depth_mm * feed_mm


def cutting_power(force_n: float, speed_mpm: float) -> float:
    """The power at the edge in W: F v, v in m/min."""
    return force_n * speed_mpm / 60


def removal(depth_mm: float, feed_mm: float, speed_mpm: float) -> float:
    """What a turning cut takes off, in mm³ a minute."""
    return depth_mm * feed_mm * speed_mpm * 1000


def power_of_removal(specific_energy: float, mm3_per_min: float) -> float:
    """The power in W from a specific energy in W s/mm³ and what is taken off in a minute."""
    return specific_energy * mm3_per_min / 60


def torque(power_w: float, rpm: float) -> float:
    """The torque in N m of a power in W at r/min."""
    return power_w * 60 / (2 * math.pi * positive(rpm, "a spindle speed"))


@dataclass(frozen=True, slots=True)
class Load:
    """What a cut asks of the motor, in W, and whether it has that; `depth_mm` it can carry."""

    cutter_w: float
    asked_w: float
    motor_w: float
    depth_mm: float
    steps: tuple[Step, ...]

    @property
    def is_carried(self) -> bool:
        """Whether the motor carries the cut."""
        return self.asked_w <= self.motor_w * (1 + 1e-9)


def turning_load(
    material: Group, depth_mm: float, feed_mm: float, speed_mpm: float, motor_w: float
) -> Load:
    """The load of a turning cut, and the depth that the motor carries at this feed and speed."""
    specific = specific_force(material, feed_mm)
    force = cutting_force(specific, positive(depth_mm, "a depth of cut"), feed_mm)
    power = cutting_power(force, positive(speed_mpm, "a speed"))
    share = float(forces()["efficiency"]["value"])
    carried = positive(motor_w, "the motor's power") * share / (power / depth_mm)
    steps = (
        Step("specific force", "at this feed", f"{specific:.0f} N/mm²", _source(material)),
        Step("force", "k × depth × feed", f"{force:.0f} N", "calculation"),
        Step("power at the edge", "F v", f"{power:.0f} W", "calculation"),
        Step("at the motor", f"÷ {share:g}", f"{power / share:.0f} W", _efficiency_source()),
    )
    return Load(power, power / share, motor_w, carried, steps)


def _source(material: Group) -> str:
    data = forces()["cutting"]
    if material.name in data["rows"]:
        return str(data["source"])
    mark = data["ratios"][material.name]["status"]
    words = data["ratio_source"] if mark == "verified" else "ratio from memory"
    return f"{data['source']}; {words}"


def _efficiency_source() -> str:
    return str(forces()["efficiency"]["source"])
