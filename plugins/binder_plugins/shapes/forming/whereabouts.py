"""The words that place a feature to a frame on the surface, and the sizes that place it."""

from __future__ import annotations

import math
import re
from collections.abc import Mapping
from dataclasses import dataclass

from binder.api import Feature, Position, Size, exact, shown_length, size_text
from binder_plugins.shapes.features import Placed
from binder_plugins.shapes.forming.body import FACES, Body, cross
from binder_solid.facts import Stretch, Told
from binder_solid.forms import Frame, Vector

_AXES = "xyz"
FROM_AXIS = ("from middle", "from axis", "from centre", "from the middle", "from the axis")
_WORDS = re.compile(r"(from|above|below|left of|right of) (?:the )?(.+?)(?: one)?")
_WAYS = {"above": (0, 1), "below": (0, -1), "right of": (1, 0), "left of": (-1, 0)}


@dataclass(frozen=True, slots=True)
class Whereabouts:
    """A frame on the surface, the face it lies on, the sizes that place it; what is unread.

    `under` is the step of turned work that carries the feature; `along` how deep in a hole
    it lies, where it lies in one.
    """

    frame: Frame
    face: str
    told: tuple[Told, ...] = ()
    unread: tuple[str, ...] = ()
    under: Stretch | None = None
    along: float | None = None


def placed_entry(feature: Feature) -> Placed:
    """The place of a feature; those of other plugins tell no more than where they stand."""
    entry = feature.entry
    if isinstance(entry, Placed):
        return entry
    on, at = getattr(entry, "on", None), getattr(entry, "at", None)
    return Placed.model_construct(on=on, at=at)


def placed_at(
    feature: Feature, body: Body, others: Mapping[str, Vector], units: str
) -> Whereabouts | None:
    """Where a feature lies; None where what it stands on is not known."""
    entry = placed_entry(feature)
    if body.is_turned:
        return _on_turned(feature, entry, body, units)
    name = str(entry.on or "top")
    face = "left" if name == "ends" else body.face_named(name) or "top"
    return _on_face(feature, entry, face, body, others, units)


def place_in_hole(feature: Feature, hole: Whereabouts, body: Body, units: str) -> Whereabouts:
    """A place in a hole that is there: so far from the face that it starts in, or its middle."""
    told: list[Told] = []
    unread: list[str] = []
    along: float | None = None
    at = placed_entry(feature).at
    for one in at.all if at is not None else ():
        found = _deep(one, hole.frame, body)
        if found is None or one.distance is None:
            unread += [] if str(one.text) == "middle" else [str(one.text)]
            continue
        axis, start, value = found
        along = abs(hole.frame.origin[axis] - value)
        key = f"{feature.owner}.{feature.name}.at"
        told.append(Told(key, _AXES[axis], start, value, _text(one, units)))
    return Whereabouts(hole.frame, hole.face, tuple(told), tuple(unread), hole.under, along)


def _deep(place: Position, frame: Frame, body: Body) -> tuple[int, float, float] | None:
    """Along the axis of a hole: axis, place measured from and place, all absolute."""
    read = _WORDS.fullmatch(place.rest)
    axis = max(range(3), key=lambda n: abs(frame.z[n]))
    face = body.face_named(read[2]) if read is not None and read[1] == "from" else ""
    if not face or place.distance is None or abs(FACES[face].z[axis]) < 0.5:
        return None
    way = FACES[face].z[axis]
    start = body.most[axis] if way > 0 else body.least[axis]
    return axis, start, start - way * place.distance.mm


def _on_turned(feature: Feature, entry: Placed, body: Body, units: str) -> Whereabouts | None:
    name = str(entry.across or entry.on or "")
    step = body.stretch(name)
    end = body.face_named(name)
    if entry.across or (step is not None and feature.kind in _AROUND):
        return _along(feature, entry, step, body, units) if step is not None else None
    if feature.kind in _EDGES:
        return Whereabouts(body.frame_of(end or "right"), end or "axis")
    if name == "ends":
        end = "left"
    elif not end:
        end = _end_of(step, body) if step is not None else "right"
    frame = body.frame_of(end)
    if step is not None and entry.pattern:
        frame = _on_shoulder(frame, step, end, body)
    return _off_axis(feature, entry, Whereabouts(frame, "axis", under=step), units)


