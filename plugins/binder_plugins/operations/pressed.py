"""A bush that is pressed in: the press, and where it closes in its bore to size afterwards."""

from __future__ import annotations

import math
from collections.abc import Iterator, Mapping
from dataclasses import replace
from typing import TYPE_CHECKING

from binder.api import JointFact
from binder_making.measuring import noted
from binder_plugins.operations.bench import bench_vice, flat_holder, lathe_for
from binder_plugins.operations.facts import Act, Grip, SetUp
from binder_plugins.operations.hole_kinds import Where
from binder_plugins.operations.oil_ways import drilled_through
from binder_plugins.operations.out_of_balance import most_rpm, off_middle
from binder_plugins.operations.rows import Hole, holes_of, running_half
from binder_plugins.operations.sized import finished
from binder_plugins.operations.words import holding_min

if TYPE_CHECKING:
    from binder.api import Design, TogetherFact
    from binder_plugins.operations.work import Work

_HOT = frozenset({"silver_soldered", "soft_soldered", "brazed", "welded"})
# Across the face that the housing stands on; common practice, no source.
_SQUARE_MM = 0.02
_SPOILS = "a bush that starts askew scores its seat"


def pressed(fact: TogetherFact, works: Mapping[str, Work]) -> Iterator[SetUp]:
    """Pressed in at the bench vice, then reamed there or bored in the lathe, and measured."""
    hole = next((one for line in fact.lines for one in holes_of(line, works)), None)
    if hole is None:
        return
    acts = [_press(fact, hole), *drilled_through(hole.work, fact.joints[0])]
    with hole.work.no_faster(_most(fact, hole, works)):
        sizing = _sizing(fact, hole) if fact.left else []
    bench = Grip(_jaws(hole.work), "bench", "the housing, the bush against a flat pad")
    if hole.one.kind != "bored" or not sizing:
        yield SetUp(1, "bench", "", bench, "the housing's face, square", (*acts, *sizing))
        return
    yield SetUp(1, "bench", "", bench, "the housing's face, square", tuple(acts))
    across = _swung(fact, hole, works)
    workshop = hole.work.design.workshop
    holder, kind = flat_holder(workshop, across)
    yield SetUp(
        2,
        "lathe",
        lathe_for(workshop, across),
        Grip(holder or "four-jaw chuck, not owned", kind or "four-jaw", "the housing", across),
        "the bore of the bush itself, clocked true, and the face that the housing stands on",
        tuple(sizing),
        "the bore to the outside of the bush, both of one grip, so what is clocked is both; the "
        f"face square within {_SQUARE_MM:g} mm, so that the shaft stands upright",
        "the shaft goes in",
        holding_min(kind or "four-jaw"),
    )


def _jaws(work: Work) -> str:
    vice = bench_vice(work.design.workshop)
    return f"{vice}, soft pads" if vice else "a drawbolt and washers"


def _press(fact: TogetherFact, hole: Hole) -> Act:
    work = hole.work
    said = work.design.facts.about(JointFact, fact.joints[0])
    words = said.step if said is not None else "press it in, square"
    act = work.act("press", words, tags=("bush",), spoils=_SPOILS)
    return replace(act, joints=fact.joints)


def _sizing(fact: TogetherFact, hole: Hole) -> list[Act]:
    """The last cut in the bore, now that it has closed, and its size in the box."""
    work, one = hole.work, hole.one
    across = one.diameter or 0.0
    is_bored = one.kind == "bored"
    turned = max(work.form.size[1:]) if work.form is not None else across
    machine = lathe_for(work.design.workshop, turned) if is_bored else ""
    where = Where(
        machine,
        hole.deep,
        tags=("bush", "later"),
        is_lathe=is_bored,
        is_started=True,
        is_together=True,
    )
    cuts = [
        replace(act, joints=fact.joints, measure=act.measure or "its shaft, which goes in by hand")
        for act in finished(work, one, where, across - 0.3)
    ]
    half = running_half(fact, hole)
    if half is None or not half.is_master:
        return cuts
    tool = cuts[-1].measure if cuts else ""
    measure = work.act(
        "measure",
        noted(f"the {hole.title}", tool),
        feature=one.name,
        tool=tool,
        tags=("master",),
    )
    return [*cuts, replace(measure, joints=(half.joint,))]


def _swung(fact: TogetherFact, hole: Hole, works: Mapping[str, Work]) -> float:
    """The widest of the housing and of what a flame has fixed to it, in mm."""
    design = hole.work.design
    housing = [one for one in design.joints[fact.joints[0]].items if one != hole.work.name]
    fixed = [item for item in _fixed(housing, design) if item != hole.work.name]
    forms = (works[name].form for name in (*housing, *fixed) if name in works)
    return max((max(form.size[:2]) for form in forms if form is not None), default=0.0)


def _most(fact: TogetherFact, hole: Hole, works: Mapping[str, Work]) -> float:
    """What the spindle turns at the most with a housing whose seat is beside its middle."""
    for end in hole.work.design.joints[fact.joints[0]].ends:
        form = works[end.item].form if end.item in works else None
        seats = form.located if form is not None and end.item != hole.work.name else ()
        for one in seats:
            if form is not None and one.name == end.place and not form.stretches:
                return most_rpm(form.size, off_middle(form.size, one))
    return math.inf


def _fixed(items: list[str], design: Design) -> Iterator[str]:
    for joint in design.joints.values():
        if joint.kind in _HOT and set(items) & set(joint.items):
            yield from joint.items
