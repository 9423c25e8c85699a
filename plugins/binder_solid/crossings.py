"""Where lines of an outline meet that should not: crossings, touches, folds."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from .forms import Point
from .lines import Bow, Chord, Piece, box_of, share_at

_NEAR = 1e-6
_SHARED = 1e-3  # neighbours meet at their common end, and a tangent pair seems to for a while


@dataclass(frozen=True, slots=True)
class _Place:
    """A piece, the loop that it is of, and its number among so many of it."""

    piece: Piece
    loop: int
    number: int
    count: int


def first_crossing(loops: Sequence[Sequence[Piece]]) -> Point | None:
    """Finds a point where two pieces meet other than at the common end of neighbours."""
    places = [
        _Place(piece, index, number, len(loop))
        for index, loop in enumerate(loops)
        for number, piece in enumerate(loop)
    ]
    boxed = sorted(((box_of(place.piece), n) for n, place in enumerate(places)))
    open_now: list[tuple[tuple[float, float, float, float], int]] = []
    for box, index in boxed:
        open_now = [entry for entry in open_now if entry[0][2] >= box[0] - _NEAR]
        for other, earlier in open_now:
            if other[1] <= box[3] + _NEAR and other[3] >= box[1] - _NEAR:
                found = _unwanted(places[earlier], places[index])
                if found is not None:
                    return found
        open_now.append((box, index))
    return None


def _unwanted(one: _Place, other: _Place) -> Point | None:
    shared = list(_common_ends(one, other))
    for point in _meetings(one.piece, other.piece):
        if all(math.dist(point, end) > _SHARED for end in shared):
            return point
    return None


def _common_ends(one: _Place, other: _Place) -> Iterator[Point]:
    if one.loop == other.loop:
        if (one.number + 1) % one.count == other.number:
            yield one.piece.end
        if (other.number + 1) % one.count == one.number:
            yield other.piece.end


def _meetings(one: Piece, other: Piece) -> Iterator[Point]:
    if isinstance(one, Chord) and isinstance(other, Chord):
        yield from _chord_chord(one, other)
    elif isinstance(one, Chord) and isinstance(other, Bow):
        yield from _chord_bow(one, other)
    elif isinstance(one, Bow) and isinstance(other, Chord):
        yield from _chord_bow(other, one)
    elif isinstance(one, Bow) and isinstance(other, Bow):
        yield from _bow_bow(one, other)


def _chord_chord(one: Chord, other: Chord) -> Iterator[Point]:
    (px, py), (qx, qy) = one.start, other.start
    rx, ry = one.end[0] - px, one.end[1] - py
    sx, sy = other.end[0] - qx, other.end[1] - qy
    across = rx * sy - ry * sx
    size = math.hypot(rx, ry) * math.hypot(sx, sy)
    if abs(across) <= 1e-9 * size:
        yield from _overlap(one, other)
        return
    t = ((qx - px) * sy - (qy - py) * sx) / across
    u = ((qx - px) * ry - (qy - py) * rx) / across
    if _within(t, math.hypot(rx, ry)) and _within(u, math.hypot(sx, sy)):
        yield (px + t * rx, py + t * ry)


def _overlap(one: Chord, other: Chord) -> Iterator[Point]:
    for point, chord in (
        (other.start, one),
        (other.end, one),
        (one.start, other),
        (one.end, other),
    ):
        if _is_on_chord(point, chord):
            yield point


def _is_on_chord(point: Point, chord: Chord) -> bool:
    gap = math.dist(chord.start, point) + math.dist(point, chord.end)
    return gap - math.dist(chord.start, chord.end) <= _NEAR**2


def _chord_bow(chord: Chord, bow: Bow) -> Iterator[Point]:
    size = math.dist(chord.start, chord.end)
    ux, uy = (chord.end[0] - chord.start[0]) / size, (chord.end[1] - chord.start[1]) / size
    fx, fy = bow.centre[0] - chord.start[0], bow.centre[1] - chord.start[1]
    along, aside = fx * ux + fy * uy, fx * uy - fy * ux
    if abs(aside) > bow.radius:
        return
    half = math.sqrt(max(0.0, bow.radius**2 - aside**2))
    for step in (along - half, along + half):
        point = (chord.start[0] + step * ux, chord.start[1] + step * uy)
        if -_NEAR <= step <= size + _NEAR and _is_on_bow(point, bow):
            yield point


def _bow_bow(one: Bow, other: Bow) -> Iterator[Point]:
    gap = math.dist(one.centre, other.centre)
    if gap <= _NEAR and abs(one.radius - other.radius) <= _NEAR:
        yield from (p for p in (one.at(0.0), one.at(0.5), one.at(1.0)) if _is_on_bow(p, other))
        yield from (p for p in (other.at(0.5),) if _is_on_bow(p, one))
        return
    if gap <= _NEAR or gap > one.radius + other.radius or gap < abs(one.radius - other.radius):
        return
    along = (gap**2 + one.radius**2 - other.radius**2) / (2.0 * gap)
    half = math.sqrt(max(0.0, one.radius**2 - along**2))
    ux, uy = ((other.centre[i] - one.centre[i]) / gap for i in (0, 1))
    for side in (half, -half):
        x, y = along * ux - side * uy, along * uy + side * ux
        point = (one.centre[0] + x, one.centre[1] + y)
        if _is_on_bow(point, one) and _is_on_bow(point, other):
            yield point


def _is_on_bow(point: Point, bow: Bow) -> bool:
    angle = math.atan2(point[1] - bow.centre[1], point[0] - bow.centre[0])
    share = share_at(bow, angle)
    slack = _NEAR / (bow.radius * abs(bow.sweep))
    return share <= 1.0 + slack or share >= math.tau / abs(bow.sweep) - slack


def _within(share: float, size: float) -> bool:
    return -_NEAR / size <= share <= 1.0 + _NEAR / size
