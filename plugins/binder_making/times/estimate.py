"""The acts of a job to minutes as a range, and what the maker's own times teach.

Source: common practice, no source (`data/acts.yaml`).
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Mapping
from dataclasses import dataclass

from binder_making.times.acts import ActTime, table
from binder_trade.explained import NotDefined, positive

_LEARNS_AFTER = 3.0
_HALF_HOUR = 30.0


@dataclass(frozen=True, slots=True)
class Maker:
    """Who works: `machines` has a factor for each machine that he has timed, 1 for others.

    `is_beginner` makes everything longer; `factor` is for all of it.
    """

    is_beginner: bool = False
    factor: float = 1.0
    machines: Mapping[str, float] | None = None

    def of(self, machine: str) -> float:
        """The factor for work at a machine."""
        return (self.machines or {}).get(machine, 1.0)


@dataclass(frozen=True, slots=True)
class Work:
    """An act at a machine, `count` times in one go; `needs_set_up` is False where it is ready."""

    time: ActTime
    machine: str = ""
    count: int = 1
    needs_set_up: bool = True


@dataclass(frozen=True, slots=True)
class Estimate:
    """Minutes at the bench: the likely ones, the least and the most.

    `unattended_min` passes without the maker and is not in the others.
    """

    likely_min: float
    least_min: float
    most_min: float
    unattended_min: float

    @property
    def text(self) -> str:
        """The range in half hours, as `1½ to 3 h`, or in minutes below half an hour."""
        if self.most_min < _HALF_HOUR:
            return f"{_up(self.least_min, 5):.0f} to {_up(self.most_min, 5):.0f} min"
        low = max(math.floor(self.least_min / _HALF_HOUR + 0.5) * _HALF_HOUR, _HALF_HOUR)
        high = max(_up(self.most_min, _HALF_HOUR), low)
        return f"{_hours(low)} h" if low == high else f"{_hours(low)} to {_hours(high)} h"


def estimate(
    works: Iterable[Work], maker: Maker | None = None, *, is_first_of_kind: bool = False
) -> Estimate:
    """The time that works take together, with measuring and remakes.

    A further one of a batch takes half of the run and no set-up.
    """
    who = maker or Maker()
    found = list(works)
    bench = sum(_minutes(one) * who.of(one.machine) for one in found)
    rules = table()
    factor = 1 + rules["measuring"] + rules["remakes"]
    factor *= rules["first_of_a_kind"] if is_first_of_kind else 1
    factor *= rules["beginner"] if who.is_beginner else 1
    likely = bench * factor * positive(who.factor, "the maker's factor")
    return in_range(likely, sum(one.time.unattended_min for one in found))


def in_range(likely_min: float, unattended_min: float = 0.0) -> Estimate:
    """A likely time with its least and most: −25 and +60 per cent."""
    spread = table()["range"]
    return Estimate(
        likely_min,
        likely_min * (1 + spread["least"]),
        likely_min * (1 + spread["most"]),
        unattended_min,
    )


def _minutes(one: Work) -> float:
    if not 0 < one.count <= 1e5:
        raise NotDefined(f"{one.count} times is not a number of pieces", "one or more")
    further = float(table()["further_of_a_batch"]) * (one.count - 1)
    ready = one.time.set_min if one.needs_set_up else 0.0
    return ready + one.time.run_min * (1 + further)


def learned(times: Iterable[tuple[float, float]]) -> float:
    """The factor of a machine from pairs of estimated and real minutes.

    The mean of the ratios on a logarithmic scale, pulled towards 1 as if three more jobs had
    gone as estimated: two bad evenings do not double every time. Source: common practice.
    """
    logs = [
        math.log(positive(real, "a real time") / positive(guess, "an estimated time"))
        for guess, real in times
    ]
    return math.exp(sum(logs) / (len(logs) + _LEARNS_AFTER))


def _up(minutes: float, step: float) -> float:
    return math.ceil(minutes / step - 1e-9) * step


def _hours(minutes: float) -> str:
    whole, half = divmod(round(minutes / _HALF_HOUR), 2)
    if not half:
        return f"{whole}"
    return f"{whole}½" if whole else "½"
