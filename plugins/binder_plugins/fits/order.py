"""Press fits, bonds and flames to the work that stands between making and putting together."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from itertools import combinations

from binder.api import Before, Design, Joint, Task, TaskKind
from binder_plugins.fits.facts import MadeFit
from binder_plugins.fits.families import BONDED, HOT, MOVING
from binder_plugins.fits.figures import with_unit
from binder_plugins.fits.lining import Lining, hot_on, lining_befores, lining_task, linings
from binder_plugins.fits.naming import is_made, title_of
from binder_plugins.fits.pressing import Pressing

_COOL_FIRST = "compound lets go near a flame, so solder first"
_HEAT_FIRST = "heat loosens a press fit and moves a bore, so solder first"


def ordered_work(
    fits: list[MadeFit], pressed: list[Pressing], design: Design
) -> tuple[list[Task], list[Before]]:
    """The tasks that joining asks for, and what comes before what."""
    tasks: dict[str, Task] = {}
    befores: list[Before] = []
    lined = list(linings(fits, design))
    for pressing in pressed:
        for shaft in shafts_in(pressing, fits):
            is_lined = any(one.fit is shaft for one in lined)
            task = _sizing(pressing, shaft, design, is_lined=is_lined)
            tasks[task.id] = task
            befores += _around(task, pressing, shaft, design)
            hot = hot_on(pressing.fit.joint.items, shaft.shaft.end.item, design)
            befores += _flames(hot, task.id, tasks, design)
    for one in lined:
        befores += _lined(one, tasks, design)
    for flame, cool in _hot_and_cool(design):
        for joint in (flame, cool):
            task = _joining(joint)
            tasks[task.id] = task
            befores += _join_befores(task, joint, design)
        befores.append(Before(_joining(flame).id, _joining(cool).id, _COOL_FIRST, at=flame.at))
    return list(tasks.values()), befores


def _flames(
    joints: Iterable[Joint], later: str, tasks: dict[str, Task], design: Design
) -> Iterator[Before]:
    """Joints made in a flame, as tasks of their own before another."""
    for joint in joints:
        task = _joining(joint)
        tasks[task.id] = task
        yield from _join_befores(task, joint, design)
        yield Before(task.id, later, _HEAT_FIRST, is_must=False, at=joint.at)


def _lined(one: Lining, tasks: dict[str, Task], design: Design) -> Iterator[Before]:
    task = lining_task(one, design)
    hot = hot_on(one.items, one.fit.shaft.end.item, design)
    yield from _flames(hot, task.id, tasks, design)
    for joint in one.sunk:
        if joint.kind in BONDED:
            bond = _joining(joint)
            tasks[bond.id] = bond
            yield from _join_befores(bond, joint, design)
            yield Before(bond.id, task.id, "the bush is in before it is reamed", at=joint.at)
        yield Before(
            f"size {joint.name}", task.id, "the bush is in before it is reamed", at=joint.at
        )
    tasks[task.id] = task
    yield from lining_befores(one, design)


def shafts_in(pressing: Pressing, fits: Iterable[MadeFit]) -> Iterator[MadeFit]:
    """The moving fits in the bore of a pressed bush."""
    bush = pressing.fit.shaft.end.item
    for fit in fits:
        is_there = pressing.bore is not None and str(fit.hole.end) == pressing.bore.subject
        if fit.joint.kind in MOVING and fit.hole.end.item == bush and is_there:
            yield fit


def _sizing(pressing: Pressing, shaft: MadeFit, design: Design, *, is_lined: bool) -> Task:
    bush = title_of(pressing.fit.shaft.end.item, design)
    closes = with_unit(pressing.closes_mm, design.units)
    then = ", then make the shaft to it" if shaft.suit == "shaft" and not is_lined else ""
    press = "press in" if is_lined else "press in and size"
    advice = "press it in; it is finished in line when it stands" if is_lined else pressing.advice
    return Task(
        f"size {pressing.subject}",
        f"{press} the {bush}",
        TaskKind.JOIN,
        pressing.fit.hole.end.item,
        f"its bore closes by about {closes}; {advice}{then}",
        pressing.fit.joint.at,
    )


def _around(task: Task, pressing: Pressing, shaft: MadeFit, design: Design) -> Iterator[Before]:
    at = pressing.fit.joint.at
    for item in pressing.fit.joint.items:
        if is_made(item, design):
            yield Before(f"make {item}", task.id, "both are pressed together", at=at)
    runs = shaft.shaft.end.item
    if is_made(runs, design) and shaft.suit == "shaft":
        why = "the bore closes in pressing: size it, then make the shaft to it"
        yield Before(task.id, f"make {runs}", why, at=at)
    yield from _then_assemble(task, pressing.fit.joint, design)


def _joining(joint: Joint) -> Task:
    verb = "solder" if joint.kind in HOT else "bond"
    return Task(
        f"{verb} {joint.name}",
        f"{verb} the {joint.name}",
        TaskKind.JOIN,
        joint.items[0],
        joint.kind.replace("_", " "),
        joint.at,
    )


def _join_befores(task: Task, joint: Joint, design: Design) -> Iterator[Before]:
    for item in joint.items:
        if is_made(item, design):
            yield Before(f"make {item}", task.id, "both are joined here", at=joint.at)
    yield from _then_assemble(task, joint, design)


def _then_assemble(task: Task, joint: Joint, design: Design) -> Iterator[Before]:
    for name, assembly in design.assemblies.items():
        if any(member.item in joint.items for member in assembly.members):
            yield Before(task.id, f"assemble {name}", "it is joined before it goes in", at=joint.at)


def _hot_and_cool(design: Design) -> Iterator[tuple[Joint, Joint]]:
    """Pairs of a joint made in a flame and a bonded one that share a part."""
    joints = [one for one in design.joints.values() if one.kind in (*HOT, *BONDED)]
    for one, other in combinations(joints, 2):
        hot, cool = (one, other) if one.kind in HOT else (other, one)
        if hot.kind in HOT and cool.kind in BONDED and set(hot.items) & set(cool.items):
            yield hot, cool
