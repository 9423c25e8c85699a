"""Edges and outlines to the part of them that lies within a circle or within a strip."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from itertools import pairwise
from math import hypot, sqrt

from binder_drafting.edges import Bow, Chain, Edge, Point, as_chain, extremes, on_circle

# The share of a straight line that is kept, from and to; None if nothing is.
Kept = Callable[[Point, Point], tuple[float, float] | None]
_FINE = 3.0
_SIDES = 48


def within_circle(centre: Point, radius: float) -> Kept:
    """Keeps what lies in a circle."""

    def kept(one: Point, two: Point) -> tuple[float, float] | None:
        across, up = two[0] - one[0], two[1] - one[1]
        x, y = one[0] - centre[0], one[1] - centre[1]
        square, half = across * across + up * up, x * across + y * up
        under = half * half - square * (x * x + y * y - radius * radius)
        if square == 0 or under <= 0:
            return None
        root = sqrt(under)
        first, last = max(0.0, (-half - root) / square), min(1.0, (-half + root) / square)
        return (first, last) if first < last else None

    return kept


def within_strip(axis: int, low: float, high: float) -> Kept:
    """Keeps what lies between two values of u (axis 0) or v (axis 1)."""

    def kept(one: Point, two: Point) -> tuple[float, float] | None:
        run = two[axis] - one[axis]
        if run == 0:
            return (0.0, 1.0) if low <= one[axis] <= high else None
        first, last = sorted(((low - one[axis]) / run, (high - one[axis]) / run))
        first, last = max(0.0, first), min(1.0, last)
        return (first, last) if first < last else None

    return kept


def clipped(edge: Edge, kept: Kept, is_inside: Callable[[Point], bool]) -> Iterator[Edge]:
    """The pieces of an edge that are kept; an arc that is kept whole stays an arc."""
    if isinstance(edge, Bow) and all(map(is_inside, extremes(edge))):
        yield edge
        return
    piece: list[Point] = []
    for one, two in pairwise(as_chain(edge, _FINE)):
        share = kept(one, two)
        if share is None:
            continue
        start, end = _between(one, two, share[0]), _between(one, two, share[1])
        if piece and piece[-1] != start:
            yield Chain(tuple(piece), edge.kind)
            piece = []
        piece = [*piece, end] if piece else [start, end]
        if share[1] < 1.0:
            yield Chain(tuple(piece), edge.kind)
            piece = []
    if piece:
        yield Chain(tuple(piece), edge.kind)


def _between(one: Point, two: Point, share: float) -> Point:
    if share in {0.0, 1.0}:
        return two if share else one
    return (one[0] + (two[0] - one[0]) * share, one[1] + (two[1] - one[1]) * share)


def is_in_circle(centre: Point, radius: float) -> Callable[[Point], bool]:
    """Whether a point lies in a circle."""
    return lambda point: hypot(point[0] - centre[0], point[1] - centre[1]) <= radius


def is_in_strip(axis: int, low: float, high: float) -> Callable[[Point], bool]:
    """Whether a point lies between two values of u or v."""
    return lambda point: low <= point[axis] <= high


def loop_in_circle(loop: Sequence[Point], centre: Point, radius: float) -> tuple[Point, ...]:
    """A closed outline cut down to a circle, which is taken as a polygon of many sides."""
    corners = [on_circle(centre, radius, 360 * n / _SIDES) for n in range(_SIDES)]
    for one, two in pairwise([*corners, corners[0]]):
        loop = _cut(loop, one, (one[1] - two[1], two[0] - one[0]))
    return tuple(loop)


def loop_in_strip(loop: Sequence[Point], axis: int, low: float, high: float) -> tuple[Point, ...]:
    """A closed outline cut down to a strip."""
    inwards = (1.0, 0.0) if axis == 0 else (0.0, 1.0)
    outwards = (-inwards[0], -inwards[1])
    loop = _cut(loop, (low, low), inwards)
    return tuple(_cut(loop, (high, high), outwards))


def _cut(loop: Sequence[Point], at: Point, inwards: Point) -> list[Point]:
    """The part of a closed outline on one side of a straight line (polygon clipping)."""
    found: list[Point] = []
    deep = [(x - at[0]) * inwards[0] + (y - at[1]) * inwards[1] for x, y in loop]
    for n, point in enumerate(loop):
        before, here = deep[n - 1], deep[n]
        if (before < 0) != (here < 0):
            found.append(_between(loop[n - 1], point, before / (before - here)))
        if here >= 0:
            found.append(point)
    return found
