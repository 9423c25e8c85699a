"""Pegs that are glued right through: sawn off and pared flush when the glue is dry."""

from __future__ import annotations

import re
from dataclasses import dataclass
from typing import TYPE_CHECKING

from binder.api import (
    NotSizeError,
    NumberOff,
    TaskKind,
    TaskTime,
    asked_size,
    exact,
    shown_length,
)
from binder_making.operation import Operation
from binder_plugins.operations.jobs import Piece
from binder_solid.facts import FormFact

if TYPE_CHECKING:
    from collections.abc import Iterator

    from binder.api import Design, Joint, Task

TOOLS = "tenon saw, paring chisel, plane"
# Minutes to get ready, and for each end of a peg; and what stands proud by less than the least, in
# mm, a plane takes with the face, by more than the most it is no peg to be cut. Common practice,
# no source.
_READY_MIN, _END_MIN, _LEAST, _MOST = 5.0, 2.0, 0.1, 25.0
_LONG = re.compile(r"(\d[\d./ ]* ?(?:mm|in)) long\b")


@dataclass(frozen=True, slots=True)
class Proud:
    """Pegs of a joint: their name, how many, and what each stands out of both faces together."""

    title: str
    count: int
    over: float


def pared(task: Task, design: Design) -> Iterator[tuple[Piece, list[Operation]]]:
    """The piece of work after the cure of a task in which such pegs are glued; none else."""
    found = list(_proud(task, design))
    if not found:
        return
    name = piece_of(task)
    ends = 2 * sum(one.count for one in found)
    told = "; ".join(_told(one, design.units) for one in found)
    piece = Piece(
        name,
        f"saw and pare the pegs flush, {_title(task, design)}",
        1,
        None,
        minutes=_READY_MIN + _END_MIN * ends,
        what=told,
        acts=frozenset({"file"}),
        pace=design.workshop.pace_at(""),
    )
    yield piece, [Operation(id=name, act="file", minutes=piece.minutes)]


def _told(one: Proud, units: str) -> str:
    over = shown_length(exact(round(one.over, 1)), units)
    return (
        f"{one.count} off {one.title}, {over} longer than the hole: saw each end a hair over the "
        "face, pare it from the edge inwards, then plane the face flush"
    )


def piece_of(task: Task) -> str:
    """The id of that piece of work."""
    return f"{task.id}, pared"


def is_pared(task: Task, design: Design) -> bool:
    """Whether a task leaves pegs that are cut flush afterwards."""
    return any(_proud(task, design))


def _proud(task: Task, design: Design) -> Iterator[Proud]:
    time = design.facts.about(TaskTime, task.id)
    if time is None or task.kind is not TaskKind.ASSEMBLE:
        return
    for line in time.lines:
        joint = design.joints.get(line.what)
        if joint is not None and joint.kind == "glued":
            yield from _of_joint(joint, design)


def _of_joint(joint: Joint, design: Design) -> Iterator[Proud]:
    pegs = [design.bought[end.item] for end in joint.ends if end.item in design.bought]
    holes = [end for end in joint.ends if end.item not in design.bought and end.place]
    for peg in pegs:
        long = _long(peg.what)
        off = design.facts.about(NumberOff, peg.name)
        for end in holes:
            thick = _through(end.item, end.place, design)
            over = long - thick
            if long and thick and _LEAST < over < _MOST:
                yield Proud(peg.title, off.count if off is not None else 1, over)


def _long(what: str) -> float:
    """The length in mm that words tell of a peg; 0 for none."""
    said = _LONG.search(what)
    try:
        return float(asked_size(said[1]).amount) if said else 0.0
    except NotSizeError:
        return 0.0


def _through(item: str, place: str, design: Design) -> float:
    """How thick in mm a part is at a hole that goes right through it; 0 where none does."""
    form = design.facts.about(FormFact, item)
    if form is None:
        return 0.0
    is_there = any(one.name == place and one.depth is None for one in form.located)
    return min(form.size) if is_there else 0.0


def _title(task: Task, design: Design) -> str:
    found = design.assemblies.get(task.item)
    return found.title if found is not None else task.item
