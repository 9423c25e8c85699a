"""Press fits, bonds and flames to the work that stands between making and putting together."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass, field
from itertools import combinations

from binder.api import Before, Design, Joint, Task, TaskKind, TogetherFact
from binder_plugins.fits.facts import MadeFit
from binder_plugins.fits.families import BONDED, HOT, MOVING
from binder_plugins.fits.figures import with_unit
from binder_plugins.fits.heat_first import MEASURED_COLD, fitted_after
from binder_plugins.fits.lining import (
    Lining,
    hot_on,
    lining_befores,
    lining_fact,
    lining_task,
    linings,
)
from binder_plugins.fits.naming import is_made, title_of
from binder_plugins.fits.pressing import Pressing

_COOL_FIRST = "compound lets go near a flame, so solder first"
_BUSH_FIRST = "the bush is in before it is reamed"
_HEAT_FIRST = "heat loosens a press fit and moves a bore, so solder first"


@dataclass(frozen=True, slots=True)
class JoiningWork:
    """Tasks by their ids, what comes before what, and what is done in each task."""

    tasks: dict[str, Task] = field(default_factory=dict)
    befores: list[Before] = field(default_factory=list)
    facts: list[TogetherFact] = field(default_factory=list)

    def add(self, task: Task, fact: TogetherFact) -> None:
        """A task with what is done in it, once."""
        if task.id not in self.tasks:
            self.facts.append(fact)
        self.tasks[task.id] = task


def ordered_work(fits: list[MadeFit], pressed: list[Pressing], design: Design) -> JoiningWork:
    """The tasks that joining asks for, and what comes before what."""
    work = JoiningWork()
    lined = list(linings(fits, design))
    for pressing in pressed:
        for shaft in shafts_in(pressing, fits):
            is_lined = any(shaft in one.fits for one in lined)
            task = _sizing(pressing, shaft, design, is_lined=is_lined)
            work.add(task, _pressed(task, pressing, shaft, is_lined=is_lined))
            work.befores.extend(_around(task, pressing, shaft, design))
            hot = hot_on(pressing.fit.joint.items, (shaft.shaft.end.item,), design)
            _flames(hot, task.id, work, design)
    for one in lined:
        _lined(one, work, design)
    for flame, cool in _hot_and_cool(design):
        for joint in (flame, cool):
            _join(joint, work, design)
        work.befores.append(Before(_joining(flame).id, _joining(cool).id, _COOL_FIRST, at=flame.at))
    for flame, later in list(fitted_after(fits, work.facts, design)):
        task = _join(flame, work, design)
        work.befores.append(Before(task.id, later, MEASURED_COLD, is_must=False, at=flame.at))
    return work


def _flames(joints: Iterable[Joint], later: str, work: JoiningWork, design: Design) -> None:
    """Joints made in a flame, as tasks of their own before another."""
    for joint in joints:
        task = _join(joint, work, design)
        work.befores.append(Before(task.id, later, _HEAT_FIRST, is_must=False, at=joint.at))


def _join(joint: Joint, work: JoiningWork, design: Design) -> Task:
    """A bond or a flame as a task of its own."""
    task = _joining(joint)
    work.add(task, TogetherFact(task.id, joint.kind, (joint.name,)))
    work.befores.extend(_join_befores(task, joint, design))
    return task


def _lined(one: Lining, work: JoiningWork, design: Design) -> None:
    task = lining_task(one, design)
    hot = hot_on(one.items, one.shafts, design)
    _flames(hot, task.id, work, design)
    for joint in one.sunk:
        if joint.kind in BONDED:
            bond = _join(joint, work, design)
            work.befores.append(Before(bond.id, task.id, _BUSH_FIRST, at=joint.at))
        work.befores.append(Before(f"size {joint.name}", task.id, _BUSH_FIRST, at=joint.at))
    work.add(task, lining_fact(one, design))
    work.befores.extend(lining_befores(one, design))


def _pressed(task: Task, pressing: Pressing, shaft: MadeFit, *, is_lined: bool) -> TogetherFact:
    """What is pressed, and whether the bore is finished there and then."""
    bore = pressing.bore.subject if pressing.bore is not None else ""
    is_sized = pressing.is_sized_in_place and not is_lined
    return TogetherFact(
        task.id,
        "sized in place" if is_sized else "pressed",
        (pressing.subject, shaft.subject),
        ((bore,),) if bore else (),
        (bore,) if is_sized else (),
        note=task.detail,
    )


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
    is_sized = pressing.is_sized_in_place and not is_lined
    press = "press in and size" if is_sized else "press in"
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
