"""Musts that contradict one another to the shortest ring of them, with its reasons."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

import networkx as nx

from binder_making.operation import Operation
from binder_making.order.loop import Loop
from binder_making.precedence import Edge

_STARTS = 50


def shortest_loop(
    musts: Sequence[Edge], ordered: set[int], operations: Sequence[Operation]
) -> Loop:
    """A shortest ring through one of the first operations that cannot be ordered.

    `ordered` are the places that could be ordered; at least one ring is among the others.
    """
    stuck = {one.id: None for place, one in enumerate(operations) if place not in ordered}
    reasons: dict[tuple[str, str], Edge] = {}
    for edge in musts:
        if edge.before in stuck and edge.after in stuck:
            reasons.setdefault((edge.before, edge.after), edge)
    web: nx.DiGraph[str] = nx.DiGraph()
    web.add_nodes_from(stuck)
    web.add_edges_from(reasons)
    rings = [ring for start in _inside(web, list(stuck)) for ring in _through(web, start)]
    ring = min(rings, key=len)
    return Loop(tuple(reasons[pair] for pair in pairwise([*ring, ring[0]])))


def _inside(web: nx.DiGraph[str], stuck: list[str]) -> list[str]:
    """The first operations that are in a ring, not only behind one."""
    in_ring: set[str] = set()
    for component in nx.strongly_connected_components(web):
        if len(component) > 1:
            in_ring |= component
    return [one for one in stuck if one in in_ring or web.has_edge(one, one)][:_STARTS]


def _through(web: nx.DiGraph[str], start: str) -> list[list[str]]:
    """The shortest ring through `start`, from `start` on."""
    if web.has_edge(start, start):
        return [[start]]
    ways = nx.single_source_shortest_path(web, start)
    back = [one for one in web.predecessors(start) if one in ways]
    return [min((ways[one] for one in back), key=len)] if back else []
