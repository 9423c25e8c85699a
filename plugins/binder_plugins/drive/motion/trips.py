"""A toothed wheel under the tail of a lever, as both stand: what it lifts, and over what angle."""

from __future__ import annotations

import math
from collections.abc import Iterator, Mapping
from itertools import product

from binder.api import Design, Joint, Size
from binder_plugins.drive.motion.axes import copies_of
from binder_plugins.drive.standing import Axis, axis_of
from binder_plugins.drive.train.bodies import Body, bodies
from binder_solid.facts import FormFact
from binder_solid.forms import Vector
from binder_solid.placed import PlacedFact
from binder_solid.space import cross, dot, length, minus, placed, plus, unit
from binder_trade.mechanisms.tappets import Trip, trip

# Of the angle from lift to lift, what the wheel lifts over where nothing tells it.
_LIFTS_OVER = 2 / 3
_SQUARE = 1e-6


def raises(pivot: Axis, wheel: Axis | None) -> Axis:
    """The pivot, pointed so that the end beyond it, away from the wheel, goes up."""
    if wheel is None:
        return pivot
    beyond = minus(pivot.origin, wheel.origin)
    x, y, z = pivot.way
    return pivot if cross(pivot.way, beyond)[2] >= 0 else Axis(pivot.origin, (-x, -y, -z))


def stood_trip(joint: Joint, design: Design) -> Trip | None:
    """The trip as the parts stand, the lever drawn at rest; None where that is not known.

    The teeth have radial faces, and take the lever by the edge that they come to first; its tail
    is taken as filed back by what it is left long. Raises
    NotDefined where the wheel misses the lever, or never lets it go.
    """
    wheel, lever = joint.ends[0].item, joint.ends[-1].item
    form, reach = design.facts.about(FormFact, wheel), getattr(joint.entry, "reach", None)
    axes = [_axis(item, bodies(design), design) for item in (wheel, lever)]
    copies = copies_of((lever,), design)
    is_drawn_on = getattr(joint.entry, "drawn_at", None) is not None
    if form is None or form.shape != "ratchet" or is_drawn_on or len(copies) != 1:
        return None
    if axes[0] is None or axes[1] is None or not isinstance(reach, Size):
        return None
    if length(cross(axes[0].way, axes[1].way)) > _SQUARE:
        return None
    pivot = raises(axes[1], axes[0])
    there = _flat(minus(axes[0].origin, pivot.origin), pivot)
    towards = unit(there)
    goes = cross(pivot.way, towards)
    long = getattr(joint.entry, "left_long", None)
    tail = _edge(copies[0], pivot, towards, goes, long.mm if isinstance(long, Size) else 0.0)
    rest = math.degrees(math.atan2(-tail[1], tail[0]))
    return trip(length(there), form.size[1] / 2, math.hypot(*tail), reach.mm, rest)


def _axis(item: str, of: Mapping[str, Body], design: Design) -> Axis | None:
    return axis_of(of[item].items, design) if item in of else None


def _flat(arm: Vector, axis: Axis) -> Vector:
    return plus(arm, axis.way, -dot(arm, axis.way))


def _edge(
    copy: PlacedFact, pivot: Axis, towards: Vector, goes: Vector, long: float
) -> tuple[float, float]:
    """Of the two edges of the tail's end the one behind: towards the wheel, and as it goes.

    The end is taken as filed back by `long` mm, square to itself.
    """
    end = sorted(set(_corners(copy, pivot, towards, goes)), reverse=True)[:2]
    (x, y), (other_x, other_y) = sorted(end, key=lambda spot: spot[1])
    thick = math.hypot(other_x - x, other_y - y)
    if not thick:
        return x - long, y
    return x - long * (other_y - y) / thick, y + long * (other_x - x) / thick


def _corners(
    copy: PlacedFact, pivot: Axis, towards: Vector, goes: Vector
) -> Iterator[tuple[float, float]]:
    for corner in product(*zip(*copy.corners, strict=True)):
        x, y, z = corner
        arm = minus(placed((x, y, z), copy.frame), pivot.origin)
        yield round(dot(arm, towards), 6), round(dot(arm, goes), 6)


def lifting_rad(joint: Joint, design: Design) -> float:
    """The angle of the wheel over which it lifts: as written, as it stands, or by rule of thumb.

    Raises NotDefined as `stood_trip` does.
    """
    over = getattr(joint.entry, "over", None)
    if isinstance(over, Size):
        return math.radians(float(over.exact))
    stood = stood_trip(joint, design)
    pitch = 2 * math.pi / int(joint.entry.lifts)  # type: ignore[attr-defined]
    return stood.shaft_rad if stood is not None else _LIFTS_OVER * pitch
