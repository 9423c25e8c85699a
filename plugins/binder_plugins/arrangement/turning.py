"""Directions to the turn of a part: the first axis, then the spin about it."""

from __future__ import annotations

import math
from collections.abc import Sequence

from binder_plugins.arrangement.space import (
    carried,
    likeness,
    scaled,
    settled,
    taking,
    towards_reader,
    turned_frame,
)
from binder_plugins.arrangement.ties import Lay
from binder_solid.forms import Frame, Vector
from binder_solid.space import cross, dot, plus

_UP: Vector = (0.0, 0.0, 1.0)
_LEAST = 1e-6


def turn_for(
    lays: Sequence[Lay],
    like: Frame,
    *,
    turned: float = 0.0,
    is_reversed: bool = False,
    prefers: tuple[Vector, Vector] | None = None,
) -> Frame:
    """The part laid along the first direction, else as nearly as it can like `like`.

    `turned` is in degrees; `prefers` is a direction of the part and one of the model that it
    should lie along where both ways round are open.
    """
    angle = math.radians(turned)
    if not lays:
        free = Frame(z=like.z, x=like.x)
        if is_reversed:
            free = turned_frame(free, _UP, math.pi)
        return turned_frame(free, _UP, angle)
    first = lays[0]
    ways = [_along(first, like, sign) for sign in (1.0, -1.0)]
    frame = _chosen(ways, first, like, is_reversed=is_reversed, prefers=prefers)
    frame = turned_frame(frame, towards_reader(first.there), angle)
    for other in lays[1:]:
        if math.hypot(*_square_part(carried(other.own, frame), first.there)) > _LEAST:
            return _spun(frame, first.there, other)
    return frame


def _along(lay: Lay, like: Frame, sign: float) -> Frame:
    return settled(taking(lay.own, scaled(lay.there, sign)), lay.there, like)


def _chosen(
    ways: list[Frame],
    first: Lay,
    like: Frame,
    *,
    is_reversed: bool,
    prefers: tuple[Vector, Vector] | None,
) -> Frame:
    best = 0
    if first.sense < 2 and prefers is not None:
        fits = [dot(carried(prefers[0], frame), prefers[1]) for frame in ways]
        best = 1 if fits[1] > fits[0] + _LEAST else 0
    elif first.sense == 0:
        best = 1 if _fit(ways[1], like) > _fit(ways[0], like) + _LEAST else 0
    return ways[1 - best if is_reversed else best]


def _fit(frame: Frame, like: Frame) -> float:
    """How well a part lies: as it is drawn, and of two ways alike with its right end upwards."""
    return likeness(frame, like) + 0.01 * dot(frame.x, (0.2, 0.1, 1.0))


def _square_part(vector: Vector, axis: Vector) -> Vector:
    return plus(vector, axis, -dot(vector, axis))


def _spun(frame: Frame, axis: Vector, lay: Lay) -> Frame:
    """Turned the least way about the first axis until the second direction lies right."""
    here = _square_part(carried(lay.own, frame), axis)
    there = _square_part(lay.there, axis)
    if math.hypot(*there) < _LEAST:
        return frame
    angle = math.atan2(dot(axis, cross(here, there)), dot(here, there))
    if lay.sense < 2 and abs(angle) > math.pi / 2 + _LEAST:
        angle -= math.copysign(math.pi, angle)
    return turned_frame(frame, axis, angle)


def off(lay: Lay, frame: Frame) -> float:
    """How far in degrees a direction lies beside where it should."""
    cosine = dot(carried(lay.own, frame), lay.there)
    if lay.sense < 2:
        cosine = abs(cosine)
    return math.degrees(math.acos(max(-1.0, min(1.0, cosine))))
