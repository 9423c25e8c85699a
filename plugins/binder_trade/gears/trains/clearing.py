"""Puts the wheels of a train in an order in which none fouls the stud of the next."""

from __future__ import annotations

import itertools
from dataclasses import dataclass

Wheels = tuple[int, ...]


@dataclass(frozen=True, slots=True)
class Clearance:
    """How much room wheels need, in teeth: half a stud and its nut, in modules, twice.

    A wheel on a stud clears the shaft of its neighbour when a + b > c + `margin`.
    `first` and `last` are what the ends of the banjo bear at most, where that is known.
    """

    margin: int = 15
    first: int | None = None
    last: int | None = None


def arranged(
    drivers: Wheels, driven: Wheels, clearance: Clearance | None
) -> tuple[Wheels, Wheels] | None:
    """An order of the pairs that clears, or None; the first found, smaller drivers first."""
    if clearance is None:
        return drivers, driven
    for front in sorted(set(itertools.permutations(drivers))):
        for back in sorted(set(itertools.permutations(driven))):
            if clears(front, back, clearance):
                return front, back
    return None


def clears(drivers: Wheels, driven: Wheels, clearance: Clearance) -> bool:
    """Whether each wheel on a stud clears the shafts before and after it.

    Of a / b × c / d: c stands beside b and must clear a's shaft, a + b > c + margin; b must
    clear d's, c + d > b + margin. Source: geometry of a banjo, common practice.
    """
    if clearance.first is not None and drivers[0] > clearance.first:
        return False
    if clearance.last is not None and driven[-1] > clearance.last:
        return False
    margin = clearance.margin
    return all(
        drivers[at] + driven[at] > drivers[at + 1] + margin
        and drivers[at + 1] + driven[at + 1] > driven[at] + margin
        for at in range(len(drivers) - 1)
    )
