"""Moves in space: a frame as a move of a part, and turns of it."""

from __future__ import annotations

import math

from binder_solid.forms import Frame, Vector
from binder_solid.space import cross, dot, frame_y, plus, unit

NOWHERE_AT = (0.0, 0.0, 0.0)
_IN_FACE = 1e-6
_UPRIGHT = 1.05  # what stands upright counts more where two ways are alike
AXES: tuple[Vector, Vector, Vector] = ((1.0, 0.0, 0.0), (0.0, 1.0, 0.0), (0.0, 0.0, 1.0))


def carried(vector: Vector, frame: Frame) -> Vector:
    """A direction of a part as the model sees it."""
    along = plus(NOWHERE_AT, frame.x, vector[0])
    return plus(plus(along, frame_y(frame), vector[1]), frame.z, vector[2])


def scaled(vector: Vector, times: float) -> Vector:
    """A multiple of a vector."""
    return plus(NOWHERE_AT, vector, times)


def spun_about(vector: Vector, axis: Vector, angle: float) -> Vector:
    """A vector turned about an axis by an angle in radians (Rodrigues)."""
    along = scaled(axis, dot(axis, vector) * (1.0 - math.cos(angle)))
    turned = plus(along, vector, math.cos(angle))
    return plus(turned, cross(axis, vector), math.sin(angle))


def turned_frame(frame: Frame, axis: Vector, angle: float) -> Frame:
    """A frame turned about an axis through its own origin."""
    z = unit(spun_about(frame.z, axis, angle))
    return Frame(frame.origin, z, _square(spun_about(frame.x, axis, angle), z))


def _square(x: Vector, z: Vector) -> Vector:
    return unit(plus(x, z, -dot(x, z)))


def taking(own: Vector, there: Vector) -> Frame:
    """A turn that takes one direction to another by the shortest way."""
    axis = cross(own, there)
    sine, cosine = math.sqrt(dot(axis, axis)), dot(own, there)
    if sine < 1e-9:
        if cosine > 0:
            return Frame()
        return turned_frame(Frame(), square_to(own), math.pi)
    return turned_frame(Frame(), unit(axis), math.atan2(sine, cosine))


def square_to(way: Vector) -> Vector:
    """A direction at right angles to another, the same each time."""
    least = min(range(3), key=lambda n: (round(abs(way[n]), 9), -n))
    return unit(cross(way, AXES[least]))


def likeness(frame: Frame, like: Frame) -> float:
    """How nearly one frame lies as another: 3 where they lie alike."""
    pairs = ((frame.x, like.x), (frame_y(frame), frame_y(like)), (frame.z, like.z))
    return sum(dot(one, other) for one, other in pairs)


def settled(frame: Frame, axis: Vector, like: Frame) -> Frame:
    """The frame turned about an axis until it lies as nearly as it can like another."""
    upright = scaled(like.z, _UPRIGHT)
    pairs = ((frame.x, like.x), (frame_y(frame), frame_y(like)), (frame.z, upright))
    sine = sum(dot(cross(axis, one), other) for one, other in pairs)
    cosine = sum(dot(one, other) - dot(axis, one) * dot(axis, other) for one, other in pairs)
    if math.hypot(sine, cosine) < 1e-9:
        return frame
    return turned_frame(frame, axis, math.atan2(sine, cosine))


def axes_across(way: Vector, frame: Frame) -> tuple[Vector, ...]:
    """The axes of a part that lie in a face of it which looks that way."""
    axes = (frame.x, frame_y(frame), frame.z)
    return tuple(axis for axis in axes if abs(dot(axis, way)) < _IN_FACE)


def towards_reader(axis: Vector) -> Vector:
    """An axis in the sense that looks at who stands in front, to the right, or above."""
    most = max(range(3), key=lambda n: (round(abs(axis[n]), 9), n))
    sign = -1.0 if most == 1 else 1.0
    return axis if axis[most] * sign > 0 else scaled(axis, -1.0)


def tidy(frame: Frame) -> Frame:
    """The frame without the last digits of rounding, so that equal places are equal."""
    x, z = _tidy(frame.x), _tidy(frame.z)
    a, b, c = (round(value, 9) + 0.0 for value in frame.origin)
    return Frame((a, b, c), z, x)


def _tidy(vector: Vector) -> Vector:
    a, b, c = (round(value, 12) + 0.0 for value in vector)
    return (a, b, c)
