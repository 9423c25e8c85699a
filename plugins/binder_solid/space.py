"""Vectors and frames in space, worked in plain floats of mm."""

from __future__ import annotations

import math

from .forms import Frame, Vector


def plus(one: Vector, other: Vector, times: float = 1.0) -> Vector:
    """Adds a multiple of a vector to another."""
    return (one[0] + times * other[0], one[1] + times * other[1], one[2] + times * other[2])


def minus(one: Vector, other: Vector) -> Vector:
    """Gives the way from the other to the one."""
    return plus(one, other, -1.0)


def dot(one: Vector, other: Vector) -> float:
    """Gives the scalar product."""
    return one[0] * other[0] + one[1] * other[1] + one[2] * other[2]


def cross(one: Vector, other: Vector) -> Vector:
    """Gives the vector product."""
    return (
        one[1] * other[2] - one[2] * other[1],
        one[2] * other[0] - one[0] * other[2],
        one[0] * other[1] - one[1] * other[0],
    )


def length(vector: Vector) -> float:
    """Gives the length of a vector."""
    return math.sqrt(dot(vector, vector))


def unit(vector: Vector) -> Vector:
    """Gives the same direction with length 1; the vector must not be of no length."""
    size = length(vector)
    return (vector[0] / size, vector[1] / size, vector[2] / size)


def frame_y(frame: Frame) -> Vector:
    """Gives the third direction of a frame: z × x."""
    return cross(frame.z, frame.x)


def spun(frame: Frame, angle: float) -> Frame:
    """Gives a frame turned about its own z by an angle in radians."""
    aside = plus((0.0, 0.0, 0.0), frame.x, math.cos(angle))
    return Frame(frame.origin, frame.z, unit(plus(aside, frame_y(frame), math.sin(angle))))


def placed(point: Vector, frame: Frame) -> Vector:
    """Tells a point of a frame in the space that the frame lies in."""
    along = plus(frame.origin, frame.x, point[0])
    return plus(plus(along, frame_y(frame), point[1]), frame.z, point[2])
