"""Finds the trains of 2, 4 or 6 wheels from a set that come nearest a ratio, proved the best.

Drivers are put in order of their product; for each choice of driven wheels the best drivers lie
next to where the ratio wants them, and the search walks outwards only as long as a train could
still be better than the worst that is kept. All sums are whole numbers.
"""

from __future__ import annotations

import bisect
import heapq
import itertools
import math
from collections import Counter
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from fractions import Fraction
from typing import Final

from binder_trade.explained import NotDefined, Step, within
from binder_trade.gears.trains.clearing import Clearance, arranged
from binder_trade.gears.trains.ratio import exact

METHOD: Final = "search of all trains of the wheels, bounded; the best proved"
_MOST_WHEELS: Final = 60
_MOST_TEETH: Final = 1000
_MOST_PLACED: Final = 5_000_000

Wheels = tuple[int, ...]


@dataclass(frozen=True, slots=True)
class Train:
    """A train of wheels: each driver turns the driven wheel of its place.

    `ratio` is turns of the last wheel for one of the first; `error` its part off the wanted
    one, exact. The driven wheel of a pair and the driver of the next are on one stud.
    """

    drivers: Wheels
    driven: Wheels
    ratio: Fraction
    error: Fraction

    @property
    def wheels(self) -> int:
        """How many wheels it takes, idlers not counted."""
        return 2 * len(self.drivers)

    @property
    def error_ppm(self) -> float:
        """The error in parts of a million; over nothing where it runs too fast."""
        return float(self.error * 1_000_000)

    @property
    def reverses(self) -> bool:
        """Whether the last turns against the first without an idler."""
        return len(self.drivers) % 2 == 1

    @property
    def name(self) -> str:
        """As it is written beside the lathe: `20/60 × 30/65`, first driver first."""
        pairs = zip(self.drivers, self.driven, strict=True)
        return " × ".join(f"{one}/{two}" for one, two in pairs)


@dataclass(frozen=True, slots=True)
class Found:
    """The trains found, best first; `looked_at` counts those that were weighed."""

    wanted: Fraction
    trains: tuple[Train, ...]
    looked_at: int
    steps: tuple[Step, ...]


def search(
    wanted: Fraction | float,
    wheels: Iterable[int],
    *,
    sizes: Iterable[int] = (2, 4),
    keep: int = 5,
    clearance: Clearance | None = None,
) -> Found:
    """The best trains for a ratio (last wheel's turns for one of the first), best first.

    Each wheel is used as often as it is in the set. Of equal trains the one of fewer wheels
    comes first. With a clearance, wheels that would foul a stud are left out. Raises NotDefined
    for a ratio of nothing or less, or a set too small or too great.
    """
    target, owned = exact(wanted, "a ratio"), tuple(sorted(wheels))
    _check(owned)
    kept = _Kept(target, within(keep, 1, 100, "a number of trains"), clearance)
    for size in sorted(set(sizes)):
        if size not in {2, 4, 6}:
            raise NotDefined(f"a train of {size} wheels is not searched", "take 2, 4 or 6")
        _search(target, owned, size // 2, kept)
    found = kept.best()
    value = found[0].name if found else "none"
    step = Step("best train", "drivers / driven nearest the ratio", value, METHOD)
    return Found(target, found, kept.looked_at, (step,))


def _check(owned: Wheels) -> None:
    within(len(owned), 2, _MOST_WHEELS, "a number of wheels in the set")
    for teeth in owned:
        within(teeth, 4, _MOST_TEETH, "a number of teeth")


class _Kept:
    """The best trains so far, worst on top."""

    def __init__(self, target: Fraction, keep: float, clearance: Clearance | None) -> None:
        self.target, self.keep, self.clearance = target, int(keep), clearance
        self.looked_at = 0
        self._heap: list[tuple[Fraction, int, Wheels, Wheels, Train]] = []

    def wants(self, up: int, down: int, scale: int) -> bool:
        """Whether an error of |up − down| / scale is among the best; no use is an equal one."""
        self.looked_at += 1
        if len(self._heap) < self.keep:
            return True
        worst = -self._heap[0][0]
        return abs(up - down) * worst.denominator < worst.numerator * scale

    def take(self, drivers: Wheels, driven: Wheels) -> None:
        placed = arranged(drivers, driven, self.clearance)
        if placed is None:
            return
        ratio = Fraction(math.prod(drivers), math.prod(driven))
        train = Train(*placed, ratio, ratio / self.target - 1)
        entry = (-abs(train.error), -train.wheels, _back(drivers), _back(driven), train)
        push = heapq.heappush if len(self._heap) < self.keep else heapq.heappushpop
        push(self._heap, entry)

    def best(self) -> tuple[Train, ...]:
        return tuple(entry[-1] for entry in sorted(self._heap, reverse=True))


def _back(wheels: Wheels) -> Wheels:
    return tuple(-teeth for teeth in reversed(wheels))


def _choices(owned: Wheels, size: int) -> list[Wheels]:
    """Every different choice of so many wheels, each once."""
    return sorted(set(itertools.combinations(owned, size)))


def _search(target: Fraction, owned: Wheels, size: int, kept: _Kept) -> None:
    if len(owned) < 2 * size:
        return
    counts = Counter(owned)
    choices = sorted((math.prod(each), each) for each in _choices(owned, size))
    if kept.clearance is not None and len(choices) ** 2 > _MOST_PLACED:
        raise NotDefined(
            f"{len(owned)} wheels are too many to place {2 * size} of them with clearance",
            "leave wheels out, or take trains of fewer",
        )
    products = [product for product, _ in choices]
    for low, driven in choices:
        # Drivers × q against driven × p, for a target of p / q: whole numbers throughout.
        scale = low * target.numerator
        at = bisect.bisect_left(products, scale // target.denominator)
        for side in (_rising(choices, at), _falling(choices, at)):
            for product, drivers in side:
                if not kept.wants(product * target.denominator, scale, scale):
                    break
                if _apart(drivers, driven, counts):
                    kept.take(drivers, driven)


def _rising(choices: list[tuple[int, Wheels]], at: int) -> Iterator[tuple[int, Wheels]]:
    return (choices[each] for each in range(at, len(choices)))


def _falling(choices: list[tuple[int, Wheels]], at: int) -> Iterator[tuple[int, Wheels]]:
    return (choices[each] for each in range(at - 1, -1, -1))


def _apart(drivers: Wheels, driven: Wheels, counts: Counter[int]) -> bool:
    """Whether the set has the wheels for both at once."""
    both = drivers + driven
    return all(both.count(teeth) <= counts[teeth] for teeth in both)
