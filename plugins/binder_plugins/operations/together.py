"""Work on parts that are put together to routes of its own: pressed, in line, through both."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from dataclasses import replace
from typing import TYPE_CHECKING

from binder.api import JointFact, TogetherFact
from binder_making.measuring import noted
from binder_plugins.operations.bench import bench_vice
from binder_plugins.operations.distance_tubes import distance_tube
from binder_plugins.operations.facts import Act, Grip, Route, SetUp
from binder_plugins.operations.fits_in_flame import fits_after_flame, kept_bare
from binder_plugins.operations.gauging import measured_with
from binder_plugins.operations.in_flame import HEARTH, placed, prepared
from binder_plugins.operations.in_line import lined
from binder_plugins.operations.in_mesh import meshed
from binder_plugins.operations.in_place import in_place
from binder_plugins.operations.joined import FLAMES, JOINED
from binder_plugins.operations.oil_ways import drilled_through
from binder_plugins.operations.ordered import ordered
from binder_plugins.operations.piloted import pilot_holes
from binder_plugins.operations.pressed import pressed
from binder_plugins.operations.through_both import drilled
from binder_plugins.operations.trimmed import trimmed
from binder_plugins.operations.wet import wetted_together
from binder_plugins.operations.work import Work

if TYPE_CHECKING:
    from binder.api import Design

Works = Mapping[str, Work]
Planner = Callable[[TogetherFact, Works], Iterator[SetUp]]
_PLANNERS: Mapping[str, Planner] = {
    "pressed": pressed,
    "sized in place": pressed,
    "reamed in line": lined,
    "lapped together": lined,
    "drilled together": drilled,
    "drilled in place": in_place,
    "pilot holes drilled": pilot_holes,
    "set in mesh": meshed,
    "cut off flush": trimmed,
}


def plan_together(works: Works, design: Design) -> Iterator[Route]:
    """A route for each task in which parts are worked together; its subject is the task."""
    for fact in design.facts.all(TogetherFact):
        task = design.tasks.get(fact.subject)
        if task is None or task.item not in works:
            continue
        planner = _PLANNERS.get(fact.how)
        found = planner(fact, works) if planner is not None else _joined(fact, works, task.item)
        setups = tuple(replace(one, number=number) for number, one in enumerate(found, 1))
        setups = wetted_together(_in_hand(fact, works, task.item), setups)
        if setups:
            acts = ordered(task.id, setups)
            count = _count(fact, works) if planner in (None, pressed) else 1
            yield Route(task.id, task.title, acts.setups, count, trouble=acts.trouble, at=task.at)


def _in_hand(fact: TogetherFact, works: Works, item: str) -> list[Work]:
    """The parts that a tool of the task goes through; the task's own where no line tells them."""
    names = dict.fromkeys(place.partition(".")[0] for line in fact.lines for place in line)
    return [works[name] for name in names if name in works] or [works[item]]


def _count(fact: TogetherFact, works: Works) -> int:
    """How often it is done for one model: once for each of the halves of which there are fewer."""
    work = next(iter(works.values()))
    items = work.design.joints[fact.joints[0]].items
    return min((works[name].count for name in items if name in works), default=1)


def _joined(fact: TogetherFact, works: Works, item: str) -> Iterator[SetUp]:
    """A bond or a flame; after a flame what others are made to is measured again."""
    work = works[item]
    said = work.design.facts.about(JointFact, fact.joints[0])
    act = JOINED.get(fact.how)
    if said is None or act is None:
        return
    again = _measured_cold(fact.joints[0], works) if said.is_hot else ()
    if act in FLAMES:
        set_up = placed(work.design.joints[fact.joints[0]], works, work)
        set_up = replace(set_up, what=f"{set_up.what}{kept_bare(fact.joints[0], works)}")
        clean, rest = prepared(said.step, fact.joints[0], work)
        flame = replace(work.act(act, rest), joints=fact.joints)
        acts = (*([clean] if clean is not None else []), set_up, flame, *again)
        yield SetUp(1, "bench", "", HEARTH, "", acts, until="the alloy has set")
        return
    vice = bench_vice(work.design.workshop)
    grip = Grip(vice or "by hand", "bench", "the larger half")
    inner = works.get(work.design.joints[fact.joints[0]].items[0], work)
    through = drilled_through(inner, fact.joints[0])
    fixed = replace(work.act(act, said.step), joints=fact.joints)
    tube = distance_tube(fact.joints[0], work.design)
    fixed = replace(fixed, tool=", ".join(filter(None, (fixed.tool, tube))))
    yield SetUp(1, "bench", "", grip, "", (fixed, *through, *again))


def _measured_cold(joint: str, works: Works) -> Iterator[Act]:
    """The sizes of its parts that another part is made to, once they are cold."""
    items = [works[name] for name in next(iter(works.values())).design.joints[joint].items
             if name in works]  # fmt: skip
    for work in items:
        for place, halves in work.halves.items():
            told = [one for one in halves if one.is_master and one.joint != joint]
            if told:
                tool = measured_with(work, told[0])
                it = f"the {place.replace('_', ' ')} of the {work.item.title} again"
                words = f"cold and clean, {noted(it, tool)}"
                yield work.act("measure", words, feature=place, tool=tool)
    yield from fits_after_flame(joint, works)
