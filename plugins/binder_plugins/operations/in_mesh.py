"""Gears set in mesh: paper between the teeth, the second bore spotted and put where they run."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import replace
from typing import TYPE_CHECKING

from binder_plugins.operations.bench import bench_vice, drill_for, place_of, vice_for
from binder_plugins.operations.facts import Act, Grip, SetUp
from binder_plugins.operations.holes import Where, hole_acts
from binder_plugins.operations.rows import Hole, holes_of
from binder_plugins.operations.through_both import parted
from binder_plugins.operations.words import holding_min

if TYPE_CHECKING:
    from binder.api import TogetherFact
    from binder_plugins.operations.work import Work


def meshed(fact: TogetherFact, works: Mapping[str, Work]) -> Iterator[SetUp]:
    """Set on the part itself, spotted through the free gear, then drilled."""
    found = [hole for line in fact.lines for hole in holes_of(line, works)]
    if len(found) != 2:
        return
    first, second = found
    yield _set(fact, first, second)
    yield _bored(fact, first, second)
    yield parted(second.work, fact)


def _set(fact: TogetherFact, first: Hole, second: Hole) -> SetUp:
    work = second.work
    vice = bench_vice(work.design.workshop)
    said = first.title
    acts: list[Act] = [
        work.act(
            "set-centre",
            f"the other gear on a plug in the {said}, {fact.up} beside it; {fact.note}; push them "
            "together on it, clamp, turn both once round: no tight place",
            tags=("mesh",),
        ),
        work.act(
            "spot-through",
            f"spot the {second.title} through the bore of {fact.up}",
            tool="a punch turned to the bore, pointed",
        ),
    ]
    return SetUp(
        1,
        "bench",
        "",
        Grip(vice or "surface plate", "bench", f"the {work.item.title}, flat"),
        f"the {said}, which is there",
        tuple(replace(act, joints=fact.joints) for act in acts),
        "the gears flat on the plate, in one plane",
        "the second bore is spotted",
    )


def _bored(fact: TogetherFact, first: Hole, second: Hole) -> SetUp:
    """The second bore through all that are alike, held in line by a peg in the first."""
    work = second.work
    workshop, count = work.design.workshop, work.count
    machine = drill_for(workshop, min(second.one.diameter or 1.0, 13.0))
    is_later = any(one.how != fact.how for one in work.left.get(second.one.name, ()))
    tags = ("stacked",) if count > 1 else ()
    where = Where(machine, second.deep * count, tags=tags, is_started=True, is_together=True)
    acts = list(hole_acts(work, second.one, where))
    if is_later:  # The row of bores gets its size when all of it stands.
        acts = [act for act in acts if "finish" not in act.tags]
    if count > 1:
        peg = f"a peg through the {first.one.name.replace('_', ' ')} of all"
        acts.insert(0, work.act("clamp-stack", f"clamp {count} together, {peg}"))
    vice = vice_for(workshop)
    return SetUp(
        2,
        place_of(workshop, machine),
        machine,
        Grip(vice or "clamps on the table", "vice", "the edges, on wood or parallels"),
        "the spot",
        tuple(replace(act, joints=fact.joints) for act in acts),
        "bores at one distance in all of them" if count > 1 else "",
        "",
        holding_min("vice"),
    )
