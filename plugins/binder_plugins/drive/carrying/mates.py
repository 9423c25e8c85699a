"""Two wheels that drive one another, as they stand: where they touch, and which way is across."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from itertools import pairwise

from binder.api import Design, End, Joint, Passed, TurningFact
from binder_plugins.drive.standing import axis_of
from binder_solid.forms import Vector
from binder_solid.space import cross, dot, length, minus, plus, unit

_PARALLEL = 1e-6


@dataclass(frozen=True, slots=True)
class Facing:
    """From the driver's axis to the driven one's: the way there, and the way across both.

    `across` is the way in which the driver's rim goes at the side of the driven wheel, where
    the driver turns anticlockwise about the way of its axis.
    """

    towards: Vector
    across: Vector
    apart: float


def wheels_of(one: Passed, design: Design) -> tuple[Joint, End, End] | None:
    """The drive and the ends by which it goes from driver to driven."""
    joint = design.joints.get(one.joint)
    bodies = [design.facts.about(TurningFact, name) for name in (one.driver, one.driven)]
    if joint is None or bodies[0] is None or bodies[1] is None:
        return None
    for a, b in _pairs(joint):
        for first, second in ((a, b), (b, a)):
            if first.item in bodies[0].items and second.item in bodies[1].items:
                return joint, first, second
    return None


def _pairs(joint: Joint) -> Iterator[tuple[End, End]]:
    """Gears in a row mesh with their neighbours; a belt joins its first pulley with each other."""
    if joint.kind == "meshes":
        yield from pairwise(joint.ends)
    else:
        yield from ((joint.ends[0], other) for other in joint.ends[1:])


def facing(one: Passed, design: Design) -> Facing | None:
    """How the two stand to one another; None where that is not known or they are not parallel."""
    bodies = [design.facts.about(TurningFact, name) for name in (one.driver, one.driven)]
    axes = [axis_of(body.items, design) if body is not None else None for body in bodies]
    first, second = axes
    if first is None or second is None or abs(abs(dot(first.way, second.way)) - 1) > _PARALLEL:
        return None
    arm = minus(second.origin, first.origin)
    aside = plus(arm, first.way, -dot(arm, first.way))
    if length(aside) < _PARALLEL:
        return None
    towards = unit(aside)
    return Facing(towards, cross(first.way, towards), length(aside))
