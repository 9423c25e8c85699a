"""Finds teeth for a ratio where wheels are made, not found: the nearest of one or two pairs."""

from __future__ import annotations

import bisect
import heapq
import math
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from fractions import Fraction
from typing import Final

from binder_trade.explained import NotDefined, Step, within
from binder_trade.gears.trains.ratio import exact

METHOD: Final = "all pairs of whole teeth between the two ends; the nearest proved"
HUNTING: Final = "teeth with no common factor meet all others in turn and wear alike"
_MOST_RANGE: Final = 200
_ROUNDING: Final = 1e-12

Pairs = tuple[tuple[int, int], ...]


@dataclass(frozen=True, slots=True)
class Teeth:
    """Pairs as (driver, driven); `error` is the part off the wanted ratio, exact.

    `hunts` says that no pair has a common factor.
    """

    pairs: tuple[tuple[int, int], ...]
    ratio: Fraction
    error: Fraction
    hunts: bool
    steps: tuple[Step, ...]

    @property
    def error_ppm(self) -> float:
        """The error in parts of a million; over nothing where it runs too fast."""
        return float(self.error * 1_000_000)

    @property
    def name(self) -> str:
        """As `12/60 × 15/75`."""
        return " × ".join(f"{driver}/{driven}" for driver, driven in self.pairs)


def teeth_for(
    wanted: Fraction | float,
    *,
    least: int = 12,
    most: int = 100,
    pairs: int = 1,
    keep: int = 5,
) -> tuple[Teeth, ...]:
    """The nearest teeth for a ratio (last wheel's turns for one of the first), best first.

    One or two pairs with teeth between two ends. Of equal ones that of fewest teeth comes first.
    Raises NotDefined for a ratio past what so many pairs can give.
    """
    target = exact(wanted, "a ratio")
    within(least, 4, 400, "the fewest teeth")
    within(most, least, least + _MOST_RANGE, "the most teeth")
    within(keep, 1, 100, "a number of answers")
    reach = Fraction(most, least) ** pairs
    if pairs not in {1, 2} or not 1 / reach <= target <= reach:
        raise NotDefined(
            f"{float(target):g} is past what {pairs} pairs of {least} to {most} teeth give",
            f"keep between {float(1 / reach):.4g} and {float(reach):.4g}, or take two pairs",
        )
    ends = (least, most)
    found = _single(target, *ends) if pairs == 1 else _double(target, *ends, keep)
    near = _nearest(dict.fromkeys(found), float(target), keep)
    best = heapq.nsmallest(keep, near, key=lambda each: _rank(each, target))
    return tuple(_made(each, target) for each in best)


def _single(target: Fraction, least: int, most: int) -> Iterator[Pairs]:
    for driver in range(least, most + 1):
        near = int(driver / target)
        for driven in range(near - 1, near + 3):
            if least <= driven <= most:
                yield ((driver, driven),)


def _double(target: Fraction, least: int, most: int, keep: int) -> Iterator[Pairs]:
    """With each first pair, as many second pairs on both sides of what is left as are kept."""
    smallest = _smallest_terms(least, most)
    ratios = sorted(smallest)
    sizes = [float(each) for each in ratios]
    for at, first in enumerate(ratios):
        middle = bisect.bisect_left(sizes, float(target) / sizes[at])
        for second in ratios[max(0, middle - keep - 1) : middle + keep + 1]:
            one, two = smallest[first], smallest[second]
            yield (one, two) if one <= two else (two, one)


def _smallest_terms(least: int, most: int) -> dict[Fraction, tuple[int, int]]:
    """Each ratio of a pair, with the fewest teeth that give it."""
    found: dict[Fraction, tuple[int, int]] = {}
    for driver in range(least, most + 1):
        for driven in range(least, most + 1):
            found.setdefault(Fraction(driver, driven), (driver, driven))
    return found


def _nearest(found: Iterable[Pairs], target: float, keep: int) -> list[Pairs]:
    """Those that rounding cannot tell from the best ones; exact fractions judge the rest."""
    rough = [(abs(_size(each) / target - 1), each) for each in found]
    last = max(heapq.nsmallest(keep, (error for error, _ in rough)), default=0.0)
    return [each for error, each in rough if error <= last + _ROUNDING]


def _size(pairs: Pairs) -> float:
    return math.prod(driver / driven for driver, driven in pairs)


def _ratio(pairs: Pairs) -> Fraction:
    return math.prod((Fraction(driver, driven) for driver, driven in pairs), start=Fraction(1))


def _rank(pairs: Pairs, target: Fraction) -> tuple[Fraction, int, Pairs]:
    teeth = sum(driver + driven for driver, driven in pairs)
    return abs(_ratio(pairs) / target - 1), teeth, pairs


def _made(pairs: Pairs, target: Fraction) -> Teeth:
    ratio = _ratio(pairs)
    hunts = all(math.gcd(driver, driven) == 1 for driver, driven in pairs)
    error = ratio / target - 1
    name = " × ".join(f"{driver}/{driven}" for driver, driven in pairs)
    steps = (
        Step("teeth", "driver / driven nearest the ratio", name, METHOD),
        Step("error", "ratio / wanted − 1", _ppm(error), METHOD),
        Step("hunting teeth", "no common factor", "yes" if hunts else "no", HUNTING),
    )
    return Teeth(pairs, ratio, error, hunts, steps)


def _ppm(error: Fraction) -> str:
    return f"{float(error) * 1e6:+.1f} ppm".replace("-", "−")
