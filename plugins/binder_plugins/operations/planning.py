"""All routes and tasks to one order of work, and the order to jobs for the evenings."""

from __future__ import annotations

from dataclasses import dataclass
from itertools import pairwise
from typing import TYPE_CHECKING

from binder.api import BuildSequence, Contribution, Design, Fact, HoursFact, Task
from binder_making.operation import Operation
from binder_making.order import Loop, Order, in_order
from binder_making.order import graph as graph_of
from binder_making.precedence import Edge, Priority, edges
from binder_making.sessions import Evening, Lengths, evenings
from binder_plugins.operations.facts import Route, SetUp
from binder_plugins.operations.jobs import Piece, jobs_of
from binder_plugins.operations.minutes import route_estimate
from binder_plugins.operations.ordered import operation

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

_ON_ITS_LEAF = "the order on its leaf"
# Minutes of what is no cutting: to measure an item, to put together, to try. Common practice.
_TASKS = {"measure": 6.0, "assemble": 25.0, "test": 15.0, "join": 10.0, "make": 10.0}


@dataclass(frozen=True, slots=True)
class WorkPlan(Fact):
    """The whole work in order: pieces by their ids, evenings, and what the order spends."""

    pieces: dict[str, Piece]
    evenings: tuple[Evening, ...]
    spent_min: float
    least_min: float
    setups: int
    minutes: float


@dataclass(frozen=True, slots=True)
class Whole:
    """All operations with the reasons between them, and the piece that each belongs to."""

    operations: tuple[Operation, ...]
    reasons: tuple[Edge, ...]
    pieces: dict[str, Piece]
    piece_of: dict[str, str]


def whole(design: Design) -> Whole:
    """Every task of the build order, a made item by the acts of its route."""
    sequence = design.facts.about(BuildSequence, "")
    operations: list[Operation] = []
    reasons: list[Edge] = []
    pieces: dict[str, Piece] = {}
    piece_of: dict[str, str] = {}
    ends: dict[str, tuple[str, str]] = {}
    for step in sequence.steps if sequence is not None else ():
        task = design.tasks[step.task]
        own = list(_of_task(task, design))
        for piece, acts in own:
            pieces[piece.id] = piece
            piece_of.update(dict.fromkeys((one.id for one in acts), piece.id))
        chain = [one for _, acts in own for one in acts]
        operations += chain
        reasons += [
            Edge(a.id, b.id, _ON_ITS_LEAF, priority=Priority.HOLD) for a, b in pairwise(chain)
        ]
        ends[task.id] = (chain[0].id, chain[-1].id)
        reasons += [
            Edge(ends[earlier][1], chain[0].id, why, priority=Priority.TRUTH)
            for earlier, why in step.after
            if earlier in ends
        ]
    return Whole(tuple(operations), (*reasons, *edges(operations)), pieces, piece_of)


def _of_task(task: Task, design: Design) -> Iterator[tuple[Piece, list[Operation]]]:
    """The pieces of a task, each with its operations; a fabrication's joining is of its route."""
    kind = task.id.split(" ")[0]
    route = design.facts.about(Route, task.item)
    if kind == "make" and route is not None and route.setups:
        for setup in _own(route, task, design):
            acts = [operation(task.item, setup, act) for act in setup.acts]
            yield Piece(f"{task.item} {setup.number}", route.title, route.count, setup), acts
        return
    if kind == "join" and route is not None and route.setups:
        first = route.setups[0]
        acts = [operation(task.item, first, act) for act in first.acts]
        yield Piece(f"{task.item} {first.number}", route.title, route.count, first), acts
        return
    together = design.facts.about(Route, task.id)
    if together is not None:
        for setup in together.setups:
            acts = [operation(task.id, setup, act) for act in setup.acts]
            name = f"{task.id} {setup.number}"
            yield Piece(name, together.title, together.count, setup), acts
        return
    minutes = _TASKS.get(kind, 10.0)
    piece = Piece(task.id, task.title, 1, None, minutes=minutes)
    yield piece, [Operation(id=task.id, act="gauge", minutes=minutes)]


def _own(route: Route, task: Task, design: Design) -> Sequence[SetUp]:
    """The set-ups of a task; the first one of a fabrication is its joining."""
    is_joined = f"join {task.item}" in design.tasks
    return route.setups[1:] if is_joined and len(route.setups) > 1 else route.setups


def ring(design: Design) -> Loop | None:
    """The ring in which acts of the whole model wait for one another, if there is one."""
    found = whole(design)
    made = graph_of(found.operations, found.reasons)
    return made if isinstance(made, Loop) else None


def plan_work(design: Design) -> Contribution:
    """The order of all work, the evenings it fills, and its hours."""
    found = whole(design)
    order = in_order(found.operations, found.reasons)
    if not isinstance(order, Order) or not order.sequence:
        return Contribution()
    jobs = jobs_of(order.sequence, found.piece_of, found.pieces, _useful(design))
    packed = evenings(jobs, Lengths(_whole(design)))
    minutes = sum(job.minutes for job in jobs)
    hours = HoursFact("", route_estimate(minutes).text, len(packed))
    plan = WorkPlan(
        "",
        found.pieces,
        packed,
        order.spent.minutes,
        order.bound.minutes,
        order.spent.setups,
        minutes,
    )
    return Contribution(facts=[plan, hours])


def _whole(design: Design) -> float:
    hours = design.workshop.evening_hours
    return max(float(hours) * 60, 40.0) if hours is not None else 120.0


def _useful(design: Design) -> float:
    return Lengths(_whole(design)).useful_min
