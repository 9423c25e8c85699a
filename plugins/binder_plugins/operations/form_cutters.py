"""Which cutter of the sets of eight forms the teeth of a wheel, and whether it is owned."""

from __future__ import annotations

from typing import TYPE_CHECKING

from binder_plugins.operations.hole_tools import NOT_OWNED
from binder_trade.explained import NotDefined
from binder_trade.gears import form_cutter

if TYPE_CHECKING:
    from binder.api import Workshop
    from binder_plugins.operations.work import Work

_INCH = 25.4
# Cutters of so near a module are one, in mm; rounding alone parts them.
_SAME = 1e-3
# How far from its axis the tip of a fly cutter swings in mm, as the gear cutters of the leaf:
# common practice, no source.
SWING_MM = 25.0
GROUND = "fly cutter ground to the "
_SPACE = f"{GROUND}space, in its holder; or "


def form_cutter_name(work: Work, said: str, module: float, count: int, *, is_inch: bool) -> str:
    """The cutter for so many teeth of a module in mm.

    Where it is not owned, a fly cutter is ground to the space if there is a grinder, and the
    cutter of the set is named as what to buy or borrow; common practice, no source.
    """
    try:
        found = form_cutter(count, "DP" if is_inch else "module")
    except NotDefined:
        return f"{GROUND}tooth, in its holder, {said}"
    name = f"gear cutter {said}, no. {found.number} ({found.range_name})"
    workshop = work.design.workshop
    if _owns(workshop, module, found.number, is_inch=is_inch):
        return name
    return f"{_SPACE if has_grinder(workshop) else ''}{name}, {NOT_OWNED}"


def has_grinder(workshop: Workshop) -> bool:
    """Whether a cutter can be ground here."""
    return any("grinder" in f"{name} {one}" for name, one in workshop.entry.machines.others.items())


def _owns(workshop: Workshop, module: float, number: int, *, is_inch: bool) -> bool:
    for one in workshop.entry.cutters.gear_cutters:
        dp = one.diametral_pitch
        size = one.module.mm if one.module is not None else _INCH / float(dp.exact) if dp else 0.0
        is_system = (dp is not None) == is_inch
        if is_system and abs(size - module) <= _SAME and number in [int(n) for n in one.numbers]:
            return True
    return False
