"""Steps of plugins in the order of the facts that they need and give."""

from __future__ import annotations

from collections.abc import Iterable
from graphlib import CycleError, TopologicalSorter

from binder.api.contributions import PlanStep
from binder.design import Fact
from binder.diagnostics import Diagnostic, Span
from binder.host import codes
from binder.host.plugin import Plugin

Owned = tuple[Plugin, PlanStep]


def ordered_steps(plugins: Iterable[Plugin]) -> tuple[tuple[Owned, ...], tuple[Diagnostic, ...]]:
    """All steps in a runnable order; equal inputs give equal orders, whatever their sequence."""
    owned = sorted(
        ((plugin, step) for plugin in plugins for step in plugin.steps),
        key=lambda pair: (pair[1].name, pair[0].name),
    )
    givers: dict[type[Fact], list[int]] = {}
    for index, (_, step) in enumerate(owned):
        for fact in step.gives:
            givers.setdefault(fact, []).append(index)
    findings = [finding for pair in owned for finding in _unmet(pair, givers)]
    if findings:
        return (), tuple(findings)
    return _sorted(owned, givers)


def _unmet(pair: Owned, givers: dict[type[Fact], list[int]]) -> Iterable[Diagnostic]:
    plugin, step = pair
    for fact in step.needs:
        if fact not in givers:
            yield codes.STEP_ORDER.at(
                _place(plugin), f"step '{step.name}' needs {fact.__name__}, which no plugin gives"
            )


def _sorted(
    owned: list[Owned], givers: dict[type[Fact], list[int]]
) -> tuple[tuple[Owned, ...], tuple[Diagnostic, ...]]:
    sorter: TopologicalSorter[int] = TopologicalSorter()
    for index, (_, step) in enumerate(owned):
        waits = [giver for fact in (*step.needs, *step.after) for giver in givers.get(fact, ())]
        sorter.add(index, *(giver for giver in waits if giver != index))
    try:
        return tuple(owned[index] for index in _stable(sorter)), ()
    except CycleError as error:
        ring = [owned[index][1].name for index in error.args[1]]
        plugin = owned[error.args[1][0]][0]
        message = f"steps wait for one another: {' -> '.join(ring[:7])}"
        return (), (codes.STEP_ORDER.at(_place(plugin), message),)


def _stable(sorter: TopologicalSorter[int]) -> Iterable[int]:
    sorter.prepare()
    while sorter.is_active():
        ready = sorted(sorter.get_ready())
        yield from ready
        sorter.done(*ready)


def _place(plugin: Plugin) -> Span:
    return Span(f"<plugin {plugin.name} of {plugin.distribution}>", 0, 0, 0, 0)
