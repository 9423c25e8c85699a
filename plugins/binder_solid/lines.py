"""Outlines as pieces with both their ends, their lengths, areas and corners told in mm."""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass

from .faults import Unbuildable
from .forms import Arc, Curve, Outline, Point, Segment, Straight

_SAME = 1e-6


@dataclass(frozen=True, slots=True)
class Chord:
    """A straight piece."""

    start: Point
    end: Point


@dataclass(frozen=True, slots=True)
class Bow:
    """A piece of a circle: radians, `sweep` anticlockwise where it is positive."""

    start: Point
    end: Point
    centre: Point
    radius: float
    first: float
    sweep: float

    def at(self, share: float) -> Point:
        """Gives the point at a share of the way along."""
        angle = self.first + share * self.sweep
        return (
            self.centre[0] + self.radius * math.cos(angle),
            self.centre[1] + self.radius * math.sin(angle),
        )


Piece = Chord | Bow


def bow(start: Point, through: Point, end: Point) -> Bow:
    """Finds the circle through three points; raises Unbuildable where they lie in a line."""
    (ax, ay), (bx, by), (cx, cy) = start, through, end
    twice = 2.0 * ((bx - ax) * (cy - ay) - (by - ay) * (cx - ax))
    size = math.dist(start, through) * math.dist(through, end)
    if not abs(twice) > 1e-9 * max(size, 1e-12):
        raise Unbuildable("the three points of an arc lie in a line")
    b2, c2 = (bx - ax) ** 2 + (by - ay) ** 2, (cx - ax) ** 2 + (cy - ay) ** 2
    ux = ((cy - ay) * b2 - (by - ay) * c2) / twice
    uy = ((bx - ax) * c2 - (cx - ax) * b2) / twice
    centre = (ax + ux, ay + uy)
    first, last = math.atan2(-uy, -ux), math.atan2(cy - centre[1], cx - centre[0])
    sweep = (last - first) % math.tau
    return Bow(start, end, centre, math.hypot(ux, uy), first, sweep - math.tau * (twice < 0))


def pieces_of(start: Point, segment: Segment) -> tuple[Piece, ...]:
    """Tells a segment as pieces; a curve by the chords between its points."""
    match segment:
        case Straight(to):
            return (Chord(start, to),)
        case Arc(through, to):
            return (bow(start, through, to),)
        case Curve(points):
            ends = (start, *points)
            return tuple(Chord(a, b) for a, b in zip(ends, points, strict=False))


def loop(outline: Outline) -> tuple[Piece, ...]:
    """Gives the pieces of an outline without its holes."""
    found: list[Piece] = []
    here = outline.start
    for segment in closed(outline):
        found.extend(pieces_of(here, segment))
        here = end_of(segment)
    return tuple(found)


def closed(outline: Outline) -> tuple[Segment, ...]:
    """Gives the segments of an outline so that the last ends at the start, to the last digit."""
    if not outline.segments:
        return ()
    last = outline.segments[-1]
    gap = math.dist(end_of(last), outline.start)
    if gap > _SAME:
        return (*outline.segments, Straight(outline.start))
    return (*outline.segments[:-1], _ending(last, outline.start)) if gap else outline.segments


def _ending(segment: Segment, end: Point) -> Segment:
    match segment:
        case Straight():
            return Straight(end)
        case Arc(through, _):
            return Arc(through, end)
        case Curve(points):
            return Curve((*points[:-1], end))


def end_of(segment: Segment) -> Point:
    """Gives the point that a segment leads to."""
    return segment.points[-1] if isinstance(segment, Curve) else segment.to


def corners(outline: Outline, step: float = 5.0) -> tuple[Point, ...]:
    """Gives points round an outline, arcs at every so many degrees, the first not repeated."""
    return tuple(point for piece in loop(outline) for point in _along(piece, step))


def _along(piece: Piece, step: float) -> Iterator[Point]:
    yield piece.start
    if isinstance(piece, Bow):
        count = max(1, math.ceil(abs(math.degrees(piece.sweep)) / step - 1e-9))
        yield from (piece.at(n / count) for n in range(1, count))


def length(outline: Outline) -> float:
    """Gives the length of the line round an outline without its holes, curves by chords."""
    return sum(
        abs(piece.sweep) * piece.radius
        if isinstance(piece, Bow)
        else math.dist(piece.start, piece.end)
        for piece in loop(outline)
    )


def area(outline: Outline) -> float:
    """Gives the area within an outline less that of its holes, curves by chords."""
    return abs(signed_area(outline)) - sum(abs(signed_area(hole)) for hole in outline.holes)


def whole_circle(outline: Outline) -> Bow | None:
    """Gives the circle that two arcs of an outline make up between them; nothing if they do not."""
    pieces = loop(outline) if len(outline.segments) == 2 else ()
    match pieces:
        case (Bow() as one, Bow() as other):
            gap = math.dist(one.centre, other.centre) + abs(one.radius - other.radius)
            is_whole = abs(abs(one.sweep + other.sweep) - math.tau) < _SAME
            return one if gap < _SAME and is_whole else None
        case _:
            return None


def signed_area(outline: Outline) -> float:
    """Gives the area within an outline, positive where it runs anticlockwise; holes not taken."""
    total = 0.0
    for piece in loop(outline):
        (ax, ay), (bx, by) = piece.start, piece.end
        total += (ax * by - bx * ay) / 2.0
        if isinstance(piece, Bow):
            total += piece.radius**2 * (piece.sweep - math.sin(piece.sweep)) / 2.0
    return total


def least_and_most(outline: Outline) -> tuple[Point, Point]:
    """Gives the corners of the box round an outline."""
    boxes = [box_of(piece) for piece in loop(outline)]
    return (
        (min(box[0] for box in boxes), min(box[1] for box in boxes)),
        (max(box[2] for box in boxes), max(box[3] for box in boxes)),
    )


def box_of(piece: Piece) -> tuple[float, float, float, float]:
    """Gives least x and y, most x and y of a piece."""
    points = [piece.start, piece.end]
    if isinstance(piece, Bow):
        points += [piece.at(share) for share in _quarter_shares(piece)]
    xs, ys = [p[0] for p in points], [p[1] for p in points]
    return (min(xs), min(ys), max(xs), max(ys))


def _quarter_shares(piece: Bow) -> Iterator[float]:
    for quarter in range(4):
        share = share_at(piece, quarter * math.pi / 2.0)
        if 0.0 < share < 1.0:
            yield share


def share_at(piece: Bow, angle: float) -> float:
    """Says how far along a bow an angle lies; more than 1 where it is not on it."""
    turn = (angle - piece.first) if piece.sweep > 0 else (piece.first - angle)
    return (turn % math.tau) / abs(piece.sweep)
