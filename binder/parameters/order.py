"""Names and what each follows from to an order of working them out, and the circles."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from contextlib import suppress
from graphlib import CycleError, TopologicalSorter

from binder.parameters.knots import knots

Follows = Mapping[str, Sequence[str]]


def ordered(follows: Follows) -> tuple[tuple[str, ...], tuple[tuple[str, ...], ...]]:
    """The names that can be worked out, each after what it follows from, and the circles.

    There is one circle for each knot of names that all follow from one another; what hangs
    on a circle without being in a knot is in neither. A circle begins with its first name
    in the order of `follows`, and each name follows from the next. Linear in the number of
    names and links, without recursion.
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
    left = {
        name: tuple(link for link in links if link not in done)
        for name, links in follows.items()
        if name not in done
    }
    rank = {name: place for place, name in enumerate(left)}
    circles = (_circle(frozenset(knot), left, rank) for knot in knots(left))
    return tuple(sorted(circles, key=lambda circle: rank[circle[0]]))


def _circle(knot: frozenset[str], links: Follows, rank: Mapping[str, int]) -> tuple[str, ...]:
    """A circle inside a knot: from its first name along each one's first link that stays in it."""
    name = min(knot, key=rank.__getitem__)
    path: dict[str, None] = {}
    while name not in path:
        path[name] = None
        name = next(link for link in links[name] if link in knot)
    walked = list(path)
    members = walked[walked.index(name) :]
    first = min(range(len(members)), key=lambda at: rank[members[at]])
    return tuple(members[first:] + members[:first])
