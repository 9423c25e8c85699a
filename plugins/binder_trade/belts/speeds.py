"""Pulleys, belt thickness and slip to the speed of the driven shaft, or to its pulley."""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from itertools import product
from typing import Any, Final

from binder.api import load_data
from binder_trade.explained import NotDefined, Step, amount, mm, not_negative, positive, within

RULE: Final = "N2 (d2 + t) = N1 (d1 + t)(1 − s); Sarkar, Theory of Machines"


@dataclass(frozen=True, slots=True)
class Driven:
    """Turns of the last shaft a minute, and for one turn of the first."""

    rpm: float
    ratio: float
    steps: tuple[Step, ...]


def driven(
    driver_rpm: float,
    stages: Sequence[tuple[float, float]],
    thickness_mm: float = 0.0,
    slip: float = 0.0,
) -> Driven:
    """Speed behind a row of belts, each (driver, driven) in mm at the face that the belt lies on.

    `slip` is a part of one, the same at each stage. Give no thickness where diameters are
    already those of the neutral line. Source: `RULE`.
    """
    start = amount(driver_rpm, "the speed of the driver")
    thick = not_negative(thickness_mm, "the thickness of the belt")
    kept = 1 - within(slip, 0, 0.5, "the slip")
    if not stages:
        raise NotDefined("no belt between the shafts", "give a driver and a driven pulley")
    ratio = 1.0
    steps = []
    for number, (first, second) in enumerate(stages, 1):
        d1, d2 = positive(first, "a driver's diameter"), positive(second, "a driven diameter")
        ratio *= (d1 + thick) / (d2 + thick) * kept
        steps.append(
            Step(
                f"shaft behind belt {number}",
                f"({d1:g} + {thick:g}) / ({d2:g} + {thick:g}) × {kept:g}",
                f"{start * ratio:.1f} r/min",
                RULE,
            )
        )
    return Driven(start * ratio, ratio, tuple(steps))


@dataclass(frozen=True, slots=True)
class Rung:
    """One speed of a drive with steps: which step of each stage, counted from one, and r/min."""

    steps_chosen: tuple[int, ...]
    rpm: float


def speed_ladder(driver_rpm: float, stages: Sequence[Sequence[float]]) -> tuple[Rung, ...]:
    """Every speed of stages with steps in a row, slowest first.

    Each stage is its ratios (driven turns / driver turns), one for each step. Raises
    NotDefined for a stage without steps, or more than 2000 speeds.
    """
    start = amount(driver_rpm, "the speed of the driver")
    if not stages or not all(stages) or math.prod(len(each) for each in stages) > 2000:
        raise NotDefined(
            "a drive without steps, or with more than 2000 speeds", "give some ratios a stage"
        )
    for ratio in (one for each in stages for one in each):
        amount(ratio, "a ratio")
    rungs = (
        Rung(
            tuple(number for number, _ in choice),
            start * math.prod(ratio for _, ratio in choice),
        )
        for choice in product(*(list(enumerate(each, 1)) for each in stages))
    )
    return tuple(sorted(rungs, key=lambda rung: (rung.rpm, rung.steps_chosen)))


def driven_diameter(
    driver_mm: float, ratio: float, thickness_mm: float = 0.0, slip: float = 0.0
) -> tuple[float, Step]:
    """The driven pulley in mm for a ratio (driven turns / driver turns). Source: `RULE`."""
    driver = positive(driver_mm, "the driver's diameter")
    thick = not_negative(thickness_mm, "the thickness of the belt")
    kept = 1 - within(slip, 0, 0.5, "the slip")
    size = (driver + thick) / amount(ratio, "the ratio") * kept - thick
    if size <= 0:
        raise NotDefined("the driven pulley would be thinner than nothing", "take a milder ratio")
    return size, Step("driven pulley", "(d1 + t)(1 − s) / i − t", mm(size), RULE)


def belt_speed_ms(diameter_mm: float, rpm: float) -> float:
    """The speed of a belt in m/s on a pulley of this neutral diameter."""
    return math.pi * positive(diameter_mm, "the diameter") * amount(rpm, "the speed") / 60_000


def usual_slip(kind: str) -> tuple[float, str]:
    """What a belt of this kind slips under its usual load, as a part of one, with the source."""
    table: Mapping[str, Any] = load_data("binder_trade.belts", "sections.yaml")["slip"]
    if kind not in table["rows"]:
        known = ", ".join(table["rows"])
        raise NotDefined(f"no slip known for “{kind[:40]}”", f"one of: {known}")
    return float(table["rows"][kind]), str(table["source"])
