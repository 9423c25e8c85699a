"""Speeds to a ladder: an upright for each shaft, a rung of a step leading from speed to speed.

Heights are the logarithm of the speed, so that equal ratios are equally steep.
"""

from __future__ import annotations

import itertools
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from math import log

from binder.api import (
    Anchor,
    Block,
    Design,
    Drawing,
    DrawnDisc,
    DrawnLabel,
    Line,
    Picture,
    Stroke,
    TrainFact,
    TurningFact,
)

_APART, _HIGH, _TOP, _LEFT = 46.0, 58.0, 12.0, 20.0
_MOST_SHAFTS = 4
_LABEL_MM = 4.2
_Shapes = list[Line | DrawnDisc | DrawnLabel]


def ladder_of(train: TrainFact, design: Design) -> Iterator[Block]:
    """The ladder, where there is more than one setting and room for the shafts."""
    bodies = [one for name in train.order if (one := design.facts.about(TurningFact, name))]
    known = [one for one in bodies if all(speed for speed in one.speeds)]
    if len(train.settings) < 2 or not 2 <= len(known) <= _MOST_SHAFTS:
        return
    words = " to ".join(body.title for body in known)
    yield Picture(
        _drawn(known), f"ladder of the speeds from {words}", "Speeds in r/min, from shaft to shaft"
    )


def _drawn(bodies: list[TurningFact]) -> Drawing:
    all_speeds = [abs(speed) for body in bodies for speed in body.speeds if speed]
    low, high = log(min(all_speeds)), log(max(all_speeds))
    scale = _HIGH / (high - low) if high > low else 0.0

    def level(speed: float) -> float:
        return _TOP + _HIGH - (log(abs(speed)) - low) * scale

    shapes: _Shapes = []
    for number, body in enumerate(bodies):
        x = _LEFT + _APART * number
        shapes.append(Line(x, _TOP - 4, x, _TOP + _HIGH + 4, Stroke.THIN))
        shapes.append(DrawnLabel(x, _TOP + _HIGH + 10, body.title[:22], 3.0, Anchor.MIDDLE))
        shapes += _marks(body, level, _beside(number, x, bodies))
    for number, (one, two) in enumerate(itertools.pairwise(bodies)):
        x = _LEFT + _APART * number
        lines = {
            (round(level(a), 3), round(level(b), 3))
            for a, b in zip(one.speeds, two.speeds, strict=True)
            if a and b
        }
        shapes += [Line(x, a, x + _APART, b) for a, b in sorted(lines)]
    return Drawing(_LEFT + _APART * (len(bodies) - 1) + 26, _TOP + _HIGH + 14, tuple(shapes))


@dataclass(frozen=True, slots=True)
class _Side:
    """Where the figures of an upright stand from its dots, clear of the lines to its neighbours."""

    x: float
    right: float
    down: float
    anchor: Anchor


def _beside(number: int, x: float, bodies: list[TurningFact]) -> _Side:
    """Outside of the first and last upright; at one between on the side that no line comes from."""
    if number == 0:
        return _Side(x, -2.5, 1.1, Anchor.END)
    if number == len(bodies) - 1:
        return _Side(x, 2.5, 1.1, Anchor.START)
    before, own = (
        max(abs(one) for one in body.speeds if one) for body in bodies[number - 1 : number + 1]
    )
    return _Side(x, -1.5, 4.2 if before > own else -1.8, Anchor.END)


def _marks(body: TurningFact, level: Callable[[float], float], side: _Side) -> _Shapes:
    """A dot and a figure for each speed; figures that would touch are left out."""
    shapes: _Shapes = []
    last = float("inf")
    for speed in sorted({round(abs(one), 6) for one in body.speeds if one}):
        y = level(speed)
        shapes.append(DrawnDisc(side.x, y, 0.9, 1.0))
        if last - y >= _LABEL_MM:
            words = f"{speed:.3g}" if speed < 1000 else f"{speed:.0f}"
            at = (side.x + side.right, y + side.down)
            shapes.append(DrawnLabel(*at, words, 3.0, side.anchor))
            last = y
    return shapes
