"""Views: what is seen of a solid from one side, in lines on paper that need no kernel.

u runs to the right and v upwards, in mm of the part; angles are degrees anticlockwise.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Literal

from .forms import Point, Vector
from .space import dot

Projection = Literal["front", "back", "left", "right", "top", "underside", "isometric"]
Kind = Literal["visible", "hidden", "smooth", "section"]
Half = Literal["upper", "lower", "left", "right"]

_ROOT2, _ROOT6 = math.sqrt(2.0), math.sqrt(6.0)

_AXES: dict[Projection, tuple[Vector, Vector]] = {
    "front": ((1.0, 0.0, 0.0), (0.0, 0.0, 1.0)),
    "back": ((-1.0, 0.0, 0.0), (0.0, 0.0, 1.0)),
    "right": ((0.0, 1.0, 0.0), (0.0, 0.0, 1.0)),
    "left": ((0.0, -1.0, 0.0), (0.0, 0.0, 1.0)),
    "top": ((1.0, 0.0, 0.0), (0.0, 1.0, 0.0)),
    "underside": ((1.0, 0.0, 0.0), (0.0, -1.0, 0.0)),
    "isometric": (
        (1 / _ROOT2, 1 / _ROOT2, 0.0),
        (-1 / _ROOT6, 1 / _ROOT6, 2 / _ROOT6),
    ),
}


@dataclass(frozen=True, slots=True)
class StraightLine:
    """A line from point to point."""

    start: Point
    end: Point


@dataclass(frozen=True, slots=True)
class RoundLine:
    """An arc anticlockwise from one angle to a greater one; a full circle is 0 to 360."""

    centre: Point
    radius: float
    start: float
    end: float


@dataclass(frozen=True, slots=True)
class FreeLine:
    """A line through many points, for what is neither straight nor round."""

    points: tuple[Point, ...]


Line = StraightLine | RoundLine | FreeLine


@dataclass(frozen=True, slots=True)
class Edge:
    """A line of a view and what it stands for; `smooth` is where two faces run into one another."""

    kind: Kind
    line: Line

    def points(self, step: float = 5.0) -> tuple[Point, ...]:
        """Gives points along the line, an arc at every so many degrees."""
        return points_of(self.line, step)


@dataclass(frozen=True, slots=True)
class CutFace:
    """A face laid bare by a cut, as closed polygons to hatch; the last point is not repeated."""

    outer: tuple[Point, ...]
    holes: tuple[tuple[Point, ...], ...] = ()


@dataclass(frozen=True, slots=True)
class View:
    """What is seen from one side, its own directions in the part, and its least and most point."""

    name: str
    right: Vector
    up: Vector
    edges: tuple[Edge, ...]
    bounds: tuple[Point, Point]
    faces: tuple[CutFace, ...] = ()

    def flat(self, point: Vector) -> Point:
        """Says where a point of the part lies in the view."""
        return (dot(point, self.right), dot(point, self.up))


@dataclass(frozen=True, slots=True)
class Cutting:
    """A plane square to a view at one coordinate; what is nearer than it is taken away.

    The coordinate is y for front and back, x for left and right, z for top and underside. With
    `half`, only that half of the view is cut, up to the line v = `about` (u for left and right).
    """

    name: str
    seen: Projection
    at: float
    half: Half | None = None
    about: float = 0.0


def axes_of(projection: Projection) -> tuple[Vector, Vector]:
    """Gives the directions in the part that run to the right and upwards in a view.

    Orthographic views are as ISO 5456-2 has them; the isometric one (ISO 5456-3) is seen from
    the front, the right and above, not enlarged by √(3/2).
    """
    return _AXES[projection]


def flat(point: Vector, projection: Projection) -> Point:
    """Says where a point of the part lies in a view."""
    right, up = _AXES[projection]
    return (dot(point, right), dot(point, up))


def points_of(line: Line, step: float = 5.0) -> tuple[Point, ...]:
    """Gives points along a line of a view, an arc at every so many degrees."""
    match line:
        case StraightLine(start, end):
            return (start, end)
        case FreeLine(points):
            return points
        case RoundLine(centre, radius, start, end):
            count = max(1, math.ceil((end - start) / step - 1e-9))
            angles = (math.radians(start + (end - start) * n / count) for n in range(count + 1))
            return tuple(
                (centre[0] + radius * math.cos(a), centre[1] + radius * math.sin(a)) for a in angles
            )
