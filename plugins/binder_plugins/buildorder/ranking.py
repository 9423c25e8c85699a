"""Names and what comes before what to one order, to layers, or to the ring that forbids both."""

from __future__ import annotations

import heapq
from collections.abc import Iterable

from binder.api import Before


def ordered(tasks: list[str], befores: Iterable[Before]) -> list[str]:
    """A topological order; of those that are free the first in `tasks` comes first.

    Tasks in or behind a ring are left out. Cost: n log n in tasks and reasons.
    """
    rank = {task: place for place, task in enumerate(tasks)}
    waits = dict.fromkeys(tasks, 0)
    after: dict[str, list[str]] = {}
    for one in befores:
        waits[one.later] += 1
        after.setdefault(one.earlier, []).append(one.later)
    free = [rank[task] for task in tasks if not waits[task]]
    heapq.heapify(free)
    order: list[str] = []
    while free:
        task = tasks[heapq.heappop(free)]
        order.append(task)
        for later in after.get(task, ()):
            waits[later] -= 1
            if not waits[later]:
                heapq.heappush(free, rank[later])
    return order


def layered(order: Iterable[str], befores: Iterable[Before]) -> dict[str, int]:
    """The layer of each task: one more than the deepest of those before it."""
    before: dict[str, list[str]] = {}
    for one in befores:
        before.setdefault(one.later, []).append(one.earlier)
    layers: dict[str, int] = {}
    for task in order:
        layers[task] = max((layers[one] + 1 for one in before.get(task, ())), default=0)
    return layers


def find_ring(stuck: set[str], befores: Iterable[Before]) -> list[Before]:
    """One ring of reasons among tasks that could not be ordered."""
    waits_for: dict[str, Before] = {}
    for one in befores:
        if one.later in stuck and one.earlier in stuck:
            waits_for.setdefault(one.later, one)
    here = min(waits_for)
    seen: dict[str, int] = {}
    path: list[Before] = []
    while here not in seen:
        seen[here] = len(path)
        path.append(waits_for[here])
        here = waits_for[here].earlier
    return path[seen[here] :]
