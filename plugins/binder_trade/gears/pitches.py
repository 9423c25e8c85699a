"""Turns a module, a diametral pitch or a circular pitch into one pitch; lists what is sold."""

from __future__ import annotations

import math
from dataclasses import dataclass
from functools import cache
from typing import Any, Final

from binder.api import load_data
from binder_trade.explained import within
from binder_trade.gears.racks import PitchSystem

INCH: Final = 25.4
_LEAST: Final = 0.02
_MOST: Final = 100


@dataclass(frozen=True, slots=True)
class Pitch:
    """The size of teeth by its module in mm, and how it is called."""

    module_mm: float
    system: PitchSystem
    is_common: bool = True

    @property
    def dp(self) -> float:
        """Teeth to an inch of pitch diameter."""
        return INCH / self.module_mm

    @property
    def circular_mm(self) -> float:
        """From tooth to tooth along the pitch circle; mm."""
        return math.pi * self.module_mm

    @property
    def name(self) -> str:
        """As the trade says it: `module 0.5` or `48 DP`."""
        return f"module {self.module_mm:g}" if self.system == "module" else f"{self.dp:g} DP"


def from_module(module_mm: float) -> Pitch:
    """The pitch of a module in mm. Raises NotDefined outside 0.02 to 100."""
    return Pitch(within(module_mm, _LEAST, _MOST, "a module"), "module")


def from_dp(dp: float) -> Pitch:
    """The pitch of so many teeth to an inch of diameter; m = 25.4 / P. Raises NotDefined."""
    return Pitch(INCH / within(dp, INCH / _MOST, INCH / _LEAST, "a diametral pitch"), "DP")


def from_circular(pitch_mm: float) -> Pitch:
    """The pitch of so many mm from tooth to tooth; m = p / π. Raises NotDefined."""
    return from_module(pitch_mm / math.pi)


@cache
def pitches() -> tuple[Pitch, ...]:
    """All that are sold, coarsest last. Source: ISO 54 and lists of diametral pitches."""
    data: dict[str, Any] = load_data("binder_trade.gears", "pitches.yaml")
    modules, inches = data["modules"], data["diametral_pitches"]
    found = [Pitch(each, "module") for each in modules["first"]]
    found += [Pitch(each, "module", is_common=False) for each in modules["second"]]
    found += [Pitch(INCH / each, "DP") for each in inches["common"]]
    found += [Pitch(INCH / each, "DP", is_common=False) for each in inches["seldom"]]
    return tuple(sorted(found, key=lambda pitch: (pitch.module_mm, pitch.system)))


def modules(series: int | None = None) -> tuple[float, ...]:
    """The modules of ISO 54 in mm: series 1, series 2, or both."""
    wanted = {1: (True,), 2: (False,), None: (True, False)}[series]
    return tuple(
        each.module_mm for each in pitches() if each.system == "module" and each.is_common in wanted
    )


def nearest(module_mm: float, system: PitchSystem | None = None) -> Pitch:
    """The pitch that is sold and differs least, in proportion, from a module in mm."""
    within(module_mm, _LEAST, _MOST, "a module")
    some = [each for each in pitches() if system in (None, each.system)]
    return min(some, key=lambda each: abs(math.log(each.module_mm / module_mm)))
