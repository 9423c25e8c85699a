"""The flat end of bent wire in which an eye is drilled: how long, thick and wide it is hammered."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import TYPE_CHECKING

from binder_solid.forms import Box, Cut, Form, Frame, Joined
from binder_solid.space import cross, dot, length, minus, plus, unit

if TYPE_CHECKING:
    from binder_solid.facts import Located
    from binder_solid.forms import Bent, Vector

# An eye is so many times as wide as its hole; common practice, no source.
_EYE = 2.0
_HOLES = frozenset({"drilled", "reamed"})
_ALONG, _CLEAR_MM = 0.1, 1.0


@dataclass(frozen=True, slots=True)
class FlatEye:
    """What is hammered flat, in mm; `end` is the middle of the wire's end, `inwards` its way."""

    long: float
    thick: float
    wide: float
    end: Vector
    inwards: Vector
    up: Vector


def hammered(wire: float, hole: float, off: float) -> tuple[float, float, float] | None:
    """How long, thick and wide wire is hammered for a hole so far from its end, all in mm.

    None where the wire is wide enough for it. What is flattened keeps its section:
    π/4 × d² = width × thickness (its edges taken as square).
    """
    wide = _EYE * hole
    if wire <= hole or wide <= wire:
        return None
    return off + wide, math.pi / 4 * wire**2 / wide, wide


def flat_eye(form: Bent, one: Located) -> FlatEye | None:
    """The flat of a hole across the nearer end of bent wire; None where it needs none."""
    if one.kind not in _HOLES or not one.spots:
        return None
    ends = ((form.points[0], form.points[1]), (form.points[-1], form.points[-2]))
    end, then = min(ends, key=lambda two: _off(one, two[0]))
    inwards, up = unit(minus(then, end)), one.frame.z
    sizes = hammered(form.wire, one.diameter or 0.0, _off(one, end))
    if sizes is None or abs(dot(inwards, up)) > _ALONG or sizes[0] > length(minus(then, end)):
        return None
    return FlatEye(*sizes, end, inwards, up)


def _off(one: Located, end: Vector) -> float:
    """How far the axis of a hole is from the middle of an end, in mm."""
    way = minus(one.spots[0], end)
    return length(plus(way, one.frame.z, -dot(way, one.frame.z)))


def flattened(form: Form, wire: float, one: FlatEye) -> Form:
    """Bent wire with its end as it is hammered."""
    room = wire + _CLEAR_MM
    gone = _box(one, (one.long + _CLEAR_MM, room, room), plus(one.end, one.inwards, -_CLEAR_MM))
    return Joined((Cut(form, (gone,)), _box(one, (one.long, one.wide, one.thick), one.end)))


def _box(one: FlatEye, size: tuple[float, float, float], start: Vector) -> Box:
    long, wide, high = size
    corner = plus(plus(start, cross(one.up, one.inwards), -wide / 2), one.up, -high / 2)
    return Box(long, wide, high, Frame(corner, one.up, one.inwards))
