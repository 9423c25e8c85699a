"""The tools with which joints are closed at assembly: what no route of a part or a task names."""

from __future__ import annotations

import re
from dataclasses import dataclass
from typing import TYPE_CHECKING

from binder.api import CordFact, HardwareFact, JointFact, TaskKind, TaskTime, TogetherFact
from binder_plugins.operations.aids.sizes import Place
from binder_plugins.operations.aids.wiping import wiped
from binder_plugins.operations.distance_tubes import distance_tube
from binder_plugins.operations.facts import Act, Grip, Route, SetUp
from binder_plugins.operations.hole_tools import drills_told, hand_drilled
from binder_plugins.operations.watching import lines_drawn
from binder_solid.piloting import piloted

if TYPE_CHECKING:
    from collections.abc import Iterator

    from binder.api import Design, Joint, Task

# What closes a joint of a kind, in the words of acts; common practice, no source.
_DRIVER = "screwdriver or key"
_BY_KIND = {
    "screwed": _DRIVER,
    "buttoned": _DRIVER,
    "clamped": _DRIVER,
    "pinned": "hammer, pin punch",
    "riveted": "hammer, a flat dolly",
    "clipped": "circlip pliers",
}
# What is bought is measured before anything is made to it: outsides and bores alike.
_MEASURED_WITH = "caliper"
_TASKS = frozenset({TaskKind.MEASURE, TaskKind.ASSEMBLE, TaskKind.STRIP, TaskKind.TEST})
# What a spanner turns, in the words of the hardware, and the thread that these begin with.
_TURNED = re.compile(r"\b(nut|hexagon head)(?!s? made)")
_THREAD = re.compile(r"M[\d.]+|[\d/]+ (?:BA|BSW|BSF|UNC|UNF|ME)")
_PUSHED_ON = "e-clip"  # Its open side is pushed over the groove: no points go into it.


@dataclass(frozen=True, slots=True)
class TaskPlace(Place):
    """A task of the build order that has no set-ups: it is its own piece of work."""

    @property
    def piece(self) -> str:
        """The id of the piece of work."""
        return self.route.subject

    @property
    def title(self) -> str:
        """`assemble the hook block`."""
        return self.route.title


def at_assembly(design: Design) -> Iterator[TaskPlace]:
    """Places for what is measured, put together, taken apart, tried: their acts name the tools."""
    for task in design.tasks.values():
        time = design.facts.about(TaskTime, task.id)
        if time is None or task.kind not in _TASKS:
            continue
        yield _told(task, design)
        if lines := lines_drawn(task, design):
            yield _at(task, Act(task.id, "assemble", lines, tool=_DRIVER), design)
        for line in time.lines if task.kind is not TaskKind.TEST else ():
            joint = design.joints.get(line.what)
            if joint is not None and task.kind is TaskKind.STRIP:
                yield _at(task, Act("", "strip", "", tool=_tool(joint, design)), design)
            elif joint is not None:
                yield _place(task, joint, line.said, design)


def wiped_in(design: Design) -> Iterator[TaskPlace]:
    """Places for what each task is brushed and wiped with."""
    for task in design.tasks.values():
        if tool := wiped(task, design):
            yield _at(task, Act(task.id, "assemble", "", tool=tool), design)


def _told(task: Task, design: Design) -> TaskPlace:
    """What the words of a task and the maker's own steps speak of, such as what a test needs."""
    whole = design.assemblies.get(task.item)
    is_first = task.kind is TaskKind.ASSEMBLE and not task.id.startswith("close ")
    steps = whole.steps if whole is not None and is_first else ()
    tool = _MEASURED_WITH if task.kind is TaskKind.MEASURE else ""
    told = Act(task.id, "assemble", "; ".join((task.detail, *steps)), tool=tool)
    return _at(task, told, design)


def _at(task: Task, act: Act, design: Design) -> TaskPlace:
    setup = SetUp(1, "bench", "", Grip("", "bench", ""), "", (act,))
    return TaskPlace(Route(task.id, task.title, (setup,)), setup, act, design)


def _place(task: Task, joint: Joint, told: str, design: Design) -> TaskPlace:
    """Where a joint is closed: by the words of its step, or by its own where it goes back."""
    said = design.facts.about(JointFact, joint.name)
    own = said.step if said is not None else ""
    # What was put together before goes back into its own holes.
    first = "" if task.id.startswith("close ") else _drilled_now(joint, design)
    step = f"{first}{told or own}"
    step += f"; {joint.entry.note}" if joint.entry.note else ""
    drills = hand_drilled(step) if drills_told(step) else ""
    named = (_tool(joint, design), drills, distance_tube(joint.name, design))
    tools = ", ".join(filter(None, named))
    act = Act(
        f"{task.id} {joint.name}",
        "assemble",
        step,
        tool=tools,
        joints=(joint.name,),
    )
    return _at(task, act, design)


def cut_for(act: Act, design: Design) -> Iterator[str]:
    """The cord that a step cuts to its length, as it was bought."""
    for fact in design.facts.all(CordFact):
        joint = design.joints.get(fact.subject)
        cord = design.item(joint.ends[-1].item) if joint is not None else None
        if cord is not None and fact.cut and f"{cord.title}, cut {fact.cut} long" in act.what:
            yield cord.title


def _drilled_now(joint: Joint, design: Design) -> str:
    """What is drilled as the joint is closed, where no task of its own did it before."""
    before = design.facts.all(TogetherFact)
    is_done = any(joint.name in (*one.joints, *one.held) for one in before)
    return "" if is_done else piloted(joint, design)


def _tool(joint: Joint, design: Design) -> str:
    """What goes on its heads, pins and nuts."""
    held = [one.what for one in design.facts.all(HardwareFact) if one.joint == joint.name]
    item = design.item(joint.held_by) if joint.held_by else None
    held += [item.title] if item is not None else []
    if joint.kind == "clipped" and any(_PUSHED_ON in one.lower() for one in held):
        return "pliers"
    return ", ".join(dict.fromkeys(filter(None, (_BY_KIND.get(joint.kind, ""), *_spanners(held)))))


def _spanners(held: list[str]) -> Iterator[str]:
    """A spanner for each size of nut and of hexagon head."""
    for what in held:
        size, kind = _THREAD.match(what), _TURNED.search(what)
        if kind is not None:
            yield f"spanner for {f'{size[0]} ' if size is not None else 'the '}{kind[1]}s"
