"""Cycloidal teeth of clocks: a wheel that drives a pinion, by the arcs of BS 978-2."""

from __future__ import annotations

import math
from dataclasses import dataclass
from functools import cache
from typing import Any, Final

from binder.api import load_data
from binder_trade.explained import NotDefined, Step, mm, positive, within

EPICYCLOID: Final = "where the epicycloids of both flanks meet; rolled by half the pinion's pitch"
_TRIALS: Final = 200


@dataclass(frozen=True, slots=True)
class ClockWheel:
    """A wheel or a pinion; mm. Flanks are radial, tips are arcs of `arc_mm` radius."""

    teeth: int
    pitch_mm: float
    outside_mm: float
    root_mm: float
    addendum_mm: float
    dedendum_mm: float
    arc_mm: float
    thickness_mm: float


@dataclass(frozen=True, slots=True)
class ClockPair:
    """A wheel that drives a pinion; mm."""

    wheel: ClockWheel
    pinion: ClockWheel
    pinion_form: str
    centres_mm: float
    ratio: float
    steps: tuple[Step, ...]


@cache
def _data() -> dict[str, Any]:
    data: dict[str, Any] = load_data("binder_trade.gears", "clocks.yaml")
    return data


def clock_pair(wheel_teeth: int, pinion_teeth: int, module_mm: float) -> ClockPair:
    """A clock's wheel and pinion by module; mm. Raises NotDefined outside the standard.

    Source: BS 978-2; the wheel's addendum from the epicycloid, less a twentieth.
    """
    within(pinion_teeth, 6, 200, "a number of leaves")
    within(wheel_teeth, pinion_teeth, 1000, "a number of teeth of a wheel that drives")
    module = positive(module_mm, "a module")
    row = next(each for each in _data()["pinions"] if pinion_teeth <= each["up_to"])
    full, kept = addendum_factor(wheel_teeth, pinion_teeth), _data()["wheel"]
    rise = kept["practical"] * full
    wheel = _wheel(wheel_teeth, module, (rise, math.pi / 2, kept["radius"] * full, math.pi / 2))
    pinion = _wheel(
        pinion_teeth, module, (row["addendum"], rise + kept["bottom"], row["radius"], row["width"])
    )
    centres = module * (wheel_teeth + pinion_teeth) / 2
    source = _data()["source"]
    steps = (
        Step("full addendum", "z_p m / 4 (1 − k + d)", mm(full * module), EPICYCLOID),
        Step("wheel's addendum", "0.95 of it", mm(wheel.addendum_mm), source),
        Step("wheel's blank", "m z + 2 h_a", mm(wheel.outside_mm), source),
        Step("pinion's blank", "m z + 2 h_a", mm(pinion.outside_mm), source),
        Step("centres", "m (z₁ + z₂) / 2", mm(centres), "geometry"),
    )
    return ClockPair(wheel, pinion, row["form"], centres, wheel_teeth / pinion_teeth, steps)


def addendum_factor(wheel_teeth: int, pinion_teeth: int) -> float:
    """The height in modules at which a wheel's two epicycloids meet.

    The rolling circle is half the pinion's pitch circle, so that the leaves' flanks are radial.
    """
    ratio = wheel_teeth / pinion_teeth
    far = 1 + 2 * ratio
    roll, before = 0.0, -1.0
    for _ in range(_TRIALS):
        if abs(roll - before) < 1e-14:
            break
        lean = math.atan2(math.sin(roll), far - math.cos(roll))
        before, roll = roll, math.pi / pinion_teeth + 2 * ratio * lean
    else:
        raise NotDefined("the flanks of the wheel never meet", "give the pinion more leaves")
    reach = math.sqrt(1 + far * far - 2 * far * math.cos(roll))
    return pinion_teeth / 4 * (1 - far + reach)


def _wheel(teeth: int, module: float, parts: tuple[float, float, float, float]) -> ClockWheel:
    addendum, dedendum, arc, width = (module * each for each in parts)
    pitch = module * teeth
    return ClockWheel(
        teeth,
        pitch,
        pitch + 2 * addendum,
        pitch - 2 * dedendum,
        addendum,
        dedendum,
        arc,
        width,
    )
