"""Parts, fabrications and assemblies to tasks, and the order that their making implies."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import (
    Assembly,
    Before,
    Bought,
    Contribution,
    Design,
    Diagnostic,
    Fabrication,
    Joint,
    JointFact,
    Part,
    Task,
    TaskKind,
)
from binder_plugins.buildorder import codes
from binder_plugins.buildorder.curing import begun, begun_befores
from binder_plugins.buildorder.facts import TasksKnown
from binder_plugins.buildorder.locking import lock_befores, lock_tasks
from binder_plugins.buildorder.on_the_coat import stick_befores, stick_tasks
from binder_plugins.buildorder.running_in import full_load, run_in_befores, run_in_task
from binder_plugins.buildorder.stripping import finish_befores, finish_tasks


def plan_tasks(design: Design) -> Contribution:
    """A task for each thing to measure, make, join, assemble, test, finish and lock."""
    tasks = [
        *_tasks(design),
        *finish_tasks(design),
        *stick_tasks(design),
        *lock_tasks(design),
    ]
    return Contribution(
        facts=[TasksKnown("", len(tasks))],
        tasks=tasks,
        befores=[
            *_befores(design),
            *finish_befores(design),
            *stick_befores(design),
            *lock_befores(design),
        ],
        findings=list(_unmeasured(design)),
    )


def _tasks(design: Design) -> Iterator[Task]:
    for item in design.bought.values():
        if item.measured:
            yield _measure(item)
    for part in design.parts.values():
        yield _make(part)
    for fabrication in design.fabrications.values():
        yield from _join(fabrication)
    for assembly in design.assemblies.values():
        yield from begun(assembly, design)
        yield from _assemble(assembly, design)
        yield from run_in_task(assembly, design)


def _measure(item: Bought) -> Task:
    sizes = ", ".join(item.measured)
    title = f"measure the {item.title}"
    return Task(f"measure {item.name}", title, TaskKind.MEASURE, item.name, sizes, item.at)


def _make(part: Part) -> Task:
    title = f"make the {part.title}"
    detail = "dummy: for looks" if part.is_dummy else ""
    return Task(f"make {part.name}", title, TaskKind.MAKE, part.name, detail, part.at)


def _join(one: Fabrication) -> Iterator[Task]:
    how = one.joined.replace("_", " ")
    yield Task(f"join {one.name}", f"join the {one.title}", TaskKind.JOIN, one.name, how, one.at)
    yield Task(
        f"make {one.name}",
        f"machine the {one.title} as one",
        TaskKind.MAKE,
        one.name,
        "",
        one.at,
    )


def _assemble(one: Assembly, design: Design) -> Iterator[Task]:
    yield Task(
        f"assemble {one.name}", f"assemble the {one.title}", TaskKind.ASSEMBLE, one.name, "", one.at
    )
    if one.test:
        test = f"{full_load(one, design)}{one.test}"
        yield Task(
            f"test {one.name}", f"test the {one.title}", TaskKind.TEST, one.name, test, one.at
        )


def last_task(name: str, design: Design) -> str:
    """The task after which an item is ready, '' for a bought one that is not measured."""
    assembly = design.assemblies.get(name)
    if assembly is not None:
        return f"test {name}" if assembly.test else f"assemble {name}"
    if name in design.parts or name in design.fabrications:
        return f"make {name}"
    bought = design.bought.get(name)
    return f"measure {name}" if bought is not None and bought.measured else ""


def _befores(design: Design) -> Iterator[Before]:
    for one in design.fabrications.values():
        for piece in one.pieces:
            yield from _ready(piece.item, f"join {one.name}", "a piece of it", one, design)
        reason = "joining moves sizes, so it is machined afterwards"
        yield Before(f"join {one.name}", f"make {one.name}", reason, is_must=True, at=one.at)
    for assembly in design.assemblies.values():
        ready = {member.item: last_task(member.item, design) for member in assembly.members}
        yield from begun_befores(assembly, ready, design)
        for member in assembly.members:
            task = f"assemble {assembly.name}"
            yield from _ready(member.item, task, "it goes in here", assembly, design)
        if assembly.test:
            reason = "it is tested when it is together"
            name = assembly.name
            yield Before(f"assemble {name}", f"test {name}", reason, is_must=True, at=assembly.at)
            yield from run_in_befores(assembly, design)


def _ready(
    item: str, task: str, reason: str, owner: Fabrication | Assembly, design: Design
) -> Iterator[Before]:
    earlier = last_task(item, design)
    if earlier:
        yield Before(earlier, task, reason, is_must=True, at=owner.at)


def _unmeasured(design: Design) -> Iterator[Diagnostic]:
    for joint in design.joints.values():
        fact = design.facts.about(JointFact, joint.name)
        if fact is None or not fact.is_fitted:
            continue
        for name in joint.items:
            item = design.bought.get(name)
            if item is not None and not item.measured and _fits_to(joint, name, design):
                yield codes.WAITS_FOR_UNMEASURED.at(
                    joint.at,
                    f"'{joint.name}' is made to fit '{name}', of which nothing is measured",
                    help=f"add `measure_first: [...]` to '{name}'",
                )


def _fits_to(joint: Joint, name: str, design: Design) -> bool:
    return any(other in design.parts for other in joint.items if other != name)
