"""Where what is bonded on a shaft as a stop comes, if nobody told how long it is."""

from __future__ import annotations

import math
from dataclasses import dataclass
from itertools import product

from binder.api import Design, Joint, Located, Piece, ShaftFact
from binder_solid.facts import FormFact
from binder_solid.facts import Located as Place
from binder_solid.placed import PlacedFact
from binder_solid.space import dot, minus, placed

# The cup of a small grub screw is as wide as this part of its tapping drill; from memory of
# ISO 4029, where M3 has a cup of 1.4 mm.
_POINT = 0.6


@dataclass(frozen=True, slots=True)
class InnerFace:
    """Where the inner face of a stop comes, in mm from the left end of its shaft.

    It may be `give` off, more or less, till it leaves its seat where it `is_by_seat`, or else till
    the screw of the other stop leaves its flat. None of both where it may stand anywhere on its
    seat.
    """

    at: float | None
    give: float = 0.0
    is_by_seat: bool = False


@dataclass(frozen=True, slots=True)
class OuterStop:
    """The first of two outer stops of a `shaft`: the other is set `apart` mm from its face."""

    shaft: str
    other: Piece
    apart: float
    face: InnerFace


def outer_stop(joint: Joint, design: Design) -> OuterStop | None:
    """What a joint fixes as the first of two outer stops, while the other can still be moved.

    None for what is no such stop. Where the screw of the other must land on a flat, the flat tells
    where on the shaft the first one stands.
    """
    for fact in design.facts.all(ShaftFact):
        if fact.located is not Located.OUTSIDE or fact.span is None or len(fact.stops) != 2:
            continue
        stops = [fact.pieces[n] for n in fact.stops]
        other = next((one for one in stops if one.joint != joint.name), None)
        kept = None if other is None else design.joints.get(other.joint)
        is_stop = joint.name in {one.joint for one in stops}
        if other is None or kept is None or kept.kind != "clamped" or not is_stop:
            continue
        middle = float(fact.span + (fact.least + fact.most) / 2)
        face = _by_flat(fact, other, kept, middle, joint, design)
        return OuterStop(fact.subject, other, middle, face)
    return None


def _by_flat(
    fact: ShaftFact, other: Piece, kept: Joint, apart: float, joint: Joint, design: Design
) -> InnerFace:
    """Where the inner face comes along the shaft, if the other's screw is to land on its flat."""
    shaft = next((one for one in design.facts.all(PlacedFact) if one.item == fact.subject), None)
    hub = next((one for one in design.facts.all(PlacedFact) if one.item == other.item), None)
    flat = _found(fact.subject, "flatted", kept, design)
    screw = _found(other.item, "tapped", kept, design)
    if shaft is None or hub is None or flat is None or screw is None or flat.length is None:
        return InnerFace(None)
    ranges = zip(*hub.corners, strict=True)
    corners = [placed((x, y, z), hub.frame) for x, y, z in product(*ranges)]
    along = [dot(minus(one, shaft.frame.origin), shaft.frame.x) for one in corners]
    hole = dot(minus(placed(screw.spots[0], hub.frame), shaft.frame.origin), shaft.frame.x)
    is_left = fact.pieces[fact.stops[0]] is other
    face = flat.spots[0][0] + ((max(along) if is_left else min(along)) - hole)
    face += apart if is_left else -apart
    room = math.floor((flat.length - (screw.diameter or 0.0) * _POINT) * 5) / 10
    if room <= 0:
        return InnerFace(None)
    on_seat = _on_seat(fact.subject, face, joint, design)
    is_near = 0 < on_seat < room
    return InnerFace(round(face, 2), on_seat if is_near else room, is_near)


def _on_seat(shaft: str, face: float, joint: Joint, design: Design) -> float:
    """How far a face may go back before it leaves the step made for it, in mm; told short."""
    form = design.facts.about(FormFact, shaft)
    places = {end.place for end in joint.ends if end.item == shaft}
    seat = next((one for one in form.stretches if one.name in places), None) if form else None
    if seat is None:
        return 0.0
    return math.floor(min(abs(face - seat.start), abs(face - seat.end)) * 10 + 1e-6) / 10


def _found(item: str, kind: str, joint: Joint, design: Design) -> Place | None:
    """What a fixing asks for on a part, or has there under a name: a flat on its seat."""
    form, part = design.facts.about(FormFact, item), design.parts.get(item)
    if form is None or part is None:
        return None
    own = {one.name for one in part.features if one.implied_by == joint.name}
    places = {end.place for end in joint.ends if end.item == item}
    steps = [one for one in form.stretches if one.name in places]
    for one in form.located:
        on_seat = any(step.start <= one.spots[0][0] <= step.end for step in steps)
        if one.kind == kind and (one.name in own or (kind == "flatted" and on_seat)):
            return one
    return None
