"""How many alike and in which pattern, to the spot of each on the surface."""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass, replace

from binder.api import Feature, Size
from binder_plugins.shapes.features import Placed
from binder_plugins.shapes.forming.body import Body, moved
from binder_plugins.shapes.forming.whereabouts import Whereabouts, placed_entry
from binder_solid.forms import Frame, Vector


@dataclass(frozen=True, slots=True)
class Spread:
    """A frame on the surface for each of a feature that are alike.

    `circle` is the pitch circle's diameter, None where there is none. `is_read` is false where
    nothing tells how several stand: one then stands for all.
    """

    frames: tuple[Frame, ...]
    circle: float | None = None
    is_read: bool = True

    @property
    def spots(self) -> tuple[Vector, ...]:
        """Where each lies."""
        return tuple(frame.origin for frame in self.frames)


def spread(feature: Feature, place: Whereabouts, body: Body) -> Spread:
    """The frames of a feature, the first as told, the others by its pattern."""
    entry = placed_entry(feature)
    one = Spread((place.frame,))
    if place.face == "across":
        places = _end_places(feature, entry, place) if entry.each_end else (place.frame,)
        return Spread(tuple(frame for one in places for frame in _round_rim(entry.off or 1, one)))
    found = _laid_out(entry, place, body) if entry.pattern or entry.off else one
    is_both = entry.each_end or str(entry.on or "") == "ends"
    return _both_ends(found, body) if is_both else found


def _round_rim(count: int, one: Frame) -> Iterator[Frame]:
    """Several across turned work stand evenly round it."""
    radius = math.hypot(one.origin[1], one.origin[2])
    first = math.atan2(-one.z[1], one.z[2])
    for n in range(count):
        turn = first + 2 * math.pi * n / count
        out = (0.0, -math.sin(turn), math.cos(turn)) if n else one.z
        yield Frame((one.origin[0], radius * out[1], radius * out[2]), out, one.x)


def _end_places(feature: Feature, entry: Placed, place: Whereabouts) -> tuple[Frame, ...]:
    """The same at both ends of a step: as far in as is told, one width in, or flush."""
    step = place.under
    if step is None:
        return (place.frame,)
    x = place.frame.origin[0]
    far = min(x - step.start, step.end - x)
    if entry.at is None and feature.kind in ("grooved", "undercut"):
        far = 1.5 * _mm(feature, feature.kind)
    elif entry.at is None:
        far = _mm(feature, "length") / 2
    first, last = step.start + far, step.end - far
    return tuple(replace(place.frame, origin=(x, *place.frame.origin[1:])) for x in (first, last))


def _mm(feature: Feature, name: str) -> float:
    size = getattr(feature.entry, name, None)
    return size.mm if isinstance(size, Size) else 0.0


def _laid_out(entry: Placed, place: Whereabouts, body: Body) -> Spread:
    from binder_trade.explained import NotDefined
    from binder_trade.fastening import Face, lay_out, read_pattern, round_face

    frame = place.frame
    long, wide = _sides(frame, body)
    try:
        pattern = read_pattern(str(entry.pattern or "single"), entry.off)
        face = round_face(min(long, wide)) if body.is_turned else Face(long, wide)
        layout = lay_out(pattern, face)
    except NotDefined:
        return Spread((frame,), is_read=False)
    frames = tuple(Frame(moved(frame, u, v), frame.z, frame.x) for u, v in layout.places)
    return Spread(frames, pattern.circle_mm)


def _sides(frame: Frame, body: Body) -> tuple[float, float]:
    """How long and wide a face is, along its frame's x and y."""
    long = sum(abs(way) * size for way, size in zip(frame.x, body.size, strict=True))
    return long, sum(body.size) - long - body.through(frame)


def _both_ends(found: Spread, body: Body) -> Spread:
    """The same on the opposite face: mirrored through the middle of the body."""
    return Spread((*found.frames, *(_mirrored(one, body) for one in found.frames)), found.circle)


def _mirrored(frame: Frame, body: Body) -> Frame:
    axis = next(n for n in range(3) if frame.z[n])
    place, out = list(frame.origin), list(frame.z)
    place[axis] = 2 * body.middle[axis] - place[axis]
    out[axis] = -out[axis]
    return Frame((place[0], place[1], place[2]), (out[0], out[1], out[2]), frame.x)
