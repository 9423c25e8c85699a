"""Operations and edges to a graph of places: musts for certain, preferences where they agree."""

from __future__ import annotations

import heapq
from collections.abc import Sequence
from dataclasses import dataclass

from binder_making.operation import Operation
from binder_making.order.dynamic import Growing
from binder_making.order.loop import Loop
from binder_making.precedence import Edge


@dataclass(frozen=True, slots=True)
class Graph:
    """Who waits for whom, by places in the list of operations.

    `gave_way` are the preferences that contradict musts or preferences of higher priority.
    """

    operations: tuple[Operation, ...]
    after: tuple[tuple[int, ...], ...]
    before: tuple[tuple[int, ...], ...]
    gave_way: tuple[Edge, ...]


def known(operations: Sequence[Operation], edges: Sequence[Edge]) -> list[Edge]:
    """The edges of which both ends stand in the list.

    Raises ValueError where two operations have one id, which is a fault of the caller.
    """
    ids = {one.id for one in operations}
    if len(ids) < len(operations):
        raise ValueError("two operations have the same id")
    return [edge for edge in edges if edge.before in ids and edge.after in ids]


def graph(
    operations: Sequence[Operation], edges: Sequence[Edge], *, without: Sequence[Edge] = ()
) -> Graph | Loop:
    """The graph of operations; or the shortest ring of musts that was found.

    Preferences enter by priority, then by the order of the operations, each one only where it
    closes no ring with what is in already; those of `without` stay out.
    """
    place = {one.id: number for number, one in enumerate(operations)}
    found = known(operations, edges)
    musts = dict.fromkeys((place[e.before], place[e.after]) for e in found if e.is_must)
    order = topological(len(operations), list(musts))
    if len(order) < len(operations):
        from binder_making.order.rings import shortest_loop

        return shortest_loop([edge for edge in found if edge.is_must], set(order), operations)
    growing = Growing(order, musts)
    left_out = {(edge.before, edge.after, edge.rule) for edge in without}
    gave_way = []
    for edge in sorted((e for e in found if not e.is_must), key=lambda e: e.priority):
        is_out = (edge.before, edge.after, edge.rule) in left_out
        if is_out or not growing.add(place[edge.before], place[edge.after]):
            gave_way.append(edge)
    return Graph(
        tuple(operations),
        tuple(tuple(row) for row in growing.after),
        tuple(tuple(row) for row in growing.before),
        tuple(gave_way),
    )


def topological(count: int, pairs: Sequence[tuple[int, int]]) -> list[int]:
    """An order of 0 … count−1 that respects the pairs; what is in or behind a ring is left out.

    Of those that are free the lowest comes first.
    """
    after: list[list[int]] = [[] for _ in range(count)]
    waits = [0] * count
    for earlier, later in pairs:
        after[earlier].append(later)
        waits[later] += 1
    free = [one for one in range(count) if not waits[one]]
    order: list[int] = []
    while free:
        one = heapq.heappop(free)
        order.append(one)
        for later in after[one]:
            waits[later] -= 1
            if not waits[later]:
                heapq.heappush(free, later)
    return order
