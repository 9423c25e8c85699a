"""A graph to the tables that the search reads: places as numbers, names as numbers."""

from __future__ import annotations

from dataclasses import dataclass

from binder_making.order.cost import Prices
from binder_making.order.graph import Graph

NONE = 0  # the number of the empty name


@dataclass(frozen=True, slots=True)
class Shop:
    """For each operation its machine, its station (one set-up at one machine), holding, tool.

    Operations without a set-up form one station for each machine. `members` are the
    operations of a station, `price` what its mounting costs (0 for none).
    """

    web: Graph
    machine: tuple[int, ...]
    station: tuple[int, ...]
    holding: tuple[int, ...]
    tool: tuple[int, ...]
    members: tuple[tuple[int, ...], ...]
    station_machine: tuple[int, ...]
    station_holding: tuple[int, ...]
    price: tuple[float, ...]
    machines: int


class _Numbers:
    """Names to numbers in the order of their first coming; "" is 0."""

    def __init__(self) -> None:
        self.by_name: dict[str, int] = {"": NONE}

    def of(self, name: str) -> int:
        return self.by_name.setdefault(name, len(self.by_name))


def shop(web: Graph, prices: Prices) -> Shop:
    """The tables of a graph."""
    machines, holdings, tools = _Numbers(), _Numbers(), _Numbers()
    stations: dict[tuple[str, str], int] = {}
    members: list[list[int]] = []
    machine, station, holding, tool = [], [], [], []
    of_station: list[tuple[int, int, float]] = []
    for place, one in enumerate(web.operations):
        key = (one.machine, one.setup)
        number = stations.setdefault(key, len(stations))
        machine.append(machines.of(one.machine))
        holding.append(holdings.of(one.holding))
        if number == len(members):
            members.append([])
            cost = prices.of_setup(*key) if one.setup else 0.0
            of_station.append((machine[-1], holding[-1], cost))
        members[number].append(place)
        station.append(number)
        tool.append(tools.of(one.tool))
    return Shop(
        web,
        tuple(machine),
        tuple(station),
        tuple(holding),
        tuple(tool),
        tuple(tuple(row) for row in members),
        tuple(one[0] for one in of_station),
        tuple(one[1] for one in of_station),
        tuple(one[2] for one in of_station),
        len(machines.by_name),
    )
