"""Forms of whole bodies: bar, tube, turned work, wheels, pulleys; axis along +x from x = 0.

Lengths are diameters and sizes over all in mm unless a name says radius.
"""

from __future__ import annotations

import math
from collections.abc import Sequence

from .faults import Unbuildable
from .forms import (
    TURNED,
    Arc,
    Ball,
    Box,
    Cut,
    Cylinder,
    Form,
    Frame,
    Joined,
    Outline,
    Placed,
    Point,
    Raised,
    Revolved,
    Ring,
    Segment,
    Straight,
)
from .outlines import annulus, hexagon, polygon, regular_polygon


def round_bar(diameter: float, length: float, at: float = 0.0) -> Cylinder:
    """Gives round bar."""
    return Cylinder(diameter / 2.0, length, _along(at))


def hexagon_bar(across_flats: float, length: float) -> Raised:
    """Gives hexagon bar, a flat towards +y."""
    return Raised(hexagon(across_flats), length, TURNED)


def square_bar(across_flats: float, length: float) -> Raised:
    """Gives square bar."""
    return Raised(regular_polygon(4, across_flats), length, TURNED)


def tube(outside: float, bore: float, length: float) -> Raised:
    """Gives tube."""
    if bore >= outside:
        raise Unbuildable("a bore as wide as the tube")
    return Raised(annulus(outside / 2.0, bore / 2.0), length, TURNED)


def turned_steps(steps: Sequence[tuple[float, float]]) -> Revolved:
    """Gives turned work of (diameter, length) steps, one after the other from x = 0."""
    points: list[Point] = [(0.0, 0.0)]
    along = 0.0
    for diameter, length in steps:
        points += [(along, diameter / 2.0), (along + length, diameter / 2.0)]
        along += length
    points.append((along, 0.0))
    kept = [point for n, point in enumerate(points) if n == 0 or point != points[n - 1]]
    return Revolved(polygon(_unbent(kept)), TURNED)


def _unbent(points: list[Point]) -> list[Point]:
    """Leaves out the joint between two steps of one diameter."""
    return [
        point
        for before, point, after in zip(
            [points[-1], *points], points, [*points[1:], points[0]], strict=False
        )
        if not before[1] == point[1] == after[1]
    ]


def cosmetic_thread(major: float, length: float, at: float = 0.0) -> Cylinder:
    """Gives a thread as the plain cylinder over its crests; its helix is never modelled."""
    return round_bar(major, length, at)


def knurl(diameter: float, length: float, at: float = 0.0) -> Cylinder:
    """Gives a knurl as the plain cylinder over its crests."""
    return round_bar(diameter, length, at)


def drilled(diameter: float, depth: float, at: float = 0.0, point_angle: float = 118.0) -> Form:
    """Gives what a drill takes out along +x: full diameter to a depth, and the point beyond it."""
    tip = diameter / 2.0 / math.tan(math.radians(point_angle / 2.0))
    outline = polygon(
        [(0.0, 0.0), (0.0, diameter / 2.0), (depth, diameter / 2.0), (depth + tip, 0.0)]
    )
    return Revolved(outline, _along(at))


def ball_handle(ball: float, stem: float, length: float) -> Form:
    """Gives a ball on a stem that starts at x = 0, the ball's middle at its end."""
    if stem >= ball:
        raise Unbuildable("a stem thicker than its ball")
    return Joined((round_bar(stem, length), Ball(ball / 2.0, _along(length))))


def spoked_wheel(
    outside: float, rim: float, hub: float, width: float, spokes: int, spoke: float, bore: float
) -> Form:
    """Gives a wheel: rim of a radial thickness, hub and bore diameters, round spokes."""
    inside = outside - 2.0 * rim
    if not 0.0 < bore < hub < inside < outside:
        raise Unbuildable("bore, hub, rim and outside must grow in this order")
    if spoke > width:
        raise Unbuildable("spokes thicker than the wheel is wide")
    shell = Raised(annulus(outside / 2.0, inside / 2.0), width, TURNED)
    reach = (inside / 2.0 + outside / 2.0) / 2.0
    arms = tuple(
        Cylinder(spoke / 2.0, reach, _spoke_frame(width / 2.0, 360.0 * n / spokes))
        for n in range(spokes)
    )
    return Cut(Joined((shell, round_bar(hub, width), *arms)), (round_bar(bore, width + 2.0, -1.0),))


