"""Parallels under work in the vice: a drill that comes out below must not meet them.

They lie along both jaws. Where a hole goes through over one, both are set in between the holes;
where the holes leave no room for two, wood packing is laid under the work instead.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from binder_plugins.operations.hole_kinds import HOLES

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

    from binder_plugins.operations.facts import Grip
    from binder_solid.facts import Located

# In mm: how thick parallels are, thin ones, and how far a drill comes out beside its hole. Under
# narrow work they are no thicker than a third of it, and they bear it where their middles stand
# as far apart. Common practice, no source.
_THICK, _THIN, _WANDERS = 5.0, 3.0, 1.0
_THIRD = 1 / 3
# So near to a jaw a hole comes out over a parallel, in mm.
OVER = _THICK + _WANDERS
ON_PARALLELS, ON_WOOD = "on parallels", "on wood packing"
CLEAR = "the parallels clear of the holes that go through"
_AXIS = {"left": 0, "right": 0, "front": 1, "back": 1, "top": 2, "underside": 2}

Span = tuple[float, float]


@dataclass(frozen=True, slots=True)
class Under:
    """Where two parallels lie, in mm across the jaws from one of them.

    `is_moved` where they would lie under a hole at the jaws; no `places` where none are clear.
    """

    places: tuple[Span, ...]
    is_moved: bool


def under(size: Sequence[float], face: str, found: Sequence[Located]) -> Under:
    """The parallels under work of a size in mm, gripped over the narrower way, its face up."""
    up = _AXIS.get(face, 2)
    across = min((axis for axis in range(3) if axis != up), key=lambda axis: size[axis])
    wide = size[across]
    thick = min(_THICK, wide * _THIRD)
    at_jaws = ((0.0, thick), (wide - thick, wide))
    holes = sorted(_through(found, across))
    if not any(start < b and a < end for start, end in holes for a, b in at_jaws):
        return Under(at_jaws, is_moved=False)
    thin = min(_THIN, thick)
    free = [one for one in _free(holes, wide) if one[1] - one[0] >= thin]
    if not free:
        return Under((), is_moved=True)
    (low, _), (_, high) = free[0], free[-1]
    places = ((low, low + thin), (high - thin, high))
    is_borne = high - low - thin >= wide * _THIRD and low < wide / 2 < high
    return Under(places if is_borne else (), is_moved=True)


def clear_of(
    grip: Grip, size: Sequence[float], face: str, found: Sequence[Located]
) -> tuple[Grip, str]:
    """The grip that leaves room under the holes, and what is looked to before drilling."""
    if not grip.holder.endswith(ON_PARALLELS):
        return grip, ""
    lying = under(size, face, found)
    if not lying.is_moved:
        return grip, ""
    if lying.places:
        return grip, CLEAR
    holder = grip.holder.replace(ON_PARALLELS, ON_WOOD)
    return replace(grip, holder=holder), ""


def _through(found: Sequence[Located], across: int) -> Iterator[Span]:
    """What holes that go right through take of the width, with what a drill wanders."""
    for one in found:
        if one.kind in HOLES and one.depth is None:
            half = (one.diameter or 0.0) / 2 + _WANDERS
            for spot in one.spots:
                yield spot[across] - half, spot[across] + half


def _free(holes: Sequence[Span], wide: float) -> Iterator[Span]:
    """The width that no hole takes, from one jaw to the other."""
    at = 0.0
    for start, end in holes:
        if start > at:
            yield at, min(start, wide)
        at = max(at, end)
    if at < wide:
        yield at, wide
