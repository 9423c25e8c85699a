"""Free lines of a view with nothing drawn twice, and pieces of one line as one."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from itertools import pairwise

from .forms import Point
from .ground import Ground
from .spans import RANKS
from .views import Edge, FreeLine, Kind

Run = tuple[Point, ...]


def tidied_trails(
    lines: Sequence[tuple[Kind, FreeLine]], drawn: Sequence[Edge], near: float
) -> Iterator[Edge]:
    """Gives the free lines, less what lies on lines as plain as they are or plainer."""
    ground = Ground(near)
    for kind in RANKS:
        for edge in drawn:
            if edge.kind == kind:
                ground.add(edge.line)
        own: list[Run] = []
        trails = (line.points for other, line in lines if other == kind)
        for points in sorted(trails, key=len, reverse=True):
            for run in _bare(points, ground):
                own.append(run)
                ground.add(FreeLine(run))
        yield from (Edge(kind, FreeLine(points)) for points in _chained(own, near))


def _bare(points: Run, ground: Ground) -> Iterator[Run]:
    """Gives the runs of chords that lie on no other line."""
    run: list[Point] = []
    for start, end in pairwise(points):
        middle = ((start[0] + end[0]) / 2.0, (start[1] + end[1]) / 2.0)
        if ground.holds(middle):
            if len(run) > 1:
                yield tuple(run)
            run = []
        else:
            run = run or [start]
            run.append(end)
    if len(run) > 1:
        yield tuple(run)


def _chained(runs: list[Run], near: float) -> list[Run]:
    """Joins runs end to end while one and only one other begins where one ends."""
    left = list(runs)
    found: list[Run] = []
    while left:
        chain = left.pop(0)
        for _ in range(2):
            chain = chain[::-1]
            while (after := _next(chain[-1], left, near)) is not None:
                left.remove(after)
                forward = math.dist(after[0], chain[-1]) <= near
                chain = (*chain, *(after if forward else after[::-1])[1:])
        found.append(chain)
    return found


def _next(end: Point, left: list[Run], near: float) -> Run | None:
    meeting = [run for run in left if min(math.dist(end, run[0]), math.dist(end, run[-1])) <= near]
    return meeting[0] if len(meeting) == 1 else None
