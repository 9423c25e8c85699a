"""The maker's words for a place to ties: `35 mm above base.top`, `in the middle of quay`."""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping, Sequence

from binder.api import Angle, Design, Diagnostic, Position, Span, did_you_mean
from binder_plugins.arrangement import codes
from binder_plugins.arrangement.copies import Copy, formed_items
from binder_plugins.arrangement.joined import Stand
from binder_plugins.arrangement.kinds import CopyPosition
from binder_plugins.arrangement.places import face_point, spots_of, stretch_of
from binder_plugins.arrangement.space import AXES, axes_across, carried, scaled
from binder_plugins.arrangement.ties import RANK_MIDDLE, RANK_SAID, RANK_SAID_MIDDLE, Hold, Lay
from binder_solid.forms import Frame, Vector
from binder_solid.space import dot, placed

Stands = Mapping[str, Sequence[Stand]]
SAID = "positions"
_NAME = r"(?:the )?([A-Za-z][\w-]*(?:\.[A-Za-z][\w-]*)?)"
_AWAY = re.compile(rf"(from|above|below|left of|right of|in front of|behind) {_NAME}", re.ASCII)
_MIDDLE = re.compile(rf"(?:in )?(?:the )?middle of {_NAME}", re.ASCII)
_WAYS: dict[str, Vector] = {
    "above": AXES[2],
    "below": scaled(AXES[2], -1.0),
    "right of": AXES[0],
    "left of": scaled(AXES[0], -1.0),
    "behind": AXES[1],
    "in front of": scaled(AXES[1], -1.0),
}


def references(entry: CopyPosition) -> Iterator[str]:
    """The items that an entry measures from."""
    if entry.on is not None:
        yield entry.on.item
    if entry.parallel is not None:
        yield str(entry.parallel)
    for one in entry.at.all if entry.at is not None else ():
        name = name_in(one)
        if name and not (entry.on is not None and "." not in name and _is_face(name)):
            yield name.split(".")[0]


def name_in(one: Position) -> str:
    """What a place is measured from, '' where it cannot be read."""
    found = _AWAY.fullmatch(one.rest) if one.distance is not None else None
    if found is not None:
        return found[2]
    whole = _MIDDLE.fullmatch(str(one.text))
    return whole[1] if whole is not None else ""


def _is_face(name: str) -> bool:
    return name in ("left", "right", "front", "back", "top", "underside")


def lays_said(entry: CopyPosition, copy: Copy, stands: Stands) -> Iterator[Lay]:
    """The part lies on a face with its underside, or with the face that is named."""
    if entry.on is None:
        return
    stand = stands[entry.on.item][0]
    face = face_point(stand.copy.fact, entry.on.place or "top")
    own = face_point(copy.fact, str(entry.by or "underside"))
    if face is not None and own is not None:
        there = scaled(carried(stand.copy.vector(face[1]), stand.frame), -1.0)
        yield Lay(copy.vector(own[1]), there, 2, SAID, entry.on.span)


def holds_said(
    entry: CopyPosition, copy: Copy, turned: Frame, stands: Stands, design: Design
) -> Iterator[Hold]:
    """All that is measured, then the middle for what is left free."""
    if entry.on is not None:
        yield from _on_face(entry, copy, stands)
    for one in entry.at.all if entry.at is not None else ():
        yield from _measured(one, entry, copy, turned, stands, design)


def _on_face(entry: CopyPosition, copy: Copy, stands: Stands) -> Iterator[Hold]:
    if entry.on is None:
        return
    stand = stands[entry.on.item][0]
    face = face_point(stand.copy.fact, entry.on.place or "top")
    own = face_point(copy.fact, str(entry.by or "underside"))
    if face is None or own is None:
        return
    way = carried(stand.copy.vector(face[1]), stand.frame)
    middle = placed(stand.copy.point(face[0]), stand.frame)
    at = entry.on.span
    yield Hold(way, copy.point(own[0]), dot(way, middle), RANK_SAID, SAID, at)
    for across in axes_across(way, stand.frame):
        yield Hold(across, copy.point(own[0]), dot(across, middle), RANK_MIDDLE, SAID, at)


def _measured(
    one: Position,
    entry: CopyPosition,
    copy: Copy,
    turned: Frame,
    stands: Stands,
    design: Design,
) -> Iterator[Hold]:
    name, at = name_in(one), one.text.span
    if not name:
        return
    item, _, place = name.partition(".")
    if entry.on is not None and not place and _is_face(name):
        item, place = entry.on.item, name
    stand = stands[item][0]
    if one.distance is None:
        datum = _datum_middle(stand, place, design)
        for axis in AXES:
            yield Hold(axis, copy.middle, dot(axis, datum), RANK_SAID_MIDDLE, SAID, at)
        return
    word = one.rest.partition(f" {name}")[0].removesuffix(" the")
    far = one.distance.mm
    if word == "from":
        face = face_point(stand.copy.fact, place or "top")
        if face is None:
            return
        way = carried(stand.copy.vector(face[1]), stand.frame)
        value = dot(way, placed(stand.copy.point(face[0]), stand.frame)) - far
        yield _side(way, value, 1, entry, copy, one, design)
        return
    way = _WAYS[word]
    value = _edge(stand, place, way, design) + far
    yield _side(way, value, -1, entry, copy, one, design)


