"""Tasks without a route to pieces of work: putting together, joining, trying, coats."""

from __future__ import annotations

from typing import TYPE_CHECKING

from binder.api import Design, Joint, NumberOff, SupplyFact, Task, TaskKind, TaskTime, TreatmentFact
from binder_making.operation import Operation
from binder_plugins.operations import words
from binder_plugins.operations.jobs import Piece
from binder_plugins.operations.watching import floats_watched
from binder_solid.filled import SPIRIT, adhesive, is_degreased, locking
from binder_solid.float_tried import EndFloat, end_floats, float_tool, shut_by

if TYPE_CHECKING:
    from collections.abc import Iterator

# The act of a task of which no time is told, and minutes for it: common practice, no source.
_ACTS = {
    TaskKind.MEASURE: "measure",
    TaskKind.ASSEMBLE: "dry-assemble",
    TaskKind.STRIP: "strip",
    TaskKind.JOIN: "press",
}
# What is locked was nipped dry before: it is undone first.
_KEY = "screwdriver or key"
_LAID_OUT = frozenset({"silver-solder", "soft-solder", "press", "ream"})
_UNTIMED = 10.0
_MOST_LINES = 4


def task_pieces(task: Task, design: Design) -> Iterator[tuple[Piece, list[Operation]]]:
    """The pieces of a task, each with its one operation; a finish has one for each evening."""
    if task.kind is TaskKind.FINISH:
        yield from _coats(task, design)
        return
    time = design.facts.about(TaskTime, task.id)
    lines = time.lines if time is not None else ()
    shown = [f"{one.what}{f', {one.count} off' if one.count > 1 else ''}" for one in lines]
    piece = Piece(
        task.id,
        task.title,
        1,
        None,
        minutes=time.minutes if time is not None else _UNTIMED,
        what="; ".join(shown[:_MOST_LINES]) + (" …" if len(shown) > _MOST_LINES else ""),
        acts=frozenset({_act(task, time)}),
        tools=(
            *_tools(_act(task, time), time, design),
            *float_tools(task, design),
            *_oils(task, time, design),
        ),
        wait_h=time.wait_h if time is not None else 0.0,
        pace=design.workshop.pace_at(""),
    )
    yield piece, [Operation(id=task.id, act=_act(task, time), minutes=piece.minutes)]


def _tools(act: str, time: TaskTime | None, design: Design) -> tuple[str, ...]:
    """What lies ready for it; for what cures, what each of its joints is filled with."""
    sticking = _filled_with(time, design)
    if sticking:
        is_glued = any(one.kind == "glued" for one in _joints(time, design))
        wiped = (SPIRIT,) if is_wiped(time, design) else ()
        keys = (_KEY,) if _is_locked(time) else ()
        return (*keys, *sticking, *wiped, *(("clamps",) if is_glued else ()))
    tool = words.table()["acts"].get(act, {}).get("tool", "")
    return (tool,) if tool and act in _LAID_OUT else ()


def is_wiped(time: TaskTime | None, design: Design) -> bool:
    """Whether what a task bonds or locks is wiped with spirit before."""
    degreased = (is_degreased(one, design) for one in _joints(time, design))
    return bool(_filled_with(time, design)) and (_is_locked(time) or any(degreased))


def _filled_with(time: TaskTime | None, design: Design) -> tuple[str, ...]:
    """What each joint of a task is filled or locked with, once."""
    is_locked, joints = _is_locked(time), _joints(time, design)
    filled = (locking(one) if is_locked else adhesive(one, design) for one in joints)
    return tuple(dict.fromkeys(filter(None, filled)))


def _is_locked(time: TaskTime | None) -> bool:
    return time is not None and time.subject.startswith("lock ")


def _joints(time: TaskTime | None, design: Design) -> list[Joint]:
    lines = time.lines if time is not None else ()
    return [design.joints[line.what] for line in lines if line.what in design.joints]


def _oils(task: Task, time: TaskTime | None, design: Design) -> Iterator[str]:
    """What is oiled as it goes together, and every joint of the chart before the first run."""
    is_first_run = task.id.startswith("run ")
    if time is None or not (is_first_run or task.kind is TaskKind.ASSEMBLE):
        return
    here = {line.what for line in time.lines}
    facts = design.facts.all(SupplyFact)
    yield from dict.fromkeys(
        one.what
        for one in facts
        if one.subject in here or (is_first_run and one.subject in design.joints)
    )


def float_tools(task: Task, design: Design) -> tuple[str, ...]:
    """With what the end floats are told that a test, or running in, finds in what moves there.

    What a rivet shuts for good is tried as it is put together.
    """
    time = design.facts.about(TaskTime, task.id)
    tried = {line.what for line in time.lines} if time is not None else set()
    floats: list[EndFloat] = []
    if task.kind is TaskKind.TEST:
        floats = [one for one in end_floats(design) if one.joints & tried]
        floats += floats_watched(task, design)
    elif task.kind is TaskKind.ASSEMBLE:
        joints = (design.joints[name] for name in tried if name in design.joints)
        floats = [one for joint in joints for one in shut_by(joint, design)]
    return tuple(dict.fromkeys(float_tool(one.most, design) for one in floats))


def _act(task: Task, time: TaskTime | None) -> str:
    """The first putting together is a dry one where something is finished after it."""
    if task.id.startswith("close "):
        return "assemble"
    if task.kind in (TaskKind.ASSEMBLE, TaskKind.STRIP):
        return _ACTS[task.kind]
    return time.act if time is not None else _ACTS.get(task.kind, "gauge")


def _coats(task: Task, design: Design) -> Iterator[tuple[Piece, list[Operation]]]:
    told = design.facts.about(TreatmentFact, task.item)
    off = design.facts.about(NumberOff, task.item)
    count = off.count if off is not None else 1
    steps = told.last if told is not None else ()
    item = design.item(task.item)
    for number, step in enumerate(steps, 1):
        name = f"{task.id}, coat {number}"
        piece = Piece(
            name,
            item.title if item is not None else task.item,
            count,
            None,
            minutes=step.ready + step.run * (1 + 0.5 * (count - 1)),
            what=step.what,
            acts=frozenset({step.act}),
            tools=(step.tool,),
            wait_h=step.wait_h,
            pace=design.workshop.pace_at(""),
        )
        yield piece, [_coat(name, task.item, step.act, step.tool, piece.minutes)]


def _coat(name: str, item: str, act: str, tool: str, minutes: float) -> Operation:
    return Operation(id=name, act=act, part=item, feature="coat", tool=tool, minutes=minutes)
