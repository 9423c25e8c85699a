"""Cranks with their rods, and four bars, as they stand: where each link is at an angle."""

from __future__ import annotations

import math
from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass
from functools import partial

from binder.api import Design, Joint, Size
from binder_plugins.drive.motion.axes import Moving, copies_of
from binder_plugins.drive.motion.planes import (
    Plane,
    Spot,
    angle_of,
    away_from,
    pin_between,
    plane_across,
)
from binder_plugins.drive.standing import Axis, axis_of, slide_of
from binder_plugins.drive.train.bodies import Body
from binder_solid.forms import Frame, Vector
from binder_solid.placed import PlacedFact
from binder_solid.space import minus
from binder_trade.mechanisms.crank_slider import CrankSlider, crank_slider
from binder_trade.mechanisms.four_bar import Branch, FourBar, four_bar

Bodies = Mapping[str, Body]
Pose = tuple[Spot, float]


@dataclass(frozen=True, slots=True)
class Stood:
    """How a linkage stands in the model: its plane, and its pins where joints tell them.

    `far` is the pin between the rod and what it moves; `rod` the body of the rod, if there is
    one.
    """

    plane: Plane
    rod: Body | None
    near: Spot | None
    far: Spot | None


@dataclass(frozen=True, slots=True)
class Linkage:
    """A linkage that turns; angles in radians from as it is drawn.

    `travel` is how far in mm what it moves has gone (or turned, in radians), `pose` where the
    crank's pin is and how far the rod has turned from lying along the plane.
    """

    stood: Stood
    travel: Callable[[float], float]
    pose: Callable[[float], Pose] | None


def linkage_of(
    joint: Joint, driver: Moving, last: Body, of: Bodies, design: Design
) -> Linkage | None:
    """The linkage of a joint `cranks` or `rocks`; None where its parts do not stand.

    Raises NotDefined where it cannot turn.
    """
    stood = stood_at(joint, driver, last, of, design)
    if stood is None:
        return None
    return crank_at(joint, stood) if joint.kind == "cranks" else bars_at(joint, stood)


def stood_at(joint: Joint, driver: Moving, last: Body, of: Bodies, design: Design) -> Stood | None:
    """Where a linkage stands; None without the axis of its crank and the way of what it moves."""
    if driver.axis is None:
        return None
    towards = _towards(joint, driver.axis, last, design)
    plane = plane_across(driver.axis, towards) if towards is not None else None
    if plane is None:
        return None
    rod = _rod(joint, driver, last, of, design)
    near = pin_between(driver.items, rod.items, design) if rod is not None else None
    far = pin_between(rod.items, last.items, design) if rod is not None else None
    spots = [plane.spot(pin.origin) if pin is not None else None for pin in (near, far)]
    return Stood(plane, rod, spots[0], spots[1])


def rods_of(linkage: Linkage, driver: Moving, design: Design) -> Iterator[Moving]:
    """The rod as a body that moves, where it is told which one it is."""
    rod, pose = linkage.stood.rod, linkage.pose
    if rod is None or pose is None:
        return
    copies = copies_of(rod.items, design)
    if copies:
        frame = partial(_carried, linkage.stood.plane, pose)
        yield Moving(rod.name, rod.items, copies, driver.name, driver.turns, frame)


def _carried(plane: Plane, pose: Callable[[float], Pose], copy: PlacedFact, turned: float) -> Frame:
    (start, lay), (here, lies) = pose(0.0), pose(turned)
    return plane.carried(copy, start, here, lies - lay)


def _towards(joint: Joint, crank: Axis, last: Body, design: Design) -> Vector | None:
    """Out from the crank along the slide, or from its axis to that of the rocker."""
    if joint.kind == "rocks":
        pivot = axis_of(last.items, design)
        return minus(pivot.origin, crank.origin) if pivot is not None else None
    way = slide_of(last.items, design)
    return away_from(crank, way, copies_of(last.items, design)) if way is not None else None


def _rod(joint: Joint, driver: Moving, last: Body, of: Bodies, design: Design) -> Body | None:
    """The middle one that is named, else what turns in both the crank and what it moves."""
    if len(joint.ends) > 2:
        return of.get(joint.ends[1].item)
    for body in dict.fromkeys(of.values()):
        if body.items in (driver.items, last.items):
            continue
        if pin_between(driver.items, body.items, design) is not None and (
            pin_between(body.items, last.items, design) is not None
        ):
            return body
    return None


def drawn_angle(joint: Joint, stood: Stood) -> float:
    """The angle of the crank as drawn, in radians: by its pin, else as the drive says."""
    if stood.near is not None:
        return angle_of(stood.near)
    said = getattr(joint.entry, "drawn_at", None)
    return math.radians(float(said.exact)) if isinstance(said, Size) else 0.0


def crank_at(joint: Joint, stood: Stood) -> Linkage:
    """The crank and rod of a joint `cranks`; raises NotDefined where it cannot turn."""
    throw = float(joint.entry.throw.mm)  # type: ignore[attr-defined]
    start = drawn_angle(joint, stood)
    rod = getattr(joint.entry, "rod", None)
    if not isinstance(rod, Size):
        return Linkage(
            stood, lambda turned: throw * (math.cos(start + turned) - math.cos(start)), None
        )
    said = getattr(joint.entry, "offset", None)
    offset = said.mm if isinstance(said, Size) else 0.0
    made = crank_slider(throw, rod.mm, stood.far[1] if stood.far is not None else offset)
    return Linkage(stood, partial(_slid, made, start), partial(_leaning, made, start))


def _slid(made: CrankSlider, start: float, turned: float) -> float:
    return made.at(start + turned).x_mm - made.at(start).x_mm


def _leaning(made: CrankSlider, start: float, turned: float) -> Pose:
    state = made.at(start + turned)
    return state.pin_mm, -state.rod_rad


def bars_at(joint: Joint, stood: Stood) -> Linkage:
    """The four bars of a joint `rocks`; raises NotDefined where they do not close."""
    sizes = (float(getattr(joint.entry, name).mm) for name in ("frame", "crank", "rod", "rocker"))
    made = four_bar(*sizes)
    start = drawn_angle(joint, stood)
    branch = _branch(made, start, stood.far)
    return Linkage(
        stood, partial(_swung, made, branch, start), partial(_coupled, made, branch, start)
    )


def _branch(made: FourBar, start: float, far: Spot | None) -> Branch:
    """The way round in which it is put together: that whose pin is nearer to where it stands."""
    if far is None:
        return "open"
    off = {
        branch: math.dist(made.at(start, branch).rocker_pin_mm, far)
        for branch in ("open", "crossed")
    }
    return "open" if off["open"] <= off["crossed"] else "crossed"


def _swung(made: FourBar, branch: Branch, start: float, turned: float) -> float:
    return made.at(start + turned, branch).rocker_rad - made.at(start, branch).rocker_rad


def _coupled(made: FourBar, branch: Branch, start: float, turned: float) -> Pose:
    state = made.at(start + turned, branch)
    return state.crank_pin_mm, state.coupler_rad
