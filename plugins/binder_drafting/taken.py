"""Taken: the words and lines that stand on a piece of paper, asked for by place."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterator
from math import ceil, floor

from binder_drafting.plane import Point, Rectangle, cross, enters

_CELL = 12.0
_Cell = tuple[int, int]
_Straight = tuple[Point, Point]


class Taken:
    """What is there already; a grid keeps a question from looking at the whole sheet."""

    def __init__(self) -> None:
        self._words: defaultdict[_Cell, list[Rectangle]] = defaultdict(list)
        self._lines: defaultdict[_Cell, list[_Straight]] = defaultdict(list)

    def add_words(self, box: Rectangle) -> None:
        """Keeps a rectangle for words."""
        for cell in _cells(box):
            self._words[cell].append(box)

    def add_line(self, start: Point, end: Point) -> None:
        """Remembers a straight line."""
        for cell in _cells_along(start, end):
            self._lines[cell].append((start, end))

    def is_free(self, box: Rectangle) -> bool:
        """Whether no words are there."""
        return not any(
            box.meets(other) for cell in _cells(box) for other in self._words.get(cell, ())
        )

    def is_struck(self, box: Rectangle) -> bool:
        """Whether any line passes through a rectangle."""
        lines = self._lines
        return any(
            enters(start, end, box) for cell in _cells(box) for start, end in lines.get(cell, ())
        )

    def lines_through(self, box: Rectangle) -> int:
        """How many lines pass through a rectangle."""
        near = {line for cell in _cells(box) for line in self._lines.get(cell, ())}
        return sum(enters(start, end, box) for start, end in near)

    def words_on(self, start: Point, end: Point) -> int:
        """How many rectangles of words a straight line would strike through."""
        cells = _cells_along(start, end)
        near = {box for cell in cells for box in self._words.get(cell, ())}
        return sum(enters(start, end, box) for box in near)

    def lines_across(self, start: Point, end: Point) -> int:
        """How many lines a straight line would cross."""
        cells = _cells_along(start, end)
        near = {line for cell in cells for line in self._lines.get(cell, ())}
        return sum(cross(start, end, one, two) for one, two in near)


def _cells(box: Rectangle) -> Iterator[_Cell]:
    for column in range(floor(box.left / _CELL), floor(box.right / _CELL) + 1):
        for row in range(floor(box.top / _CELL), floor(box.bottom / _CELL) + 1):
            yield (column, row)


def _cells_along(start: Point, end: Point) -> list[_Cell]:
    """The cells of a line, cut into pieces no longer than a cell: none that it meets is missed."""
    across, down = end[0] - start[0], end[1] - start[1]
    if across == 0 or down == 0:
        return list(_cells(Rectangle(*map(min, start, end), *map(max, start, end))))
    pieces = max(1, ceil(max(abs(across), abs(down)) / _CELL))
    found: dict[_Cell, None] = {}
    for piece in range(pieces):
        one, two = piece / pieces, (piece + 1) / pieces
        xs = sorted((start[0] + across * one, start[0] + across * two))
        ys = sorted((start[1] + down * one, start[1] + down * two))
        found.update(dict.fromkeys(_cells(Rectangle(xs[0], ys[0], xs[1], ys[1]))))
    return list(found)
