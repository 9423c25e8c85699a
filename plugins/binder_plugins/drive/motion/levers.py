"""What cranks, cams, trips and four bars move: slides to and fro, levers that rock."""

from __future__ import annotations

import math
from collections.abc import Callable, Iterator, Mapping
from functools import partial

from binder.api import Design, Joint, Size
from binder_plugins.drive.cams.made import motion_of
from binder_plugins.drive.motion.axes import Moving, at_angle, copies_of
from binder_plugins.drive.motion.linkages import linkage_of, rods_of
from binder_plugins.drive.motion.planes import away_from
from binder_plugins.drive.motion.trips import lifting_rad, raises
from binder_plugins.drive.standing import Axis, axis_of, slide_of
from binder_plugins.drive.train.bodies import Body, bodies
from binder_solid.forms import Frame, Vector
from binder_solid.placed import PlacedFact
from binder_solid.space import plus
from binder_trade.explained import NotDefined

# The driver's angle in radians to a travel in mm, or to an angle of the lever.
Law = Callable[[float], float]


def moved_bodies(design: Design, turning: list[Moving]) -> Iterator[Moving]:
    """Each body that a crank, cam, trip or four bars move, where its way or pivot is known."""
    of = bodies(design)
    for joint in design.joints.values():
        drivers = [one for one in turning if joint.ends[0].item in one.items]
        last = joint.ends[-1].item
        if not drivers or last not in of or last in drivers[0].items:
            continue
        try:
            if joint.kind in _LINKED:
                yield from _linked(joint, drivers[0], of[last], of, design)
            elif joint.kind in _LAWS:
                yield from _led(joint, drivers[0], of[last], design)
        except NotDefined:
            continue  # What cannot turn is told where its duty is reckoned.


def _linked(
    joint: Joint, driver: Moving, body: Body, of: Mapping[str, Body], design: Design
) -> Iterator[Moving]:
    """What a crank or four bars move, and the rod between."""
    linkage = linkage_of(joint, driver, body, of, design)
    if linkage is None:
        return
    copies, plane = copies_of(body.items, design), linkage.stood.plane
    if joint.kind == "cranks":
        frame: Callable[[PlacedFact, float], Frame] = partial(_slid, plane.along, linkage.travel)
    else:
        pivot = axis_of(body.items, design)
        if pivot is None:
            return
        frame = partial(_rocked, Axis(pivot.origin, driver_way(driver, pivot)), linkage.travel)
    yield Moving(body.name, body.items, copies, driver.name, driver.turns, frame)
    yield from rods_of(linkage, driver, design)


def driver_way(driver: Moving, pivot: Axis) -> Vector:
    """The way of the driving shaft, by which the angles of its linkage are counted."""
    return driver.axis.way if driver.axis is not None else pivot.way


def _led(joint: Joint, driver: Moving, body: Body, design: Design) -> Iterator[Moving]:
    """What a cam or a trip moves."""
    copies = copies_of(body.items, design)
    from_drawn = partial(_since, _LAWS[joint.kind](joint, design), _drawn(joint))
    if joint.kind == "trips":
        pivot = axis_of(body.items, design)
        if pivot is None:
            return
        frame: Callable[[PlacedFact, float], Frame] = partial(
            _rocked, raises(pivot, driver.axis), from_drawn
        )
    else:
        way = slide_of(body.items, design)
        if way is None or driver.axis is None:
            return
        frame = partial(_slid, away_from(driver.axis, way, copies), from_drawn)
    yield Moving(body.name, body.items, copies, driver.name, driver.turns, frame)


def _drawn(joint: Joint) -> float:
    said = getattr(joint.entry, "drawn_at", None)
    return math.radians(float(said.exact)) if isinstance(said, Size) else 0.0


def _since(law: Law, drawn: float, turned: float) -> float:
    return law(turned + drawn) - law(drawn)


def _slid(way: Vector, travel: Law, copy: PlacedFact, turned: float) -> Frame:
    origin = plus(copy.frame.origin, way, travel(turned))
    return Frame(origin, copy.frame.z, copy.frame.x)


def _rocked(pivot: Axis, angle: Law, copy: PlacedFact, turned: float) -> Frame:
    return at_angle(pivot, copy, angle(turned))


def _cam(joint: Joint, _: Design) -> Law:
    motion = motion_of(joint)
    return lambda angle: motion.at(angle % (2 * math.pi))[0]


def _trip(joint: Joint, design: Design) -> Law:
    """The lever rises evenly over its part of the pitch, and drops."""
    entry = joint.entry
    lifts = int(entry.lifts)  # type: ignore[attr-defined]
    arm = getattr(entry, "arm", None)
    if not isinstance(arm, Size):
        raise NotDefined("a lever without its arm", "say `arm:`, from the pivot to the wheel")
    most = float(entry.lift.mm) / arm.mm  # type: ignore[attr-defined]
    pitch = 2 * math.pi / lifts
    rises = lifting_rad(joint, design)

    def risen(angle: float) -> float:
        part = (angle % pitch) / rises
        return most * part if part <= 1 else 0.0

    return risen


_LAWS: Mapping[str, Callable[[Joint, Design], Law]] = {"cams": _cam, "trips": _trip}
_LINKED = ("cranks", "rocks")
