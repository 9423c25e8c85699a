"""The axes about which bodies turn, as the parts stand in the model."""

from __future__ import annotations

from collections.abc import Collection
from dataclasses import dataclass

from binder.api import Design
from binder_solid.forms import Vector
from binder_solid.placed import MotionFact, PlacedFact
from binder_solid.space import cross, dot, length, minus, plus

_PARALLEL = 1e-6


@dataclass(frozen=True, slots=True)
class Axis:
    """A line in the model that a body turns about: a point on it in mm, and its direction."""

    origin: Vector
    way: Vector


def axis_of(items: Collection[str], design: Design) -> Axis | None:
    """The axis of the first joint in which one of the items turns in something else."""
    return _way_of(items, "turn", design)


def _way_of(items: Collection[str], kind: str, design: Design) -> Axis | None:
    names = {one.subject: one.item for one in design.facts.all(PlacedFact)}
    for motion in design.facts.all(MotionFact):
        inside = [names.get(name) in items for name in (motion.one, motion.other)]
        if motion.motion == kind and inside.count(True) == 1:
            return Axis(motion.origin, motion.way)
    return None


def slide_of(items: Collection[str], design: Design) -> Axis | None:
    """The way of the first joint in which one of the items slides in something else."""
    return _way_of(items, "slide", design)


def between(one: Axis, other: Axis) -> float | None:
    """The distance of two axes in mm, None where they are not parallel."""
    if abs(abs(dot(one.way, other.way)) - 1) > _PARALLEL:
        return None
    arm = minus(other.origin, one.origin)
    return length(plus(arm, one.way, -dot(arm, one.way)))


def passes(axis: Axis, other: Axis) -> float | None:
    """How far along an axis in mm another comes nearest to it; None for parallel ones."""
    normal = cross(axis.way, other.way)
    square = length(normal) ** 2
    if square < _PARALLEL:
        return None
    return dot(cross(minus(other.origin, axis.origin), other.way), normal) / square


def centres_as_placed(a: Collection[str], b: Collection[str], design: Design) -> float | None:
    """How far in mm the axes of two bodies stand apart in the model, where that is known."""
    one, other = axis_of(a, design), axis_of(b, design)
    return between(one, other) if one is not None and other is not None else None
