"""What cranks, cams, trips and four bars move: slides to and fro, levers that rock."""

from __future__ import annotations

import math
from collections.abc import Callable, Iterator, Mapping
from functools import partial

from binder.api import Design, Joint, Size
from binder_plugins.drive.cams.made import motion_of
from binder_plugins.drive.motion.axes import Moving, at_angle, copies_of
from binder_plugins.drive.standing import Axis, axis_of, slide_of
from binder_plugins.drive.train.bodies import Body, bodies
from binder_solid.forms import Frame
from binder_solid.placed import PlacedFact
from binder_solid.space import cross, dot, minus, plus
from binder_trade.explained import NotDefined
from binder_trade.mechanisms.crank_slider import crank_slider
from binder_trade.mechanisms.four_bar import four_bar

# The driver's angle in radians to a travel in mm, or to an angle of the lever.
Law = Callable[[float], float]
_LIFTS_OVER = 2 / 3


def moved_bodies(design: Design, turning: list[Moving]) -> Iterator[Moving]:
    """Each body that a crank, cam, trip or four bars move, where its way or pivot is known."""
    of = bodies(design)
    for joint in design.joints.values():
        law = _law(joint)
        drivers = [one for one in turning if joint.ends[0].item in one.items]
        last = joint.ends[-1].item
        if law is None or not drivers or last not in of or last in drivers[0].items:
            continue
        made = _moving(joint, law, of[last], drivers[0], design)
        if made is not None:
            yield made


def _moving(joint: Joint, law: Law, body: Body, driver: Moving, design: Design) -> Moving | None:
    copies = copies_of(body.items, design)
    drawn = _drawn(joint)
    from_drawn = partial(_since, law, drawn)
    if joint.kind in ("rocks", "trips"):
        pivot = axis_of(body.items, design)
        if pivot is None:
            return None
        way_round = _raises(pivot, driver.axis) if joint.kind == "trips" else pivot
        frame: Callable[[PlacedFact, float], Frame] = partial(_rocked, way_round, from_drawn)
    else:
        way = slide_of(body.items, design)
        if way is None or driver.axis is None:
            return None
        outward = _away(way, driver.axis, copies)
        frame = partial(_slid, outward, from_drawn)
    return Moving(body.name, body.items, copies, driver.name, driver.turns, frame)


def _drawn(joint: Joint) -> float:
    said = getattr(joint.entry, "drawn_at", None)
    return math.radians(float(said.exact)) if isinstance(said, Size) else 0.0


def _since(law: Law, drawn: float, turned: float) -> float:
    return law(turned + drawn) - law(drawn)


def _slid(axis: Axis, travel: Law, copy: PlacedFact, turned: float) -> Frame:
    origin = plus(copy.frame.origin, axis.way, travel(turned))
    return Frame(origin, copy.frame.z, copy.frame.x)


def _rocked(pivot: Axis, angle: Law, copy: PlacedFact, turned: float) -> Frame:
    return at_angle(pivot, copy, angle(turned))


def _raises(pivot: Axis, wheel: Axis | None) -> Axis:
    """The pivot, pointed so that the end beyond it, away from the wheel, goes up."""
    if wheel is None:
        return pivot
    beyond = minus(pivot.origin, wheel.origin)
    x, y, z = pivot.way
    return pivot if cross(pivot.way, beyond)[2] >= 0 else Axis(pivot.origin, (-x, -y, -z))


def _away(way: Axis, crank: Axis, copies: tuple[PlacedFact, ...]) -> Axis:
    """The way of a slide, pointed away from the crank."""
    here = copies[0].frame.origin if copies else way.origin
    is_away = dot(minus(here, crank.origin), way.way) >= 0
    x, y, z = way.way
    return way if is_away else Axis(way.origin, (-x, -y, -z))


def _law(joint: Joint) -> Law | None:
    """How far the driven half has gone, by the driver's angle."""
    maker = _LAWS.get(joint.kind)
    try:
        return maker(joint) if maker is not None else None
    except NotDefined:
        return None


def _crank(joint: Joint) -> Law:
    throw = float(joint.entry.throw.mm)  # type: ignore[attr-defined]
    rod, offset = (getattr(joint.entry, name, None) for name in ("rod", "offset"))
    if not isinstance(rod, Size):
        return lambda angle: throw * math.cos(angle)
    made = crank_slider(throw, rod.mm, offset.mm if isinstance(offset, Size) else 0.0)
    return lambda angle: made.at(angle).x_mm


def _cam(joint: Joint) -> Law:
    motion = motion_of(joint)
    return lambda angle: motion.at(angle % (2 * math.pi))[0]


def _bars(joint: Joint) -> Law:
    bar = four_bar(
        *(float(getattr(joint.entry, name).mm) for name in ("frame", "crank", "rod", "rocker"))
    )
    return lambda angle: bar.at(angle).rocker_rad


def _trip(joint: Joint) -> Law:
    """The lever rises evenly over its part of the pitch, and drops."""
    entry = joint.entry
    lifts = int(entry.lifts)  # type: ignore[attr-defined]
    arm, over = getattr(entry, "arm", None), getattr(entry, "over", None)
    if not isinstance(arm, Size):
        raise NotDefined("a lever without its arm", "say `arm:`, from the pivot to the wheel")
    most = float(entry.lift.mm) / arm.mm  # type: ignore[attr-defined]
    pitch = 2 * math.pi / lifts
    rises = math.radians(float(over.exact)) if isinstance(over, Size) else _LIFTS_OVER * pitch

    def risen(angle: float) -> float:
        part = (angle % pitch) / rises
        return most * part if part <= 1 else 0.0

    return risen


_LAWS: Mapping[str, Callable[[Joint], Law]] = {
    "cranks": _crank,
    "cams": _cam,
    "rocks": _bars,
    "trips": _trip,
}
