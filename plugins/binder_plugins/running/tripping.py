"""A trip wheel and its lever as they stand: do the stopping faces push the lever the way it lifts.

The teeth take the lever with their stopping faces, so the wheel turns the way that these look. A
lever that is worked beyond its fulcrum must be pushed down there, one that is worked between
fulcrum and head must be pushed up.
"""

from __future__ import annotations

import math
from typing import TYPE_CHECKING

from binder.api import Design, Diagnostic, Joint, Size
from binder_plugins.running import codes
from binder_plugins.running.ways import way_of
from binder_solid.placed import PlacedFact
from binder_solid.space import cross, dot, minus, placed, plus

if TYPE_CHECKING:
    from collections.abc import Iterator

    from binder_solid.forms import Vector

_UP = (0.0, 0.0, 1.0)
# Flatter than this a push is across the lever and tells nothing; nearer than this to the fulcrum
# it cannot be said on which side of it the wheel works. Share of the push, and of the lever.
_ACROSS, _NEAR = 0.3, 0.05


def check_trips(design: Design) -> Iterator[Diagnostic]:
    """Each wheel whose teeth would press the head down instead of lifting it."""
    for joint in design.joints.values():
        if joint.kind == "trips" and _lifts(joint, design) is False:
            wheel = joint.ends[0].item
            yield codes.TRIP_WHEEL_WRONG_WAY.at(
                joint.at,
                f"the stopping faces of '{wheel}' push the lever of '{joint.name}' the way that "
                "presses its head down",
                help=f"write `{wheel}: {{reversed: true}}` under `positions:`, or take it off "
                "where that is written",
            )


def _lifts(joint: Joint, design: Design) -> bool | None:
    """Whether the push at the lever raises its head; None where that cannot be told."""
    reach = getattr(joint.entry, "reach", None)
    way = way_of(joint.ends[0].item, design)
    wheel, lever = (_copy(end.item, design) for end in (joint.ends[0], joint.ends[-1]))
    if not isinstance(reach, Size) or way is None or wheel is None or lever is None:
        return None
    centre = _middle(wheel)
    ends = _ends(lever)
    head, tail = sorted(ends, key=lambda end: -_far(end, centre))
    long = _far(head, tail)
    along = tuple(each / long for each in minus(tail, head))
    at = min(max(dot(minus(centre, head), along), 0.0), long)  # type: ignore[arg-type]
    touched = plus(head, along, at)  # type: ignore[arg-type]
    push = cross(way, minus(touched, centre))
    size = _far(push, (0.0, 0.0, 0.0))
    beyond = at - reach.mm
    if size == 0.0 or abs(dot(push, _UP)) < _ACROSS * size or abs(beyond) < _NEAR * long:
        return None
    return (dot(push, _UP) < 0) == (beyond > 0)


def _copy(item: str, design: Design) -> PlacedFact | None:
    return next((one for one in design.facts.all(PlacedFact) if one.item == item), None)


def _middle(one: PlacedFact) -> Vector:
    (a, b, c), (d, e, f) = one.corners
    return placed(((a + d) / 2, (b + e) / 2, (c + f) / 2), one.frame)


def _ends(one: PlacedFact) -> tuple[Vector, Vector]:
    """The middles of the two ends of a lever, which is long in its own x."""
    (a, b, c), (d, e, f) = one.corners
    y, z = (b + e) / 2, (c + f) / 2
    return placed((a, y, z), one.frame), placed((d, y, z), one.frame)


def _far(one: Vector, other: Vector) -> float:
    way = minus(one, other)
    return math.sqrt(dot(way, way))
