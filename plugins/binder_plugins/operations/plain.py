"""The plainest set-ups: what is done at the bench, and holes drilled at their marks."""

from __future__ import annotations

from typing import TYPE_CHECKING

from binder_plugins.operations import words
from binder_plugins.operations.bench import bench_vice, drill_for, place_of, vice_for
from binder_plugins.operations.facts import Act, Grip, SetUp
from binder_plugins.operations.holes import Where, hole_acts

if TYPE_CHECKING:
    from collections.abc import Sequence

    from binder_plugins.operations.work import Work
    from binder_solid.facts import Located


def at_bench(work: Work, on: str, datum: str, acts: Sequence[Act]) -> SetUp:
    """Acts in the bench vice, or by hand where there is none; `on` says what is held."""
    vice = bench_vice(work.design.workshop)
    return SetUp(1, "bench", "", Grip(vice or "by hand", "bench", on), datum, tuple(acts))


def drilled(work: Work, holes: Sequence[Located]) -> SetUp:
    """Holes at their marks, in a vice on the drilling machine."""
    workshop = work.design.workshop
    largest = max(one.diameter or 0.0 for one in holes)
    machine = drill_for(workshop, min(largest, 13.0))
    deep = min(work.form.size) if work.form is not None else largest
    acts: list[Act] = []
    for one in holes:
        acts += hole_acts(work, one, Where(machine, one.depth or max(deep, 1.0)))
    vice = vice_for(workshop)
    grip = Grip(vice or "clamps", "vice", "the piece")
    return SetUp(
        1,
        place_of(workshop, machine),
        machine,
        grip,
        "the marks",
        tuple(acts),
        minutes=words.holding_min("vice"),
    )
