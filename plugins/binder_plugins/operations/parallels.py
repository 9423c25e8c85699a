"""Parallels under work in the vice: a drill or cutter that comes out below must not meet them.

They lie along both jaws. Where a hole goes through over one, both are set in between the holes;
where the holes leave no room for two, wood packing is laid under the work instead. What is milled
through shoves wood away: there the work is gripped the other way, or lies on strips at its ends.
"""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from binder_plugins.operations.bench import vice_for
from binder_plugins.operations.hole_kinds import HOLES
from binder_solid.forms import Raised
from binder_solid.lines import corners
from binder_solid.space import placed

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

    from binder.api import Workshop
    from binder_plugins.operations.facts import Grip
    from binder_plugins.operations.work import Work
    from binder_solid.facts import Located

# In mm: how thick parallels are, thin ones, and how far a drill comes out beside its hole. Under
# narrow work they are no thicker than a third of it, and they bear it where their middles stand
# as far apart. Work is not gripped over more than so many times its width. Common practice, no
# source.
_THICK, _THIN, _WANDERS = 5.0, 3.0, 1.0
_THIRD, _LONG = 1 / 3, 3.0
# So near to a jaw a hole comes out over a parallel, in mm.
OVER = _THICK + _WANDERS
ON_PARALLELS, ON_WOOD = "on parallels", "on wood packing"
# Work stands so far out of the jaws at the least, for the tool to pass over them; and how deep jaws
# are where the workshop does not tell, in mm. Common practice, no source.
_OUT_MM, _DEEP_MM = 3.0, 25.0
CLEAR = "the parallels clear of the holes that go through"
CLEAR_OF_CUT = "the parallels clear of what is milled through"
_PACKED = "the packing clear of what is milled through"
_ON_TABLE = ("plate", "bench")
_STRIPS = "on packing at both ends of the cut"
_AXIS = {"left": 0, "right": 0, "front": 1, "back": 1, "top": 2, "underside": 2}
_ENDS = ("its two ends", "its front and back", "its top and underside")
_MILLED = frozenset({"slotted", "pocketed", "keywayed", "stepped", "recessed", "t_slotted"})

Span = tuple[float, float]


@dataclass(frozen=True, slots=True)
class Under:
    """Where two parallels lie, in mm across the jaws from one of them.

    `is_moved` where they would lie under a hole at the jaws; no `places` where none are clear.
    """

    places: tuple[Span, ...]
    is_moved: bool


def in_vice(workshop: Workshop, *heights: float) -> str:
    """The machine vice, on parallels where work of any such height in mm sinks between its jaws.

    '' where none is there.
    """
    name = vice_for(workshop)
    is_low = bool(name) and min(heights) < jaw_depth(workshop) + _OUT_MM
    return f"{name}, {ON_PARALLELS}" if is_low else name


def jaw_depth(workshop: Workshop) -> float:
    """How deep the jaws of the machine vice are, in mm."""
    vice = workshop.entry.holding.vices.get(vice_for(workshop))
    return float(vice.jaw_depth.mm) if vice is not None and vice.jaw_depth else _DEEP_MM


def is_on_parallels(holder: str) -> bool:
    """Whether the words of a grip lay parallels under the work."""
    return ON_PARALLELS in holder


def is_packed(holder: str) -> bool:
    """Whether they lay wood or packing under it, which bears all of it."""
    return "on wood" in holder or "on packing" in holder


def gripped_axis(on: str, face: str, size: Sequence[float]) -> int:
    """The axis across the jaws: that which the grip names, else the narrower of the two."""
    if on in _ENDS:
        return _ENDS.index(on)
    up = _AXIS.get(face, 2)
    return min((axis for axis in range(3) if axis != up), key=lambda axis: size[axis])


def under(size: Sequence[float], face: str, found: Sequence[Located], on: str = "") -> Under:
    """The parallels under work of a size in mm, its face up, gripped `on` its sides."""
    across = gripped_axis(on, face, size)
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


def clear_of_cuts(
    grip: Grip, size: Sequence[float], face: str, found: Sequence[Located], work: Work
) -> tuple[Grip, str]:
    """The grip of work that is milled through, and what is looked to before.

    The other way in the jaws where parallels bear it so alone; else on strips.
    """
    if not any(one.kind in _MILLED and one.depth is None for one in found):
        return grip, ""
    if not grip.holder.endswith(ON_PARALLELS):
        if grip.kind not in _ON_TABLE:
            return grip, ""
        more = "" if "packing" in grip.holder else ", on packing"
        return replace(grip, holder=f"{grip.holder}{more}"), _PACKED
    first = gripped_axis("", face, size)
    other = next(axis for axis in range(3) if axis not in (first, _AXIS.get(face, 2)))
    opens = work.design.workshop.entry.holding.vices[vice_for(work.design.workshop)].opens.mm
    ways = [first]
    if size[other] <= min(float(opens), _LONG * size[first]):
        ways.append(other)
    for axis in ways:
        lying = under(size, face, found, _ENDS[axis])
        if lying.places:
            on = _ENDS[axis]
            return replace(grip, on=on, across=size[axis]), _told(lying, work)
    return replace(grip, holder=grip.holder.replace(ON_PARALLELS, _STRIPS)), ""


def _told(lying: Under, work: Work) -> str:
    """How thick they are, which settles where they end."""
    (low, end), _ = lying.places
    where = "against the jaws" if low == 0 else f"{work.mm(low)} from the jaws"
    return f"{CLEAR_OF_CUT}: no thicker than {work.mm(math.floor(end - low))}, {where}"


def _through(found: Sequence[Located], across: int) -> Iterator[Span]:
    """What goes right through takes of the width, with what a drill or cutter wanders."""
    for one in found:
        if one.depth is not None:
            continue
        if one.kind in HOLES:
            half = (one.diameter or 0.0) / 2 + _WANDERS
            for spot in one.spots:
                yield spot[across] - half, spot[across] + half
        for tool in one.tools if one.kind in _MILLED else ():
            if isinstance(tool, Raised):
                places = [placed((x, y, 0.0), tool.frame)[across] for x, y in corners(tool.outline)]
                yield min(places) - _WANDERS, max(places) + _WANDERS


def _free(holes: Sequence[Span], wide: float) -> Iterator[Span]:
    """The width that no hole takes, from one jaw to the other."""
    at = 0.0
    for start, end in holes:
        if start > at:
            yield at, min(start, wide)
        at = max(at, end)
    if at < wide:
        yield at, wide
