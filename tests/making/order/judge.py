"""Whether a sequence keeps its edges, and whether the loss of one would be seen."""

from __future__ import annotations

from collections.abc import Sequence

from binder_making.operation import Operation
from binder_making.order import Loop, in_order
from binder_making.precedence import Edge


def broken(sequence: Sequence[str], given_edges: Sequence[Edge]) -> list[Edge]:
    """The edges that a sequence does not keep: the judge of all tests of the order."""
    place = {name: number for number, name in enumerate(sequence)}
    return [edge for edge in given_edges if place[edge.before] >= place[edge.after]]


def is_missed(work: Sequence[Operation], musts: Sequence[Edge], gone: Edge) -> bool:
    """Whether the judge sees it when an edge is left out and its two ends stand the other way.

    Where others imply the edge, to turn it round contradicts them: the ring has both its ends.
    """
    left = [e for e in musts if (e.before, e.after) != (gone.before, gone.after)]
    turned = in_order(work, [*left, Edge(gone.after, gone.before, "turned round")])
    if isinstance(turned, Loop):
        return {gone.after, gone.before} <= {one.before for one in turned.edges}
    found = broken(turned.sequence, musts)
    return {(one.before, one.after) for one in found} == {(gone.before, gone.after)}