def _side(
    way: Vector,
    value: float,
    side: int,
    entry: CopyPosition,
    copy: Copy,
    one: Position,
    design: Design,
) -> Hold:
    """The nearest side of the part, or its own place."""
    at = one.text.span
    box = copy.eight
    if entry.by is not None and entry.on is None:
        box = _box_of(copy, str(entry.by), design)
    return Hold(way, None, value, RANK_SAID, SAID, at, side=side, box=box)


def _box_of(copy: Copy, place: str, design: Design) -> tuple[Vector, ...]:
    """The corners of a step, or the point of another place of the part."""
    step = stretch_of(copy.fact, place) if place else None
    if step is not None and step.name == place:
        half = max(step.across, step.end_across) / 2
        sides = (-half, half)
        return tuple((x, y, z) for x in (step.start, step.end) for y in sides for z in sides)
    spots = spots_of(copy, place, design) if place else ()
    return tuple(spot.point for spot in spots[:1]) or copy.eight


def _edge(stand: Stand, place: str, way: Vector, design: Design) -> float:
    """How far a place reaches in a direction; a part by itself is taken at its middle."""
    if not place:
        return dot(way, placed(stand.copy.middle, stand.frame))
    box = _box_of(stand.copy, place, design)
    return max(dot(way, placed(corner, stand.frame)) for corner in box)


def _datum_middle(stand: Stand, place: str, design: Design) -> Vector:
    box = _box_of(stand.copy, place, design) if place else stand.copy.eight
    least = [min(corner[n] for corner in box) for n in range(3)]
    most = [max(corner[n] for corner in box) for n in range(3)]
    a, b, c = ((one + other) / 2 for one, other in zip(least, most, strict=True))
    return placed((a, b, c), stand.frame)


def turn_of(entry: CopyPosition) -> float:
    """The angle in degrees that the part is turned by."""
    angle: Angle | None = entry.turned
    return float(angle.exact) if angle is not None else 0.0


def faults_of(
    entry: CopyPosition, item: str, copies: Mapping[str, tuple[Copy, ...]], design: Design
) -> Iterator[Diagnostic]:
    """Words that cannot be read, and parts or places that are not there."""
    for one in entry.at.all if entry.at is not None else ():
        if not name_in(one) or _lacks_face(one, entry):
            yield codes.POSITION_NOT_READ.at(
                one.text.span,
                f"'{one.text}' is no place in the model",
                help="write it as `35 mm above base.top`, `20 mm from base.left` or"
                " `middle of base`",
            )
    for said, span in _said(entry):
        yield from _unknown(said, span, copies, design)
    if entry.by is not None and not _is_known(copies[item][0], str(entry.by), design):
        yield codes.POSITION_UNKNOWN.at(entry.by.span, f"'{item}' has no place '{entry.by}'")
    if entry.on is not None and entry.on.item in copies:
        yield from _no_face(entry, item, copies)


def _lacks_face(one: Position, entry: CopyPosition) -> bool:
    """`20 mm from base` does not say from which side."""
    name = name_in(one)
    is_side = "." in name or (entry.on is not None and _is_face(name))
    return one.distance is not None and one.rest.startswith("from ") and not is_side


def _no_face(
    entry: CopyPosition, item: str, copies: Mapping[str, tuple[Copy, ...]]
) -> Iterator[Diagnostic]:
    """A part lies on a face, with a face."""
    if entry.on is None:
        return
    fact = copies[entry.on.item][0].fact
    if face_point(fact, entry.on.place or "top") is None:
        yield codes.POSITION_UNKNOWN.at(
            entry.on.span, f"'{entry.on.text}' is no face that a part could lie on"
        )
    own = entry.by
    if own is not None and face_point(copies[item][0].fact, str(own)) is None:
        yield codes.POSITION_UNKNOWN.at(own.span, f"'{own}' is no face of '{item}'")


def _unknown(
    said: str, span: Span, copies: Mapping[str, tuple[Copy, ...]], design: Design
) -> Iterator[Diagnostic]:
    item, _, place = said.partition(".")
    if item not in copies and item in formed_items(design):
        return  # There was no room for it, which is told of it once.
    if item not in copies:
        yield codes.POSITION_UNKNOWN.at(
            span,
            f"there is no '{item}' to measure from",
            help=did_you_mean(item, copies) or "name a part whose sizes are told",
        )
    elif place and not _is_known(copies[item][0], place, design):
        yield codes.POSITION_UNKNOWN.at(span, f"'{item}' has no place '{place}'")


def _is_known(copy: Copy, place: str, design: Design) -> bool:
    return bool(spots_of(copy, place, design))


def _said(entry: CopyPosition) -> Iterator[tuple[str, Span]]:
    if entry.on is not None:
        yield str(entry.on.text), entry.on.span
    if entry.parallel is not None:
        yield str(entry.parallel), entry.parallel.span
    for one in entry.at.all if entry.at is not None else ():
        name = name_in(one)
        if name and not (entry.on is not None and _is_face(name)):
            yield name, one.text.span
