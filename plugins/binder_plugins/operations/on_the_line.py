"""The line through a bore that is there on which the bore of a mate must come."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING

from binder_plugins.operations.sides import SAID

if TYPE_CHECKING:
    from binder_plugins.operations.rows import Hole

_NEAR = 1e-3
# The faces at the low and the high end of each axis of a part.
_ENDS = (("left", "right"), ("front", "back"), ("underside", "top"))
_WORDS = {"left": "left-hand edge", "right": "right-hand edge", "underside": "lower edge"}


def line_words(first: Hole, second: Hole) -> str:
    """`scribe the line through the upper, 18 mm off the front edge, towards the right-hand edge`.

    Both must be holes of one part in one face; '' where its form is not known or they are not.
    """
    form, other = first.work.form, second.work
    if form is None or other.name != first.work.name or first.one.face != second.one.face:
        return ""
    normal = max(range(3), key=lambda n: abs(first.one.frame.z[n]))
    here, there = first.one.frame.origin, second.one.frame.origin
    ways = [(there[n] - here[n], n) for n in range(3) if n != normal]
    (long, along), (aside, across) = sorted(ways, key=lambda way: -abs(way[0]))
    if abs(long) < _NEAR:
        return ""
    mm, name = first.work.mm, first.one.name.replace("_", " ")
    to = _edge(_ENDS[along][long > 0])
    if abs(aside) < _NEAR:
        gap, end = _nearer(here[across], form.size[across], across)
        return f"scribe the line through the {name}, {mm(gap)} off the {end}, towards the {to}"
    turned = math.degrees(math.atan2(abs(aside), abs(long)))
    leans = _edge(_ENDS[across][aside > 0])
    return (
        f"scribe the line through the {name} towards the {to}, turned {turned:.3g}° to the {leans}"
    )


def _nearer(at: float, size: float, axis: int) -> tuple[float, str]:
    low, high = (_edge(end) for end in _ENDS[axis])
    return (at, low) if at <= size - at else (size - at, high)


def _edge(face: str) -> str:
    return _WORDS.get(face, f"{SAID.get(face, face)} edge")
