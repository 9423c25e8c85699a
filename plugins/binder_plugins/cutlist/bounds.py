"""Turns a problem into what no packing of it can beat.

Every bound weighs pieces and bars with a superadditive measure f, one for which
f(x) + f(y) <= f(x + y): then the pieces on a bar measure no more than the bar itself,
so bars that measure less than the pieces together cannot hold them.
Sources: S. Martello and P. Toth, Knapsack Problems (1990), section 8.3, bound L2;
S. P. Fekete and J. Schepers, Math. Programming 91 (2001), functions u(k). From memory.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Iterable, Iterator
from dataclasses import replace

from binder_plugins.cutlist.covering import bars_to_cover, dropped, length_to_buy
from binder_plugins.cutlist.loads import Score
from binder_plugins.cutlist.problem import Kind, Problem

Measure = Callable[[int], int]
STEPS = 12
MOST_THRESHOLDS = 100


def measures(capacity: int, weights: Iterable[int]) -> Iterator[Measure]:
    """Superadditive measures on 0 to capacity: plain weight, thresholds, and steps.

    Of very many thresholds an even choice is tried, so that the work grows with the pieces.
    """
    halves = sorted({0} | {weight for weight in weights if 2 * weight <= capacity})
    for threshold in halves[:: len(halves) // MOST_THRESHOLDS + 1]:
        yield _threshold(capacity, threshold)
    for step in range(1, STEPS + 1):
        yield _steps(capacity, step)


def _threshold(capacity: int, threshold: int) -> Measure:
    """Small weights count nothing, and one that leaves room for small ones only, all."""

    def measure(weight: int) -> int:
        if weight > capacity - threshold:
            return capacity
        return weight if weight >= threshold else 0

    return measure


def _steps(capacity: int, step: int) -> Measure:
    """Weights rounded down to whole parts of the capacity, step + 1 parts to the bar."""

    def measure(weight: int) -> int:
        whole, rest = divmod((step + 1) * weight, capacity)
        return whole * capacity if rest else step * weight

    return measure


def fewest_unplaced(problem: Problem) -> int:
    """No fewer pieces than this are left over for want of bars."""
    scarce = problem.weights[: problem.scarce]
    lightest = min(scarce, default=0)
    able = (kind for kind in problem.kinds if kind.capacity >= lightest)
    return dropped(scarce, sum(scarce) - sum(kind.capacity * (kind.count or 0) for kind in able))


def floor(problem: Problem, unplaced: int) -> Score:
    """No packing that leaves this many pieces over scores less in any respect.

    It holds at least the lightest pieces that are left when the heaviest are dropped.
    """
    weights = problem.weights[unplaced:]
    lightest_unplaced = problem.weights[problem.scarce - unplaced : problem.scarce]
    bars, bought = 0, _length_for_longest(problem.kinds, max(weights, default=0))
    largest = max((kind.capacity for kind in problem.kinds), default=0)
    stock = tuple(kind.count for kind in problem.kinds)
    alike = Counter(weights)
    for measure in measures(largest, weights) if weights else ():
        kinds = [replace(kind, capacity=measure(kind.capacity)) for kind in problem.kinds]
        need = sum(count * measure(weight) for weight, count in alike.items())
        bars = max(bars, bars_to_cover(kinds, stock, need))
        bought = max(bought, length_to_buy(kinds, stock, need))
    return Score(unplaced, sum(lightest_unplaced), bought, bars)


def _length_for_longest(kinds: Iterable[Kind], weight: int) -> int:
    """What the heaviest piece makes one buy, however the others are cut."""
    return min((kind.price for kind in kinds if kind.capacity >= weight), default=0)
