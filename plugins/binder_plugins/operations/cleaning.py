"""The end of a route: burrs, heat, polish, and the sizes that others are made to."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from binder.api import FitFact, HalfFact, JointFact, ThreadFact
from binder_making.measuring import noted
from binder_plugins.operations.facts import Act, SetUp
from binder_plugins.operations.floats import lengths_measured
from binder_plugins.operations.gauging import read_with
from binder_plugins.operations.plain import at_bench
from binder_plugins.operations.row_walls import rows_measured
from binder_plugins.operations.treating import brightened, hardened
from binder_plugins.operations.tried_early import is_written
from binder_solid.laid_on import said_side
from binder_solid.set_there import turned_round

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

    from binder_plugins.operations.work import Work


def cleaned(work: Work, setups: Sequence[SetUp]) -> Iterator[SetUp]:
    """Burrs off, heat and polish, and, where another part is made to it, the size written down."""
    acts = [_edges(work)]
    heat = list(hardened(work))
    if heat:
        yield at_bench(work, "by hand", "", acts)
        yield from heat
        acts = []
    acts += brightened(work)
    acts += _marks(work)
    acts += _gates(work, setups, heat=bool(heat))
    acts += [*lengths_measured(work), *rows_measured(work)]
    yield at_bench(work, "by hand", "", acts)


def _marks(work: Work) -> Iterator[Act]:
    """The side of a flat part that the eye does not know again, where it goes one way for good."""
    for joint in work.design.joints.values():
        fact = work.design.facts.about(JointFact, joint.name)
        if fact is None or not fact.is_lasting or work.name not in joint.items:
            continue
        found = turned_round(joint, work.design)
        if found is not None and found.is_flat and found.item == work.name:
            words = (
                f"pop the {said_side(found.side)} lightly, to know it by: it goes {found.towards}"
            )
            yield replace(work.act("mark", words), joints=(joint.name,))


def _edges(work: Work) -> Act:
    if work.group is not None and work.group.name == "wood":
        said = "rub it smooth with the grain, take the sharp edges off"
        return work.act("deburr", said, tool="abrasive paper on a block", amount=1.0)
    return work.act("deburr", "take off all burrs, break sharp edges 0.2 mm", amount=1.0)


def _gates(work: Work, setups: Sequence[SetUp], *, heat: bool) -> Iterator[Act]:
    """The sizes to which others are made, but for those tried already that no heat moves."""
    seen: set[str] = set()
    made = {act.feature: act for setup in setups for act in setup.acts if act.lower is not None}
    for place, halves in work.halves.items():
        masters = [one for one in halves if one.is_master and _is_made_to(one, work)]
        master = next(iter(masters), None)
        if master is None or place in seen or work.waits(place) is not None:
            continue
        seen.add(place)
        if not heat and is_written(place, setups):
            continue
        mine = tuple(one.joint for one in masters)
        yield replace(_gate(work, master, made.get(place)), joints=mine)


def _is_made_to(half: HalfFact, work: Work) -> bool:
    """Whether the other half is made to it: two that have their own sizes wait for no figure."""
    fit = work.design.facts.about(FitFact, half.joint)
    return fit is None or bool(fit.suit)


def _gate(work: Work, master: HalfFact, made: Act | None) -> Act:
    place = master.place
    said = place.replace("_", " ")
    thread = work.design.facts.about(ThreadFact, f"{work.name}.{place}")
    if thread is not None and thread.is_internal:
        an = "an" if thread.designation.startswith("M") else "a"
        words = (
            f"try {an} {thread.designation} screw as bought in the {said} by hand, as far as it "
            "goes: its mate is cut to run in it, and no size is read here"
        )
        tool = f"{thread.designation} screw or thread gauge"
        return work.act("gauge", words, feature=place, tool=tool, tags=("master",))
    tool = (made.measure if made is not None else "") or read_with(work, master)
    words = noted(f"the {said}", tool)
    return work.act("measure", words, feature=place, tool=tool, tags=("master",))
