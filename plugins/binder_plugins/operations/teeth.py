"""The teeth of gears, racks, ratchets and sprockets: divided, cut one after another."""

from __future__ import annotations

import math
from dataclasses import replace
from typing import TYPE_CHECKING

from binder_plugins.operations.bench import bench_vice, divider, mill_for, vice_for
from binder_plugins.operations.facts import Act, Grip, SetUp
from binder_plugins.operations.gripping import SUPPORTED
from binder_plugins.operations.in_depths import in_rounds, rounds, rounds_on
from binder_plugins.operations.leaning import Held, leaning_of, leaning_setups
from binder_plugins.operations.table_mandrel import Cut, TableMandrel, table_mandrel
from binder_plugins.operations.tooth_trial import ground_trial, trial
from binder_plugins.operations.toothings import WHOLE_DEPTH, Toothing, toothings
from binder_plugins.operations.words import holding_min
from binder_solid.wheels import RATCHET_HAND
from binder_trade.gears.dividing.owned import divided

if TYPE_CHECKING:
    from collections.abc import Iterator

    from binder_plugins.operations.turning import Turning
    from binder_plugins.operations.work import Work
    from binder_solid.facts import FormFact, Located

# Minutes for each tooth with its indexing, in steel and in what is softer, and by file: common
# practice, no source.
_STEEL_MIN, _SOFT_MIN, _FILED_MIN = 2.5, 1.0, 5.0
# How the axis of work that is divided is set under an upright spindle: common practice, no source.
_LEVEL = "the axis level and along the table, clocked over it"
_ON_EDGE = f"the table stood on edge, {_LEVEL}"


def tooth_setups(turning: Turning, number: int) -> Iterator[SetUp]:
    """The teeth of round work, on a mandrel in its bore or held by its shank.

    Of a gear a few spaces are cut first, and spanned before the depth is set.
    """
    work = turning.work
    if leaning_of(turning):
        yield from leaning_setups(turning, number, Held(*_grip(turning)))
        return
    for one in toothings(work, turning.form):
        alone = _alone(turning, one)
        grip, datum, true = _grip(turning, one, alone)
        place, machine = "mill", mill_for(work.design.workshop)
        if one.kind == "internal":
            place, machine, true = "lathe", turning.lathe, "the rim within 0.02 mm"
            grip, datum = Grip("faceplate, on a fixture", "faceplate", "its outside"), "the bore"
        elif not machine or not one.across:
            place, machine = "bench", ""
            if one.kind != "ratchet":
                turning.trouble.append(_no_mill(work))
        act = _round_act(work, one, machine)
        acts = _tried(work, one, act, grip, machine, alone) if machine else (act,)
        yield SetUp(number, place, machine, grip, datum, acts, true, "", holding_min(grip.kind))
        number += 1


def _tried(
    work: Work, one: Toothing, teeth: Act, grip: Grip, machine: str, alone: TableMandrel | None
) -> tuple[Act, ...]:
    """The teeth behind what is tried first, and behind the rounds that spare their mandrel."""
    early = tuple(rounds(work, one, teeth, alone, machine))
    is_tried = one.kind == "gear" and one.module
    tried = trial(work, one, teeth, machine, is_begun=bool(early)) if is_tried else ()
    scrap = ground_trial(work, one, teeth, grip, machine, rounds_on(alone))
    return (*scrap, *early, *tried, in_rounds(one, teeth, alone))


def _no_mill(work: Work) -> tuple[str, str]:
    return "no-machine-for-it", f"the teeth of '{work.name}' are milled, and no mill is owned"


def _grip(
    turning: Turning, one: Toothing | None = None, alone: TableMandrel | None = None
) -> tuple[Grip, str, str]:
    """On a dividing head, or a rotary table stood on edge, since the mill's spindle is upright."""
    workshop = turning.work.design.workshop
    head = divider(workshop)
    on = f" on the {head}" if head else ""
    level = _ON_EDGE if head and not workshop.entry.holding.dividing_heads else _LEVEL
    level = f"; {level}" if head else ""
    bore = _bore(turning)
    if bore is not None:
        across = bore.diameter or 0.0
        carried = f"footstock of the {head}, its centre in the mandrel's end" if head else ""
        grip = Grip(
            f"mandrel{on}", "divider", f"its bore ⌀{turning.work.mm(across)}", across,
            support=carried if alone is None else "",
        )  # fmt: skip
        return (
            grip,
            "the bore",
            f"the outside to the bore within 0.02 mm{level}{_short(turning.work, alone)}",
        )
    grip = Grip(f"chuck{on}", "divider", "its shank")
    return grip, "the axis", f"the blank within 0.02 mm{level}"


