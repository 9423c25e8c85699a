"""Tasks without cutting to their minutes: joints and screws counted, each by its kind."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import replace

from binder.api import (
    Assembly,
    Contribution,
    Design,
    HardwareFact,
    Joint,
    NumberOff,
    Task,
    TaskKind,
    TaskTime,
    TimeLine,
)
from binder_making.times import (
    Joined,
    in_place,
    joining,
    joining_table,
    reading,
    running_in,
    trying,
    under_load,
)
from binder_plugins.buildorder.closing import done_after, done_before, joints_closed_in
from binder_plugins.buildorder.curing import joints_of
from binder_plugins.buildorder.float_set import float_words
from binder_plugins.buildorder.locking import locked_in
from binder_plugins.buildorder.pawl_tried import pawl_tried
from binder_plugins.buildorder.running_in import is_loaded, is_run_in, pass_min
from binder_plugins.buildorder.step_words import step_words
from binder_plugins.buildorder.stripping import opened

_MOVES = frozenset({"runs_in", "swivels", "hinged", "slides", "dovetailed", "leads"})
_CURE = "cure of the compound"


def time_tasks(design: Design) -> Contribution:
    """The time of every task that no route tells."""
    return Contribution(
        facts=[fact for one in design.tasks.values() for fact in _timed(one, design)]
    )


def _timed(task: Task, design: Design) -> Iterator[TaskTime]:
    verb = task.id.split(" ")[0]
    if task.kind is TaskKind.MEASURE:
        sizes = len(design.bought[task.item].measured) if task.item in design.bought else 1
        yield TaskTime(task.id, reading(sizes), (), "measure")
    elif verb == "run":
        minutes = running_in(is_loaded=is_loaded(design), pass_min=pass_min(design))
        yield TaskTime(task.id, minutes, (TimeLine("first run", 1, minutes),), "gauge")
    elif task.kind is TaskKind.TEST:
        yield _test(task, design)
    elif verb in ("assemble", "begin", "go_on"):
        closed = joints_of(task, design)
        here = [one for one in closed if not (done_before(one, design) or done_after(one, design))]
        made = _together(task, here, design)
        lines = tuple(_said(made.lines, task, design))
        more = sum(one.minutes for one in lines) - sum(one.minutes for one in made.lines)
        yield replace(made, minutes=made.minutes + more, lines=lines)
    elif task.kind is TaskKind.STRIP:
        yield _apart(task, design.assemblies[task.item], design)
    elif verb == "close":
        yield _together(task, opened(design.assemblies[task.item], design), design)
    elif verb == "lock":
        yield _locked(task, design)
    elif task.kind is TaskKind.JOIN and verb != "join":
        yield _joined(task, verb, design)


def _together(task: Task, joints: Iterable[Joint], design: Design) -> TaskTime:
    """Laying out, then each joint; what cures last holds up the rest."""
    rows = [(joint, _joining(joint, design)) for joint in joints]
    lines = [
        TimeLine(joint.name, _count(joint, design), time.minutes)
        for joint, time in rows
        if joint.kind in joining_table()["kinds"]
    ]
    waits = max((time.wait_h for _, time in rows), default=0.0)
    minutes = joining_table()["lay_out"] + sum(line.minutes for line in lines)
    why = _CURE if waits else ""
    return TaskTime(task.id, float(minutes), tuple(lines), "assemble", waits, why)


def _said(lines: Iterable[TimeLine], task: Task, design: Design) -> Iterator[TimeLine]:
    """Each with the words of its step and of the float set behind it, and what is filed in it."""
    whole = design.assemblies[task.item]
    for line in lines:
        joint = design.joints[line.what]
        filed = in_place("pawl") if pawl_tried(joint, design) else 0.0
        said = "; ".join((step_words(joint, whole, design), *float_words(joint, whole, design)))
        yield replace(line, said=said, minutes=line.minutes + filed)


def _apart(task: Task, whole: Assembly, design: Design) -> TaskTime:
    share = float(joining_table()["strip"])
    lines = tuple(
        TimeLine(joint.name, _count(joint, design), share * _joining(joint, design).minutes)
        for joint in reversed(opened(whole, design))
    )
    return TaskTime(task.id, sum((one.minutes for one in lines), 5.0), lines, "strip")


def _test(task: Task, design: Design) -> TaskTime:
    closed = joints_closed_in(design.assemblies[task.item], design)
    moving = [one for one in closed if one.kind in _MOVES or _is_drive(one)]
    lines = tuple(TimeLine(one.name, 1, 0.0) for one in moving)
    is_last = is_run_in(design.assemblies[task.item], design) and is_loaded(design)
    minutes = trying(len(moving)) + (under_load(pass_min(design)) if is_last else 0.0)
    return TaskTime(task.id, minutes, lines, "gauge")


def _locked(task: Task, design: Design) -> TaskTime:
    """Each joint undone, washed and set again wet, and the test tried before it cures."""
    rows = [
        (joint, joining("locked", _count(joint, design)))
        for joint in locked_in(design.assemblies[task.item], design)
    ]
    lines = tuple(TimeLine(one.name, _count(one, design), time.minutes) for one, time in rows)
    minutes = joining_table()["lay_out"] + sum(one.minutes for one in lines) + trying(0)
    return TaskTime(task.id, minutes, lines, "bond", max(one.wait_h for _, one in rows), _CURE)


def _is_drive(joint: Joint) -> bool:
    meeting = joint.entry.meeting
    return meeting is not None and meeting.group == "drive"


def _joined(task: Task, verb: str, design: Design) -> TaskTime:
    """Work of a joint that stands by itself: solder, bond, press and size, ream in line."""
    if verb == "line":
        minutes = in_place("in_line")
        line = TimeLine(task.id.removeprefix("line up "), 1, minutes)
        return TaskTime(task.id, minutes, (line,), "ream")
    joint = design.joints.get(task.id.removeprefix(f"{verb} "))
    if joint is None:
        return TaskTime(task.id, in_place("sizing"), (), "press")
    time, count = _joining(joint, design), _count(joint, design)
    more = in_place("sizing") * count if verb == "size" else 0.0
    line = TimeLine(joint.name, count, time.minutes + more)
    # The pickle and the cooling pass while something else is done the same evening.
    why = _CURE if time.wait_h else ""
    return TaskTime(task.id, time.minutes + more, (line,), time.act, time.wait_h, why)


def _joining(joint: Joint, design: Design) -> Joined:
    screws = sum(one.count for one in design.facts.all(HardwareFact) if one.joint == joint.name)
    return joining(joint.kind, _count(joint, design), screws)


def _count(joint: Joint, design: Design) -> int:
    """How often it is made: as often as there are of the rarer half."""
    counts = [
        off.count
        for item in joint.items
        if (off := design.facts.about(NumberOff, item)) is not None
    ]
    return max(min(counts, default=1), 1)
