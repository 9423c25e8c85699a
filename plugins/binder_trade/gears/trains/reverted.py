"""A reverted train: two pairs between the same two shafts, the last in line with the first."""

from __future__ import annotations

import heapq
from collections.abc import Iterator
from dataclasses import dataclass
from fractions import Fraction
from typing import Final

from binder_trade.explained import NotDefined, Step, mm, positive, within
from binder_trade.gears.trains.ratio import exact

METHOD: Final = "all teeth whose sums fit the centres; the nearest proved"
_MOST_SUM: Final = 400


@dataclass(frozen=True, slots=True)
class Reverted:
    """Teeth of both pairs, as (driver, driven), on the same centres; mm.

    `apart_mm` is by how much the second pair's centres differ from the first's, which profile
    shift or play has to take up.
    """

    first: tuple[int, int]
    second: tuple[int, int]
    ratio: Fraction
    error: Fraction
    centres_mm: float
    apart_mm: float
    steps: tuple[Step, ...]


def reverted(
    wanted: Fraction | float,
    centres_mm: float,
    modules_mm: tuple[float, float],
    *,
    least: int = 12,
    keep: int = 5,
) -> tuple[Reverted, ...]:
    """The nearest teeth for a ratio (last shaft's turns for one of the first), best first; mm.

    The sums of teeth are the whole numbers next to 2 a / m. Raises NotDefined for centres that
    the modules do not fill. Source: a = m (z₁ + z₂) / 2 for both pairs.
    """
    target = exact(wanted, "a ratio")
    within(least, 4, 200, "the fewest teeth")
    within(keep, 1, 100, "a number of answers")
    sums = [
        round(2 * positive(centres_mm, "centres") / positive(m, "a module")) for m in modules_mm
    ]
    if min(sums) < 2 * least or max(sums) > _MOST_SUM:
        raise NotDefined(
            f"centres of {centres_mm:g} mm hold {sums[0]} and {sums[1]} teeth",
            f"choose modules for {2 * least} to {_MOST_SUM} teeth",
        )
    best = heapq.nsmallest(
        keep, _splits(sums[0], sums[1], least), key=lambda four: _rank(four, float(target))
    )
    return tuple(_made(four, target, modules_mm) for four in best)


Four = tuple[int, int, int, int]


def _splits(one: int, other: int, least: int) -> Iterator[Four]:
    for first in range(least, one - least + 1):
        for second in range(least, other - least + 1):
            yield first, one - first, second, other - second


def _rank(four: Four, target: float) -> tuple[float, int, Four]:
    """By error, rounded so that equal ratios count as equal, then by the larger least wheel."""
    ratio = four[0] * four[2] / (four[1] * four[3])
    return round(abs(ratio / target - 1), 12), -min(four), four


def _made(four: Four, target: Fraction, modules: tuple[float, float]) -> Reverted:
    ratio = Fraction(four[0] * four[2], four[1] * four[3])
    centres = [m * (four[at] + four[at + 1]) / 2 for m, at in zip(modules, (0, 2), strict=True)]
    error = ratio / target - 1
    name = f"{four[0]}/{four[1]} × {four[2]}/{four[3]}"
    off = f"{float(error) * 1e6:+.0f} ppm".replace("-", "−")
    steps = (
        Step(
            "sums of teeth", "2 a / m, whole", f"{four[0] + four[1]}, {four[2] + four[3]}", METHOD
        ),
        Step("teeth", "driver / driven of both pairs", name, METHOD),
        Step("error", "ratio / wanted − 1", off, METHOD),
        Step("centres", "m (z₁ + z₂) / 2", mm(centres[0]), METHOD),
    )
    return Reverted(four[:2], four[2:], ratio, error, centres[0], centres[1] - centres[0], steps)
