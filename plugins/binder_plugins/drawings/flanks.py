"""A dovetail to the points of its flanks at the face, where its leader ends.

Its middle is often covered by a hole or a counterbore that has a leader of its own.
"""

from __future__ import annotations

from itertools import pairwise
from typing import TYPE_CHECKING

from binder_solid.forms import Point, Raised, Straight, Vector
from binder_solid.space import cross, plus

if TYPE_CHECKING:
    from collections.abc import Iterator

    from binder_solid.facts import Located


def flanks_of(one: Located) -> Iterator[Vector]:
    """Where each flank meets the face, beside the middle of the feature; none for other kinds."""
    if one.kind != "dovetailed":
        return
    across = cross(one.frame.z, one.frame.x)
    halves = sorted({round(abs(at), 6) for at in _at_the_face(one)})
    for half in halves[:1]:
        for spot in one.spots:
            yield plus(spot, across, half)
            yield plus(spot, across, -half)


def _at_the_face(one: Located) -> Iterator[float]:
    """Where the leaning sides of what is cut away pass through the face, from the middle."""
    for tool in one.tools:
        if isinstance(tool, Raised):
            corners: list[Point] = [
                tool.outline.start,
                *(to.to for to in tool.outline.segments if isinstance(to, Straight)),
            ]
            for (a, low), (b, high) in pairwise(corners):
                if a != b and low != high and min(low, high) <= 0.0 <= max(low, high):
                    yield a + (b - a) * (0.0 - low) / (high - low)
