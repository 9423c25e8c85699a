"""All routes and tasks to one order of work, and the order to jobs for the evenings."""

from __future__ import annotations

from dataclasses import dataclass, replace
from itertools import pairwise
from typing import TYPE_CHECKING

from binder.api import (
    BuildSequence,
    Contribution,
    Design,
    Fact,
    HoursFact,
    SmallWork,
    Task,
    TaskTime,
)
from binder_making.operation import Operation
from binder_making.order import Loop, Order, in_order
from binder_making.order import graph as graph_of
from binder_making.precedence import Edge, Priority, edges
from binder_making.sessions import Evening, Lengths, evenings
from binder_plugins.operations.aids.facts import PREFIX, ToolsFact
from binder_plugins.operations.aids.planned import with_small_work
from binder_plugins.operations.facts import Route, SetUp
from binder_plugins.operations.first_use import first_use
from binder_plugins.operations.jobs import Piece, jobs_of
from binder_plugins.operations.kept_together import held
from binder_plugins.operations.minutes import route_estimate
from binder_plugins.operations.one_setting import pairs
from binder_plugins.operations.one_setting_order import at_the_taper
from binder_plugins.operations.ordered import operation
from binder_plugins.operations.tasks import task_pieces
from binder_plugins.operations.whole import Whole

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

_ON_ITS_LEAF = "the order on its leaf"


@dataclass(frozen=True, slots=True)
class WorkPlan(Fact):
    """The whole work in order: pieces by their ids, evenings, and what the order spends.

    `waits` names for each piece those that it waits for.
    """

    pieces: dict[str, Piece]
    waits: dict[str, tuple[str, ...]]
    evenings: tuple[Evening, ...]
    spent_min: float
    least_min: float
    setups: int
    minutes: float


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
            Edge(
                ends[earlier][1],
                first_use(own, task, earlier, design),
                why,
                priority=Priority.TRUTH,
            )
            for earlier, why in step.after
            if earlier in ends
        ]
    routes = list(design.facts.all(Route))
    tapers = list(pairs(routes, design))
    reasons = [*at_the_taper([*reasons, *edges(operations)], tapers, operations, piece_of)]
    pieces = held(pieces, routes, tapers)
    return Whole(tuple(operations), tuple(reasons), pieces, piece_of)


def _of_task(task: Task, design: Design) -> Iterator[tuple[Piece, list[Operation]]]:
    """The pieces of a task, each with its operations; a fabrication's joining is of its route."""
    kind = task.id.split(" ")[0]
    route = design.facts.about(Route, task.item)
    if kind == "make" and route is not None and route.setups:
        for setup in _own(route, task, design):
            acts = [operation(task.item, setup, act) for act in setup.acts]
            yield _piece(setup, route, design), acts
        return
    if kind == "join" and route is not None and route.setups:
        first = route.setups[0]
        acts = [operation(task.item, first, act) for act in first.acts]
        yield _piece(first, route, design), acts
        return
    together = design.facts.about(Route, task.id)
    if together is not None:
        yield from _put_together(task, together, design)
        return
    yield from task_pieces(task, design)


def _piece(setup: SetUp, route: Route, design: Design, *, wait_h: float = 0.0) -> Piece:
    pace = design.workshop.pace_at(setup.machine)
    name = f"{route.subject} {setup.number}"
    return Piece(name, route.title, route.count, setup, wait_h=wait_h, pace=pace)


def _put_together(
    task: Task, route: Route, design: Design
) -> Iterator[tuple[Piece, list[Operation]]]:
    """The set-ups in which parts are worked on together; what cures waits after the last."""
    time = design.facts.about(TaskTime, task.id)
    wait = time.wait_h if time is not None else 0.0
    for setup in route.setups:
        acts = [operation(task.id, setup, act) for act in setup.acts]
        cures = wait if setup is route.setups[-1] else 0.0
        yield _piece(setup, route, design, wait_h=cures), acts


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
    found, sequence = with_small_work(found, order.sequence, design)
    jobs = jobs_of(sequence, _laid_out(found, design), useful_minutes(design))
    packed = evenings(jobs, Lengths(_whole(design)))
    minutes = sum(job.minutes for job in jobs)
    hours = HoursFact("", route_estimate(minutes).text, len(packed))
    plan = WorkPlan(
        "",
        found.pieces,
        found.waits,
        packed,
        order.spent.minutes,
        order.bound.minutes,
        order.spent.setups,
        minutes,
    )
    return Contribution(facts=[plan, hours])


def _laid_out(found: Whole, design: Design) -> Whole:
    """The pieces with the tools of their set-ups or their making, which lie ready for them."""
    told = design.facts.about(ToolsFact, "")
    by_piece = told.by_piece if told is not None else {}
    works = {f"{PREFIX}{one.subject}": one for one in design.facts.all(SmallWork)}
    pieces = {
        name: replace(piece, tools=by_piece.get(name, ()))
        if piece.setup is not None
        else replace(
            piece, tools=_once(piece.tools, by_piece.get(name, ()), _stock(works.get(name)))
        )
        for name, piece in found.pieces.items()
    }
    return replace(found, pieces=pieces)


def _once(*lists: tuple[str, ...]) -> tuple[str, ...]:
    return tuple(dict.fromkeys(tool for one in lists for tool in one))


def _stock(work: SmallWork | None) -> tuple[str, ...]:
    """What a tool is made from lies ready with what it is made with."""
    if work is None:
        return ()
    return (f"for the {work.subject}: {work.stock.replace('; ', ', and ')}",)


def _whole(design: Design) -> float:
    hours = design.workshop.evening_hours
    return max(float(hours) * 60, 40.0) if hours is not None else 120.0


def useful_minutes(design: Design) -> float:
    """What an evening of this workshop leaves for work."""
    return Lengths(_whole(design)).useful_min
