"""A sequence to a cheaper one, by moving operations and runs of them past others."""

from __future__ import annotations

from collections.abc import Iterator

from binder_making.order.cost import Prices, spent
from binder_making.order.graph import Graph

_SMALL = 150
_TRIES = 4000


class Improving:
    """A sequence that gets cheaper as long as moves are found and tries are left."""

    def __init__(self, web: Graph, sequence: list[int], prices: Prices) -> None:
        self._web = web
        self._prices = prices
        self.sequence = list(sequence)
        self.minutes = self._price(self.sequence)
        self._tries = _TRIES

    def run(self) -> list[int]:
        """Moves until nothing helps; long sequences are left as they are."""
        if len(self.sequence) > _SMALL:
            return self.sequence
        while self._tries > 0 and self._one_pass():
            pass
        return self.sequence

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
        """The stretch put everywhere that the edges allow, the nearest places first."""
        run = self.sequence[first:last]
        later = {one for place in run for one in self._web.after[place]}
        earlier = {one for place in run for one in self._web.before[place]}
        for number in range(last, len(self.sequence)):
            if self.sequence[number] in later:
                break
            head, jumped = self.sequence[:first], self.sequence[last : number + 1]
            if self._is_worth(number, number + 1, run):
                yield [*head, *jumped, *run, *self.sequence[number + 1 :]]
        for number in range(first - 1, -1, -1):
            if self.sequence[number] in earlier:
                break
            head, jumped = self.sequence[:number], self.sequence[number:first]
            if self._is_worth(number - 1, number, run):
                yield [*head, *run, *jumped, *self.sequence[last:]]

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
