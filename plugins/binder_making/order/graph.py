"""Operations and edges to a graph of places: musts for certain, preferences where they agree."""

from __future__ import annotations

import heapq
from collections.abc import Sequence
from dataclasses import dataclass

from binder_making.operation import Operation
from binder_making.order.dynamic import Growing, Row
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


def graph(
    operations: Sequence[Operation], edges: Sequence[Edge], *, without: Sequence[Edge] = ()
) -> Graph | Loop:
    """The graph of operations; or the shortest ring of musts that was found.

    Edges to operations that are not in the list are left out. Preferences enter by priority,
    then by the order of the operations, each one only where it closes no ring with what is in
    already; those of `without` stay out. Raises ValueError where two operations have one id,
    which is a fault of the caller.
    """
    place = _places(operations)
    after: list[Row] = [{} for _ in operations]
    before: list[Row] = [{} for _ in operations]
    wishes: list[tuple[Edge, int, int]] = []
    for edge in edges:
        earlier, later = place.get(edge.before), place.get(edge.after)
        if earlier is None or later is None:
            continue
        if edge.is_must:
            after[earlier][later] = None
            before[later][earlier] = None
        else:
            wishes.append((edge, earlier, later))
    order = topological(after, before)
    if len(order) < len(operations):
        from binder_making.order.rings import shortest_loop

        return shortest_loop([edge for edge in edges if edge.is_must], set(order), operations)
    growing = Growing(order, after, before)
    gave_way = _granted(growing, wishes, without)
    return Graph(tuple(operations), tuple(map(tuple, after)), tuple(map(tuple, before)), gave_way)


def _places(operations: Sequence[Operation]) -> dict[str, int]:
    place = {one.id: number for number, one in enumerate(operations)}
    if len(place) < len(operations):
        raise ValueError("two operations have the same id")
    return place


def _granted(
    growing: Growing, wishes: Sequence[tuple[Edge, int, int]], without: Sequence[Edge]
) -> tuple[Edge, ...]:
    """Takes one preference after another into the graph; gives those that have no place in it."""
    left_out = {(edge.before, edge.after, edge.rule) for edge in without}
    gave_way = []
    for edge, earlier, later in sorted(wishes, key=lambda wish: wish[0].priority):
        is_out = (edge.before, edge.after, edge.rule) in left_out
        if is_out or not growing.add(earlier, later):
            gave_way.append(edge)
    return tuple(gave_way)


def topological(after: Sequence[Row], before: Sequence[Row]) -> list[int]:
    """An order of places that respects the rows; what is in or behind a ring is left out.

    Of those that are free the lowest comes first.
    """
    waits = [len(row) for row in before]
    free = [one for one, count in enumerate(waits) if not count]
    order: list[int] = []
    while free:
        one = heapq.heappop(free)
        order.append(one)
        for later in after[one]:
            waits[later] -= 1
            if not waits[later]:
                heapq.heappush(free, later)
    return order
