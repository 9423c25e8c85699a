"""Things on the paper kept by the square that they lie in, so that neighbours are soon found."""

from __future__ import annotations

import math
from collections.abc import Iterator
from typing import Generic, TypeVar

from binder_drafting import Rectangle

T = TypeVar("T")
_SIDE = 10.0


class Squares(Generic[T]):
    """Things with the room that they take."""

    def __init__(self) -> None:
        self._kept: list[tuple[Rectangle, T]] = []
        self._squares: dict[tuple[int, int], list[int]] = {}

    def add(self, room: Rectangle, thing: T) -> None:
        """Keeps one more."""
        for square in _touched(room):
            self._squares.setdefault(square, []).append(len(self._kept))
        self._kept.append((room, thing))

    def near(self, box: Rectangle) -> Iterator[T]:
        """Those whose room meets a box, in the order in which they were kept."""
        found = {n for square in _touched(box) for n in self._squares.get(square, ())}
        for n in sorted(found):
            room, thing = self._kept[n]
            if room.meets(box):
                yield thing


def _touched(box: Rectangle) -> Iterator[tuple[int, int]]:
    left, top, right, bottom = (math.floor(side / _SIDE) for side in box)
    for x in range(left, right + 1):
        for y in range(top, bottom + 1):
            yield x, y
