"""The tools with which joints are closed at assembly: what no route of a part or a task names."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from binder.api import HardwareFact, JointFact, TaskKind, TaskTime, TogetherFact
from binder_plugins.operations.aids.sizes import Place
from binder_plugins.operations.distance_tubes import distance_tube
from binder_plugins.operations.facts import Act, Grip, Route, SetUp
from binder_plugins.operations.hole_tools import drills_told, hand_drilled
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
    """A place for each joint that a task of assembly closes; its act names the tools."""
    for task in design.tasks.values():
        time = design.facts.about(TaskTime, task.id)
        if time is None or task.kind is not TaskKind.ASSEMBLE:
            continue
        for line in time.lines:
            joint = design.joints.get(line.what)
            if joint is not None:
                yield _place(task, joint, design)


def _place(task: Task, joint: Joint, design: Design) -> TaskPlace:
    said = design.facts.about(JointFact, joint.name)
    # What was put together before goes back into its own holes.
    first = "" if task.id.startswith("close ") else _drilled_now(joint, design)
    step = f"{first}{said.step if said is not None else ''}"
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
    setup = SetUp(1, "bench", "", Grip("", "bench", ""), "", (act,))
    return TaskPlace(Route(task.id, task.title, (setup,)), setup, act, design)


def _drilled_now(joint: Joint, design: Design) -> str:
    """What is drilled as the joint is closed, where no task of its own did it before."""
    before = design.facts.all(TogetherFact)
    is_done = any(joint.name in (*one.joints, *one.held) for one in before)
    return "" if is_done else piloted(joint, design)


def _tool(joint: Joint, design: Design) -> str:
    held = [one.what for one in design.facts.all(HardwareFact) if one.joint == joint.name]
    if joint.kind == "clipped" and any(_PUSHED_ON in one.lower() for one in held):
        return "pliers"
    return _BY_KIND.get(joint.kind, "")
