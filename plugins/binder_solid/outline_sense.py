"""Numbers and outlines looked at before the kernel sees them."""

from __future__ import annotations

import math
from collections.abc import Iterator

from .crossings import first_crossing
from .faults import Unbuildable
from .forms import Arc, Curve, Outline, Point, Segment, Straight
from .lines import corners, end_of, least_and_most, loop, pieces_of, signed_area

LARGEST = 10_000.0
SMALLEST = 1e-4
MOST_SEGMENTS = 5_000
MOST_HOLES = 1_000


def check_number(value: float, where: str) -> None:
    """Raises Unbuildable for what is no number, or is more than 10 m."""
    if not math.isfinite(value):
        raise Unbuildable("no number", where)
    if abs(value) > LARGEST:
        raise Unbuildable(f"more than {LARGEST:g}", where)


def check_size(value: float, where: str) -> None:
    """Raises Unbuildable for what is no size: none at all, negative, or more than 10 m."""
    check_number(value, where)
    if value < SMALLEST:
        raise Unbuildable("not more than nothing", where)


def check_outline(outline: Outline, where: str) -> None:
    """Raises Unbuildable for an outline that is not closed, crosses itself or holds nothing."""
    loops = (outline, *outline.holes)
    if len(outline.holes) > MOST_HOLES:
        raise Unbuildable(f"more than {MOST_HOLES} holes", where)
    places = (where, *(f"{where}.holes[{number}]" for number in range(len(outline.holes))))
    for part, place in zip(loops, places, strict=True):
        _check_segments(part, place)
    pieces = [loop(part) for part in loops]
    if sum(map(len, pieces)) > MOST_SEGMENTS:
        raise Unbuildable(f"more than {MOST_SEGMENTS} segments", where)
    crossing = first_crossing(pieces)
    if crossing is not None:
        raise Unbuildable(f"crosses itself at {crossing[0]:.3f}, {crossing[1]:.3f}", where)
    for part, place in zip(loops, places, strict=True):
        if abs(signed_area(part)) < SMALLEST**2:
            raise Unbuildable("an outline round nothing", place)
    _check_nesting(outline, where)


def _check_segments(outline: Outline, where: str) -> None:
    for value in outline.start:
        check_number(value, f"{where}.start")
    here = outline.start
    for number, segment in enumerate(outline.segments):
        _check_segment(here, segment, f"{where}.segments[{number}]")
        here = end_of(segment)


def _check_segment(start: Point, segment: Segment, where: str) -> None:
    points = list(_points(segment))
    if not points:
        raise Unbuildable("a curve without points", where)
    for point in points:
        for value in point:
            check_number(value, where)
    for one, other in zip((start, *points), points, strict=False):
        if math.dist(one, other) < SMALLEST:
            raise Unbuildable("a line of no length", where)
    try:
        pieces_of(start, segment)
    except Unbuildable as fault:
        raise Unbuildable(fault.reason, where) from None


def _points(segment: Segment) -> Iterator[Point]:
    match segment:
        case Straight(to):
            yield to
        case Arc(through, to):
            yield through
            yield to
        case Curve(points):
            yield from points


def _check_nesting(outline: Outline, where: str) -> None:
    """Crossings are out of the question by now, so one point of a hole tells for all of it."""
    rim = corners(outline) if outline.holes else ()
    holes = [(corners(hole), least_and_most(hole)) for hole in outline.holes]
    for number, (hole, _) in enumerate(holes):
        place = f"{where}.holes[{number}]"
        if not is_within(hole[0], rim):
            raise Unbuildable("a hole outside its outline", place)
        if any(
            _is_in_box(hole[0], box) and is_within(hole[0], other)
            for n, (other, box) in enumerate(holes)
            if n != number
        ):
            raise Unbuildable("a hole within a hole", place)
        if outline.holes[number].holes:
            raise Unbuildable("a hole with holes of its own", place)


def _is_in_box(point: Point, box: tuple[Point, Point]) -> bool:
    return all(box[0][n] <= point[n] <= box[1][n] for n in (0, 1))


def is_within(point: Point, polygon: tuple[Point, ...]) -> bool:
    """Says whether a point lies within a closed polygon."""
    x, y = point
    inside = False
    for (ax, ay), (bx, by) in zip(polygon, (*polygon[1:], polygon[0]), strict=False):
        if (ay > y) != (by > y) and x < (bx - ax) * (y - ay) / (by - ay) + ax:
            inside = not inside
    return inside
