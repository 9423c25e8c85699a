"""`python -m tests.bench.trains`: the slowest search for a train beside trial of every train.

Both look for the same thirty ratios in a set of twelve wheels, in one process. No figure here
fails a build; the target is printed beside what was found.
"""

from __future__ import annotations

import itertools
import random
import time
from collections.abc import Callable
from fractions import Fraction
from math import prod

from binder_trade.gears.trains import search

WHEELS = (20, 20, 25, 30, 35, 40, 45, 50, 55, 60, 65, 80)
TARGETS = 30


def main() -> None:
    """Measures and prints."""
    chance = random.Random(30)
    wanted = [Fraction(chance.randint(20, 3000), 1000) for _ in range(TARGETS)]
    ours = max(_seconds(_searched, each) for each in wanted)
    trial = max(_seconds(_tried, each) for each in wanted)
    print(f"slowest of {TARGETS} searches among 12 wheels: {ours * 1000:.1f} ms")
    print(f"trial of every train: {trial * 1000:.0f} ms, {trial / ours:.0f} times as long")
    print("target: under 1 s each")


def _searched(wanted: Fraction) -> object:
    return search(wanted, WHEELS)


def _tried(wanted: Fraction) -> Fraction:
    """The least error of every train of four, in every order."""
    return min(
        abs(Fraction(prod(four[:2]), prod(four[2:])) / wanted - 1)
        for four in itertools.permutations(WHEELS, 4)
    )


def _seconds(job: Callable[[Fraction], object], wanted: Fraction) -> float:
    start = time.perf_counter()
    job(wanted)
    return time.perf_counter() - start


if __name__ == "__main__":
    main()
