"""A sequence to a cheaper one, by moving operations and runs of them past others."""

from __future__ import annotations

from collections.abc import Iterator

from binder_making.order.cost import Prices, spent
from binder_making.order.graph import Graph

_SMALL = 150
# Operations looked at in all tries together, so that a list of any length takes as long.
_LOOKS = 60_000


class Improving:
    """A sequence that gets cheaper as long as moves are found and tries are left."""

    def __init__(self, web: Graph, sequence: list[int], prices: Prices) -> None:
        self._web = web
        self._prices = prices
        self.sequence = list(sequence)
        self.minutes = self._price(self.sequence)
        self._tries = _LOOKS // max(len(sequence), 1)

    def run(self, goal: float) -> None:
        """Moves until nothing helps, or the goal in minutes is met; long ones stay as they are."""
        if len(self.sequence) > _SMALL:
            return
        while self.minutes > goal + 1e-9 and self._tries > 0 and self._one_pass():
            pass

    def _one_pass(self) -> bool:
        """Takes the first move that helps, of runs first and of single operations then."""
        for first, last in (*self._runs(), *((n, n + 1) for n in range(len(self.sequence)))):
            for moved in self._moves(first, last):
                self._tries -= 1
                price = self._price(moved)
                if price < self.minutes - 1e-9:
                    self.sequence, self.minutes = moved, price
                    return True
                if self._tries <= 0:
                    return False
        return False

    def _price(self, sequence: list[int]) -> float:
        return spent((self._web.operations[place] for place in sequence), self._prices).minutes

    def _runs(self) -> Iterator[tuple[int, int]]:
        """Stretches of more than one operation with the same set-up, and with the same tool."""
        for naming in (self._setup, self._setup_and_tool):
            first = 0
            for number in range(1, len(self.sequence) + 1):
                ends = number == len(self.sequence)
                if ends or naming(number) != naming(first):
                    if number - first > 1:
                        yield first, number
                    first = number

    def _setup(self, number: int) -> tuple[str, ...]:
        one = self._web.operations[self.sequence[number]]
        return (one.machine, one.setup)

    def _setup_and_tool(self, number: int) -> tuple[str, ...]:
        one = self._web.operations[self.sequence[number]]
        return (one.machine, one.setup, one.tool)

    def _moves(self, first: int, last: int) -> Iterator[list[int]]:
        """The stretch put at every other place, the nearest first.

        On the way back it takes along what it waits for, on the way on what waits for it, so
        that every edge is kept.
        """
        yield from self._back(first, last)
        yield from self._on(first, last)

    def _back(self, first: int, last: int) -> Iterator[list[int]]:
        run, jumped = self.sequence[first:last], list[int]()
        needed = {one for place in run for one in self._web.before[place]}
        for number in range(first - 1, -1, -1):
            place = self.sequence[number]
            if place in needed:
                run.insert(0, place)
                needed.update(self._web.before[place])
                continue
            jumped.insert(0, place)
            if self._is_worth(number - 1, number, run):
                yield [*self.sequence[:number], *run, *jumped, *self.sequence[last:]]

    def _on(self, first: int, last: int) -> Iterator[list[int]]:
        run, jumped = self.sequence[first:last], list[int]()
        waiting = {one for place in run for one in self._web.after[place]}
        for number in range(last, len(self.sequence)):
            place = self.sequence[number]
            if place in waiting:
                run.append(place)
                waiting.update(self._web.after[place])
                continue
            jumped.append(place)
            if self._is_worth(number, number + 1, run):
                yield [*self.sequence[:first], *jumped, *run, *self.sequence[number + 1 :]]

    def _is_worth(self, left: int, right: int, run: list[int]) -> bool:
        """Whether anything is saved at a new place: a neighbour there shares something."""
        ends = (self._web.operations[run[0]], self._web.operations[run[-1]])
        for number in (left, right):
            if not 0 <= number < len(self.sequence):
                return True
            there = self._web.operations[self.sequence[number]]
            if any(there.machine == one.machine for one in ends):
                return True
        return False
