"""Forms and sums of helical springs of round wire; axis along +x from x = 0; mm, N, MPa."""

from __future__ import annotations

import math
from collections.abc import Iterator

from .coils import coil_points
from .faults import Unbuildable
from .forms import TURNED, Box, Coil, Cut, Form, Frame, Vector, Wire
from .space import minus, plus, unit

_CLOSED = 1.0
_LOOP = 315.0  # degrees of an end loop
_LOOP_STEPS = 21


def compression_spring(
    wire: float, mean: float, coils: float, free_length: float, *, is_ground: bool = True
) -> Form:
    """Gives a compression spring of so many working coils and one closed coil at either end.

    Ground ends are flat at x = 0 and x = free length; raises Unbuildable where it has no room.
    """
    total = coils + 2.0 * _CLOSED
    pitch = (free_length - 2.0 * wire) / coils if is_ground else (free_length - 3.0 * wire) / coils
    if pitch < wire:
        raise Unbuildable("a spring shorter than its own wire wound up")
    start = 0.0 if is_ground else wire / 2.0
    frame = Frame((start, 0.0, 0.0), TURNED.z, TURNED.x)
    coil = Coil(mean / 2.0, pitch, total, wire, frame=frame, closed=_CLOSED)
    if not is_ground:
        return coil
    size = mean + 4.0 * wire
    corner = -size / 2.0
    return Cut(
        coil,
        (
            Box(size, size, size, Frame((-size, corner, corner))),
            Box(size, size, size, Frame((free_length, corner, corner))),
        ),
    )


def extension_spring(wire: float, mean: float, coils: float) -> Wire:
    """Gives an extension spring wound wire to wire, a side loop turned up at either end."""
    coil = Coil(mean / 2.0, 1.02 * wire, coils, wire, frame=TURNED)
    body = coil_points(coil)
    first = tuple(_loop(body, mean / 2.0, -1.0))[::-1]
    return Wire((*first, *body, *_loop(body[::-1], mean / 2.0, 1.0)), wire)


def torsion_spring(wire: float, mean: float, coils: float, leg: float) -> Wire:
    """Gives a torsion spring wound wire to wire, with a straight leg off either end."""
    coil = Coil(mean / 2.0, 1.02 * wire, coils, wire, frame=TURNED)
    body = coil_points(coil)
    return Wire((*tuple(_leg(body, leg))[::-1], *body, *_leg(body[::-1], leg)), wire)


def rate(wire: float, mean: float, coils: float, shear_modulus: float) -> float:
    """Gives N per mm of a compression or extension spring, G d⁴ / (8 D³ n) (EN 13906-1)."""
    return shear_modulus * wire**4 / (8.0 * mean**3 * coils)


def working_coils(wire: float, mean: float, stiffness: float, shear_modulus: float) -> float:
    """Gives the working coils for a rate in N per mm, G d⁴ / (8 D³ k) (EN 13906-1)."""
    return shear_modulus * wire**4 / (8.0 * mean**3 * stiffness)


def solid_length(wire: float, coils: float, *, is_ground: bool = True) -> float:
    """Gives the length of a compression spring pressed together, two closed coils to the rest."""
    return wire * (coils + (2.0 if is_ground else 3.0))


def wire_length(mean: float, pitch: float, coils: float) -> float:
    """Gives the wire in so many coils of one pitch."""
    return coils * math.hypot(math.pi * mean, pitch)


def _leg(points: tuple[Vector, ...], leg: float) -> Iterator[Vector]:
    """Goes straight on from the first point, away from the second."""
    step = math.dist(points[0], points[1])
    along = plus(points[0], points[1], -1.0)
    count = max(1, round(leg / step))
    yield from (plus(points[0], along, leg / step * n / count) for n in range(1, count + 1))


def _loop(points: tuple[Vector, ...], radius: float, outwards: float) -> Iterator[Vector]:
    """Turns on from the first point, away from the second, round a circle beyond the end."""
    onwards = unit(minus(points[0], points[1]))
    onwards = unit((0.0, onwards[1], onwards[2]))
    for number in range(1, _LOOP_STEPS + 1):
        angle = math.radians(_LOOP * number / _LOOP_STEPS)
        aside = plus(points[0], onwards, radius * math.sin(angle))
        yield plus(aside, (1.0, 0.0, 0.0), outwards * radius * (1.0 - math.cos(angle)))
