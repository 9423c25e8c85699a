"""A long plain face with work at one end alone: the rest of it needs no paper."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise

from binder_drafting import Chain, Edge, Rectangle
from binder_plugins.templates.marking import OUTLINE
from binder_plugins.templates.piece import PAD, Piece
from binder_solid.forms import Point

WORDS = "the end from which it is measured; what is cut off here is plain"
# What is kept beyond the last line in mm, so that the outline is seen to go on.
_BEYOND = 8.0
_SAME = 1e-3


def worked_end(piece: Piece, room: Point) -> Rectangle | None:
    """The window of all that is worked in a plain rectangle, if it has an end and fits in `room`.

    In the piece's own mm. None where both ends are worked, or the outline is of another shape.
    """
    if not _is_plain(piece) or piece.size[1] > room[1]:
        return None
    inner = [x for edge in piece.edges if edge.kind != OUTLINE for x in _along(edge)]
    inner += [one.at[0] for one in piece.letters]
    if not inner:
        return None
    long = piece.size[0]
    left, right = min(inner) - _BEYOND, max(inner) + _BEYOND
    windows = (
        Rectangle(0.0, 0.0, right, piece.size[1]),
        Rectangle(left, 0.0, long, piece.size[1]),
    )
    fitting = [one for one in windows if one.width <= min(room[0], long)]
    return min(fitting, key=lambda one: one.width) if fitting else None


def _is_plain(piece: Piece) -> bool:
    """Whether its outline is nothing but the four sides of its envelope."""
    wide, high = piece.size
    sides = ((0, PAD), (0, wide - PAD), (1, PAD), (1, high - PAD))
    return all(
        isinstance(edge, Chain)
        and all(
            any(abs(a[way] - at) < _SAME and abs(b[way] - at) < _SAME for way, at in sides)
            for a, b in pairwise(edge.points)
        )
        for edge in piece.edges
        if edge.kind == OUTLINE
    )


def _along(edge: Edge) -> Iterator[float]:
    if isinstance(edge, Chain):
        yield from (at[0] for at in edge.points)
    else:
        yield from (edge.centre[0] - edge.radius, edge.centre[0] + edge.radius)
