"""Edges: what a view of a solid consists of, in mm of true size, u to the right and v upwards."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from math import cos, radians, sin

Point = tuple[float, float]

VISIBLE = "visible"
HIDDEN = "hidden"
SMOOTH = "smooth"
SECTION = "section"


@dataclass(frozen=True, slots=True)
class Chain:
    """Straight lines through points; a curve that is no circle comes as many short ones."""

    points: tuple[Point, ...]
    kind: str = VISIBLE


@dataclass(frozen=True, slots=True)
class Bow:
    """An arc from `start` to `end`, degrees anticlockwise from the right; 360 apart is a circle."""

    centre: Point
    radius: float
    start: float = 0.0
    end: float = 360.0
    kind: str = VISIBLE


Edge = Chain | Bow


def on_circle(centre: Point, radius: float, degrees: float) -> Point:
    """The point of a circle in that direction."""
    turn = radians(degrees)
    return (centre[0] + radius * cos(turn), centre[1] + radius * sin(turn))


def extremes(edge: Edge) -> Iterator[Point]:
    """Points whose least rectangle holds the whole edge."""
    if isinstance(edge, Chain):
        yield from edge.points
        return
    yield on_circle(edge.centre, edge.radius, edge.start)
    yield on_circle(edge.centre, edge.radius, edge.end)
    quarter = 90.0 * (edge.start // 90.0 + 1)
    while quarter < edge.end:
        yield on_circle(edge.centre, edge.radius, quarter)
        quarter += 90.0


def as_chain(edge: Edge, step: float = 10.0) -> tuple[Point, ...]:
    """The edge as points, an arc in steps of so many degrees at most."""
    if isinstance(edge, Chain):
        return edge.points
    pieces = max(1, round((edge.end - edge.start) / step))
    turn = (edge.end - edge.start) / pieces
    return tuple(
        on_circle(edge.centre, edge.radius, edge.start + turn * n) for n in range(pieces + 1)
    )