def _off_axis(feature: Feature, entry: Placed, place: Whereabouts, units: str) -> Whereabouts:
    """A place on an end face beside its middle: so far from the axis, at its clock."""
    frame, told, unread = place.frame, list[Told](), list[str]()
    for one in entry.at.all if entry.at is not None else ():
        if one.distance is None or one.rest not in FROM_AXIS:
            unread += [] if str(one.text) == "middle" else [str(one.text)]
            continue
        far, out = one.distance.mm, _clocked(entry)
        frame = Frame((frame.origin[0], far * out[1], far * out[2]), frame.z, frame.x)
        key = f"{feature.owner}.{feature.name}.at"
        told.append(Told(key, "z", 0.0, far * out[2], _text(one, units)))
    shown = tuple(told) if entry.clock is None else ()
    return Whereabouts(frame, "axis", shown, tuple(unread), place.under)


_EDGES = ("chamfered", "rounded")
_HOLES = ("drilled", "reamed", "bored", "tapped")
_AROUND = (
    "grooved",
    "undercut",
    "slotted",
    "flatted",
    "keywayed",
    "knurled",
    "screwed",
    "chamfered",
    "rounded",
    "filed",
)


def _on_shoulder(frame: Frame, step: Stretch, end: str, body: Body) -> Frame:
    """A pattern stands on the face of its own step, where that stands out from its neighbour."""
    x = step.end if end == "right" else step.start
    beside = [one for one in body.stretches if x in (one.start, one.end) and one is not step]
    if beside and max(beside[0].across, beside[0].end_across) >= step.across:
        return frame
    return Frame((x, 0.0, 0.0), frame.z, frame.x)


def _end_of(step: Stretch, body: Body) -> str:
    """The end from which a step is drilled: the nearer one, of two alike the right one."""
    size = body.size[0]
    return "left" if step.start < size - step.end else "right"


def _along(feature: Feature, entry: Placed, step: Stretch, body: Body, units: str) -> Whereabouts:
    """A place on the outside of turned work: the middle of its step, or so far along.

    A thread shorter than its step begins at the end over which its die and its mate come.
    """
    x = (step.start + step.end) / 2
    told: list[Told] = []
    unread: list[str] = []
    if feature.kind == "screwed" and entry.at is None and not entry.each_end:
        x = _from_tip(feature, step, body)
    for place in entry.at.all if entry.at is not None else ():
        found = _x_of(place, body)
        if found is not None and place.distance is not None:
            x, start = found
            told.append(
                Told(f"{feature.owner}.{feature.name}.at", "x", start, x, _text(place, units))
            )
        elif (flush := _flush(feature, step, str(place.text))) is not None:
            x = flush
        elif str(place.text) != "middle":
            unread.append(str(place.text))
    if entry.across and not told and not unread and feature.kind in _HOLES:
        told.append(_from_nearer(feature, x, body, units))
    radius = (step.across + step.end_across) / 4
    out = _clocked(entry)
    frame = Frame((x, radius * out[1], radius * out[2]), out, (1.0, 0.0, 0.0))
    return Whereabouts(frame, "across", tuple(told), tuple(unread), step)


def _from_tip(feature: Feature, step: Stretch, body: Body) -> float:
    """The middle of a thread that begins at the nearer end of its step with nothing thicker."""
    thick = max(step.across, step.end_across)
    ends = (
        ("start", step.start - body.least[0], [s for s in body.stretches if s.end <= step.start]),
        ("end", body.most[0] - step.end, [s for s in body.stretches if s.start >= step.end]),
    )
    free = [
        (off, word)
        for word, off, before in ends
        if all(max(one.across, one.end_across) <= thick for one in before)
    ]
    flush = _flush(feature, step, min(free)[1]) if free else None
    return (step.start + step.end) / 2 if flush is None else flush


