"""Deep holes of riveted pieces, drilled through the plates that they lie between."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from typing import TYPE_CHECKING

from binder_plugins.operations.bench import drill_for, place_of, vice_for
from binder_plugins.operations.facts import Act, Grip, SetUp
from binder_plugins.operations.hole_tools import drill_name
from binder_plugins.operations.rows import holes_of
from binder_plugins.operations.through_both import parted
from binder_plugins.operations.words import holding_min

if TYPE_CHECKING:
    from binder.api import TogetherFact
    from binder_plugins.operations.rows import Hole
    from binder_plugins.operations.work import Work

_PEGS = "a peg through the first hole at each end before the next is drilled"


def in_place(fact: TogetherFact, works: Mapping[str, Work]) -> Iterator[SetUp]:
    """Clamped as they will stand, drilled half way from either side, marked and parted."""
    pairs = [pair for line in fact.lines if len(pair := list(holes_of(line, works))) == 2]
    if not pairs:
        return
    work, across = pairs[0][1].work, pairs[0][1].one.diameter or 1.0
    workshop = work.design.workshop
    machine = drill_for(workshop, min(across, 13.0))
    acts = [work.act("clamp-stack", f"{fact.up}; {_PEGS}", feature=pairs[0][1].one.name)]
    acts += [_drill(jig, deep, machine) for jig, deep in pairs]
    vice = vice_for(workshop)
    yield SetUp(
        1,
        place_of(workshop, machine),
        machine,
        Grip(vice or "clamps on the table", "vice", "all of them, a plate up"),
        "the holes of the plates",
        tuple(acts),
        "each hole to those of the plates: they are the jig",
        "all are through",
        holding_min("vice"),
    )
    yield parted(work, fact)


def _drill(jig: Hole, deep: Hole, machine: str) -> Act:
    work, across = deep.work, deep.one.diameter or 0.0
    count = len(deep.one.spots) * work.count
    return work.act(
        "drill",
        f"{count} × ⌀{work.mm(across)} through the {deep.title}, led by the {jig.title}: half way "
        "from one side, then from the other, clearing it often",
        machine=machine,
        feature=deep.one.name,
        tool=drill_name(work, across, fitted=False),
        size=across,
        deep=deep.deep,
        times=count,
        tags=("stacked",),
        spoils="pushing: so thin a drill bends, wanders and snaps",
    )
