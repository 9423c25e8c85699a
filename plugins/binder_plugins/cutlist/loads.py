"""A packing in whole numbers: which weights lie on which kind of bar, and how good that is."""

from __future__ import annotations

from dataclasses import dataclass
from typing import NamedTuple

from binder_plugins.cutlist.problem import Kind, Problem


class Score(NamedTuple):
    """What is to be least, in the order in which it counts; all in units of the problem."""

    unplaced: int
    unplaced_weight: int
    bought: int
    bars: int


@dataclass(frozen=True, slots=True)
class Load:
    """What lies on one bar: the place of its kind in the problem, weights in falling order."""

    kind: int
    weights: tuple[int, ...]

    @property
    def total(self) -> int:
        """How much of the bar's capacity is used."""
        return sum(self.weights)


@dataclass(frozen=True, slots=True)
class Packing:
    """All loads, and the weights that lie on no bar."""

    loads: tuple[Load, ...]
    unplaced: tuple[int, ...]

    def score(self, problem: Problem) -> Score:
        """How good this packing is; a lower one is better."""
        bought = sum(problem.kinds[load.kind].price for load in self.loads)
        return Score(len(self.unplaced), sum(self.unplaced), bought, len(self.loads))


def settled(problem: Problem, packing: Packing) -> Packing:
    """The same loads, each on the shortest bar that is there to take it, heaviest load first.

    An owned load takes an owned bar and a bought one the least that can be bought, so the
    score cannot rise, and long bars stay whole on the shelf.
    """
    stock = [kind.count for kind in problem.kinds]
    loads = []
    for load in sorted(packing.loads, key=lambda load: (-load.total, load.weights)):
        kind = _shortest(problem.kinds, stock, load)
        count = stock[kind]
        stock[kind] = None if count is None else count - 1
        loads.append(Load(kind, load.weights))
    loads.sort(key=lambda load: (load.kind, tuple(-weight for weight in load.weights)))
    return Packing(tuple(loads), tuple(sorted(packing.unplaced, reverse=True)))


def _shortest(kinds: tuple[Kind, ...], stock: list[int | None], load: Load) -> int:
    """Among kinds owned alike and still there; one that holds the load always is."""
    is_bought = kinds[load.kind].count is None
    return min(
        (kinds[place].length, place)
        for place, count in enumerate(stock)
        if count != 0 and (count is None) == is_bought and kinds[place].capacity >= load.total
    )[1]
