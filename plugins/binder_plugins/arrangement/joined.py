"""Meetings to ties: what a joint asks of one part when the other stands already."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from binder_plugins.arrangement.copies import Copy
from binder_plugins.arrangement.meetings import Meeting
from binder_plugins.arrangement.places import Spot, face_point
from binder_plugins.arrangement.space import axes_across, carried, scaled, square_to
from binder_plugins.arrangement.ties import (
    RANK_GUESS,
    RANK_JOINT,
    RANK_MIDDLE,
    RANK_SEAT,
    Hold,
    Lay,
)
from binder_solid.forms import Frame, Vector
from binder_solid.space import cross, dot, placed, plus

_BY_SCREWS = frozenset({"screwed", "bolted", "studded"})
_MOUTH_ON_MOUTH = _BY_SCREWS | {"hinged", "buttoned"}


@dataclass(frozen=True, slots=True)
class Stand:
    """A copy that stands, how, and the way in which it comes off what it stands `onto`."""

    copy: Copy
    frame: Frame
    way: Vector = (0.0, 0.0, 1.0)
    onto: str = ""
    is_free: bool = False


def lays_of(meeting: Meeting, stand: Stand) -> Iterator[Lay]:
    """The directions that a meeting asks for; the copy to be placed is its first."""
    own, there = meeting.spot, meeting.other_spot
    name, at = meeting.joint.name, meeting.joint.at
    out = scaled(carried(there.way, stand.frame), -1.0)
    yield Lay(own.way, out, _sense(own, there), name, at)
    if own.along is not None and there.along is not None:
        yield Lay(own.along, carried(there.along, stand.frame), 0, name, at, is_axis=False)


def _sense(own: Spot, there: Spot) -> int:
    """How sure it is which way round the part goes on."""
    if own.sort in ("face", "way"):
        return 2
    if own.sort == there.sort:
        return 1
    plug, socket = (own, there) if own.sort == "plug" else (there, own)
    if not socket.is_open:
        return 2 if not plug.is_open or plug.is_end else 1
    return 1 if plug.is_end or plug.is_seated else 0


def holds_of(meeting: Meeting, stand: Stand, turned: Frame) -> Iterator[Hold]:
    """The planes that a meeting asks for, the part turned as it will stand."""
    own, there = meeting.spot, meeting.other_spot
    name, at = meeting.joint.name, meeting.joint.at
    way = carried(there.way, stand.frame)
    point = placed(there.point, stand.frame)
    if own.sort == "face":
        yield Hold(way, own.point, dot(way, point), RANK_JOINT, name, at)
        yield from _in_places(meeting, stand)
        for across in axes_across(way, stand.frame):
            yield Hold(across, own.point, dot(across, point), RANK_GUESS, name, at)
        return
    if own.sort == "way":
        yield from _sliding(meeting, stand)
        return
    for across in _across(way):
        yield Hold(across, own.point, dot(across, point), RANK_JOINT, name, at)
    yield from _along(meeting, stand, turned)


def _in_places(meeting: Meeting, stand: Stand) -> Iterator[Hold]:
    """The place on the larger part that a joint tells of each copy."""
    places = getattr(meeting.joint.entry, "places", None) or []
    number = meeting.one.number
    if meeting.holes is None or number > len(places):
        return
    for one in places[number - 1].all:
        face = face_point(stand.copy.fact, one.rest.removeprefix("from "))
        if face is None or one.distance is None:
            continue
        way = carried(stand.copy.vector(face[1]), stand.frame)
        value = dot(way, placed(stand.copy.point(face[0]), stand.frame)) - one.distance.mm
        at = one.text.span
        yield Hold(way, meeting.holes.point, value, RANK_JOINT, meeting.joint.name, at)


def _across(way: Vector) -> tuple[Vector, Vector]:
    one = square_to(way)
    return one, cross(way, one)


def _sliding(meeting: Meeting, stand: Stand) -> Iterator[Hold]:
    own, there = meeting.spot, meeting.other_spot
    name, at = meeting.joint.name, meeting.joint.at
    way, point = carried(there.way, stand.frame), placed(there.point, stand.frame)
    yield Hold(way, own.point, dot(way, point), RANK_JOINT, name, at)
    run = carried(there.along, stand.frame) if there.along is not None else square_to(way)
    across = cross(way, run)
    yield Hold(across, own.point, dot(across, point), RANK_JOINT, name, at)
    yield Hold(run, meeting.one.middle, dot(run, point), RANK_MIDDLE, name, at)


def _along(meeting: Meeting, stand: Stand, turned: Frame) -> Iterator[Hold]:
    """Where along the axis: seated on a shoulder, at the bottom, mouth on mouth, or halfway."""
    own, there = meeting.spot, meeting.other_spot
    name, at = meeting.joint.name, meeting.joint.at
    way = carried(there.way, stand.frame)
    if own.sort == there.sort:
        if meeting.joint.kind in _MOUTH_ON_MOUTH:
            # Faces that the joint names say it better; a step that it names has no face.
            is_screwed = meeting.joint.kind in _BY_SCREWS
            rank = RANK_MIDDLE if is_screwed else RANK_SEAT
            yield Hold(way, own.point, dot(way, placed(there.point, stand.frame)), rank, name, at)
            return
        value = dot(way, placed(there.middle, stand.frame))
        yield Hold(way, own.middle, value, RANK_MIDDLE, name, at)
        return
    is_plug = own.sort == "plug"
    plug, socket = (own, there) if is_plug else (there, own)
    goes = carried(plug.way, turned if is_plug else stand.frame)
    out = carried(socket.way, stand.frame if is_plug else turned)
    mouth, deep = socket.point, socket.long
    if dot(goes, out) > 0:  # It enters from the far side.
        mouth = plus(socket.point, socket.way, -deep)
    plug_point, rank = _seat(plug, deep, is_open=socket.is_open)
    if plug_point is None:
        value = dot(way, placed(there.middle, stand.frame))
        yield Hold(way, own.middle, value, RANK_MIDDLE, name, at)
        return
    here, other = (plug_point, mouth) if is_plug else (mouth, plug_point)
    yield Hold(way, here, dot(way, placed(other, stand.frame)), rank, name, at)


def _seat(plug: Spot, deep: float, *, is_open: bool) -> tuple[Vector | None, int]:
    """The point of a plug that comes to the mouth of its hole; None where it stands halfway."""
    if plug.is_seated and (is_open or plug.long <= deep + 1e-6):
        return plug.point, RANK_SEAT
    if not is_open:
        tip = plus(plug.point, plug.way, plug.long)
        at_bottom = plus(tip, plug.way, -deep)
        is_short = plug.is_thread and plug.long <= deep
        return (plug.point if is_short else at_bottom), RANK_SEAT
    if plug.is_thread:
        return plug.point, RANK_SEAT
    if plug.long == 0.0 and plug.is_end:
        return plus(plug.point, plug.way, -deep), RANK_SEAT
    return None, RANK_MIDDLE
