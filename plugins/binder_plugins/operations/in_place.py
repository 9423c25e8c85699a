"""Deep holes of riveted pieces, drilled through the plates that they lie between."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from typing import TYPE_CHECKING

from binder_plugins.operations.bench import bench_vice, drill_for, place_of, vice_for
from binder_plugins.operations.facts import Act, Grip, SetUp
from binder_plugins.operations.hole_tools import drill_name
from binder_plugins.operations.rows import holes_of
from binder_plugins.operations.through_both import parted
from binder_plugins.operations.words import holding_min
from binder_solid.set_on import set_on

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
    marked, where = _marked(pairs)
    yield from marked
    up = f"{fact.up}{where}; {_PEGS}"
    acts = [work.act("clamp-stack", up, feature=pairs[0][1].one.name)]
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
    yield parted(work, fact, "mark each for its place and the way round, then take them apart")


def _marked(pairs: Sequence[list[Hole]]) -> tuple[list[SetUp], str]:
    """The lines to which inner pieces are set: the plate hides them, and they have no hole yet.

    The second is what is said where they are clamped.
    """
    acts: list[Act] = []
    told: dict[str, None] = {}
    for jig, deep in pairs:
        found = set_on(jig.work.name, deep.work.name, jig.work.design)
        plate, piece = jig.work.item.title, deep.work.item.title
        if found is None:
            continue
        where = f"its {found.side} on the {found.face} of a {plate}, {found.edges}"
        told[f"each {piece} with {where}"] = None
        if found.lines:
            words = f"scribe one {plate} on its {found.face} right across, {found.lines}"
            acts.append(
                jig.work.act("mark-out", words, feature=f"marks {piece}", tool="scriber and square")
            )
    vice = bench_vice(pairs[0][1].work.design.workshop)
    grip = Grip(vice or "surface plate", "bench", f"the {pairs[0][0].work.item.title}, flat")
    lines = [SetUp(1, "bench", "", grip, "its made edges", tuple(acts))] if acts else []
    return lines, "".join(f"; {one}" for one in told)


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
