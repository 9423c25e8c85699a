"""Pieces to shapes on the paper, the whole of them or what lies in a window."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator

from binder.api import DrawnArc, DrawnDisc, DrawnShape, Polyline
from binder_drafting import Bow, Edge, Rectangle
from binder_drafting.clip import clipped, is_in_strip, within_strip
from binder_plugins.templates.piece import STROKES, Piece, drawn_letters
from binder_solid.forms import Point

Put = Callable[[Point], Point]


def drawn_piece(piece: Piece, at: Point, window: Rectangle | None = None) -> Iterator[DrawnShape]:
    """The shapes, the window's upper left corner at a point of the paper.

    A window is told in the piece's own mm, y upwards: `top` is its least y, `bottom` its most.
    """
    seen = window or Rectangle(0.0, 0.0, *piece.size)

    def put(point: Point) -> Point:
        return (at[0] + point[0] - seen.left, at[1] + seen.bottom - point[1])

    for edge in _within(piece.edges, window) if window else piece.edges:
        yield _drawn(edge, put)
    for one in piece.letters:
        if seen.left <= one.at[0] < seen.right and seen.top <= one.at[1] < seen.bottom:
            yield drawn_letters(one, put(one.at))


def _drawn(edge: Edge, put: Put) -> DrawnShape:
    stroke = STROKES[edge.kind]
    if not isinstance(edge, Bow):
        return Polyline(tuple(put(point) for point in edge.points), stroke)
    x, y = put(edge.centre)
    if edge.end - edge.start >= 360.0 - 1e-6:
        return DrawnDisc(x, y, edge.radius, stroke=stroke)
    return DrawnArc(x, y, edge.radius, edge.start, edge.end, stroke)


def _within(edges: Iterable[Edge], window: Rectangle) -> Iterator[Edge]:
    strips = ((0, window.left, window.right), (1, window.top, window.bottom))
    found = list(edges)
    for axis, low, high in strips:
        kept, is_inside = within_strip(axis, low, high), is_in_strip(axis, low, high)
        found = [piece for edge in found for piece in clipped(edge, kept, is_inside)]
    yield from found
