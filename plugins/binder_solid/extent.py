"""The box that lines on paper lie in."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from .forms import Point
from .views import Edge, Line, RoundLine, points_of


def bounds_of(edges: Iterable[Edge]) -> tuple[Point, Point]:
    """Gives the least and most point of edges; no edges at all lie at 0."""
    points = [point for edge in edges for point in _outermost(edge.line)] or [(0.0, 0.0)]
    xs, ys = [p[0] for p in points], [p[1] for p in points]
    return (min(xs), min(ys)), (max(xs), max(ys))


def _outermost(line: Line) -> Iterator[Point]:
    if not isinstance(line, RoundLine):
        yield from points_of(line)
        return
    yield from points_of(line, 360.0)
    (x, y), radius = line.centre, line.radius
    sides = ((x + radius, y), (x, y + radius), (x - radius, y), (x, y - radius))
    for quarter in range(8):
        if line.start <= 90.0 * quarter <= line.end:
            yield sides[quarter % 4]
