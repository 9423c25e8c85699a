"""The edges of a view with nothing drawn twice."""

from __future__ import annotations

import math
from collections.abc import Callable, Iterable, Iterator
from functools import partial
from typing import TypeVar

from .forms import Point
from .spans import RANKS, Span, overlaid
from .trails import tidied_trails
from .views import Edge, FreeLine, Kind, RoundLine, StraightLine, points_of

_TOUCH = 2e-3  # mm: what lies nearer is the same on paper
_TURN = 2e-4  # radians between two directions that are the same
_CRUMB = 0.3  # mm
Of = TypeVar("Of")


def tidied(edges: Iterable[Edge], slack: float) -> tuple[Edge, ...]:
    """Draws what lies over one another once, and pieces of one line as one."""
    every = list(edges)
    straight = [(e.kind, e.line) for e in every if isinstance(e.line, StraightLine)]
    round_ones = [(e.kind, e.line) for e in every if isinstance(e.line, RoundLine)]
    free = [(e.kind, e.line) for e in every if isinstance(e.line, FreeLine)]
    found = [*_straight(straight, slack), *_round(round_ones, slack)]
    long = [edge for edge in found if not _is_crumb(edge)]
    crumbs = [
        (edge.kind, FreeLine(points_of(edge.line, 15.0))) for edge in found if _is_crumb(edge)
    ]
    trails = tidied_trails([*free, *crumbs], long, 5 * _TOUCH)
    drawn = [rounded(edge) for edge in (*long, *(_plainest(edge) for edge in trails))]
    return tuple(sorted(drawn, key=lambda edge: (RANKS.index(edge.kind), _place(edge))))


def _is_crumb(edge: Edge) -> bool:
    """Short enough to be a chord of some curve; it may lie on one that is drawn."""
    points = points_of(edge.line, 90.0)
    return math.dist(points[0], points[-1]) < _CRUMB and len(points) < 3


def _plainest(edge: Edge) -> Edge:
    points = points_of(edge.line)
    return Edge(edge.kind, StraightLine(*points)) if len(points) == 2 else edge


def rounded(edge: Edge) -> Edge:
    """Rounds an edge to a hundred-thousandth of a mm, finer than it is known."""
    match edge.line:
        case StraightLine(start, end):
            return Edge(edge.kind, StraightLine(_round_point(start), _round_point(end)))
        case FreeLine(points):
            return Edge(edge.kind, FreeLine(tuple(_round_point(at) for at in points)))
        case RoundLine(centre, radius, start, end):
            first, last = round(start, 5) + 0.0, round(end, 5) + 0.0
            return Edge(edge.kind, RoundLine(_round_point(centre), round(radius, 5), first, last))


def _round_point(at: Point) -> Point:
    return (round(at[0], 5) + 0.0, round(at[1], 5) + 0.0)


def _place(edge: Edge) -> tuple[str, tuple[Point, ...]]:
    return type(edge.line).__name__, points_of(edge.line, 45.0)


def _straight(lines: list[tuple[Kind, StraightLine]], slack: float) -> Iterator[Edge]:
    for alike in _clusters(lines, lambda entry: _angle(entry[1]), _TURN):
        turn = _angle(max((line for _, line in alike), key=_length))
        for beside in _clusters(alike, partial(_entry_offset, turn), _TOUCH):
            offset = _offset(max((line for _, line in beside), key=_length), turn)
            spans = ((kind, _span(line, turn)) for kind, line in beside)
            for kind, (start, end) in overlaid(spans, _TOUCH, slack):
                yield Edge(kind, StraightLine(_on(turn, offset, start), _on(turn, offset, end)))


def _clusters(items: list[Of], value: Callable[[Of], float], gap: float) -> Iterator[list[Of]]:
    group: list[Of] = []
    for item in sorted(items, key=value):
        if group and value(item) - value(group[-1]) > gap:
            yield group
            group = []
        group.append(item)
    if group:
        yield group


def _length(line: StraightLine) -> float:
    return math.dist(line.start, line.end)


def _angle(line: StraightLine) -> float:
    """From just under 0 to just under π, so that level lines are not torn apart."""
    angle = math.atan2(line.end[1] - line.start[1], line.end[0] - line.start[0]) % math.pi
    return angle - math.pi if angle > math.pi - _TURN else angle


def _entry_offset(turn: float, entry: tuple[Kind, StraightLine]) -> float:
    return _offset(entry[1], turn)


def _offset(line: StraightLine, turn: float) -> float:
    x, y = (line.start[0] + line.end[0]) / 2.0, (line.start[1] + line.end[1]) / 2.0
    return y * math.cos(turn) - x * math.sin(turn)


def _span(line: StraightLine, turn: float) -> Span:
    ends = [x * math.cos(turn) + y * math.sin(turn) for x, y in (line.start, line.end)]
    return (min(ends), max(ends))


def _on(turn: float, offset: float, along: float) -> Point:
    c, s = math.cos(turn), math.sin(turn)
    return (along * c - offset * s, along * s + offset * c)


def _round(lines: list[tuple[Kind, RoundLine]], slack: float) -> Iterator[Edge]:
    for same_radius in _clusters(lines, lambda entry: entry[1].radius, _TOUCH):
        for same_u in _clusters(same_radius, lambda entry: entry[1].centre[0], _TOUCH):
            for alike in _clusters(same_u, lambda entry: entry[1].centre[1], _TOUCH):
                first = alike[0][1]
                degree = math.degrees(1.0 / first.radius)
                spans = [part for kind, line in alike for part in _turns(kind, line)]
                over = _unwound(overlaid(spans, _TOUCH * degree, slack * degree))
                for kind, (start, end) in over:
                    yield Edge(kind, RoundLine(first.centre, first.radius, start, end))


def _turns(kind: Kind, line: RoundLine) -> Iterator[tuple[Kind, Span]]:
    start, end = line.start % 360.0, line.start % 360.0 + line.end - line.start
    yield kind, (start, min(end, 360.0))
    if end > 360.0:
        yield kind, (0.0, end - 360.0)


def _unwound(spans: list[tuple[Kind, Span]]) -> Iterator[tuple[Kind, Span]]:
    """Joins an arc that ends at 360° with one of its kind that starts at 0°."""
    for kind in RANKS:
        own = [span for other, span in spans if other == kind]
        at_start = next((span for span in own if span[0] <= 1e-6), None)
        at_end = next((span for span in own if span[1] >= 360.0 - 1e-6), None)
        if at_start and at_end and at_start is not at_end:
            own = [span for span in own if span not in (at_start, at_end)]
            own.append((at_end[0], 360.0 + at_start[1]))
        yield from ((kind, span) for span in own)