def _from_nearer(feature: Feature, x: float, body: Body, units: str) -> Told:
    """A hole in the middle of its step, for the drill: from the end of the part next to it."""
    low, high = body.least[0], body.most[0]
    start = low if x - low <= high - x else high
    words = shown_length(exact(round(abs(x - start), 3)), units)
    return Told(f"{feature.owner}.{feature.name}.along", "x", start, x, words)


def _clocked(entry: Placed) -> Vector:
    """Out of the metal, turned about the axis from the top towards the front."""
    turn = math.radians(float(entry.clock.exact)) if entry.clock is not None else 0.0
    return (0.0, -math.sin(turn), math.cos(turn))


def _flush(feature: Feature, step: Stretch, word: str) -> float | None:
    """The middle of what ends flush with the start or end of its step."""
    long = getattr(feature.entry, "length", None)
    half = long.mm / 2 if isinstance(long, Size) else 0.0
    half = min(half, (step.end - step.start) / 2)
    if word in ("start", "left"):
        return step.start + half
    return step.end - half if word in ("end", "right") else None


def _x_of(place: Position, body: Body) -> tuple[float, float] | None:
    """The place along x and where it is measured from."""
    read = _WORDS.fullmatch(place.rest)
    if read is None or place.distance is None or read[1] != "from":
        return None
    distance = place.distance.mm
    end = body.face_named(read[2])
    if end:
        start = body.least[0] if end == "left" else body.most[0]
        return (start + distance if end == "left" else start - distance), start
    step = body.stretch(read[2])
    if step is None:
        return None
    # From the shoulder that looks at the longer side of the part.
    if step.start < body.most[0] - step.end:
        return step.end + distance, step.end
    return step.start - distance, step.start


def _text(place: Position, units: str) -> str:
    return size_text(place.distance, units) if isinstance(place.distance, Size) else ""


def _on_face(
    feature: Feature,
    entry: Placed,
    face: str,
    body: Body,
    others: Mapping[str, Vector],
    units: str,
) -> Whereabouts:
    frame = body.frame_of(face)
    origin = list(frame.origin)
    told: list[Told] = []
    unread: list[str] = []
    for place in entry.at.all if entry.at is not None else ():
        found = _from(place, frame, body, others)
        if found is None:
            unread += [] if str(place.text) == "middle" else [str(place.text)]
            continue
        axis, start, value = found
        origin[axis] = value
        key = f"{feature.owner}.{feature.name}.at"
        told.append(Told(key, _AXES[axis], start, value, _text(place, units)))
    moved_to = Frame((origin[0], origin[1], origin[2]), frame.z, frame.x)
    return Whereabouts(moved_to, face, tuple(told), tuple(unread))


def _from(
    place: Position, frame: Frame, body: Body, others: Mapping[str, Vector]
) -> tuple[int, float, float] | None:
    """Axis, place measured from, and place, all absolute; None where it is not to be read."""
    read = _WORDS.fullmatch(place.rest)
    if read is None or place.distance is None:
        return None
    distance = place.distance.mm
    name = read[2]
    if read[1] == "from" and name in FACES:
        way = FACES[name].z
        axis = next(n for n in range(3) if way[n])
        if frame.z[axis]:
            return None
        start = body.most[axis] if way[axis] > 0 else body.least[axis]
        return axis, start, start - way[axis] * distance
    mate = others.get(name)
    if mate is None:
        return None
    u, v = _WAYS.get(read[1], (1, 0))
    axis, sign = _axis_of(frame, u, v)
    return axis, mate[axis], mate[axis] + sign * distance


def _axis_of(frame: Frame, u: int, v: int) -> tuple[int, int]:
    """The axis of space along a frame's own x or y, and its sense."""
    way = frame.x if u else cross(frame.z, frame.x)
    axis = max(range(3), key=lambda n: abs(way[n]))
    return axis, (1 if way[axis] > 0 else -1) * (u or v)
