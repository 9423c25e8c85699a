"""A sequence to what it spends on mounting work, holding devices and tools."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field

from binder_making.operation import Operation


@dataclass(frozen=True, slots=True)
class Prices:
    """Minutes for each change within a machine.

    `setup_min` is for mounting one piece in what is there, `setups` names those that take
    longer by (machine, set-up); `holding_min` is added where chuck, collet or vice change;
    `tool_min` is for a tool. A set-up has to cost at least as much as a tool. Source of the
    figures: common practice, no source.
    """

    setup_min: float = 4.0
    holding_min: float = 6.0
    tool_min: float = 1.0
    setups: Mapping[tuple[str, str], float] = field(default_factory=dict)

    def of_setup(self, machine: str, setup: str) -> float:
        """What mounting this set-up costs; minutes."""
        return self.setups.get((machine, setup), self.setup_min)


@dataclass(frozen=True, slots=True)
class Spent:
    """Counts of mountings, of changes of the holding device and of tools, and their minutes.

    The first mounting on each machine counts, too.
    """

    setups: int
    holdings: int
    tools: int
    minutes: float


@dataclass(slots=True)
class Mounted:
    """What a machine has on it; "" for nothing yet."""

    setup: str = ""
    holding: str = ""
    tool: str = ""


def mount(one: Operation, there: Mounted) -> tuple[bool, bool, bool]:
    """Whether set-up, holding and tool change for an operation, which are then there."""
    setup = bool(one.setup) and one.setup != there.setup
    holding = bool(one.holding) and one.holding != there.holding
    tool = bool(one.tool) and one.tool != there.tool
    there.setup = one.setup or there.setup
    there.holding = one.holding or there.holding
    there.tool = one.tool or there.tool
    return setup, holding, tool


def spent(sequence: Iterable[Operation], prices: Prices) -> Spent:
    """What a sequence spends; each machine keeps what is on it while another works."""
    machines: dict[str, Mounted] = {}
    setups = holdings = tools = 0
    minutes = 0.0
    for one in sequence:
        there = machines.setdefault(one.machine, Mounted())
        setup, holding, tool = mount(one, there)
        setups += setup
        holdings += holding
        tools += tool
        minutes += prices.of_setup(one.machine, one.setup) if setup else 0.0
        minutes += (prices.holding_min if holding else 0.0) + (prices.tool_min if tool else 0.0)
    return Spent(setups, holdings, tools, minutes)
