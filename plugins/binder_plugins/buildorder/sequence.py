"""Tasks and reasons to one order, the same on every run, or to the ring that forbids it."""

from __future__ import annotations

from collections.abc import Iterable, Mapping

from binder.api import (
    Before,
    BuildSequence,
    Contribution,
    Design,
    Diagnostic,
    Given,
    Labelled,
    Step,
    Working,
)
from binder_plugins.buildorder import codes
from binder_plugins.buildorder.curing import spread
from binder_plugins.buildorder.ranking import find_ring, layered, ordered


def put_in_order(design: Design) -> Contribution:
    """The build sequence; tasks that could come in any order keep that of the spec."""
    known = [one for one in design.befores if _is_known(one, design)]
    known += spread(known, design)
    befores = with_wishes(list(design.tasks), known)
    order = ordered(list(design.tasks), befores)
    if len(order) < len(design.tasks):
        ring = find_ring(set(design.tasks) - set(order), befores)
        return Contribution(facts=[BuildSequence("", ())], findings=[_loop(ring)])
    layers = layered(order, befores)
    reasons = _reasons(befores)
    steps = tuple(Step(task, layers[task], tuple(reasons.get(task, ()))) for task in order)
    workings = [_working(step, design) for step in steps]
    return Contribution(facts=[BuildSequence("", steps)], workings=workings)


def with_wishes(tasks: list[str], known: Iterable[Before]) -> list[Before]:
    """All that must be, and of what is only preferred what closes no ring, in its order."""
    known = list(known)
    kept = [one for one in known if one.is_must]
    if len(ordered(tasks, kept)) < len(tasks):
        return kept
    for one in known:
        if not one.is_must and len(ordered(tasks, [*kept, one])) == len(tasks):
            kept.append(one)
    return kept


def _is_known(one: Before, design: Design) -> bool:
    return one.earlier in design.tasks and one.later in design.tasks


def _loop(ring: list[Before]) -> Diagnostic:
    words = " <- ".join([ring[0].later, *(one.earlier for one in ring)][:7])
    return codes.ORDER_LOOPS.at(
        ring[0].at,
        f"the build order loops: {words}",
        label=ring[0].reason,
        related=[Labelled(one.at, one.reason) for one in ring[1:6]],
        help="change the master of one of these joints",
    )


def _reasons(befores: Iterable[Before]) -> Mapping[str, list[tuple[str, str]]]:
    found: dict[str, list[tuple[str, str]]] = {}
    for one in befores:
        pairs = found.setdefault(one.later, [])
        if (one.earlier, one.reason) not in pairs:
            pairs.append((one.earlier, one.reason))
    return found


def _working(step: Step, design: Design) -> Working:
    task = design.tasks[step.task]
    given = tuple(
        Given(f"after '{design.tasks[earlier].title}'", reason, working=f"order.{earlier}")
        for earlier, reason in step.after
    )
    return Working(
        id=f"order.{step.task}",
        title=f"place of '{task.title}' in the build order",
        given=given,
        formula="after everything that it waits for",
        result=f"layer {step.layer + 1}",
        because="every reason is kept",
        source="common practice, no source",
        span=task.at,
    )
