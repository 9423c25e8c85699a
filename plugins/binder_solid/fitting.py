"""Points on paper told as a straight or round line where they lie on one."""

from __future__ import annotations

import math
from itertools import pairwise

from .faults import Unbuildable
from .forms import Point
from .lines import bow
from .views import FreeLine, Line, RoundLine, StraightLine

_STRAIGHT = 1e-4  # mm that points may lie beside a line that they are taken for
_ROUND = 2e-3  # the kernel finds where two faces meet to about a thousandth of a mm
_FLATTEST = 10.0  # times its chord that the radius of an arc may be
_SMALLEST = 1e-6


def fitted(points: tuple[Point, ...]) -> Line | None:
    """Gives the plainest line through points; nothing where they are all one."""
    least, most = _ends(points)
    if math.dist(least, most) < _SMALLEST:
        return None
    if all(_beside(point, least, most) <= _STRAIGHT for point in points):
        return StraightLine(least, most)
    return _round(points) or FreeLine(points)


def _ends(points: tuple[Point, ...]) -> tuple[Point, Point]:
    """The two points farthest apart, if all lie in a line; it may run back on itself."""
    first = points[0]
    far = max(points, key=lambda point: math.dist(first, point))
    return max(points, key=lambda point: math.dist(far, point)), far


def _beside(point: Point, start: Point, end: Point) -> float:
    dx, dy = end[0] - start[0], end[1] - start[1]
    return abs((point[0] - start[0]) * dy - (point[1] - start[1]) * dx) / math.hypot(dx, dy)


def _round(points: tuple[Point, ...]) -> RoundLine | None:
    if len(points) < 5:
        return None
    third = len(points) // 3
    try:
        circle = bow(points[0], points[third], points[2 * third])
    except Unbuildable:
        return None
    centre = (round(circle.centre[0], 4), round(circle.centre[1], 4))
    radius = round(circle.radius, 4)
    if radius > _FLATTEST * math.dist(*_ends(points)):
        return None
    if any(abs(math.dist(centre, point) - radius) > _ROUND for point in points):
        return None
    return _arc(centre, radius, points)


def _arc(centre: Point, radius: float, points: tuple[Point, ...]) -> RoundLine | None:
    angles = [math.degrees(math.atan2(y - centre[1], x - centre[0])) for x, y in points]
    turns = [(b - a + 180.0) % 360.0 - 180.0 for a, b in pairwise(angles)]
    if min(turns) < -1e-3 and max(turns) > 1e-3:
        return None
    sweep = sum(turns)
    if abs(sweep) > 360.0 - 0.1:
        return RoundLine(centre, radius, 0.0, 360.0)
    start = (angles[0] if sweep > 0 else angles[-1]) % 360.0
    return RoundLine(centre, radius, start, start + abs(sweep))
