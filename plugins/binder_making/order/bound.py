"""A graph and its sequence to the least that any order must spend.

Each set-up, holding device and tool is mounted once at least. It is mounted again where a
way through the graph leaves it, passes another of the same machine, and comes back: the
longest such way is counted for each that the sequence mounts more than once (the others need
no proof). Tools are also counted by set-up: a tool stays in the holder from one set-up to the
next at most once for each mounting.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass

from binder_making.operation import Operation
from binder_making.order.cost import Prices, Spent
from binder_making.order.graph import Graph

# In longer lists each tool is counted once, which is a bound, too: there are many tools, and
# what each set-up asks for says more.
_LONG = 1000
Key = tuple[str, str]
# What each operation, by its place, has mounted; None for what needs nothing.
Names = Sequence[Key | None]


@dataclass(frozen=True, slots=True)
class _Visits:
    """The mountings of one name: where they begin and end in the sequence, and how many."""

    first: int
    last: int
    count: int


def _setup(one: Operation) -> Key | None:
    return (one.machine, one.setup) if one.setup else None


def _holding(one: Operation) -> Key | None:
    return (one.machine, one.holding) if one.holding else None


def _tool(one: Operation) -> Key | None:
    return (one.machine, one.tool) if one.tool else None


def least(web: Graph, sequence: list[int], prices: Prices) -> Spent:
    """The lower bound: each count by itself, and the minutes, hold for every order."""
    setups = _needed(web, sequence, _names(web, _setup))
    holdings = _needed(web, sequence, _names(web, _holding))
    tools = _needed(web, sequence, _names(web, _tool), _LONG)
    minutes = sum(count * prices.of_setup(*key) for key, count in setups.items())
    minutes += prices.holding_min * sum(holdings.values())
    count = sum(tools.values())
    minutes += prices.tool_min * _tools_by_setup(web, sequence, setups, tools, prices)
    return Spent(sum(setups.values()), sum(holdings.values()), count, minutes)


def _names(web: Graph, naming: Callable[[Operation], Key | None]) -> Names:
    return [naming(one) for one in web.operations]


def _needed(web: Graph, sequence: list[int], names: Names, longest: int = 0) -> dict[Key, int]:
    """How often each name has to be mounted at least; 1 is said in lists over `longest`, if any."""
    is_short = not longest or len(sequence) <= longest
    return {
        key: _forced(web, sequence[one.first : one.last + 1], key, names)
        if one.count > 1 and is_short
        else 1
        for key, one in _visits(sequence, names).items()
    }


def _visits(sequence: list[int], names: Names) -> dict[Key, _Visits]:
    places: dict[Key, tuple[int, int, int]] = {}
    there: dict[str, Key] = {}
    for number, place in enumerate(sequence):
        key = names[place]
        if key is None:
            continue
        machine = key[0]
        first, _, count = places.get(key, (number, number, 0))
        places[key] = (first, number, count + (there.get(machine) != key))
        there[machine] = key
    return {key: _Visits(*found) for key, found in places.items()}


def _forced(web: Graph, stretch: Iterable[int], key: Key, names: Names) -> int:
    """The most mountings of a name on one way through the stretch of the sequence."""
    here: dict[int, int] = {}
    away: dict[int, int] = {}
    most = 1
    for place in stretch:
        name = names[place]
        earlier = web.before[place]
        on = max((here[one] for one in earlier if one in here), default=0)
        off = max((away[one] for one in earlier if one in away), default=0)
        if name == key:
            here[place] = max(on, off + 1, 1)
            most = max(most, here[place])
        elif name is not None and name[0] == key[0]:
            if on or off:
                away[place] = max(on, off)
        else:
            if on:
                here[place] = on
            if off:
                away[place] = off
    return most


def _tools_by_setup(
    web: Graph,
    sequence: list[int],
    setups: dict[Key, int],
    tools: dict[Key, int],
    prices: Prices,
) -> int:
    """The least tool changes beside the least mountings of set-ups.

    Each set-up asks for each of its tools, again where a way within it leaves the tool and
    comes back; a tool that ends one set-up and begins the next is saved. A further mounting
    saves two tools at the most, and costs no less. Nothing of this is claimed for a machine
    with a set-up that is cheaper than two tools, or with tools outside of any set-up.
    """
    count = 0
    asked = _asked(web, sequence)
    for machine, places in _by_machine(web).items():
        alone = sum(times for key, times in tools.items() if key[0] == machine)
        mountings = {key: times for key, times in setups.items() if key[0] == machine}
        is_cheap = any(prices.of_setup(*key) < 2 * prices.tool_min for key in mountings)
        if is_cheap or any(not web.operations[place].setup for place in places):
            count += alone
            continue
        saved = min(max(sum(mountings.values()) - 1, 0), _handed_on(web, places, setups))
        count += max(alone, asked[machine] - saved)
    return count


def _asked(web: Graph, sequence: list[int]) -> dict[str, int]:
    """How often the set-ups of each machine ask for a tool, each set-up by itself."""
    stretches: dict[Key, list[int]] = {}
    for place in sequence:
        key = _setup(web.operations[place])
        if key is not None:
            stretches.setdefault(key, []).append(place)
    tools = _names(web, _tool)
    asked: dict[str, int] = {}
    for (machine, _), stretch in stretches.items():
        named = [tools[place] for place in stretch]
        for tool in dict.fromkeys(one for one in named if one):
            again = named.count(tool) > 1
            times = _forced(web, stretch, tool, tools) if again else 1
            asked[machine] = asked.get(machine, 0) + times
    return asked


def _by_machine(web: Graph) -> dict[str, list[int]]:
    """The operations with a tool on each machine."""
    found: dict[str, list[int]] = {}
    for place, one in enumerate(web.operations):
        if one.tool:
            found.setdefault(one.machine, []).append(place)
    return found


def _handed_on(web: Graph, places: list[int], setups: dict[Key, int]) -> int:
    """The most tools that can stay in the holder from one set-up to the next.

    A set-up that is mounted more than once may begin and end with any of its tools, each time.
    """
    begins: dict[str, int] = {}
    ends: dict[str, int] = {}
    for side, counts in ((web.before, begins), (web.after, ends)):
        seen: set[tuple[Key | None, str]] = set()
        for place in places:
            one = web.operations[place]
            key = _setup(one)
            times = setups[key] if key else 0
            is_free = times > 1 or not any(_bars(one, web.operations[n]) for n in side[place])
            if is_free and (key, one.tool) not in seen:
                seen.add((key, one.tool))
                counts[one.tool] = counts.get(one.tool, 0) + times
    return sum(min(count, ends.get(tool, 0)) for tool, count in begins.items())


def _bars(one: Operation, neighbour: Operation) -> bool:
    """Whether a neighbour in the graph puts another tool before, or after, in one set-up."""
    has_other = bool(neighbour.tool) and neighbour.tool != one.tool
    return has_other and _setup(one) == _setup(neighbour)
