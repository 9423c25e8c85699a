"""The cheapest order of a few operations, by trying all (over sets done and what is mounted)."""

from __future__ import annotations

from binder_making.operation import Operation
from binder_making.order import Graph, Prices

Mounted = tuple[tuple[str, str, str], ...]


def cheapest(web: Graph, prices: Prices) -> float:
    """The least minutes of any order that keeps all edges of the graph."""
    machines = sorted({one.machine for one in web.operations})
    states: dict[tuple[int, Mounted], float] = {(0, tuple(("", "", "") for _ in machines)): 0.0}
    for _ in web.operations:
        following: dict[tuple[int, Mounted], float] = {}
        for (done, mounted), minutes in states.items():
            for place, one in enumerate(web.operations):
                if done >> place & 1 or any(not done >> n & 1 for n in web.before[place]):
                    continue
                there, price = _step(one, mounted, machines.index(one.machine), prices)
                key = (done | 1 << place, there)
                following[key] = min(following.get(key, minutes + price), minutes + price)
        states = following
    return min(states.values())


def _step(one: Operation, mounted: Mounted, at: int, prices: Prices) -> tuple[Mounted, float]:
    setup, holding, tool = mounted[at]
    price = 0.0
    if one.setup and one.setup != setup:
        price += prices.setups.get((one.machine, one.setup), prices.setup_min)
    if one.holding and one.holding != holding:
        price += prices.holding_min
    if one.tool and one.tool != tool:
        price += prices.tool_min
    new = (one.setup or setup, one.holding or holding, one.tool or tool)
    return (*mounted[:at], new, *mounted[at + 1 :]), price
