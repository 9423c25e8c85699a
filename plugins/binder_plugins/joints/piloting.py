"""Pilot holes in wood to a task of the bare parts, before others stand in the drill's way."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import Before, Design, HalfFact, Joint, Task, TaskKind, TogetherFact
from binder_plugins.joints.together import Drilling
from binder_solid.glued_in import FILLED, fills

PILOTED = "pilot holes drilled"
_PILOT = "pilot hole "
_BEFORE = "the chuck of a drill has room over its holes only while nothing stands beside them"
_THERE = "one is held on the other to be spotted through"


def pilotings(joints: list[Joint], design: Design) -> Iterator[Drilling]:
    """A task for each wood-screw joint of two parts of which the upper one carries others.

    One that holds a bearing up while it is reamed in line gets its holes there.
    """
    held = {name for one in design.facts.all(TogetherFact) for name in one.held}
    wood = {
        one.joint: one.item for one in design.facts.all(HalfFact) if one.what.startswith(_PILOT)
    }
    for joint in joints:
        below = wood.get(joint.name)
        above = next((name for name in joint.items if name != below), None)
        if below is None or above is None or joint.name in held:
            continue
        if below in design.parts and above in design.parts and _carries(above, joint, joints):
            yield _drilling(joint, above, below, design)


def _carries(item: str, own: Joint, joints: list[Joint]) -> bool:
    return any(item in one.items for one in joints if one.name != own.name)


def _drilling(joint: Joint, above: str, below: str, design: Design) -> Drilling:
    upper, lower = design.parts[above].title, design.parts[below].title
    task = Task(
        f"pilot {joint.name}",
        f"drill the {lower} for the {upper}",
        TaskKind.JOIN,
        below,
        f"the bare {upper} held in its place on the {lower}, spotted through and drilled",
        joint.at,
    )
    fact = TogetherFact(
        task.id,
        PILOTED,
        (joint.name,),
        left=tuple(str(end) for end in joint.ends if end.item == below),
        up=f"hold the bare {upper} in its place on the {lower} and clamp it",
        items=(above, below),
    )
    befores = [Before(f"make {name}", task.id, _THERE, at=joint.at) for name in (above, below)]
    befores += [
        Before(f"assemble {name}", task.id, FILLED, at=joint.at)
        if fills(assembly, design)
        else Before(task.id, f"assemble {name}", _BEFORE, at=joint.at)
        for name, assembly in design.assemblies.items()
        if any(member.item in (above, below) for member in assembly.members)
    ]
    return Drilling(task, fact, tuple(befores))
