"""Which owned drill or cutter makes the size of a hole or of its sink."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from binder.api import exact

if TYPE_CHECKING:
    from binder_plugins.operations.hole_kinds import Where
    from binder_plugins.operations.work import Work

# Drills so near in mm make one size; a plain hole may be so much over. Common practice, no source.
_SAME_DRILL = 0.02
_OVER = 0.1
_WIDE = 6.0
# A bar goes into a hole that is so much smaller than it is told for, in mm: rounding of inches.
_ENTERS = 0.01
# From the tip of a bar to its back, of the least bore that it enters; common practice, no source.
_TIP_TO_BACK = 7 / 8
GROUND = "small boring tool, ground to enter"
SQUARE = ", square to the floor"
NOT_OWNED = "not owned"
_FLAT = "drill, its end ground flat"
_TOLD = re.compile(r"(?:no\. \w+|letter \w|\d[\d./]*(?: \d+/\d+)? (?:mm|in)) drill\b")
_LED = "; a pointed drill of that size goes first, till its lips cut all round: the flat one is led"


def drill_name(work: Work, size: float, *, fitted: bool) -> str:
    """The owned drill that makes a size; the next above where a little over does no harm."""
    workshop, same = work.design.workshop, exact(_SAME_DRILL)
    found = workshop.owns_drill(exact(size)) or workshop.nearest_drill(exact(size), same, same)
    more = ""
    if found is None and not fitted:
        found = workshop.nearest_drill(exact(size), exact(0), exact(_OVER))
        more = ", the next above"
    if found is None:
        return f"{work.mm(size)} drill, {NOT_OWNED}"
    name = found.name if "drill" in found.name else f"{found.name} drill"
    return f"{name}{more}"


def hand_drilled(words: str) -> str:
    """The drills that words of an act tell by their size, in a hand drill."""
    return f"{', '.join(drills_told(words)) or 'drill of that size'}, in a hand drill"


def drills_told(words: str) -> tuple[str, ...]:
    """The drills that words tell by their size, each once."""
    return tuple(dict.fromkeys(_TOLD.findall(words)))


def led_in(tool: str) -> str:
    """What leads a drill that was ground flat: it has no point, and no pilot either."""
    return _LED if tool.endswith(_FLAT) else ""


def sinker(work: Work, act: str, across: float, *, is_lathe: bool, hole: float = 0.0) -> str:
    """What leaves a flat floor at just this size; the hole in its middle, `hole` mm, is there."""
    workshop = work.design.workshop
    size = exact(round(across, 4))
    sizes = [one.mm for run in workshop.entry.cutters.counterbores or () for one in run.members]
    if size in sizes:
        return f"{work.mm(across)} counterbore with pilot"
    cutters = [one for one in workshop.owned.end_cutters if one.mm == size]
    if cutters:
        cutter = max(cutters, key=lambda one: one.plunges)
        return f"{cutter.name} {'slot drill' if cutter.plunges else 'end mill'}"
    bars = [bar for bar in workshop.entry.cutters.boring_bars if bar.least_bore.mm <= hole]
    if is_lathe and bars:
        best = max(bars, key=lambda bar: bar.least_bore.mm)
        return f"boring bar (from ⌀{work.mm(best.least_bore.mm)})"
    drill = workshop.owns_drill(size)
    if drill is not None:
        return f"{drill.name} {_FLAT}"
    if is_lathe and across >= _WIDE:
        return GROUND
    return "boring head" if across >= _WIDE else "pilot cutter filed up from silver steel"


def faces_floor(least_bore: float, across: float, hole: float = 0.0) -> bool:
    """Whether a bar faces the floor of a bore in to the `hole` in its middle, 0 to the centre.

    Its back comes to the far wall first where tip and back together are as wide as the bore's
    radius and that of the hole; the floor then keeps a pip. All in mm.
    """
    return _TIP_TO_BACK * least_bore < (across + hole) / 2


def bar_name(
    work: Work, start: float, where: Where, *, is_flat: bool = False, across: float = 0.0
) -> str:
    """The stiffest bar that goes into the hole as it is drilled, and through it or to its floor.

    The floor of a bore `across` mm is faced to the centre; 0 where its floor is there already.
    """
    if not where.is_lathe:
        return "boring head"
    bars = [
        bar
        for bar in work.design.workshop.entry.cutters.boring_bars
        if bar.least_bore.mm <= start + _ENTERS
        and bar.reach.mm >= where.deep
        and (not (is_flat and across) or faces_floor(bar.least_bore.mm, across))
    ]
    ending = SQUARE if is_flat else ""
    if not bars:
        return f"{GROUND}{ending}"
    best = max(bars, key=lambda bar: bar.least_bore.mm)
    return f"boring bar (from ⌀{work.mm(best.least_bore.mm)}){ending}"
