"""Rectangles and straight lines on the paper, in mm, y downwards: do they meet?"""

from __future__ import annotations

from collections.abc import Iterable
from typing import NamedTuple

Point = tuple[float, float]


class Rectangle(NamedTuple):
    """An upright rectangle of paper."""

    left: float
    top: float
    right: float
    bottom: float

    @property
    def width(self) -> float:
        """From left to right."""
        return self.right - self.left

    @property
    def height(self) -> float:
        """From top to bottom."""
        return self.bottom - self.top

    @property
    def middle(self) -> Point:
        """The point in which the diagonals cross."""
        return ((self.left + self.right) / 2, (self.top + self.bottom) / 2)

    def moved(self, across: float, down: float) -> Rectangle:
        """The same rectangle elsewhere."""
        return Rectangle(
            self.left + across, self.top + down, self.right + across, self.bottom + down
        )

    def grown(self, by: float) -> Rectangle:
        """The rectangle with a margin on all sides."""
        return Rectangle(self.left - by, self.top - by, self.right + by, self.bottom + by)

    def meets(self, other: Rectangle) -> bool:
        """Whether the two have some of their insides in common."""
        return (
            self.left < other.right
            and other.left < self.right
            and self.top < other.bottom
            and other.top < self.bottom
        )

    def holds(self, other: Rectangle, slack: float = 1e-6) -> bool:
        """Whether the other lies wholly within."""
        return (
            self.left - slack <= other.left
            and self.top - slack <= other.top
            and self.right + slack >= other.right
            and self.bottom + slack >= other.bottom
        )


def around(points: Iterable[Point]) -> Rectangle:
    """The least rectangle about points; ValueError if there is none."""
    seen = list(points)
    across = [x for x, _ in seen]
    down = [y for _, y in seen]
    return Rectangle(min(across), min(down), max(across), max(down))


def union(boxes: Iterable[Rectangle]) -> Rectangle:
    """The least rectangle about rectangles; ValueError if there is none."""
    lefts, tops, rights, bottoms = zip(*boxes, strict=True)
    return Rectangle(min(lefts), min(tops), max(rights), max(bottoms))


def enters(start: Point, end: Point, box: Rectangle) -> bool:
    """Whether a straight line passes through the inside of a rectangle."""
    (x1, y1), (x2, y2) = start, end
    left, top, right, bottom = box
    if (x1 <= left and x2 <= left) or (x1 >= right and x2 >= right):
        return False
    if (y1 <= top and y2 <= top) or (y1 >= bottom and y2 >= bottom):
        return False
    if x1 == x2 or y1 == y2:
        return True
    # Askew: it misses if all four corners lie on one side of it.
    across, down = x2 - x1, y2 - y1
    sides = [
        across * (y - y1) - down * (x - x1) > 0
        for x, y in ((left, top), (right, top), (right, bottom), (left, bottom))
    ]
    return any(sides) and not all(sides)


def cross(one: Point, two: Point, three: Point, four: Point) -> bool:
    """Whether the lines one-two and three-four cross; touching at an end is no crossing."""
    return _turn(one, two, three) * _turn(one, two, four) < -_HAIR and (
        _turn(three, four, one) * _turn(three, four, two) < -_HAIR
    )


_HAIR = 1e-9


def _turn(one: Point, two: Point, three: Point) -> float:
    return (two[0] - one[0]) * (three[1] - one[1]) - (two[1] - one[1]) * (three[0] - one[0])
