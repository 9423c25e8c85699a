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
from binder_solid.placed import PlacedFact
from binder_solid.space import dot, minus, placed
from binder_solid.stands_at import standing
from binder_solid.way_round import entering

if TYPE_CHECKING:
    from binder.api import Design, TogetherFact
    from binder_plugins.operations.work import Work
    from binder_solid.stands_at import Standing

_HOT = frozenset({"silver_soldered", "soft_soldered", "brazed", "welded"})
# Across the face that the housing stands on; common practice, no source.
_SQUARE_MM = 0.02
_STANDS = "the face that the housing stands on"
_SQUARE = f"the face square within {_SQUARE_MM:g} mm"
_BY_THICKNESS = (
    "the plate's thickness measured at its corners first, and the face that is seen clocked to "
    "what they differ: the face that it stands on, which looks at the chuck, is then square "
    f"within {_SQUARE_MM:g} mm"
)
_BEDDED = f"the face square within {_SQUARE_MM:g} mm, as it lies"
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
    on, face, how = _held_on(fact, hole, works, kind or "four-jaw")
    yield SetUp(
        2,
        "lathe",
        lathe_for(workshop, across),
        Grip(
            holder or "four-jaw chuck, not owned",
            kind or "four-jaw",
            on,
            across,
        ),
        f"the bore of the bush itself, clocked true, and {face}",
        tuple(sizing),
        "the bore to the outside of the bush, both of one grip, so what is clocked is both; "
        f"{how}, so that the shaft stands upright",
        "the shaft goes in",
        holding_min(kind or "four-jaw"),
    )


def _held_on(
    fact: TogetherFact, hole: Hole, works: Mapping[str, Work], kind: str
) -> tuple[str, str, str]:
    """What the chuck holds, the face that is set square, and how that is told.

    A wider plate fixed on the housing is held, where the bush opens away from it: jaws that reach
    over a plate to the housing behind it close on nothing. What the plate stands on then looks at
    the chuck, where no indicator comes: the face beside the housing is clocked for it.
    """
    design, joint = hole.work.design, hole.work.design.joints[fact.joints[0]]
    for housing in (one for one in joint.items if one != hole.work.name):
        for found in _plates_on(housing, works, design):
            item = design.item(found.other)
            title = item.title if item is not None else found.other
            if _opens_at(housing, hole, design) == found.end:
                return f"the housing, by the end away from the {title}", _STANDS, _SQUARE
            if kind == "four-jaw":
                on = f"the edges of the {title}, which is fixed on the housing"
                return on, f"the face of the {title} round the housing", _BY_THICKNESS
            on = f"the {title}, which is fixed on the housing, clamped flat on it"
            return on, f"the {title} flat on what holds it, no chip between", _BEDDED
    return "the housing", _STANDS, _SQUARE


def _plates_on(housing: str, works: Mapping[str, Work], design: Design) -> Iterator[Standing]:
    """The flat parts that a flame has fixed round the housing, wider than that is."""
    own = works[housing].form if housing in works else None
    for one in design.joints.values():
        found = standing(one, design) if one.kind in _HOT and housing in one.items else None
        if found is None or found.rod != housing or found.other not in works or own is None:
            continue
        form = works[found.other].form
        if form is not None and not form.stretches and min(form.size[:2]) > max(own.size[1:]):
            yield found


def _opens_at(housing: str, hole: Hole, design: Design) -> str:
    """The end of the housing at which a blind bore opens, left or right; '' for one right through.

    '' also where it is not known how the two stand.
    """
    if hole.one.depth is None:
        return ""
    bush, own = (
        next((one for one in design.facts.all(PlacedFact) if one.item == name), None)
        for name in (hole.work.name, housing)
    )
    if bush is None or own is None:
        return ""
    out = minus(placed(hole.one.frame.z, bush.frame), bush.frame.origin)
    return "right" if dot(out, own.frame.x) > 0 else "left"


def _jaws(work: Work) -> str:
    vice = bench_vice(work.design.workshop)
    return f"{vice}, soft pads" if vice else "a drawbolt and washers"


def _press(fact: TogetherFact, hole: Hole) -> Act:
    work = hole.work
    said = work.design.facts.about(JointFact, fact.joints[0])
    words = said.step if said is not None else "press it in, square"
    way = entering(work.design.joints[fact.joints[0]], work.name, work.design)
    words = f"{way}: {words}" if way else words
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
