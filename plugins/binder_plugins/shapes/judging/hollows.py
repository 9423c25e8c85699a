"""What is cut with a side to it, slots, pockets and undercuts: each an outline along one axis."""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass
from itertools import pairwise, product

from binder_solid.facts import Located
from binder_solid.forms import Raised
from binder_solid.lines import corners
from binder_solid.space import placed

UNDERCUT = ("dovetailed", "t_slotted")
PLAIN = ("slotted", "keywayed", "pocketed", "recessed")
_SAME = 1e-6
Point = tuple[float, float]
Side = tuple[Point, Point]


@dataclass(frozen=True, slots=True)
class Hollow:
    """What is cut away along an axis of the part, from `start` to `end` in mm.

    `section` is its closed outline on the two other axes, in their order.
    """

    name: str
    axis: int
    start: float
    end: float
    section: tuple[Point, ...]

    @property
    def sides(self) -> Iterator[Side]:
        """The lines of the outline."""
        return sides_of(self.section)

    @property
    def spans(self) -> tuple[tuple[float, float], ...]:
        """From where to where it reaches on each axis."""
        across = iter([(min(places), max(places)) for places in zip(*self.section, strict=True)])
        return tuple((self.start, self.end) if n == self.axis else next(across) for n in range(3))


def hollows(one: Located, kinds: tuple[str, ...]) -> Iterator[Hollow]:
    """Of a feature of these kinds what lies square in the part, as its tools are drawn."""
    if one.kind not in kinds or one.is_dummy or one.adds:
        return
    for tool in one.tools:
        if not isinstance(tool, Raised) or max(abs(way) for way in tool.frame.z) < 1 - _SAME:
            continue
        axis = max(range(3), key=lambda n: abs(tool.frame.z[n]))
        spots = [placed((x, y, 0.0), tool.frame) for x, y in corners(tool.outline)]
        start = tool.frame.origin[axis]
        ends = sorted((start, start + tool.frame.z[axis] * tool.height))
        first, second = (n for n in range(3) if n != axis)
        section = tuple((spot[first], spot[second]) for spot in spots)
        yield Hollow(one.name, axis, ends[0], ends[1], section)


def sides_of(section: tuple[Point, ...]) -> Iterator[Side]:
    """The lines of a closed outline."""
    return pairwise((*section, section[0]))


def from_line(point: Point, side: Side) -> float:
    """From a point to the nearest of a line between two."""
    start, end = side
    long = math.dist(start, end)
    if long < _SAME:
        return math.dist(point, start)
    way = ((end[0] - start[0]) / long, (end[1] - start[1]) / long)
    on = (point[0] - start[0]) * way[0] + (point[1] - start[1]) * way[1]
    on = min(max(on, 0.0), long)
    return math.dist(point, (start[0] + on * way[0], start[1] + on * way[1]))


def is_inside(point: Point, section: tuple[Point, ...]) -> bool:
    """Whether a line from a point to one side crosses the outline an odd number of times."""
    x, y = point
    crossed = 0
    for (a, b), (c, d) in sides_of(section):
        if (b > y) != (d > y) and x < a + (c - a) * (y - b) / (d - b):
            crossed += 1
    return crossed % 2 == 1


def from_section(point: Point, section: tuple[Point, ...]) -> float:
    """From a point to an outline in mm; negative inside it."""
    away = min(from_line(point, side) for side in sides_of(section))
    return -away if is_inside(point, section) else away


def between(one: tuple[Point, ...], other: tuple[Point, ...]) -> float:
    """From one outline to another in mm; 0 where they share any place."""
    if is_inside(one[0], other) or is_inside(other[0], one):
        return 0.0
    return min(_between(*pair) for pair in product(sides_of(one), sides_of(other)))


def _between(one: Side, other: Side) -> float:
    if _turns(one, other[0]) * _turns(one, other[1]) < 0 and (
        _turns(other, one[0]) * _turns(other, one[1]) < 0
    ):
        return 0.0
    ends = [from_line(point, other) for point in one]
    return min(*ends, *(from_line(point, one) for point in other))


def _turns(side: Side, point: Point) -> float:
    """On which side of a line a point lies, by its sign."""
    (a, b), (c, d) = side
    return (c - a) * (point[1] - b) - (d - b) * (point[0] - a)
