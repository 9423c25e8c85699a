"""A thread in a hole to whether a machine turns the tap, and how fast."""

from __future__ import annotations

from typing import TYPE_CHECKING

from binder.api import ThreadFact
from binder_making.cutting import tapping

if TYPE_CHECKING:
    from binder_plugins.operations.work import Work
    from binder_solid.facts import Located


def thread_of(one: Located) -> str:
    """`M10` of a tapped hole, as its note tells it."""
    return one.note.split(",")[0].split("×")[-1].strip().removeprefix("tap ")


def taps_of(work: Work, thread: str) -> tuple[str, ...]:
    """The taps of a thread that are owned, from taper to plug; none where it is not owned."""
    tap = work.design.workshop.owns_tap(thread)
    return tuple(tap.kinds) if tap is not None else ()


def tap_rpm(work: Work, one: Located, machine: str) -> float:
    """At how many r/min the machine that drilled the hole turns the tap; 0 by hand."""
    found = work.machine(machine)
    fact = work.design.facts.about(ThreadFact, f"{work.name}.{one.name}")
    size = fact.major if fact is not None else one.diameter or 0.0
    if found is None or work.group is None or size <= 0:
        return 0.0
    return tapping(
        work.group,
        size,
        is_blind=one.depth is not None,
        speeds=found.speeds,
        reverses=bool(getattr(work.design.workshop.machine(machine), "reverses", False)),
    ).rpm
