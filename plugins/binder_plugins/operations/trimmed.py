"""Pegs that stand out of a part to the work of cutting them flush."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import replace
from typing import TYPE_CHECKING

from binder_plugins.operations.bench import bench_vice
from binder_plugins.operations.facts import Grip, SetUp

if TYPE_CHECKING:
    from binder.api import TogetherFact
    from binder_plugins.operations.work import Work

_ENDS = 2


def trimmed(fact: TogetherFact, works: Mapping[str, Work]) -> Iterator[SetUp]:
    """Sawn a little proud, then pared from the edge inwards. Common practice, no source."""
    work = works[fact.items[0]]
    items = work.design.joints[fact.joints[0]].items
    pegs = max((work.design.bought[name].quantity or 1 for name in items
                if name in work.design.bought), default=1)  # fmt: skip
    act = work.act(
        "file",
        "saw off what stands out of either face, a piece of card with a hole round it to keep the "
        "teeth off, then pare it flush with a sharp chisel: from the rim of the peg to its middle, "
        "both hands behind the edge; try it with the blade of the square",
        tool="tenon saw, chisel, card, square",
        times=_ENDS * pegs,
        spoils="paring outwards: the far rim breaks away below the face",
    )
    vice = bench_vice(work.design.workshop)
    grip = Grip(vice or "clamps on the bench", "bench", f"the {work.item.title}, on pads of wood")
    acts = (replace(act, joints=fact.joints),)
    yield SetUp(1, "bench", "", grip, "its faces", acts)
