"""Teeth cut in several depths, one round after another, where their mandrel bends at the whole one.

What pushes the work away goes with the section of the chip (the specific cutting force of the
trade's tables, taken as one figure), so that each round is given as much of the space as another.
"""

from __future__ import annotations

import math
from dataclasses import replace
from typing import TYPE_CHECKING

from binder_trade.gears.dividing.owned import divided

if TYPE_CHECKING:
    from collections.abc import Iterator

    from binder_plugins.operations.facts import Act
    from binder_plugins.operations.table_mandrel import TableMandrel
    from binder_plugins.operations.toothings import Toothing
    from binder_plugins.operations.work import Work

# The flank of the basic rack, and how far its root is below the pitch line in modules. Source:
# ISO 53, profile A.
_FLANK = math.tan(math.radians(20))
_DEDENDUM = 1.25


def depths_of(one: Toothing, count: int) -> list[float]:
    """The depths in mm to which an involute space is cut one after another, the whole one last.

    It is that of the basic rack, wider at the top than at the bottom: each round goes less deeper
    than the one before it.
    """
    shares = [number / count for number in range(1, count + 1)]
    floor = one.module * (math.pi / 2 - 2 * _DEDENDUM * _FLANK)
    whole = _section(floor, one.depth)
    # A(z) = w z + z² tan 20°, solved for z.
    return [
        (math.sqrt(floor**2 + 4 * _FLANK * whole * share) - floor) / (2 * _FLANK)
        for share in shares
    ]


def rounds(
    work: Work, one: Toothing, teeth: Act, found: TableMandrel | None, machine: str
) -> Iterator[Act]:
    """The rounds before the last, as one act; `teeth` are cut in the last one."""
    count = rounds_on(found)
    if found is None or count <= 1 or not one.module:
        return
    deep = [work.mm(round(depth, 2)) for depth in depths_of(one, count)[:-1]]
    words = ", then ".join(f"{each} deep" for each in deep)
    how = divided(one.count, work.design.workshop.dividers())
    turns = f" ({how})" if how else ""
    act = work.act(
        "mill",
        f"centre the cutter on the axis, touch the blank, cut all {one.count} gaps {words}, once "
        f"round for each{turns}: at the whole depth at once the mandrel would bend away "
        f"{found.bends:.1f} times as far as it may; begin every round, the last as well, at one "
        "marked gap",
        machine=machine,
        feature=one.feature,
        tool=one.cutter,
        size=one.across,
        tags=("rough",),
    )
    run = (count - 1) * teeth.run
    yield replace(act, speed=teeth.speed, feed=teeth.feed, run=run, spoils=teeth.spoils)


def in_rounds(one: Toothing, teeth: Act, found: TableMandrel | None) -> Act:
    """Teeth that no basic rack describes, all their depths in the one act."""
    count = rounds_on(found)
    if count <= 1 or one.module:
        return teeth
    words = (
        f"{teeth.what}; each cut in {count} depths, since the mandrel bends away from a whole one"
    )
    return replace(teeth, what=words, run=count * teeth.run)


def rounds_on(found: TableMandrel | None) -> int:
    """In how many depths teeth are cut on a mandrel; on one whose end is carried in one."""
    return 1 if found is None or found.is_carried else found.depths


def _section(floor: float, deep: float) -> float:
    """The section in mm² that a form cutter has taken out when it is so deep."""
    return floor * deep + deep**2 * _FLANK
