"""A piece larger than a sheet to tiles that overlap, with marks to join them by."""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass

from binder.api import DrawnLabel, DrawnShape, Line, Stroke
from binder_drafting import Rectangle
from binder_plugins.templates.piece import cross_at
from binder_solid.forms import Point

OVERLAP = 12.0
_SMALL = 2.5
_LETTERS = "ABCDEFGHJKLMNPQRSTUVWXYZ"


@dataclass(frozen=True, slots=True)
class Tile:
    """One window of a piece, its place among the others, and how many there are each way."""

    window: Rectangle
    column: int
    row: int
    columns: int
    rows: int

    @property
    def words(self) -> str:
        """Which part this is, and how the parts are joined."""
        number = self.row * self.columns + self.column + 1
        return (
            f"part {number} of {self.columns * self.rows}: cut on a dashed line, lay it on the "
            "line with the same letter, cross on cross"
        )


def tiles_of(size: Point, room: Point) -> Iterator[Tile]:
    """Windows in rows from the top, each no larger than there is room."""
    columns, rows = (_count(whole, most) for whole, most in zip(size, room, strict=True))
    wide, high = (
        (whole + OVERLAP * (count - 1)) / count
        for whole, count in zip(size, (columns, rows), strict=True)
    )
    for row in range(rows):
        for column in range(columns):
            left = column * (wide - OVERLAP)
            most = size[1] - row * (high - OVERLAP)
            window = Rectangle(left, most - high, left + wide, most)
            yield Tile(window, column, row, columns, rows)


def _count(whole: float, most: float) -> int:
    return max(1, math.ceil((whole - OVERLAP) / (most - OVERLAP) - 1e-9))


def join_marks(tile: Tile, at: Point) -> Iterator[DrawnShape]:
    """A dashed line with its letter and two crosses in the middle of each overlap."""
    wide, high = tile.window.width, tile.window.height
    half = OVERLAP / 2.0
    for column, x in ((tile.column - 1, half), (tile.column, wide - half)):
        if 0 <= column < tile.columns - 1:
            yield from _seam((at[0] + x, at[1]), (at[0] + x, at[1] + high), _LETTERS[column % 24])
    for row, y in ((tile.row - 1, half), (tile.row, high - half)):
        if 0 <= row < tile.rows - 1:
            letter = _LETTERS[(tile.columns - 1 + row) % 24]
            yield from _seam((at[0], at[1] + y), (at[0] + wide, at[1] + y), letter)


def _seam(start: Point, end: Point, letter: str) -> Iterator[DrawnShape]:
    yield Line(*start, *end, Stroke.HIDDEN)
    for share in (0.25, 0.75):
        x, y = (a + (b - a) * share for a, b in zip(start, end, strict=True))
        yield from cross_at((x, y))
        yield DrawnLabel(x + 1.0, y - 1.0, letter, _SMALL)
