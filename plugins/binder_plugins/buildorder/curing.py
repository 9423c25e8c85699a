"""An assembly in which something cures, to what is done in each of its evenings."""

from __future__ import annotations

import itertools
from collections.abc import Iterator

from binder.api import Assembly, Before, Design, Joint, JointFact, Task, TaskKind, TogetherFact
from binder_making.times import joining
from binder_plugins.buildorder.closing import done_before, inside_of, joints_closed_in
from binder_solid.filled import adhesive

_HARD = "what is bonded in it has cured before more is put on"
_IN = "it goes in here"


def parts_of(one: Assembly, design: Design) -> list[list[Joint]]:
    """The joints closed in an assembly, in the order of the hand, evening by evening.

    Where something later shares a part with a joint that cures, and does not cure itself, it
    would load the joint, oil it or shut it in: all that follows waits. What cures as well goes
    up with it at one go.
    """
    joints = joints_closed_in(one, design)
    parts: list[list[Joint]] = [[]]
    wet: set[str] = set()
    for number, joint in enumerate(joints):
        dries = not _cures(joint, design) and done_before(joint, design) is None
        if wet and dries and any(_loads(later, wet, design) for later in joints[number:]):
            parts.append([])
            wet = set()
        parts[-1].append(joint)
        wet |= set(joint.items) if _cures(joint, design) else set()
    return parts


def _cures(joint: Joint, design: Design) -> bool:
    """Whether a joint cures in the assembly that closes it, and not in a task of its own."""
    return cure_h(joint) > 0 and done_before(joint, design) is None


def _loads(joint: Joint, wet: set[str], design: Design) -> bool:
    is_done = done_before(joint, design) is not None
    return bool(wet & set(joint.items)) and not is_done and not cure_h(joint)


def cure_h(joint: Joint) -> float:
    """The hours that a joint is not to be touched for."""
    return joining(joint.kind).wait_h


def left_alone(part: list[Joint], design: Design) -> str:
    """What is said behind the last step of an evening after which something cures."""
    wet = [one for one in part if _cures(one, design)]
    what = " and ".join(dict.fromkeys(adhesive(one, design) or one.name for one in wet))
    hours = max(cure_h(one) for one in wet)
    return (
        f"stop here for this evening: leave it alone for {hours:.0f} h, until the {what} has "
        "cured; what comes after would load the joint, or oil it"
    )


def part_ids(one: Assembly, count: int) -> list[str]:
    """The ids of the tasks of an assembly of so many parts; the last is that of the whole."""
    first = [f"begin {one.name}"] if count > 1 else []
    more = [f"go_on {one.name} {number}" for number in range(2, count)]
    return [*first, *more, f"assemble {one.name}"]


def joints_of(task: Task, design: Design) -> list[Joint]:
    """The joints that one of the tasks of an assembly closes, () for any other task."""
    one = design.assemblies[task.item]
    parts = parts_of(one, design)
    ids = part_ids(one, len(parts))
    return parts[ids.index(task.id)] if task.id in ids else []


def begun(one: Assembly, design: Design) -> Iterator[Task]:
    """The tasks of an assembly before the last."""
    parts = parts_of(one, design)
    for number, name in enumerate(part_ids(one, len(parts))[:-1]):
        verb = "go on with" if number else "begin"
        shown = [
            joint.name
            for joint in _here(parts[number], design)
            if design.facts.about(JointFact, joint.name) is not None
        ]
        detail = f"{', '.join(shown)}; then it is left to cure"
        yield Task(name, f"{verb} the {one.title}", TaskKind.ASSEMBLE, one.name, detail, one.at)


def begun_befores(one: Assembly, ready: dict[str, str], design: Design) -> Iterator[Before]:
    """What the parts of an assembly wait for; `ready` is the last task of each of its members."""
    parts = parts_of(one, design)
    ids = part_ids(one, len(parts))
    for earlier, later in itertools.pairwise(ids):
        yield Before(earlier, later, _HARD, is_must=True, at=one.at)
    for name, part in zip(ids[:-1], parts, strict=False):
        for member, task in ready.items():
            if task and _inside(member, design) & _items(part, design):
                yield Before(task, name, _IN, is_must=True, at=one.at)


def spread(befores: list[Before], design: Design) -> Iterator[Before]:
    """What an assembly waits for, for each of its parts that has to do with it."""
    for one in design.assemblies.values():
        first = f"begin {one.name}"
        if first not in design.tasks:
            continue
        parts = parts_of(one, design)
        for before in [before for before in befores if before.later == f"assemble {one.name}"]:
            worked = _worked(before.earlier, design)
            for name, part in zip(part_ids(one, len(parts))[:-1], parts, strict=False):
                if worked & _items(part, design) and before.earlier != name:
                    yield Before(before.earlier, name, before.reason, before.is_must, before.at)


def _worked(task: str, design: Design) -> frozenset[str]:
    """The items of a task in which parts are worked together; none of another."""
    fact = design.facts.about(TogetherFact, task)
    if fact is None:
        return frozenset()
    joints = (design.joints[name].items for name in fact.joints if name in design.joints)
    return frozenset(fact.items) | {item for items in joints for item in items}


def _here(part: list[Joint], design: Design) -> list[Joint]:
    return [joint for joint in part if done_before(joint, design) is None]


def _items(part: list[Joint], design: Design) -> set[str]:
    return {item for joint in _here(part, design) for item in joint.items}


def _inside(member: str, design: Design) -> frozenset[str]:
    inner = design.assemblies.get(member)
    return frozenset({member}) | (inside_of(inner, design) if inner is not None else frozenset())