def handwheel(
    outside: float, section: float, hub: float, width: float, spokes: int, spoke: float, bore: float
) -> Form:
    """Gives a handwheel: a rim of round section on round spokes from a hub."""
    radius = (outside - section) / 2.0
    if not 0.0 < bore < hub < 2.0 * radius - section or spoke >= section:
        raise Unbuildable("bore, hub and rim must grow in this order, spokes thinner than the rim")
    rim = Ring(radius, section, _along(width / 2.0))
    arms = tuple(
        Cylinder(spoke / 2.0, radius, _spoke_frame(width / 2.0, 360.0 * n / spokes))
        for n in range(spokes)
    )
    return Cut(Joined((rim, round_bar(hub, width), *arms)), (round_bar(bore, width + 2.0, -1.0),))


def flat_pulley(outside: float, width: float, crown: float, bore: float) -> Form:
    """Gives a pulley for a flat belt, higher in the middle by the crown on the radius."""
    edge = outside / 2.0 - crown
    rim: Segment = Arc((width / 2.0, outside / 2.0), (width, edge))
    face = rim if crown else Straight((width, edge))
    outline = Outline(
        (0.0, bore / 2.0),
        (
            Straight((0.0, edge)),
            face,
            Straight((width, bore / 2.0)),
            Straight((0.0, bore / 2.0)),
        ),
    )
    return Revolved(outline, TURNED)


def vee_pulley(
    outside: float, width: float, depth: float, angle: float, bottom: float, bore: float
) -> Form:
    """Gives a pulley with a vee groove in the middle: its depth, whole angle, and flat bottom."""
    half = bottom / 2.0 + depth * math.tan(math.radians(angle / 2.0))
    middle, top = width / 2.0, outside / 2.0
    if half >= middle or not bore / 2.0 < top - depth:
        raise Unbuildable("a groove wider than the pulley or down to its bore")
    floor = [(middle + bottom / 2.0, top - depth)] if bottom else []
    return Revolved(
        polygon(
            [
                (0.0, bore / 2.0),
                (0.0, top),
                (middle - half, top),
                (middle - bottom / 2.0, top - depth),
                *floor,
                (middle + half, top),
                (width, top),
                (width, bore / 2.0),
            ]
        ),
        TURNED,
    )


def round_pulley(outside: float, width: float, cord: float, bore: float) -> Form:
    """Gives a pulley with a groove for round belt, half round and as deep as the belt is thick."""
    middle, top, half = width / 2.0, outside / 2.0, cord / 2.0
    if cord >= width or not bore / 2.0 < top - cord:
        raise Unbuildable("a groove wider than the pulley or down to its bore")
    outline = Outline(
        (0.0, bore / 2.0),
        (
            Straight((0.0, top)),
            Straight((middle - half, top)),
            Straight((middle - half, top - half)),
            Arc((middle, top - cord), (middle + half, top - half)),
            Straight((middle + half, top)),
            Straight((width, top)),
            Straight((width, bore / 2.0)),
            Straight((0.0, bore / 2.0)),
        ),
    )
    return Revolved(outline, TURNED)


def flat_on(form: Form, radius: float, start: float, length: float, height: float) -> Form:
    """Cuts a flat on turned work towards +z, at a height over the axis."""
    size = 2.0 * radius + 2.0
    return Cut(form, (Box(length, size, size, Frame((start, -size / 2.0, height))),))


def eccentric(form: Form, throw: float) -> Form:
    """Sets turned work off its axis towards +z by a throw."""
    return Placed(form, Frame((0.0, 0.0, throw)))


def _along(at: float) -> Frame:
    return Frame((at, 0.0, 0.0), TURNED.z, TURNED.x)


def _spoke_frame(at: float, degrees: float) -> Frame:
    angle = math.radians(degrees)
    return Frame((at, 0.0, 0.0), (0.0, math.cos(angle), math.sin(angle)), (1.0, 0.0, 0.0))
