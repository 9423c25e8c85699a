"""A hole to its acts: spot, pilot, drill, then bore, ream, tap or sink."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from binder.api import ThreadFact
from binder_plugins.operations.drilled import centred, drilled_to, drills, start
from binder_plugins.operations.hole_kinds import SINKS, Where, entry_of, narrows_to
from binder_plugins.operations.in_the_bar import drilled_past, is_past
from binder_plugins.operations.mouths import opened
from binder_plugins.operations.sinks import sink, sunk
from binder_plugins.operations.sized import finished

if TYPE_CHECKING:
    from collections.abc import Iterator

    from binder_plugins.operations.facts import Act
    from binder_plugins.operations.work import Work
    from binder_solid.facts import Located


def hole_acts(work: Work, one: Located, where: Where) -> Iterator[Act]:
    """The acts of one hole, or of all that are alike, in their usual order."""
    across = one.diameter or 0.0
    if one.kind in SINKS:
        yield sink(work, one, where)
        return
    if one.kind == "centred":
        yield centred(work, one, where)
        return
    if across <= 0 or (work.is_wholly_left(one.name) and not where.is_together):
        return
    given = where
    where = replace(where, deep=_drill_depth(work, one, where))
    if not where.is_started and not where.first:
        yield start(work, one, where)
    to = drilled_to(work, one, where)
    yield from drills(work, one, where, to)
    if where.mouth is not None and one.kind != "tapped":
        yield opened(work, one, where)
    # What a drill leaves at the line of parting is faced off: no bar needs to reach past it.
    is_bored = one.kind == "bored" or narrows_to(work, one) > 0
    yield from finished(work, one, given if is_bored else where, to)
    counterbore = getattr(entry_of(work, one), "counterbore", None)
    if counterbore is not None:
        yield sunk(work, one, where, "counterbore", counterbore.mm)


def _drill_depth(work: Work, one: Located, where: Where) -> float:
    """A blind tapped hole is drilled deeper than its thread, for the tap's lead and the chips.

    One right through is drilled past the line at which it comes off the bar.
    """
    if is_past(one, where):
        return drilled_past(work, one, where.past)
    fact = work.design.facts.about(ThreadFact, f"{work.name}.{one.name}")
    if one.kind != "tapped" or one.depth is None or where.is_open:
        return where.deep
    if fact is None or fact.drill_depth is None:
        return where.deep
    return max(where.deep, round(fact.drill_depth, 1))
