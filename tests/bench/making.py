"""Processor time to plan the work of 200 and of 1,600 parts: edges, order, network, evenings.

Fifteen operations to a part, in memory already; the rules are loaded. Measured in turns in
one process; the least of several counts. The calls of functions tell the growth without the
machine's caches and neighbours.
"""

from __future__ import annotations

import gc
import time
from functools import partial

from binder_making.network import Activity, critical_path
from binder_making.operation import Operation
from binder_making.order import Order, in_order
from binder_making.precedence import edges, rules
from binder_making.sessions import Job, evenings
from tests.bench.calls import calls_of
from tests.making.order.many_parts import many_parts

ROUNDS = 5
SIZES = (200, 1600)


def main() -> None:
    """Measures and prints."""
    gc.disable()  # as the command does
    rules()
    works = [many_parts(size) for size in SIZES]
    times: list[list[float]] = [[] for _ in works]
    for _ in range(ROUNDS):
        for work, taken in zip(works, times, strict=True):
            start = time.process_time()
            planned(work)
            taken.append(time.process_time() - start)
    few, many = (min(taken) for taken in times)
    print(f"{SIZES[0]} parts, {len(works[0]):,} operations: {few:.2f} s (target: at most 1 s)")
    print(f"{SIZES[1]:,} parts: {many / few:.1f} times as long (target: at most 9)")
    calls = [calls_of(partial(planned, work)) for work in works]
    print(f"{SIZES[1]:,} parts: {calls[1] / calls[0]:.2f} times as many calls")


def planned(work: list[Operation]) -> int:
    """The whole plan of a set of operations, and how many evenings it takes."""
    found = edges(work)
    order = in_order(work, found)
    if not isinstance(order, Order):
        raise TypeError("the generated parts contradict the rules")
    waits: dict[str, list[str]] = {}
    for edge in found:
        waits.setdefault(edge.after, []).append(edge.before)
    critical_path([Activity(one.id, 5, tuple(waits.get(one.id, ()))) for one in work])
    by_id = {one.id: one for one in work}
    jobs = [_job(by_id[name], waits) for name in order.sequence]
    return len(evenings(jobs))


def _job(one: Operation, waits: dict[str, list[str]]) -> Job:
    return Job(
        id=one.id,
        minutes=5,
        family=one.holding,
        setup=one.setup,
        tools=(one.tool,) if one.tool else (),
        is_risky=one.act in {"tap", "part-off"},
        after=tuple(waits.get(one.id, ())),
    )


if __name__ == "__main__":
    main()
