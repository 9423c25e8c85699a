"""Gears set in mesh: paper between the teeth, the second bore spotted and put where they run.

The loose gear turns on a plug with a foot, which is clamped when the teeth bear on the paper: a
clamped gear cannot be felt. Common practice, no source.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Mapping
from dataclasses import replace
from typing import TYPE_CHECKING

from binder_plugins.operations.bench import (
    bench_vice,
    drill_for,
    flat_holder,
    lathe_for,
    place_of,
    vice_for,
)
from binder_plugins.operations.bolted import Fastened, alone, bolt_holes, in_jaws, on_plate
from binder_plugins.operations.facts import Act, Grip, SetUp
from binder_plugins.operations.hole_kinds import Where
from binder_plugins.operations.hole_tools import GROUND, drill_name
from binder_plugins.operations.holes import hole_acts
from binder_plugins.operations.on_the_line import line_words
from binder_plugins.operations.out_of_balance import SWING, most_rpm, off_middle, swept
from binder_plugins.operations.rows import Hole, holes_of
from binder_plugins.operations.sides import CLOCKED
from binder_plugins.operations.sized import finished, ream
from binder_plugins.operations.through_both import parted
from binder_plugins.operations.words import holding_min

if TYPE_CHECKING:
    from binder.api import TogetherFact
    from binder_plugins.operations.work import Work
    from binder_solid.facts import Located

# Common practice, no source: what is left for a reamer and for boring, on diameter in mm; a drill
# of so much of the bore where no owned one fits; how true the mark is clocked, in mm, so that the
# play that the paper set stays; the size of the centre drill.
_FOR_REAMER, _TO_BORE, _SMALL = 0.2, 0.4, 0.8
_CLOCKED_MM = 0.02
_CENTRE_MM = 3.0
_ON_PLATE = "its face, clamped and balanced, packed off the plate by the drill's run-out"


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
    line = line_words(first, second)
    acts: list[Act] = []
    if line:
        acts.append(work.act("mark-out", line, feature="marks mesh", tool="scriber and square"))
    on_it = "its hole over the line, " if line else ""
    acts += [
        # A clamped gear does not turn: what is clamped is the foot of the plug that it turns on.
        work.act(
            "set-centre",
            f"the other gear on the collared plug in the {said}; {fact.up} on the plug with the "
            f"foot, as thick as that collar, {on_it}beside it; {fact.note}; push them "
            "together on it, clamp the foot, draw the paper out, turn both once round: no tight "
            "place",
            tags=("mesh",),
        ),
        work.act(
            "spot-through",
            f"take {fact.up} off, its plug stays clamped: spot the {second.title} through the "
            "hole of the plug",
            tool="the pointed pin of the footed plug",
        ),
    ]
    return SetUp(
        1,
        "bench",
        "",
        Grip(vice or "surface plate", "bench", f"the {work.item.title}, flat"),
        f"the {said}, which is there",
        tuple(replace(act, joints=fact.joints) for act in acts),
        "the gears in one plane, both plugs square to it",
        "the second bore is spotted",
    )


def _bored(fact: TogetherFact, first: Hole, second: Hole) -> SetUp:
    """The second bore through all that are alike, held in line by a peg in the first."""
    work = second.work
    is_later = any(one.how != fact.how for one in work.left.get(second.one.name, ()))
    setup = _clocked(second, is_later=is_later) or _under_drill(second, is_later=is_later)
    acts = setup.acts
    if work.count > 1:
        pegs = f"a peg through the {first.one.name.replace('_', ' ')} of all"
        beside = _second_peg(first, second)
        if beside:
            pegs += (
                f", another through the ⌀{work.mm(beside)} hole farthest from it: one alone lets "
                "them turn"
            )
        held = _fastened(first, second, beside, setup.grip.kind)
        words = f"clamp {work.count} together, {pegs}{held.where}"
        clamp = work.act("clamp-stack", words, tool=held.tool)
        acts = (clamp, *acts)
    elif setup.grip.kind == "faceplate":
        grip, alone_acts = alone(setup.grip, acts, _fastened(first, second, 0.0, "faceplate"))
        setup, acts = replace(setup, grip=grip), tuple(alone_acts)
    true = "bores at one distance in all of them" if work.count > 1 else ""
    return replace(
        setup,
        acts=tuple(replace(act, joints=fact.joints) for act in acts),
        true="; ".join(filter(None, (setup.true, true))),
    )


def _fastened(first: Hole, second: Hole, peg: float, kind: str) -> Fastened:
    """What holds them all to the faceplate or in the jaws, with a peg of `peg` mm in one hole."""
    there = {one.name for one in _there(first, second)}
    bolts = bolt_holes(second.work, second.one, there, [peg], second.work.count)
    if kind == "faceplate":
        return on_plate(second.work, second.one, bolts)
    return Fastened(in_jaws(bolts) if kind == "four-jaw" else "")


def _there(first: Hole, second: Hole) -> list[Located]:
    """The further holes that go through all of them by then."""
    work = second.work
    return [
        one
        for one in (work.form.located if work.form is not None else ())
        if one.kind in {"drilled", "reamed"} and one.depth is None and one.face == first.one.face
        and one.name not in {first.one.name, second.one.name} and not work.is_wholly_left(one.name)
    ]  # fmt: skip


def _second_peg(first: Hole, second: Hole) -> float:
    """The size in mm of the hole farthest from the first, for a peg through all; 0 for none."""
    here = first.one.frame.origin
    found = [
        (math.dist(here, spot), one.diameter or 0.0)
        for one in _there(first, second)
        for spot in one.spots
    ]
    return max(found)[1] if found else 0.0


def _clocked(second: Hole, *, is_later: bool) -> SetUp | None:
    """Turned about its pop mark and bored, since a drill follows a mark less near than play asks.

    None where no lathe holds it. Common practice, no source.
    """
    work, one = second.work, second.one
    size = work.form.size if work.form is not None else (0.0, 0.0, 0.0)
    across = swept(size, one)
    holder, kind = flat_holder(work.design.workshop, across)
    lathe = lathe_for(work.design.workshop, across)
    if not holder or not lathe or not across:
        return None
    where = Where(
        lathe, second.deep * work.count, tags=_tags(work), is_lathe=True, is_together=True
    )
    most = most_rpm(size, off_middle(size, one), work.count)
    with work.no_faster(most):
        first, *rest = _led_true(work, one, where, is_later=is_later)
    # What the mark is clocked by is a tool of the first act, which follows the clocking.
    acts = [replace(first, tool=f"{first.tool}, pointed rod"), *rest]
    swing = SWING if math.isfinite(most) else ""
    return SetUp(
        2,
        "lathe",
        lathe,
        Grip(holder, kind, "its edges" if kind == "four-jaw" else _ON_PLATE, across),
        f"the pop mark, {CLOCKED}",
        tuple(acts),
        f"the pop mark within {_CLOCKED_MM:g} mm, the face square{swing}",
        "",
        holding_min(kind),
    )


def _led_true(work: Work, one: Located, where: Where, *, is_later: bool) -> Iterator[Act]:
    """Centred, drilled small, bored true to the reamer's size, then reamed where it stays."""
    across = one.diameter or 0.0
    under = across - _FOR_REAMER if one.kind == "reamed" else across
    drills = [float(drill.mm) for drill in work.design.workshop.drills()]
    small = max((size for size in drills if size <= under - _TO_BORE), default=0.0)
    small = small or under * _SMALL
    yield from _centred_and_drilled(work, one, where, small)
    if one.kind != "reamed" and not is_later:
        yield from finished(work, one, where, small)
        return
    left = f", {work.mm(across - under)} left" if one.kind == "reamed" else ""
    later = ": reamed in line later" if is_later else " for the reamer"
    words = f"bore to ⌀{work.mm(under)}{left}{later if left else ''}"
    yield work.act(
        "bore",
        words,
        machine=where.machine,
        feature=one.name,
        tool=GROUND,
        size=under,
        deep=where.deep,
        start=small,
        tags=(*where.tags, "rough"),
    )
    if not is_later:  # Else the row of bores gets its size when all of it stands.
        yield ream(work, one, where)


