"""Places for some words to the one that the fewest lines run through."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from itertools import pairwise

from binder_drafting import Edge, Rectangle
from binder_drafting.edges import as_chain, extremes
from binder_drafting.plane import around, enters, union
from binder_plugins.templates.squares import Squares

# What a line leaves of white beside it before letters look struck out.
_WHITE = 0.4

Ground = Squares[Edge]


def ground_of(edges: Iterable[Edge]) -> Ground:
    """Edges, each with the room that it takes: most are far from any one place."""
    ground: Ground = Squares()
    for edge in edges:
        ground.add(around(extremes(edge)).grown(_WHITE), edge)
    return ground


def clearest(boxes: Sequence[Rectangle], ground: Ground) -> Rectangle:
    """The first box of those with the fewest lines in them; there must be one."""
    near = ground.near(union(boxes).grown(_WHITE))
    lines = [line for edge in near for line in pairwise(as_chain(edge))]

    def crossed(box: Rectangle) -> int:
        wide = box.grown(_WHITE)
        return sum(enters(*line, wide) for line in lines)

    return min(boxes, key=crossed)
