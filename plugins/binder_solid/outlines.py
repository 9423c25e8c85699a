"""Outlines of the shop's usual sections, centred on 0, 0 unless they say otherwise; mm, degrees."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import replace

from .faults import Unbuildable
from .forms import Arc, Curve, Outline, Point, Segment, Straight

_OCTANT = math.sqrt(0.5)


def polygon(points: Sequence[Point]) -> Outline:
    """Gives a closed outline of straight lines."""
    return Outline(points[0], tuple(Straight(point) for point in (*points[1:], points[0])))


def rectangle(length: float, width: float, corner: Point | None = None) -> Outline:
    """Gives a rectangle, its lower left corner at a point or its middle at 0, 0."""
    x, y = corner if corner is not None else (-length / 2.0, -width / 2.0)
    return polygon([(x, y), (x + length, y), (x + length, y + width), (x, y + width)])


def rounded_rectangle(
    length: float, width: float, radius: float, corner: Point | None = None
) -> Outline:
    """Gives a rectangle with round corners; raises Unbuildable where they do not fit."""
    if 2.0 * radius >= min(length, width):
        raise Unbuildable("corners rounder than the sides are long")
    x, y = corner if corner is not None else (-length / 2.0, -width / 2.0)
    right, top = x + length, y + width
    cut = radius * (1.0 - _OCTANT)
    return Outline(
        (x + radius, y),
        (
            Straight((right - radius, y)),
            Arc((right - cut, y + cut), (right, y + radius)),
            Straight((right, top - radius)),
            Arc((right - cut, top - cut), (right - radius, top)),
            Straight((x + radius, top)),
            Arc((x + cut, top - cut), (x, top - radius)),
            Straight((x, y + radius)),
            Arc((x + cut, y + cut), (x + radius, y)),
        ),
    )


def slot(length: float, width: float) -> Outline:
    """Gives a slot with round ends along x, its length over all."""
    if length <= width:
        raise Unbuildable("a slot shorter than it is wide")
    reach, half = (length - width) / 2.0, width / 2.0
    return Outline(
        (-reach, -half),
        (
            Straight((reach, -half)),
            Arc((reach + half, 0.0), (reach, half)),
            Straight((-reach, half)),
            Arc((-reach - half, 0.0), (-reach, -half)),
        ),
    )


def circle(radius: float, centre: Point = (0.0, 0.0)) -> Outline:
    """Gives a circle as two halves."""
    x, y = centre
    return Outline(
        (x + radius, y),
        (Arc((x, y + radius), (x - radius, y)), Arc((x, y - radius), (x + radius, y))),
    )


def annulus(outer_radius: float, inner_radius: float) -> Outline:
    """Gives a circle with a circular hole."""
    return pierced(circle(outer_radius), circle(inner_radius))


def regular_polygon(sides: int, across_flats: float) -> Outline:
    """Gives a polygon with equal sides, a flat on the right."""
    radius = across_flats / 2.0 / math.cos(math.pi / sides)
    return polygon([polar(radius, (2 * n - 1) * 180.0 / sides) for n in range(sides)])


def hexagon(across_flats: float) -> Outline:
    """Gives the section of hexagon bar."""
    return regular_polygon(6, across_flats)


def trapezium(wide: float, narrow: float, depth: float) -> Outline:
    """Gives a trapezium, its wide side at y = 0 and its narrow one at y = depth."""
    half, other = wide / 2.0, narrow / 2.0
    return polygon([(-half, 0.0), (half, 0.0), (other, depth), (-other, depth)])


def dovetail(narrow: float, depth: float, angle: float = 60.0) -> Outline:
    """Gives a dovetail that widens from y = 0 to y = depth; the angle is that at its corner.

    Wide = narrow + 2 depth / tan angle (Machinery's Handbook, Dovetail Slides).
    """
    return trapezium(narrow, narrow + 2.0 * depth / math.tan(math.radians(angle)), depth)


def t_slot(neck: float, neck_depth: float, head: float, head_depth: float) -> Outline:
    """Gives a T-slot seen on end, its mouth at y = 0 and the slot below."""
    half, wide = neck / 2.0, head / 2.0
    low, bottom = -neck_depth, -neck_depth - head_depth
    return polygon(
        [
            (-half, 0.0),
            (-half, low),
            (-wide, low),
            (-wide, bottom),
            (wide, bottom),
            (wide, low),
            (half, low),
            (half, 0.0),
        ]
    )


def vee(width: float, angle: float = 90.0) -> Outline:
    """Gives a vee groove seen on end, its mouth at y = 0 and its root below."""
    depth = width / 2.0 / math.tan(math.radians(angle / 2.0))
    return polygon([(-width / 2.0, 0.0), (0.0, -depth), (width / 2.0, 0.0)])


def sector(radius: float, start: float, end: float) -> Outline:
    """Gives a piece of a disc between two angles, anticlockwise, with its point at 0, 0."""
    middle = polar(radius, (start + end) / 2.0)
    return Outline(
        (0.0, 0.0),
        (Straight(polar(radius, start)), Arc(middle, polar(radius, end)), Straight((0.0, 0.0))),
    )


def polar(radius: float, degrees: float) -> Point:
    """Gives the point at a distance from 0, 0 in a direction."""
    angle = math.radians(degrees)
    return (radius * math.cos(angle), radius * math.sin(angle))


def pierced(outline: Outline, *holes: Outline) -> Outline:
    """Adds holes to an outline."""
    return replace(outline, holes=(*outline.holes, *holes))


def moved(outline: Outline, by: Point) -> Outline:
    """Gives an outline moved aside."""
    return _each(outline, matrix=(1.0, 0.0, 0.0, 1.0), by=by)


def turned(outline: Outline, degrees: float) -> Outline:
    """Gives an outline turned about 0, 0."""
    c, s = math.cos(math.radians(degrees)), math.sin(math.radians(degrees))
    return _each(outline, matrix=(c, -s, s, c), by=(0.0, 0.0))


def flipped(outline: Outline) -> Outline:
    """Gives an outline seen in a mirror that lies along y."""
    return _each(outline, matrix=(-1.0, 0.0, 0.0, 1.0), by=(0.0, 0.0))


def _each(outline: Outline, matrix: tuple[float, float, float, float], by: Point) -> Outline:
    a, b, c, d = matrix

    def put(at: Point) -> Point:
        return (a * at[0] + b * at[1] + by[0], c * at[0] + d * at[1] + by[1])

    def laid(segment: Segment) -> Segment:
        match segment:
            case Straight(to):
                return Straight(put(to))
            case Arc(through, to):
                return Arc(put(through), put(to))
            case Curve(points):
                return Curve(tuple(put(at) for at in points))

    holes = tuple(_each(hole, matrix, by) for hole in outline.holes)
    return Outline(put(outline.start), tuple(map(laid, outline.segments)), holes)
