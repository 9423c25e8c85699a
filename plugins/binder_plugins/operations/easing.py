"""Rods as bought that may come tight in a reamed bore: polished where they bear, to its size."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from typing import TYPE_CHECKING

from binder_plugins.operations.bench import lathe_for, place_of, round_holder
from binder_plugins.operations.facts import Act, Grip, SetUp
from binder_plugins.operations.words import holding_min

if TYPE_CHECKING:
    from binder.api import HalfFact
    from binder_plugins.operations.work import Work


def eased(work: Work) -> Iterator[SetUp]:
    """One set-up for all places that are tried in their measured bores."""
    found = [
        (place, half)
        for place, halves in work.halves.items()
        for half in halves
        if is_eased(half) and half.upper is not None
    ]
    acts = [_polish(work, place, half) for place, half in found]
    if not acts:
        return
    across = max(half.upper or 0.0 for _, half in found)
    workshop = work.design.workshop
    machine = lathe_for(workshop, across)
    holder, kind = round_holder(workshop, across, true=True)
    grip = Grip(holder or "by hand", kind, f"⌀{work.mm(round(across, 1))}, beside the place")
    yield SetUp(
        1,
        place_of(workshop, machine),
        machine,
        grip,
        "the mate, as it was measured",
        tuple(acts),
        minutes=holding_min(kind),
    )


def is_eased(half: HalfFact) -> bool:
    """Whether a half stays as the rod was bought, unless its measured mate is tight on it."""
    return "as bought" in half.what and half.how.startswith("eased")


def _polish(work: Work, place: str, half: HalfFact) -> Act:
    act = work.act(
        "polish",
        f"try the {place.replace('_', ' ')} in the {half.mate}; polish it there "
        f"{half.how.removeprefix('eased ')}",
        machine=lathe_for(work.design.workshop, half.upper or 1.0),
        feature=place,
        size=half.upper or 1.0,
        tags=("finish", "fit", "outside"),
    )
    return replace(act, feed="by hand")
