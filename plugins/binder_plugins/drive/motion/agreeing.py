"""Linkages as they are written against how their pins stand in the model."""

from __future__ import annotations

import math
from collections.abc import Iterator

from binder.api import Design, Diagnostic, Joint, Size, exact, shown_length
from binder_plugins.drive import duty_codes as codes
from binder_plugins.drive.motion.axes import turning_bodies
from binder_plugins.drive.motion.linkages import Stood, stood_at
from binder_plugins.drive.motion.planes import Spot, angle_of
from binder_plugins.drive.standing import axis_of
from binder_plugins.drive.train.bodies import Body, bodies

# As near as a drawing is made, and half of what the eye sees of an angle.
_NEAR_MM, _NEAR_DEG = 0.05, 0.5
_TURN = 360.0


def check_linkages(design: Design) -> Iterator[Diagnostic]:
    """A finding for each length or angle that the parts have otherwise."""
    linked = [one for one in design.joints.values() if one.kind in ("cranks", "rocks")]
    if not linked:
        return
    of, turning = bodies(design), list(turning_bodies(design))
    for joint in linked:
        drivers = [one for one in turning if joint.ends[0].item in one.items]
        last = of.get(joint.ends[-1].item)
        stood = stood_at(joint, drivers[0], last, of, design) if drivers and last else None
        if stood is not None and last is not None:
            yield from _lengths(joint, stood, last, design)
            yield from _angle(joint, stood)


def _lengths(joint: Joint, stood: Stood, last: Body, design: Design) -> Iterator[Diagnostic]:
    pivot = axis_of(last.items, design) if joint.kind == "rocks" else None
    foot = stood.plane.spot(pivot.origin) if pivot is not None else None
    name = "throw" if joint.kind == "cranks" else "crank"
    pairs: tuple[tuple[str, Spot | None, Spot | None], ...] = (
        (name, (0.0, 0.0), stood.near),
        ("rod", stood.near, stood.far),
        ("rocker", stood.far, foot),
        ("frame", (0.0, 0.0), foot),
    )
    for field, one, other in pairs:
        said = getattr(joint.entry, field, None)
        if one is None or other is None or not isinstance(said, Size):
            continue
        has = math.dist(one, other)
        if abs(has - said.mm) > _NEAR_MM:
            size = shown_length(exact(round(has, 3)), design.units)
            yield codes.LINKAGE_STANDS_OTHERWISE.at(
                said.span,
                f"the {field} of '{joint.name}' is {size} between its pins in the model, not "
                f"{said.text}",
                help=f"write {size}, or put the pins where they belong",
            )


def _angle(joint: Joint, stood: Stood) -> Iterator[Diagnostic]:
    said = getattr(joint.entry, "drawn_at", None)
    if stood.near is None or not isinstance(said, Size):
        return
    has = math.degrees(angle_of(stood.near)) % _TURN
    if abs(math.remainder(has - float(said.exact), _TURN)) > _NEAR_DEG:
        yield codes.LINKAGE_STANDS_OTHERWISE.at(
            said.span,
            f"the crank of '{joint.name}' stands at {has:.1f}° in the model, not {said.text}",
            help="leave `drawn_at:` out: it is taken from where the pin stands",
        )