def _centred_and_drilled(work: Work, one: Located, where: Where, small: float) -> Iterator[Act]:
    yield work.act(
        "centre",
        "centre for the drill, lightly",
        machine=where.machine,
        feature=one.name,
        size=_CENTRE_MM,
        tags=where.tags,
    )
    yield work.act(
        "drill",
        f"drill ⌀{work.mm(small)}, through",
        machine=where.machine,
        feature=one.name,
        tool=drill_name(work, small, fitted=False),
        size=small,
        deep=where.deep,
        tags=where.tags,
    )


def _tags(work: Work) -> tuple[str, ...]:
    return ("stacked",) if work.count > 1 else ()


def _under_drill(second: Hole, *, is_later: bool) -> SetUp:
    """Under the drilling machine where no lathe holds it: centred in the mark, then drilled."""
    work, workshop = second.work, second.work.design.workshop
    machine = drill_for(workshop, min(second.one.diameter or 1.0, 13.0))
    where = Where(machine, second.deep * work.count, tags=_tags(work), is_together=True)
    acts = [
        act
        for act in hole_acts(work, second.one, where)
        if not is_later or "finish" not in act.tags
    ]
    vice = vice_for(workshop)
    return SetUp(
        2,
        place_of(workshop, machine),
        machine,
        Grip(vice or "clamps on the table", "vice", "the edges, on wood or parallels"),
        "the pop mark, under the point of the centre drill",
        tuple(acts),
        minutes=holding_min("vice"),
    )
