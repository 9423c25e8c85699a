"""Located features to the holes of a face, each place once, and their pitch circles."""

from __future__ import annotations

import math
from collections.abc import Iterable
from dataclasses import replace
from typing import Protocol

from binder.api import Design, Part, exact, shown_length
from binder_plugins.shapes.words import what
from binder_solid.facts import Located
from binder_solid.flats import FlatHole, PitchCircle
from binder_solid.forms import Point, Vector
from binder_solid.space import dot, minus

_KINDS = ("drilled", "reamed", "bored", "tapped", "counterbored", "countersunk", "spotfaced")
_SAME = 1e-4


class Paper(Protocol):
    """Something that lays points of a part flat."""

    def on(self, point: Vector, /) -> Point:
        """Where a point lies on the paper."""


def is_hole(one: Located) -> bool:
    """Whether a feature is a hole that is marked out."""
    return one.kind in _KINDS and one.diameter is not None and bool(one.tools)


def holes_of(
    located: Iterable[Located], part: Part, paper: Paper, design: Design
) -> tuple[FlatHole, ...]:
    """The holes of a face by feature, those of one feature from left to right.

    What is cut in the mouth of a hole is told with the hole.
    """
    found: list[FlatHole] = []
    for one in located:
        words = _words(one, part, design)
        for at in sorted({_rounded(paper.on(spot)) for spot in front_spots(one)}):
            mate = next((n for n, hole in enumerate(found) if math.dist(hole.at, at) < _SAME), None)
            diameter = one.diameter or 0.0
            if mate is None:
                found.append(FlatHole(one.name, words, at, diameter, one.depth is None))
            else:
                found[mate] = _together(found[mate], words, diameter)
    return tuple(found)


def front_spots(one: Located) -> list[Vector]:
    """Those of alike holes that start in the same face."""
    deep = (dot(minus(spot, one.frame.origin), one.frame.z) for spot in one.spots)
    return [spot for spot, far in zip(one.spots, deep, strict=True) if abs(far) < _SAME]


def _rounded(at: Point) -> Point:
    """Without the noise of sines, so that equal columns sort as equal."""
    return (round(at[0], 6) + 0.0, round(at[1], 6) + 0.0)


def _together(hole: FlatHole, words: str, diameter: float) -> FlatHole:
    return replace(hole, words=f"{hole.words}; {words}", diameter=min(hole.diameter, diameter))


def _words(one: Located, part: Part, design: Design) -> str:
    feature = next((known for known in part.features if known.name == one.name), None)
    if feature is None:
        return one.note
    words = what(feature, design.units)
    if one.face == "underside" and one.depth is not None:
        words = f"{words} from below"
    if feature.kind != "tapped" or one.diameter is None:
        return words
    return f"{words}, drill ⌀{shown_length(exact(one.diameter), design.units)}"


def circles_of(located: Iterable[Located], paper: Paper) -> tuple[PitchCircle, ...]:
    """The pitch circles on which three holes or more stand evenly."""
    found = []
    for one in located:
        spots = front_spots(one)
        if one.circle is not None and len(spots) >= 3:
            centre = _rounded(paper.on(one.frame.origin))
            found.append(PitchCircle(one.name, centre, one.circle, len(spots)))
    return tuple(found)
