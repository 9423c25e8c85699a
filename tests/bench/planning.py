"""Processor time of the plugin that plans the work, for whole specs of 200 and 1,600 parts.

The specs are compiled as far as a check goes; then the routes of all parts, and the order of
all work with its evenings, are planned again in turns in one process, and the least of
several counts. The calls of functions tell the growth without the machine's caches and
neighbours.
"""

from __future__ import annotations

import gc
import tempfile
import time
from collections.abc import Callable
from functools import partial
from pathlib import Path

from binder.api import Contribution, Design, Severity
from binder.compiler import Job, Phase, compiled
from binder.host import Host
from binder_plugins.operations.facts import Route
from binder_plugins.operations.planning import plan_work
from binder_plugins.operations.routes import plan_routes
from tests.bench.calls import calls_of
from tests.bench.workpieces import workpieces

ROUNDS = 3
SIZES = (200, 1600)


def main() -> None:
    """Measures and prints."""
    gc.disable()  # as the command does
    host = Host.load()
    designs = [_design(size, host) for size in SIZES]
    steps = (plan_routes, plan_work)
    times = [[[_seconds(step, one) for step in steps] for one in designs] for _ in range(ROUNDS)]
    few, many = (_least([turn[number] for turn in times]) for number in range(len(SIZES)))
    acts = sum(len(route.acts) for route in designs[0].facts.all(Route))
    print(f"{SIZES[0]} parts, {acts:,} acts: {sum(few):.2f} s (target: at most 1 s)")
    print(f"  routes {few[0]:.2f} s, order and evenings {few[1]:.2f} s")
    print(f"{SIZES[1]:,} parts: {sum(many) / sum(few):.1f} times as long (target: at most 9)")
    calls = [sum(calls_of(partial(step, one)) for step in steps) for one in designs]
    print(f"{SIZES[1]:,} parts: {calls[1] / calls[0]:.2f} times as many calls")


def _least(turns: list[list[float]]) -> list[float]:
    """The least of all turns for each step."""
    return [min(taken) for taken in zip(*turns, strict=True)]


def _design(size: int, host: Host) -> Design:
    with tempfile.TemporaryDirectory() as folder:
        spec = Path(folder, "workpieces.yaml")
        spec.write_text(workpieces(size), encoding="utf-8")
        outcome = compiled(Job(spec), host, Phase.CHECK)
    bad = [one for one in outcome.findings if one.code.severity is not Severity.ADVICE]
    if outcome.design is None or bad:
        raise ValueError(f"the spec of {size} parts does not check: {bad[:1]}")
    return outcome.design


def _seconds(step: Callable[[Design], Contribution], design: Design) -> float:
    start = time.process_time()
    step(design)
    return time.process_time() - start


if __name__ == "__main__":
    main()
