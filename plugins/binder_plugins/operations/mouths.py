"""The mouths of holes: how wide each is sunk, and what gets at it."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from collections.abc import Iterable

    from binder_plugins.operations.facts import Act
    from binder_plugins.operations.hole_kinds import Where
    from binder_plugins.operations.work import Work
    from binder_solid.facts import Located

# What a mouth is broken with where no countersink gets at it.
BY_SCRAPER = "hand scraper, or the point of a centre drill"


@dataclass(frozen=True, slots=True)
class Shoulder:
    """What stands `high` mm above a hole's mouth, so many mm `away` from its middle."""

    away: float
    high: float


def countersink_for(work: Work, across: float, beside: Shoulder | None) -> tuple[str, bool]:
    """The smallest countersink that opens a mouth to a diameter in mm, and whether by hand.

    Its cone, and above that its body, must pass the shoulder beside the mouth.
    """
    owned = sorted(work.design.workshop.entry.cutters.countersinks, key=lambda c: c.diameter.mm)
    able = [
        one
        for one in owned
        if one.diameter.mm >= across
        and _passes(one.diameter.mm, float(one.angle.exact), across, beside)
    ]
    if able:
        return f"{work.mm(able[0].diameter.mm)} countersink", False
    return (BY_SCRAPER, True) if owned and beside is not None else ("countersink", False)


def _passes(tool: float, angle: float, across: float, beside: Shoulder | None) -> bool:
    if beside is None:
        return True
    lean = math.tan(math.radians(angle / 2))
    return min(tool / 2, across / 2 + beside.high * lean) < beside.away


def mouths_of(work: Work, bores: Iterable[Located]) -> dict[str, Located]:
    """Chamfers at 45° in the mouths of holes, by their hole: a countersink leaves them."""
    found = {}
    for one in bores:
        feature = work.feature(one.name)
        entry = feature.entry if feature is not None else None
        hole = str(getattr(entry, "on", None) or "")
        at = work.feature(hole)
        if one.kind == "chamfered" and at is not None and getattr(entry, "angle", None) is None:
            found[hole] = one
    return found


def opened(work: Work, one: Located, where: Where) -> Act:
    """The mouth of a hole sunk to its edge, at one go; to the thread's outside where none is told.

    It comes before tap and reamer, which would throw a burr into the mouth, or be thrown by one.
    """
    count = len(one.spots)
    across, words = one.diameter or 0.0, "break the mouth to the thread's outside"
    if where.mouth is not None:
        across += 2 * (where.mouth.diameter or 0.0)
        words = f"countersink the mouth to ⌀{work.mm(across)}"
    tool, by_hand = countersink_for(work, across, where.beside)
    act = work.act(
        "countersink",
        f"{count} × {words}" if count > 1 else words,
        machine="" if by_hand else where.machine,
        feature=one.name,
        tool=tool,
        size=across,
        times=len(one.spots),
        tags=where.tags,
        meets=(*where.meets, *((where.mouth.name,) if where.mouth is not None else ())),
    )
    return replace(act, speed="by hand") if by_hand else act
