"""Pilot holes for wood screws: spotted through the bare part in its place, drilled without it."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import replace
from typing import TYPE_CHECKING

from binder_plugins.operations.bench import bench_vice
from binder_plugins.operations.facts import Grip, SetUp
from binder_plugins.operations.hole_tools import hand_drilled
from binder_solid.piloting import pilot_drilling, pilot_spots

if TYPE_CHECKING:
    from binder.api import TogetherFact
    from binder_plugins.operations.work import Work

_APART = (
    "mark both for the way round, then take them apart: the drill for the wood is thinner than "
    "the holes, and would wander in them"
)


def pilot_holes(fact: TogetherFact, works: Mapping[str, Work]) -> Iterator[SetUp]:
    """Spotted and parted, then the wood alone is drilled."""
    above, below = (works[name] for name in fact.items)
    design = below.design
    joint = design.joints[fact.joints[0]]
    words = pilot_spots(joint, design)
    if not words:
        return
    bench = Grip(bench_vice(design.workshop) or "by hand", "bench", "both, clamped with packing")
    acts = (
        above.act("clamp-stack", fact.up),
        below.act("spot-through", words, tool=hand_drilled(words), tags=("stacked",)),
        above.act("separate", _APART),
    )
    yield SetUp(
        1,
        "bench",
        "",
        bench,
        "where they will stand",
        acts,
        "the spots to the holes of the metal: it is the jig",
        "all are spotted",
    )
    told = pilot_drilling(joint, design)
    drilled = below.act("drill", told, tool=hand_drilled(told), tags=("stacked",))
    wood = replace(bench, on=f"the {below.item.title}")
    yield SetUp(2, "bench", "", wood, "the spots", (drilled,))
