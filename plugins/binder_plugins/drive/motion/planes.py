"""The plane in which a linkage moves: across its driving shaft, with a direction in it."""

from __future__ import annotations

import math
from collections.abc import Collection, Sequence
from dataclasses import dataclass

from binder.api import Design
from binder_plugins.drive.motion.axes import at_angle
from binder_plugins.drive.standing import Axis
from binder_solid.forms import Frame, Vector
from binder_solid.placed import MotionFact, PlacedFact
from binder_solid.space import cross, dot, length, minus, plus, unit

Spot = tuple[float, float]
_SQUARE = 1e-6


@dataclass(frozen=True, slots=True)
class Plane:
    """The driving shaft's axis and a direction square to it; spots are mm from the axis.

    Turning is counted as the shaft's own: from `along` towards `aside`.
    """

    axis: Axis
    along: Vector

    @property
    def aside(self) -> Vector:
        """The second direction of the plane."""
        return cross(self.axis.way, self.along)

    def spot(self, point: Vector) -> Spot:
        """Where a point of the model lies in the plane."""
        arm = minus(point, self.axis.origin)
        return dot(arm, self.along), dot(arm, self.aside)

    def carried(self, copy: PlacedFact, start: Spot, to: Spot, radians: float) -> Frame:
        """Where a copy stands when one spot of it has gone to another and it has turned so far."""
        here = self._point(start)
        turned = at_angle(Axis(here, self.axis.way), copy, radians)
        way = minus(self._point(to), here)
        return Frame(plus(turned.origin, way), turned.z, turned.x)

    def _point(self, spot: Spot) -> Vector:
        return plus(plus(self.axis.origin, self.along, spot[0]), self.aside, spot[1])


def plane_across(axis: Axis, towards: Vector) -> Plane | None:
    """The plane across an axis with a direction in it; None where that lies along the axis."""
    flat = plus(towards, axis.way, -dot(towards, axis.way))
    return Plane(axis, unit(flat)) if length(flat) > _SQUARE * max(1.0, length(towards)) else None


def away_from(shaft: Axis, slide: Axis, copies: Sequence[PlacedFact]) -> Vector:
    """The way of a slide, pointed away from a shaft."""
    here = copies[0].frame.origin if copies else slide.origin
    is_away = dot(minus(here, shaft.origin), slide.way) >= 0
    x, y, z = slide.way
    return slide.way if is_away else (-x, -y, -z)


def pin_between(some: Collection[str], others: Collection[str], design: Design) -> Axis | None:
    """The axis about which two bodies turn in one another; None where no joint says it."""
    names = {one.subject: one.item for one in design.facts.all(PlacedFact)}
    for motion in design.facts.all(MotionFact):
        pair = names.get(motion.one), names.get(motion.other)
        is_theirs = pair[0] in some and pair[1] in others
        if motion.motion == "turn" and (is_theirs or (pair[1] in some and pair[0] in others)):
            return Axis(motion.origin, motion.way)
    return None


def angle_of(spot: Spot) -> float:
    """The angle of a spot about the shaft in radians."""
    return math.atan2(spot[1], spot[0])
