"""How far a copy reaches about an axis: along it, and out from it, by the corners of its box."""

from __future__ import annotations

import math
from collections.abc import Iterable
from dataclasses import dataclass
from itertools import product

from binder_plugins.drive.standing import Axis, between
from binder_solid.forms import Frame, Vector
from binder_solid.placed import PlacedFact
from binder_solid.space import cross, dot, minus, placed, unit

_TOUCH_MM = 0.01


@dataclass(frozen=True, slots=True)
class Ring:
    """What something can sweep when it turns: along the axis, and from it outwards; mm."""

    low: float
    high: float
    inside: float
    outside: float

    def meets(self, other: Ring) -> bool:
        """Whether two rings about one axis share room."""
        return (
            self.low < other.high - _TOUCH_MM
            and other.low < self.high - _TOUCH_MM
            and self.inside < other.outside - _TOUCH_MM
            and other.inside < self.outside - _TOUCH_MM
        )


def ring_of(copy: PlacedFact, axis: Axis) -> Ring:
    """The ring that the box of a copy lies in, about an axis."""
    side = unit(cross(axis.way, (1.0, 0.0, 0.0) if abs(axis.way[0]) < 0.9 else (0.0, 1.0, 0.0)))
    up = cross(axis.way, side)
    arms = [minus(corner, axis.origin) for corner in _corners(copy)]
    along = [dot(arm, axis.way) for arm in arms]
    flat = [(dot(arm, side), dot(arm, up)) for arm in arms]
    far = max(math.hypot(*point) for point in flat)
    return Ring(min(along), max(along), _nearest(flat), far)


def can_meet(ring: Ring, axis: Axis, other: PlacedFact, beside: Axis | None) -> bool:
    """Whether what sweeps a ring can come to another copy, which may turn about its own axis."""
    about = ring_of(other, axis)
    if beside is None:
        return ring.meets(about)
    apart = between(axis, beside)
    if apart is None:
        return True
    reach = ring.outside + ring_of(other, beside).outside
    is_beside = ring.low < about.high - _TOUCH_MM and about.low < ring.high - _TOUCH_MM
    return is_beside and apart < reach - _TOUCH_MM


@dataclass(frozen=True, slots=True)
class Swept:
    """The box that a copy stays in while it moves: its least and most corner in the model."""

    least: Vector
    most: Vector

    def meets(self, other: Swept) -> bool:
        """Whether two boxes share room."""
        return all(
            self.least[n] < other.most[n] - _TOUCH_MM and other.least[n] < self.most[n] - _TOUCH_MM
            for n in range(3)
        )


def swept(copy: PlacedFact, frames: Iterable[Frame]) -> Swept:
    """The box round a copy in all its places."""
    points = [point for frame in frames for point in _corners(copy, frame)]
    columns = list(zip(*points, strict=True))
    least, most = [min(one) for one in columns], [max(one) for one in columns]
    return Swept((least[0], least[1], least[2]), (most[0], most[1], most[2]))


def _corners(copy: PlacedFact, frame: Frame | None = None) -> list[Vector]:
    least, most = copy.corners
    sides = zip(least, most, strict=True)
    return [placed((x, y, z), frame or copy.frame) for x, y, z in product(*sides)]


def _nearest(points: list[tuple[float, float]]) -> float:
    """How near the hull of the points comes to the axis; nothing where it lies round it."""
    hull = _hull(sorted(set(points)))
    pairs = list(zip(hull, hull[1:] + hull[:1], strict=True))
    turns = [a[0] * b[1] - a[1] * b[0] for a, b in pairs]
    if len(hull) > 2 and (all(one >= 0 for one in turns) or all(one <= 0 for one in turns)):
        return 0.0
    return min(_to_line(a, b) for a, b in pairs)


def _to_line(a: tuple[float, float], b: tuple[float, float]) -> float:
    """From the axis to a stretch of line."""
    dx, dy = b[0] - a[0], b[1] - a[1]
    size = dx * dx + dy * dy
    part = max(0.0, min(1.0, -(a[0] * dx + a[1] * dy) / size)) if size else 0.0
    return math.hypot(a[0] + part * dx, a[1] + part * dy)


def _hull(points: list[tuple[float, float]]) -> list[tuple[float, float]]:
    """The convex hull, anticlockwise."""
    if len(points) < 3:
        return points

    def half(ordered: list[tuple[float, float]]) -> list[tuple[float, float]]:
        found: list[tuple[float, float]] = []
        for point in ordered:
            while len(found) > 1 and _turn(found[-2], found[-1], point) <= 0:
                found.pop()
            found.append(point)
        return found[:-1]

    return half(points) + half(points[::-1])


def _turn(a: tuple[float, float], b: tuple[float, float], c: tuple[float, float]) -> float:
    return (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0])
