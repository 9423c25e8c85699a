"""Volume, centre and inertia of plain bodies by formula, and of what is put together from them.

Sources: Machinery's Handbook, Mensuration and Moments of Inertia; the same formulas stand in any
table of mechanics. Put together by Steiner's theorem of parallel axes. Density 1.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

Triple = tuple[float, float, float]
Rows = tuple[Triple, Triple, Triple]
Point = tuple[float, float]


@dataclass(frozen=True)
class Body:
    """A volume, its centre, and its inertia about that centre."""

    volume: float
    centre: Triple
    inertia: Rows


def diagonal(x: float, y: float, z: float) -> Rows:
    return ((x, 0.0, 0.0), (0.0, y, 0.0), (0.0, 0.0, z))


def box(a: float, b: float, c: float) -> Body:
    volume = a * b * c
    return Body(
        volume,
        (a / 2, b / 2, c / 2),
        diagonal(
            volume * (b * b + c * c) / 12,
            volume * (a * a + c * c) / 12,
            volume * (a * a + b * b) / 12,
        ),
    )


def cylinder(r: float, h: float) -> Body:
    volume = math.pi * r * r * h
    across = volume * (3 * r * r + h * h) / 12
    return Body(volume, (0, 0, h / 2), diagonal(across, across, volume * r * r / 2))


def cone(r: float, h: float) -> Body:
    volume = math.pi * r * r * h / 3
    across = volume * (3 * r * r / 20 + 3 * h * h / 80)
    return Body(volume, (0, 0, h / 4), diagonal(across, across, 0.3 * volume * r * r))


def frustum(r: float, end: float, h: float) -> Body:
    whole = h * r / (r - end)
    return less(cone(r, whole), moved(cone(end, whole - h), (0, 0, h)))


def ball(r: float) -> Body:
    volume = 4 * math.pi * r**3 / 3
    own = 0.4 * volume * r * r
    return Body(volume, (0, 0, 0), diagonal(own, own, own))


def hemisphere(r: float) -> Body:
    volume = 2 * math.pi * r**3 / 3
    across = 83 * volume * r * r / 320
    return Body(volume, (0, 0, 3 * r / 8), diagonal(across, across, 0.4 * volume * r * r))


def torus(radius: float, a: float) -> Body:
    volume = 2 * math.pi**2 * radius * a * a
    across = volume * (radius**2 / 2 + 5 * a * a / 8)
    return Body(volume, (0, 0, 0), diagonal(across, across, volume * (radius**2 + 3 * a * a / 4)))


def half_cylinder(r: float, h: float) -> Body:
    """The half with y > 0."""
    volume = math.pi * r * r * h / 2
    rise = 4 * r / (3 * math.pi)
    return Body(
        volume,
        (0, rise, h / 2),
        diagonal(
            volume * (r * r / 4 + h * h / 12 - rise**2),
            volume * (r * r / 4 + h * h / 12),
            volume * (r * r / 2 - rise**2),
        ),
    )


def prism(points: Sequence[Point], h: float) -> Body:
    """Any polygon, anticlockwise: area, first and second moments as sums over its sides."""
    area = sx = sy = ixx = iyy = ixy = 0.0
    for (x0, y0), (x1, y1) in zip(points, [*points[1:], points[0]], strict=True):
        cross = x0 * y1 - x1 * y0
        area += cross / 2
        sx += cross * (x0 + x1) / 6
        sy += cross * (y0 + y1) / 6
        ixx += cross * (x0 * x0 + x0 * x1 + x1 * x1) / 12
        iyy += cross * (y0 * y0 + y0 * y1 + y1 * y1) / 12
        ixy += cross * (x0 * y1 + 2 * x0 * y0 + 2 * x1 * y1 + x1 * y0) / 24
    x, y = sx / area, sy / area
    xx, yy, xy = (ixx - area * x * x) * h, (iyy - area * y * y) * h, (ixy - area * x * y) * h
    zz = area * h**3 / 12
    return Body(
        area * h,
        (x, y, h / 2),
        ((yy + zz, -xy, 0.0), (-xy, xx + zz, 0.0), (0.0, 0.0, xx + yy)),
    )


def moved(body: Body, by: Triple) -> Body:
    x, y, z = body.centre
    return Body(body.volume, (x + by[0], y + by[1], z + by[2]), body.inertia)


def along_x(body: Body) -> Body:
    """Laid over so that its z runs along x, its x along y and its y along z."""
    x, y, z = body.centre
    rows = body.inertia
    order = (2, 0, 1)
    one, two, three = ((rows[i][order[0]], rows[i][order[1]], rows[i][order[2]]) for i in order)
    return Body(body.volume, (z, x, y), (one, two, three))


def plus(*bodies: Body) -> Body:
    return _sum([(1.0, body) for body in bodies])


def less(body: Body, *taken: Body) -> Body:
    return _sum([(1.0, body), *((-1.0, other) for other in taken)])


def _sum(signed: Sequence[tuple[float, Body]]) -> Body:
    volume = sum(sign * body.volume for sign, body in signed)
    x, y, z = (
        sum(sign * body.volume * body.centre[n] for sign, body in signed) / volume for n in range(3)
    )
    one, two, three = (
        (
            _entry(signed, (x, y, z), n, 0),
            _entry(signed, (x, y, z), n, 1),
            _entry(signed, (x, y, z), n, 2),
        )
        for n in range(3)
    )
    return Body(volume, (x, y, z), (one, two, three))


def _entry(signed: Sequence[tuple[float, Body]], centre: Triple, row: int, column: int) -> float:
    total = 0.0
    for sign, body in signed:
        way = [body.centre[n] - centre[n] for n in range(3)]
        square = sum(part * part for part in way) if row == column else 0.0
        total += sign * (
            body.inertia[row][column] + body.volume * (square - way[row] * way[column])
        )
    return total
