"""Lines already drawn, asked whether a point lies on one of them."""

from __future__ import annotations

import math
from collections import defaultdict
from collections.abc import Iterator
from itertools import pairwise

from .forms import Point
from .views import Line, RoundLine, points_of

_CELL = 2.0  # mm
_MOST_CELLS = 64  # a chord over more is looked at for every point
Chord = tuple[Point, Point]


class Ground:
    """Squares of paper, each with the chords that cross it."""

    def __init__(self, near: float) -> None:
        """Starts bare; `near` is how far, in mm, a point may lie beside a line."""
        self._near = near
        self._cells: dict[tuple[int, int], list[Chord]] = defaultdict(list)
        self._long: list[Chord] = []
        self._round: list[RoundLine] = []

    def add(self, line: Line) -> None:
        """Draws a line."""
        if isinstance(line, RoundLine):
            self._round.append(line)
            return
        points = points_of(line)
        for chord in pairwise(points):
            cells = list(self._crossed(chord))
            if len(cells) > _MOST_CELLS:
                self._long.append(chord)
            else:
                for cell in cells:
                    self._cells[cell].append(chord)

    def holds(self, at: Point) -> bool:
        """Says whether a point lies on a line."""
        cell = (math.floor(at[0] / _CELL), math.floor(at[1] / _CELL))
        chords = (*self._cells.get(cell, ()), *self._long)
        return any(_from_chord(at, *chord) <= self._near for chord in chords) or any(
            self._is_on_arc(at, line) for line in self._round
        )

    def _crossed(self, chord: Chord) -> Iterator[tuple[int, int]]:
        (ax, ay), (bx, by) = chord
        near = self._near
        columns = range(_cell(min(ax, bx) - near), _cell(max(ax, bx) + near) + 1)
        rows = range(_cell(min(ay, by) - near), _cell(max(ay, by) + near) + 1)
        if len(columns) * len(rows) > _MOST_CELLS:
            columns, rows = range(_MOST_CELLS + 1), range(1)
        yield from ((column, row) for column in columns for row in rows)

    def _is_on_arc(self, at: Point, line: RoundLine) -> bool:
        x, y = at[0] - line.centre[0], at[1] - line.centre[1]
        if abs(math.hypot(x, y) - line.radius) > self._near:
            return False
        turn = (math.degrees(math.atan2(y, x)) - line.start) % 360.0
        return turn <= line.end - line.start


def _cell(value: float) -> int:
    return math.floor(value / _CELL)


def _from_chord(at: Point, start: Point, end: Point) -> float:
    dx, dy = end[0] - start[0], end[1] - start[1]
    size = dx * dx + dy * dy
    share = ((at[0] - start[0]) * dx + (at[1] - start[1]) * dy) / size if size else 0.0
    share = max(0.0, min(1.0, share))
    return math.hypot(at[0] - start[0] - share * dx, at[1] - start[1] - share * dy)
