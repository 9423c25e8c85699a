"""Names and what each follows from to an order of working them out, and the circles."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from contextlib import suppress
from graphlib import CycleError, TopologicalSorter

Follows = Mapping[str, Sequence[str]]


def ordered(follows: Follows) -> tuple[tuple[str, ...], tuple[tuple[str, ...], ...]]:
    """The names that can be worked out, each after what it follows from, and the circles.

    What hangs on a circle without being in it is in neither. Each circle begins with its
    first name in the order of `follows`, and each name follows from the next. Linear in
    the number of names and links, without recursion.
    """
    sorter = TopologicalSorter(follows)
    with suppress(CycleError):  # what is outside circles still comes out below
        sorter.prepare()
    done: list[str] = []
    while ready := sorter.get_ready():
        done.extend(ready)
        sorter.done(*ready)
    return tuple(done), _circles(follows, frozenset(done))


def _circles(follows: Follows, done: frozenset[str]) -> tuple[tuple[str, ...], ...]:
    """One circle for each knot of names that are left: along each name's first open link."""
    links = {
        name: next(link for link in follows[name] if link not in done)
        for name in follows
        if name not in done
    }
    rank = {name: place for place, name in enumerate(links)}
    seen: dict[str, str] = {}
    circles = []
    for start in links:
        name = start
        while name not in seen:
            seen[name] = start
            name = links[name]
        if seen[name] == start:
            circles.append(_circle(name, links, rank))
    return tuple(circles)


def _circle(name: str, links: Mapping[str, str], rank: Mapping[str, int]) -> tuple[str, ...]:
    members = [name]
    while (name := links[name]) != members[0]:
        members.append(name)
    first = min(range(len(members)), key=lambda at: rank[members[at]])
    return tuple(members[first:] + members[:first])
