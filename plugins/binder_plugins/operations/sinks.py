"""Counterbores, spotfaces and countersinks, of their own or of a hole."""

from __future__ import annotations

from typing import TYPE_CHECKING

from binder_plugins.operations.hole_kinds import SINKS, many_of
from binder_plugins.operations.hole_tools import led_in, sinker
from binder_plugins.operations.mouths import countersink_for

if TYPE_CHECKING:
    from binder_plugins.operations.facts import Act
    from binder_plugins.operations.hole_kinds import Where
    from binder_plugins.operations.work import Work
    from binder_solid.facts import Located


def sink(work: Work, one: Located, where: Where) -> Act:
    """A sink that is a feature by itself."""
    return sunk(work, one, where, SINKS[one.kind], one.diameter or 0.0)


def sunk(work: Work, one: Located, where: Where, act: str, across: float) -> Act:
    """A sink of so much across, in mm, by what owned tool leaves it."""
    deep = f", {work.mm(one.depth)} deep" if one.depth is not None and one.kind in SINKS else ""
    verb = {"spotfaced": "spotface"}.get(one.kind, act)
    if act == "countersink":
        tool, is_kept_off = countersink_for(work, across, where.beside)
        tool = "drill of its size, the point ground to the seat" if is_kept_off else tool
    else:
        tool = sinker(work, act, across, is_lathe=where.is_lathe, hole=_in_middle(work, one))
    return work.act(
        act,
        f"{many_of(one)}{verb} ⌀{work.mm(across)}{deep}{led_in(tool)}",
        machine=where.machine,
        feature=partner(work, one),
        tool=tool,
        size=across,
        times=len(one.spots),
        tags=where.tags,
        end=where.end,
    )


def _in_middle(work: Work, one: Located) -> float:
    """How wide the hole of a sink is in mm; 0 where it has none."""
    found = work.feature(partner(work, one))
    if found is None or found.name == one.name:
        return one.diameter or 0.0 if one.kind not in SINKS else 0.0
    located = work.form.located if work.form is not None else ()
    return next((hole.diameter or 0.0 for hole in located if hole.name == found.name), 0.0)


def partner(work: Work, one: Located) -> str:
    """The hole that a sink belongs to: its own name without `_seat`, where there is such."""
    base = one.name.removesuffix("_seat")
    return base if work.feature(base) is not None else one.name
