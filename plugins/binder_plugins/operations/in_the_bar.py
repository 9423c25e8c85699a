"""A hole right through work that is still on its bar: how deep, so that it comes off open."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING

from binder.api import exact

if TYPE_CHECKING:
    from binder_plugins.operations.holes import Where
    from binder_plugins.operations.work import Work
    from binder_solid.facts import Located

# What goes past the line before a tool cuts its full size: the lead of a machine reamer in mm,
# that of a hand reamer and of a tap in diameters, and what lies under a reamer for its chips,
# in mm. Common practice, no source.
_REAMER_MM = 2.0
_BY_HAND = 2.0
_TAP = 1.0
_CHIPS_MM = 1.0


def is_past(one: Located, where: Where) -> bool:
    """Whether a hole right through is made before its piece comes off the bar."""
    return one.depth is None and where.past > 0


def drilled_past(work: Work, one: Located, past: float) -> float:
    """How deep the full diameter of the drill goes in mm, where it is parted off at `past` mm."""
    lead = _lead(work, one)
    return math.ceil(past + lead + (_CHIPS_MM if lead else 0.0) - 1e-6)


def reamed_to(work: Work, one: Located, where: Where) -> str:
    """How deep the reamer goes, so that its lead is past the line; it is kept off the floor."""
    if not is_past(one, where):
        return ""
    deep = work.mm(drilled_past(work, one, where.past) - _CHIPS_MM)
    return f"; {deep} deep, its lead past the line"


def _lead(work: Work, one: Located) -> float:
    """The lead in mm of the tool that leaves the size of a hole."""
    across = one.diameter or 0.0
    if one.kind == "tapped":
        return _TAP * across
    if one.kind != "reamed":
        return 0.0
    reamer = work.design.workshop.owns_reamer(exact(across))
    return _BY_HAND * across if reamer is not None and reamer.is_hand else _REAMER_MM
