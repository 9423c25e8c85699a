"""The tables of a shop to a sequence: station after station, each done whole where it can be.

A station is *whole* when nothing outside of it is still waited for. The next station is, in
this turn: one that is mounted; a whole one under the holding device that is mounted; a whole
one that asks for another device, that with the most stations waiting first; one that is not
whole. A station that would push an unfinished one off its machine comes after the others of
its kind. Of equals that with the tool in the holder, then the first in the list.
"""

from __future__ import annotations

import heapq
from dataclasses import dataclass
from enum import IntEnum

from binder_making.order.shop import NONE, Shop

_LOOK_AT = 6


class Style(IntEnum):
    """Ways to choose among stations that cost the same."""

    FIRST = 0
    SAME_TOOL = 1
    NEW_WORK = 2


@dataclass(slots=True)
class _State:
    """What is on a machine."""

    station: int = -1
    holding: int = NONE
    tool: int = NONE


class Dispatch:
    """One pass over a shop; `sequence` has the places when `run` has returned."""

    def __init__(self, shop: Shop, style: Style) -> None:
        self.shop = shop
        self.style = style
        self.sequence: list[int] = []
        self._waits = [len(row) for row in shop.web.before]
        self._outside = [0] * len(shop.members)
        self._left = [len(row) for row in shop.members]
        self._ready: list[dict[int, list[int]]] = [{} for _ in shop.members]
        self._ready_count = [0] * len(shop.members)
        self._by_tool: list[dict[int, int]] = [{} for _ in shop.members]
        self._machines = [_State() for _ in range(shop.machines)]
        # Stations that are whole, by machine and holding; with anything ready; that cost nothing.
        self._whole: dict[tuple[int, int], list[int]] = {}
        self._open: list[int] = []
        self._free: list[int] = []
        self._fill()

    def _fill(self) -> None:
        shop = self.shop
        for place, row in enumerate(shop.web.before):
            station = shop.station[place]
            tools = self._by_tool[station]
            tools[shop.tool[place]] = tools.get(shop.tool[place], 0) + 1
            self._outside[station] += sum(1 for one in row if shop.station[one] != station)
        for place, waits in enumerate(self._waits):
            if not waits:
                self._offer(place)
        for station, outside in enumerate(self._outside):
            if not outside:
                self._push_whole(station)

    def _offer(self, place: int) -> None:
        """An operation that nothing is waited for any more."""
        station, tool = self.shop.station[place], self.shop.tool[place]
        heapq.heappush(self._ready[station].setdefault(tool, []), place)
        self._ready_count[station] += 1
        if self._ready_count[station] == 1:
            heapq.heappush(self._open if self.shop.price[station] else self._free, station)

    def _push_whole(self, station: int) -> None:
        key = (self.shop.station_machine[station], self.shop.station_holding[station])
        heapq.heappush(self._whole.setdefault(key, []), station)

    def run(self) -> list[int]:
        """Does all operations; the graph has no ring, so there is always a next."""
        station = -1
        while len(self.sequence) < len(self.shop.station):
            station = self._next_station(station)
            self._work(station)
        return self.sequence

    def _work(self, station: int) -> None:
        """Everything at a station that can be done now."""
        state = self._machines[self.shop.station_machine[station]]
        if self.shop.price[station] or state.station < 0:
            state.station = station
        state.holding = self.shop.station_holding[station] or state.holding
        while self._ready_count[station]:
            tool = self._next_tool(station, state.tool)
            state.tool = tool or state.tool
            self._do(heapq.heappop(self._ready[station][tool]), station, tool)

    def _next_tool(self, station: int, there: int) -> int:
        """The tool in the holder, else the one of which least still has to wait."""
        ready = self._ready[station]
        if ready.get(there):
            return there
        asked = self._by_tool[station]
        return min(
            (tool for tool, places in ready.items() if places),
            key=lambda tool: (tool != NONE, asked[tool] - len(ready[tool]), ready[tool][0]),
        )

    def _do(self, place: int, station: int, tool: int) -> None:
        self.sequence.append(place)
        self._ready_count[station] -= 1
        self._left[station] -= 1
        self._by_tool[station][tool] -= 1
        for later in self.shop.web.after[place]:
            other = self.shop.station[later]
            if other != station:
                self._outside[other] -= 1
                if not self._outside[other]:
                    self._push_whole(other)
            self._waits[later] -= 1
            if not self._waits[later]:
                self._offer(later)

    def _next_station(self, last: int) -> int:
        mounted = self._mounted(last)
        if mounted >= 0:
            return mounted
        whole = self._whole_station(last)
        return whole if whole >= 0 else self._open_station()

    def _mounted(self, last: int) -> int:
        """A station that is on its machine, or costs nothing, and has something ready."""
        here = self.shop.station_machine[last] if last >= 0 else 0
        machines = sorted(range(self.shop.machines), key=lambda one: one != here)
        for machine in machines:
            station = self._machines[machine].station
            if station >= 0 and self._ready_count[station]:
                return station
        while self._free and not self._ready_count[self._free[0]]:
            heapq.heappop(self._free)
        return self._free[0] if self._free else -1

    def _whole_station(self, last: int) -> int:
        """The best whole station, or -1."""
        here = self.shop.station_machine[last] if last >= 0 else 0
        choices = []
        for (machine, holding), waiting in self._whole.items():
            while waiting and not self._left[waiting[0]]:
                heapq.heappop(waiting)
            if waiting:
                state = self._machines[machine]
                changes = holding not in (NONE, state.holding)
                count = len(waiting) if changes else 0
                key = (self._pushes_off(machine), changes, machine != here, -count, waiting[0])
                choices.append((key, machine, waiting))
        if not choices:
            return -1
        _, machine, waiting = min(choices)
        return self._of_equals(waiting, self._machines[machine].tool)

    def _of_equals(self, waiting: list[int], tool: int) -> int:
        """Of the first few that wait, the one that begins with the tool in the holder."""
        if self.style is Style.FIRST:
            return waiting[0]
        first = [one for one in waiting[:_LOOK_AT] if self._left[one]]
        if self.style is Style.SAME_TOOL:
            return min(first, key=lambda one: (not self._ready[one].get(tool), one))
        return min(first, key=lambda one: (len(self._by_tool[one]), one))

    def _pushes_off(self, machine: int) -> bool:
        station = self._machines[machine].station
        return station >= 0 and self._left[station] > 0

    def _open_station(self) -> int:
        """A station that has something ready, though it must be left again."""
        while not self._ready_count[self._open[0]]:
            heapq.heappop(self._open)
        first = [one for one in self._open[:_LOOK_AT] if self._ready_count[one]]
        return min(first, key=self._regret)

    def _regret(self, station: int) -> tuple[bool, bool, float, int, int]:
        """What is lost by mounting a station that will be mounted again: its own price, too."""
        machine = self.shop.station_machine[station]
        holding = self.shop.station_holding[station]
        changes = holding not in (NONE, self._machines[machine].holding)
        waits = self._left[station] - self._ready_count[station]
        return (self._pushes_off(machine), changes, self.shop.price[station], waits, station)
