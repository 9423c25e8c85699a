"""Pilot holes for wood screws: the bare part held in its place, spotted through, drilled."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from typing import TYPE_CHECKING

from binder_plugins.operations.bench import bench_vice
from binder_plugins.operations.facts import Act, Grip, SetUp
from binder_plugins.operations.hole_tools import hand_drilled
from binder_plugins.operations.through_both import parted
from binder_solid.piloting import piloted

if TYPE_CHECKING:
    from binder.api import TogetherFact
    from binder_plugins.operations.work import Work


def pilot_holes(fact: TogetherFact, works: Mapping[str, Work]) -> Iterator[SetUp]:
    """One set-up at the bench, then marked and parted."""
    above, below = (works[name] for name in fact.items)
    joint = below.design.joints[fact.joints[0]]
    words = piloted(joint, below.design).removesuffix(", then ")
    if not words:
        return
    vice = bench_vice(below.design.workshop)
    acts: list[Act] = [
        above.act("clamp-stack", fact.up),
        below.act("drill", words, tool=hand_drilled(words), tags=("stacked",)),
    ]
    yield SetUp(
        1,
        "bench",
        "",
        Grip(vice or "by hand", "bench", "both, clamped with packing"),
        "where they will stand",
        tuple(acts),
        "the holes to those of the metal: it is the jig",
        "all are drilled",
    )
    yield parted(below, fact)
