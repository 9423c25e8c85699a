"""A face laid flat to the lines that mark it out, each on its layer, in mm from its corner."""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import replace
from itertools import pairwise

from binder_drafting import Bow, Chain, Edge, edges_of
from binder_solid.flats import Flat, FlatHole
from binder_solid.forms import Point
from binder_solid.lines import Chord, loop
from binder_solid.views import View

OUTLINE = "outline"
HOLE = "hole"
MARK = "mark"
BEND = "bend"
_SAME = 1e-3


def marked(flat: Flat, cut: View | None, seen: View | None) -> tuple[Edge, ...]:
    """Outline, holes, marks of what does not go through, and bend lines.

    What the kernel has cut shows every slot and corner; without it the outline stands as it
    was written, with the round holes alone. What is seen besides is marked.
    """
    edges = tuple(_cut(flat, cut)) if cut is not None else tuple(_plain(flat))
    if seen is not None:
        edges = (*edges, *_besides(flat, seen, edges))
    blind = (hole for hole in flat.holes if not any(_is_rim(edge, hole) for edge in edges))
    marks = (Bow(hole.at, hole.diameter / 2.0, kind=_layer(hole)) for hole in blind)
    return (*edges, *marks, *_bends(flat))


def _layer(hole: FlatHole) -> str:
    return HOLE if hole.is_through else MARK


def _besides(flat: Flat, seen: View, edges: tuple[Edge, ...]) -> Iterator[Edge]:
    """What is seen and does not lie on a line that is there already."""
    across, up = flat.corner
    for edge in edges_of(edge for edge in seen.edges if edge.kind == "visible"):
        moved = _moved(edge, -across, -up)
        if not any(_lies_on(moved, other) for other in edges):
            hole = next((hole for hole in flat.holes if _is_of(moved, hole)), None)
            yield replace(moved, kind=_layer(hole) if hole else MARK)


def _lies_on(edge: Edge, other: Edge) -> bool:
    if isinstance(edge, Bow) and isinstance(other, Bow):
        apart = math.dist(edge.centre, other.centre) + abs(edge.radius - other.radius)
        return apart < _SAME
    if isinstance(edge, Bow) or isinstance(other, Bow):
        return False
    lines = tuple(pairwise(other.points))
    return all(any(_off(point, *line) < _SAME for line in lines) for point in edge.points)


def _off(point: Point, start: Point, end: Point) -> float:
    """How far a point lies off a straight line between two others."""
    (x, y), run = start, math.dist(start, end)
    if run == 0.0:
        return math.dist(point, start)
    way = ((end[0] - x) / run, (end[1] - y) / run)
    along = (point[0] - x) * way[0] + (point[1] - y) * way[1]
    along = min(max(along, 0.0), run)
    return math.dist(point, (x + along * way[0], y + along * way[1]))


def _cut(flat: Flat, view: View) -> Iterator[Edge]:
    across, up = flat.corner
    for edge in edges_of(edge for edge in view.edges if edge.kind == "section"):
        yield _named(_moved(edge, -across, -up), flat)


def _named(edge: Edge, flat: Flat) -> Edge:
    """A whole circle inside the outline is a hole, or the mouth of one; all else is outline."""
    if isinstance(edge, Chain):
        return Chain(edge.points, OUTLINE)
    is_whole = edge.end - edge.start >= 360.0 - 1e-6 and 2.0 * edge.radius < flat.size[0] - _SAME
    layer = _layer_of(edge, flat) if is_whole else OUTLINE
    return Bow(edge.centre, edge.radius, edge.start, edge.end, layer)


def _layer_of(circle: Bow, flat: Flat) -> str:
    hole = next((hole for hole in flat.holes if math.dist(hole.at, circle.centre) < _SAME), None)
    if hole is None:
        return HOLE
    is_mouth = abs(2.0 * circle.radius - hole.diameter) >= _SAME
    return MARK if is_mouth else _layer(hole)


def _moved(edge: Edge, across: float, up: float) -> Edge:
    if isinstance(edge, Chain):
        return Chain(tuple((x + across, y + up) for x, y in edge.points), edge.kind)
    x, y = edge.centre
    return Bow((x + across, y + up), edge.radius, edge.start, edge.end, edge.kind)


def _plain(flat: Flat) -> Iterator[Edge]:
    """The outline as it is written."""
    for piece in loop(flat.outline):
        if isinstance(piece, Chord):
            yield Chain((piece.start, piece.end), OUTLINE)
            continue
        first, sweep = math.degrees(piece.first), math.degrees(piece.sweep)
        start = min(first, first + sweep)
        yield Bow(piece.centre, piece.radius, start, start + abs(sweep), OUTLINE)


def _is_rim(edge: Edge, hole: FlatHole) -> bool:
    return edge.kind in (HOLE, MARK) and _is_of(edge, hole)


def _is_of(edge: Edge, hole: FlatHole) -> bool:
    return (
        isinstance(edge, Bow)
        and math.dist(edge.centre, hole.at) < _SAME
        and abs(2.0 * edge.radius - hole.diameter) < _SAME
    )


def _bends(flat: Flat) -> Iterator[Edge]:
    for bend in flat.bends:
        yield Chain(((bend.middle, 0.0), (bend.middle, flat.size[1])), BEND)
