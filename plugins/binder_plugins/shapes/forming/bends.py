"""Bends across a strip of sheet: its flat length, its section when bent, the face of each leg.

A leg is told over its outside. The neutral line lies k thicknesses from the inside of a bend:
0.64 T + 1.57 R for a right angle in soft steel, half-hard brass and aluminium (Machinery's
Handbook, lengths of straight sections before bending; from memory), so k = 0.64 / (π/2).
"""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass

from binder_plugins.shapes.vocabulary.rods import Bend, Sheet
from binder_solid.forms import Arc, Frame, Outline, Point, Segment, Straight

USUAL_K = 0.64 / (math.pi / 2)


@dataclass(frozen=True, slots=True)
class Turn:
    """A bend in mm and radians; `way` is 1 for up and -1 for down."""

    angle: float
    inside: float
    way: int
    k: float

    def setback(self, thickness: float) -> float:
        """From the outer corner to where the straight begins."""
        return (self.inside + thickness) * math.tan(self.angle / 2)

    def allowance(self, thickness: float) -> float:
        """The length of the neutral line round the bend."""
        return self.angle * (self.inside + self.k * thickness)


def turns_of(shape: Sheet) -> tuple[Turn, ...]:
    """The bends from left to right."""
    return tuple(_turn(one) for one in shape.bends)


def _turn(one: Bend) -> Turn:
    k = float(one.k.exact) if one.k is not None else USUAL_K
    way = -1 if one.way == "down" else 1
    return Turn(math.radians(float(one.angle.exact)), one.inside.mm, way, k)


def straights(shape: Sheet) -> tuple[float, ...]:
    """The straight part of each leg: under nothing where its bends take more than it has."""
    ends = [0.0, *(one.at.mm for one in shape.bends), shape.length.mm]
    taken = [0.0, *(one.setback(shape.thickness.mm) for one in turns_of(shape)), 0.0]
    return tuple(ends[n + 1] - ends[n] - taken[n] - taken[n + 1] for n in range(len(ends) - 1))


def developed(shape: Sheet) -> float:
    """The length of the flat strip."""
    return sum(straights(shape)) + sum(one.allowance(shape.thickness.mm) for one in turns_of(shape))


def fault_of(shape: Sheet) -> tuple[int, str] | None:
    """The bend that cannot be made, and why."""
    for n, one in enumerate(turns_of(shape)):
        if not 0.0 < one.angle <= math.radians(150):
            return n, "a bend turns by more than nothing and 150 degrees at the most"
    for n, left in enumerate(straights(shape)):
        if left < 0.0:
            return min(n, len(shape.bends) - 1), f"leg {n + 1} is {-left:.2f} mm too short for it"
    return None


@dataclass(frozen=True, slots=True)
class _Pen:
    """Where the underside of the strip is drawn, and the way that it runs."""

    at: Point
    turn: float = 0.0

    def on(self, along: float, out: float = 0.0) -> Point:
        """A point so far along and so far above the underside."""
        c, s = math.cos(self.turn), math.sin(self.turn)
        return (self.at[0] + along * c - out * s, self.at[1] + along * s + out * c)


def _legs(shape: Sheet) -> Iterator[tuple[_Pen, float, Turn | None]]:
    """Each leg: where it starts, its straight length, and the bend behind it."""
    pen = _Pen((0.0, 0.0))
    thick = shape.thickness.mm
    turns = (*turns_of(shape), None)
    for long, turn in zip(straights(shape), turns, strict=True):
        yield pen, long, turn
        if turn is not None:
            pen = _round(_Pen(pen.on(long), pen.turn), turn, thick)


def _round(pen: _Pen, turn: Turn, thick: float) -> _Pen:
    radius = turn.inside + thick if turn.way > 0 else turn.inside
    return _Pen(_swung(pen, turn, radius, 1.0), pen.turn + turn.way * turn.angle)


def _swung(pen: _Pen, turn: Turn, radius: float, share: float) -> Point:
    """A point of the bend on the underside, so far round it."""
    angle = turn.angle * share
    return pen.on(radius * math.sin(angle), turn.way * radius * (1 - math.cos(angle)))


def section_of(shape: Sheet) -> Outline | None:
    """The section of the bent strip; its first leg lies on y = 0 from x = 0."""
    if fault_of(shape) is not None:
        return None
    thick = shape.thickness.mm
    under: list[Segment] = []
    over: list[tuple[Point, Point | None]] = []
    for pen, long, turn in _legs(shape):
        over.append((pen.on(0.0, thick), None))
        end = _Pen(pen.on(long), pen.turn)
        if long > 1e-9:
            under.append(Straight(end.at))
        over.append((end.on(0.0, thick), _over_middle(end, turn, thick)))
        if turn is not None:
            low = turn.inside + (thick if turn.way > 0 else 0.0)
            under.append(Arc(_swung(end, turn, low, 0.5), _swung(end, turn, low, 1.0)))
    return Outline((0.0, 0.0), (*under, *_back(over)))


def _over_middle(end: _Pen, turn: Turn | None, thick: float) -> Point | None:
    """The middle of the bend on the upper side."""
    if turn is None:
        return None
    high = turn.inside + (0.0 if turn.way > 0 else thick)
    return _swung(_Pen(end.on(0.0, thick), end.turn), turn, high, 0.5)


def _back(over: list[tuple[Point, Point | None]]) -> Iterator[Segment]:
    """The upper side from its end to its start: each point, and the arc from it to the next."""
    last = over[-1][0]
    yield Straight(last)
    for point, middle in reversed(over[:-1]):
        if math.dist(point, last) > 1e-9:
            yield Arc(middle, point) if middle is not None else Straight(point)
        last = point


def bent_frames(shape: Sheet) -> tuple[tuple[str, Frame], ...]:
    """A face in the middle of each leg, `leg1` from the left; their upper sides."""
    found = []
    for number, (pen, long, _turn) in enumerate(_legs(shape), 1):
        x, z = pen.on(long / 2, shape.thickness.mm)
        c, s = math.cos(pen.turn), math.sin(pen.turn)
        frame = Frame((x, shape.width.mm / 2, z), (-s, 0.0, c), (c, 0.0, s))
        found.append((f"leg{number}", frame))
    return tuple(found)
