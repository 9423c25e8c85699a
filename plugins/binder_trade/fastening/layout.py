"""A pattern laid out on a face: where each hole is, and how close to its neighbour and the edge."""

from __future__ import annotations

import math
from dataclasses import dataclass
from itertools import combinations

from binder_trade.explained import NotDefined, Step, positive
from binder_trade.fastening.pattern import Pattern
from binder_trade.fastening.steps import mm, step

Place = tuple[float, float]


@dataclass(frozen=True, slots=True)
class Face:
    """A rectangle of this length and width, or a round face of this diameter, in mm."""

    length_mm: float
    width_mm: float
    is_round: bool = False


@dataclass(frozen=True, slots=True)
class Layout:
    """The centres of the holes from the centre of the face, in mm, in the order of the pattern.

    `least_pitch_mm` is None for a single hole. `least_edge_mm` is measured from a hole's centre
    to the edge of the face; below nothing, the centre lies outside. `extent_mm` is the size of
    the pattern over the centres. `chord_mm` is what the dividers are set to on a circle.
    """

    places: tuple[Place, ...]
    least_pitch_mm: float | None
    least_edge_mm: float
    extent_mm: Place
    chord_mm: float | None
    steps: tuple[Step, ...]


def round_face(diameter_mm: float) -> Face:
    """A round face."""
    return Face(diameter_mm, diameter_mm, is_round=True)


def positions(pattern: Pattern, length_mm: float, width_mm: float) -> tuple[Place, ...]:
    """The centres of the holes on a rectangle, from its centre, in mm; raises NotDefined."""
    return lay_out(pattern, Face(length_mm, width_mm)).places


def lay_out(pattern: Pattern, face: Face) -> Layout:
    """The pattern on a face; raises NotDefined for one that the face cannot carry."""
    positive(face.length_mm, "a face")
    positive(face.width_mm, "a face")
    if face.is_round and pattern.edge_mm is not None:
        raise NotDefined(
            "a round face has no edges to measure in from", "write: 4 off on 16 mm PCD"
        )
    places = _places(pattern, face)
    chord_mm = _chord_of(pattern)
    return Layout(
        places,
        least_pitch(places),
        min(_to_edge(place, face) for place in places),
        _extent(places),
        chord_mm,
        (*_steps(pattern, chord_mm), *_extent_steps(places)),
    )


def chord(count: int, circle_mm: float) -> float:
    """What dividers are set to for so many holes on a pitch circle: D sin(180°/n), in mm."""
    if count < 2:
        raise NotDefined("one hole has no chord", "give two holes or more")
    return positive(circle_mm, "a pitch circle") * math.sin(math.pi / count)


def from_corner(places: tuple[Place, ...], face: Face) -> tuple[Place, ...]:
    """The same centres counted from the face's lower left corner, for marking out, in mm."""
    return tuple((x + face.length_mm / 2, y + face.width_mm / 2) for x, y in places)


def from_axis(pattern: Pattern, across_mm: float) -> float:
    """How far the nearest hole of a pattern stands from the axis of a round face, in mm.

    Raises NotDefined for a pattern that a round face cannot carry.
    """
    return min(math.hypot(x, y) for x, y in lay_out(pattern, round_face(across_mm)).places)


def least_pitch(places: tuple[Place, ...]) -> float | None:
    """The least distance between two centres in mm; None for a single one."""
    return min((math.dist(one, other) for one, other in combinations(places, 2)), default=None)


def _places(pattern: Pattern, face: Face) -> tuple[Place, ...]:
    count = pattern.count
    if count is None:
        raise NotDefined("how many holes is not said", "write for example: 4 off")
    if pattern.kind == "circle":
        return _round_a_circle(pattern, count)
    if pattern.kind in ("corners", "rows") and pattern.edge_mm is not None:
        _check_inset(pattern.edge_mm, face, pattern)
    rows = 2 if pattern.kind == "corners" else pattern.rows
    along = _line(count // rows, pattern.pitch_mm, pattern.edge_mm, face.length_mm)
    across = _line(rows, pattern.row_gap_mm, pattern.edge_mm, face.width_mm)
    return tuple((x, y) for y in across for x in along)


def _round_a_circle(pattern: Pattern, count: int) -> tuple[Place, ...]:
    radius = (pattern.circle_mm or 0) / 2
    turns = [math.radians(pattern.first_deg + 360 * hole / count) for hole in range(count)]
    return tuple((radius * math.cos(turn), radius * math.sin(turn)) for turn in turns)


def _line(count: int, pitch: float | None, edge: float | None, room: float) -> list[float]:
    """Centres along one direction: at a pitch, else in from the edges, else spread evenly."""
    if count == 1:
        return [0.0]
    if pitch is None:
        pitch = (room - 2 * edge) / (count - 1) if edge is not None else room / count
    first = -pitch * (count - 1) / 2
    return [first + pitch * hole for hole in range(count)]


def _check_inset(edge: float, face: Face, pattern: Pattern) -> None:
    across = pattern.kind == "corners" or pattern.rows > 1
    room = min(face.width_mm, face.length_mm) if across else face.length_mm
    if 2 * edge >= room:
        raise NotDefined(
            f"holes {mm(edge)} in from both edges meet on a face of {mm(room)}",
            f"keep them less than {mm(room / 2)} in",
        )


def _to_edge(place: Place, face: Face) -> float:
    x, y = place
    if face.is_round:
        return face.length_mm / 2 - math.hypot(x, y)
    return min(face.length_mm / 2 - abs(x), face.width_mm / 2 - abs(y))


def _extent(places: tuple[Place, ...]) -> Place:
    xs, ys = zip(*places, strict=True)
    return max(xs) - min(xs), max(ys) - min(ys)


def _chord_of(pattern: Pattern) -> float | None:
    if pattern.circle_mm is None or pattern.count is None or pattern.count < 2:
        return None
    return chord(pattern.count, pattern.circle_mm)


def _steps(pattern: Pattern, chord_mm: float | None) -> tuple[Step, ...]:
    if chord_mm is None or pattern.circle_mm is None:
        return ()
    formula = f"D sin(180°/n) = {mm(pattern.circle_mm)} × sin(180°/{pattern.count})"
    return (step("chord for the dividers", formula, f"{chord_mm:.3f} mm", "plane geometry"),)


def _extent_steps(places: tuple[Place, ...]) -> tuple[Step, ...]:
    along, across = _extent(places)
    formula = "from the first centre to the last, along and across"
    return (step("size over the centres", formula, f"{mm(along)}, {mm(across)}", "plane geometry"),)
