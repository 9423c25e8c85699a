"""Turns a problem into a good packing at once: heaviest piece first, in several ways.

First fit and best fit decreasing, D. S. Johnson (1973), with the bars opened in different
orders; the way that scores least is kept.
"""

from __future__ import annotations

from bisect import bisect_left, insort
from collections.abc import Iterator
from dataclasses import dataclass, field

from binder_plugins.cutlist.loads import Load, Packing, settled
from binder_plugins.cutlist.problem import Problem


@dataclass(frozen=True, slots=True)
class Way:
    """In what order kinds are opened, whether owned bars all lie ready, and how room is chosen."""

    kinds: tuple[int, ...]
    is_ready: bool
    is_best_fit: bool


@dataclass(slots=True)
class _Bench:
    """The bars while they fill: kind, contents and room of each, and what is still in stock."""

    stock: list[int | None]
    kinds: list[int] = field(default_factory=list)
    contents: list[list[int]] = field(default_factory=list)
    rooms: list[int] = field(default_factory=list)
    by_room: list[tuple[int, int]] = field(default_factory=list)

    def open(self, kind: int, capacity: int) -> int:
        count = self.stock[kind]
        self.stock[kind] = None if count is None else count - 1
        self.kinds.append(kind)
        self.contents.append([])
        self.rooms.append(capacity)
        insort(self.by_room, (capacity, len(self.rooms) - 1))
        return len(self.rooms) - 1

    def place(self, bar: int, weight: int) -> None:
        del self.by_room[bisect_left(self.by_room, (self.rooms[bar], bar))]
        self.contents[bar].append(weight)
        self.rooms[bar] -= weight
        insort(self.by_room, (self.rooms[bar], bar))

    def first_fit(self, weight: int) -> int | None:
        return next((bar for bar, room in enumerate(self.rooms) if room >= weight), None)

    def best_fit(self, weight: int) -> int | None:
        place = bisect_left(self.by_room, (weight, 0))
        return self.by_room[place][1] if place < len(self.by_room) else None


def greedy(problem: Problem) -> Packing:
    """The best of all ways; among equals the one tried first."""
    packings = (settled(problem, _packed(problem, way)) for way in _ways(problem))
    return min(packings, key=lambda packing: packing.score(problem))


def _ways(problem: Problem) -> Iterator[Way]:
    places = range(len(problem.kinds))
    owned = tuple(place for place in places if problem.kinds[place].count is not None)
    bought = tuple(place for place in places if problem.kinds[place].count is None)
    for favourite in bought or (None,):
        rest = tuple(place for place in bought if place != favourite)
        last = rest if favourite is None else (favourite, *rest)
        for first in dict.fromkeys((owned, owned[::-1])):
            for is_ready in (True, False) if owned else (False,):
                for is_best_fit in (True, False):
                    yield Way((*first, *last), is_ready, is_best_fit)


def _packed(problem: Problem, way: Way) -> Packing:
    bench = _Bench([kind.count for kind in problem.kinds])
    if way.is_ready:
        _lay_ready(problem, way, bench)
    unplaced = []
    for weight in problem.weights:
        bar = bench.best_fit(weight) if way.is_best_fit else bench.first_fit(weight)
        if bar is None:
            bar = _next_bar(problem, way, bench, weight)
        if bar is None:
            unplaced.append(weight)
        else:
            bench.place(bar, weight)
    filled = zip(bench.kinds, bench.contents, strict=True)
    loads = tuple(Load(kind, tuple(weights)) for kind, weights in filled if weights)
    return Packing(loads, tuple(unplaced))


def _lay_ready(problem: Problem, way: Way, bench: _Bench) -> None:
    """No more of a kind than there are pieces: a longer row could not be filled."""
    for kind in way.kinds:
        for _ in range(min(bench.stock[kind] or 0, len(problem.weights))):
            bench.open(kind, problem.kinds[kind].capacity)


def _next_bar(problem: Problem, way: Way, bench: _Bench, weight: int) -> int | None:
    for kind in way.kinds:
        if bench.stock[kind] != 0 and problem.kinds[kind].capacity >= weight:
            return bench.open(kind, problem.kinds[kind].capacity)
    return None