def _alone(turning: Turning, one: Toothing) -> TableMandrel | None:
    """The mandrel that needs nothing to carry its end; None where it is carried, or there is none.

    A lathe's centre stands in a lathe: the divider has a footstock of its own height or none.
    """
    design, bore = turning.work.design, _bore(turning)
    holding = design.workshop.entry.holding
    is_owned = any("footstock" in str(name) for name in holding.fixtures)
    if bore is None or is_owned or not divider(design.workshop):
        return None
    cut = Cut(one.feature, one.depth, one.across)
    found = table_mandrel(design, turning.work.name, bore.diameter or 0.0, cut)
    return None if found is None or found.is_carried else found


def _short(work: Work, alone: TableMandrel | None) -> str:
    """Why nothing need carry the end of the mandrel."""
    if alone is None:
        return ""
    if alone.depths > 1:
        out = work.mm(alone.out)
        return (
            f"; without a footstock: ⌀{work.mm(alone.neck)} for {work.mm(alone.thin)} of the {out} "
            f"that it stands out, the mandrel bends {alone.bends:.1f} times as far as one of "
            f"⌀{work.mm(round(alone.out / SUPPORTED, 1))} all along, which is just stiff enough"
        )
    return (
        f"; without a footstock: the mandrel stands out {alone.stands_out:.1f} times its "
        f"thickness, and up to {SUPPORTED:g} times it does not bend away from the cutter"
    )


def _bore(turning: Turning) -> Located | None:
    able = (
        a for a in turning.axial if a.depth is None and a.kind in {"reamed", "bored", "drilled"}
    )
    return next((a for a in able if len(a.spots) == 1), None)


def _round_act(work: Work, one: Toothing, machine: str) -> Act:
    how = divided(one.count, work.design.workshop.dividers())
    turns = f"; {how}" if how else ""
    if one.kind == "ratchet":
        turns = f", stopping faces looking {RATCHET_HAND}{turns}"
    verb, tool = "cut", one.cutter
    if one.kind == "internal":
        verb = "plane"
    elif not machine:
        verb, tool = "saw and file", "saw, files and a template of one tooth"
    elif one.kind == "ratchet":
        turns += one.backs
    act = _act(work, one, f"{verb} {_words(work, one)}{turns}", machine, tool, ("indexed",))
    return replace(act, spoils=f"losing count of the {_counted(how)}") if machine else act


def _counted(how: str) -> str:
    """What is counted from tooth to tooth, by how they are divided."""
    return "holes" if "hole" in how else "degrees" if "°" in how else "turns"


def _words(work: Work, one: Toothing) -> str:
    deep = f", {work.mm(one.depth)} deep" if one.depth else ""
    return f"{one.count} {one.said}{deep}"


def _act(
    work: Work, one: Toothing, words: str, machine: str, tool: str, tags: tuple[str, ...]
) -> Act:
    act = work.act(
        "cut-teeth", words, machine=machine, feature=one.feature, tool=tool, size=one.across,
        tags=tags,
    )  # fmt: skip
    act = _in_mesh(act, work)
    steel = "steel" in (work.group.name if work.group is not None else "")
    each = _STEEL_MIN if steel else _SOFT_MIN
    return replace(act, run=(each if machine else _FILED_MIN) * one.count, deep=one.depth)


def _in_mesh(act: Act, work: Work) -> Act:
    """Teeth by which a centre distance is set are cut before it is."""
    joints = tuple(
        joint.name
        for joint in work.design.joints.values()
        if joint.made == "set in mesh" and work.name in joint.items
    )
    if not joints:
        return act
    return replace(act, joints=(*act.joints, *joints), tags=act.tags | {"mesh"})


def rack_setup(work: Work, form: FormFact) -> tuple[SetUp | None, tuple[tuple[str, str], ...]]:
    """The teeth of a rack, stepped along by its pitch; what is amiss where no mill is owned."""
    one = next((t for t in toothings(work, form) if t.kind == "rack"), None)
    if one is None:
        return None, ()
    mill = mill_for(work.design.workshop)
    pitch = work.mm(math.pi * one.depth / WHOLE_DEPTH)
    tool = f"{one.cutter}, on an arbor across" if mill else "saw, files and a template of one tooth"
    verb = "cut" if mill else "saw and file"
    words = f"{verb} {_words(work, one)}; {pitch} along from each to the next, always one way"
    act = _act(work, one, words, mill, tool, ())
    vice = vice_for(work.design.workshop) if mill else bench_vice(work.design.workshop)
    grip = Grip(vice or "vice", "vice" if mill else "bench", "its sides, teeth up")
    place = "mill" if mill else "bench"
    acts = (*ground_trial(work, one, act, grip, mill, 1), act)
    setup = SetUp(1, place, mill, grip, "the first end", acts, "", "", holding_min(grip.kind))
    return setup, () if mill else (_no_mill(work),)
