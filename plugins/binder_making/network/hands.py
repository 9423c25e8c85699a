"""Activities that share what is scarce, as a maker's two hands, to when each is done.

Source: the parallel scheme of list scheduling with the rule of least slack; J.E. Kelley, The
critical path method: resources planning and scheduling (1963); R. Kolisch, European Journal of
Operational Research 90 (1996), from memory. A heuristic: no schedule is shorter than the critical
path, and this one need not be the shortest.
"""

from __future__ import annotations

import heapq
import math
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field

from binder_making.network.path import Activity, critical_path
from binder_trade.explained import NotDefined

Needs = tuple[tuple[str, float], ...]
_SAME = 1e-9


@dataclass(frozen=True, slots=True)
class Schedule:
    """When each activity starts and is finished, by its id, and the length of the whole."""

    times: Mapping[str, tuple[float, float]]
    length: float


def scheduled(
    activities: Sequence[Activity],
    needs: Mapping[str, Mapping[str, float]],
    there_is: Mapping[str, float],
) -> Schedule:
    """A schedule in which never more of anything is taken than there is of it.

    `needs` tells how much of what an activity takes as long as it lasts, nothing where it is
    left out. At each time those that may start do, the one with the least slack on the critical
    path first, then the first in the list. Raises `NotDefined` for a network that is none, or
    for a need of more than there is. Cost: activities × the kinds of needs, and their sorting.
    """
    net = critical_path(activities)
    slack = [net.times[one.id].total_float for one in activities]
    takes = [_needs(one.id, needs.get(one.id, {}), there_is) for one in activities]
    bench = _Bench(dict(there_is), slack, takes)
    later, left = _waiting(activities)
    for number, count in enumerate(left):
        if not count:
            bench.offer(number)
    running: list[tuple[float, int]] = []
    times: dict[str, tuple[float, float]] = {}
    now = 0.0
    while True:
        while (begun := bench.start()) is not None:
            one = activities[begun]
            times[one.id] = (now, now + one.duration)
            heapq.heappush(running, (now + one.duration, begun))
        if not running:
            return Schedule(times, max((end for _, end in times.values()), default=0.0))
        now = running[0][0]
        while running and running[0][0] <= now:
            done = heapq.heappop(running)[1]
            bench.give_back(done)
            for other in later[done]:
                left[other] -= 1
                if not left[other]:
                    bench.offer(other)


@dataclass(slots=True)
class _Bench:
    """What is free, and those that may start, the most urgent first for each kind of need."""

    free: dict[str, float]
    slack: Sequence[float]
    takes: Sequence[Needs]
    offered: dict[Needs, list[tuple[float, int]]] = field(default_factory=dict)

    def offer(self, number: int) -> None:
        """One has nothing more to wait for."""
        row = self.offered.setdefault(self.takes[number], [])
        heapq.heappush(row, (self.slack[number], number))

    def start(self) -> int | None:
        """The most urgent for which there is enough takes what it needs; None for none."""
        able = [row for need, row in self.offered.items() if row and self._is_enough(need)]
        if not able:
            return None
        number = heapq.heappop(min(able))[1]
        for name, much in self.takes[number]:
            self.free[name] -= much
        return number

    def give_back(self, number: int) -> None:
        """One is finished."""
        for name, much in self.takes[number]:
            self.free[name] += much

    def _is_enough(self, need: Needs) -> bool:
        return all(self.free[name] >= much - _SAME for name, much in need)


def _needs(name: str, asked: Mapping[str, float], there_is: Mapping[str, float]) -> Needs:
    for what, much in asked.items():
        if not math.isfinite(much) or much < 0:
            raise NotDefined(f"'{name}' takes {much:g} of {what}", "give nothing or more")
        if much > there_is.get(what, 0.0) + _SAME:
            raise NotDefined(
                f"'{name}' takes {much:g} of {what}, and there is {there_is.get(what, 0.0):g}",
                "get more of it, or do it in parts",
            )
    return tuple(sorted((what, much) for what, much in asked.items() if much))


def _waiting(activities: Sequence[Activity]) -> tuple[list[list[int]], list[int]]:
    """For each the places of those that wait for it, and for how many it waits itself."""
    place = {one.id: number for number, one in enumerate(activities)}
    later: list[list[int]] = [[] for _ in activities]
    left = []
    for number, one in enumerate(activities):
        before = dict.fromkeys(one.after)
        left.append(len(before))
        for name in before:
            later[place[name]].append(number)
    return later, left
