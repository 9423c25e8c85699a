"""Places for some words to the one that the fewest lines run through."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

from binder_drafting import Edge, Rectangle
from binder_drafting.edges import as_chain
from binder_drafting.plane import enters

# What a line leaves of white beside it before letters look struck out.
_WHITE = 0.4


def clearest(boxes: Sequence[Rectangle], edges: Sequence[Edge]) -> Rectangle:
    """The first box of those with the fewest lines in them; there must be one."""
    lines = [line for edge in edges for line in pairwise(as_chain(edge))]

    def crossed(box: Rectangle) -> int:
        wide = box.grown(_WHITE)
        return sum(enters(*line, wide) for line in lines)

    return min(boxes, key=crossed)
