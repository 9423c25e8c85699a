"""Set-ups of parts that stay clamped to one another: nothing else comes between them.

What is clamped in one set-up and taken apart in a later one fills the vice till then, and what
it was clamped for is lost where it is let go.
"""

from __future__ import annotations

from dataclasses import replace
from itertools import pairwise
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator, Mapping, Sequence

    from binder_plugins.operations.facts import Route, SetUp
    from binder_plugins.operations.jobs import Piece
    from binder_plugins.operations.one_setting import Pair


def clamped_on(setups: Sequence[SetUp]) -> Iterator[tuple[SetUp, ...]]:
    """The set-ups from each clamping of a stack to that in which it is taken apart."""
    start: int | None = None
    for number, setup in enumerate(setups):
        for act in setup.acts:
            if act.act == "clamp-stack" and start is None:
                start = number
            elif act.act == "separate" and start is not None:
                if number > start:
                    yield tuple(setups[start : number + 1])
                start = None


def held(
    pieces: Mapping[str, Piece], routes: Iterable[Route], tapers: Iterable[Pair]
) -> dict[str, Piece]:
    """The pieces, each that leaves a stack clamped with the one that follows it at once.

    So does one that leaves the top-slide set for the other half of a taper.
    """
    found = dict(pieces)
    for pair in tapers:
        first, second = pair.first.piece, pair.second.piece
        if first in found and second in found:
            found[first] = replace(found[first], then=second)
    for route in routes:
        for run in clamped_on(route.setups):
            names = [f"{route.subject} {setup.number}" for setup in run]
            for one, other in pairwise(names):
                if one in found and other in found:
                    found[one] = replace(found[one], then=other)
    return found


def together(
    names: Sequence[str], waits: Mapping[str, Sequence[str]], pieces: Mapping[str, Piece]
) -> list[str]:
    """The pieces in order, those of a stack that stays clamped next to one another.

    `waits` names what each piece waits for. What stood between goes before the stack where that
    waits for it, else behind it; both ways at once nothing is moved. Cost: the stretch between
    the first and the last of a stack.
    """
    found = list(names)
    for run in _runs(found, pieces):
        first, last = found.index(run[0]), found.index(run[-1])
        # What is turned for the first of them stays in the chuck till then.
        while first and pieces[found[first - 1]].goes_on:
            first -= 1
            run.insert(0, found[first])
        found[first : last + 1] = _closed(found[first : last + 1], run, waits, pieces)
    return found


def _runs(names: Sequence[str], pieces: Mapping[str, Piece]) -> Iterator[list[str]]:
    led = {pieces[name].then for name in names}
    for name in names:
        if pieces[name].then and name not in led:
            run = [name]
            while pieces[run[-1]].then:
                run.append(pieces[run[-1]].then)
            yield run


def _closed(
    window: list[str],
    run: list[str],
    waits: Mapping[str, Sequence[str]],
    pieces: Mapping[str, Piece],
) -> list[str]:
    """A stretch of work with its run in one piece, or as it is where that cannot be."""
    between = [name for name in window if name not in run]
    follower = {one: other for one, other in pairwise(window) if pieces[one].goes_on}
    needed, asked = set[str](), list(run)
    while asked:
        name = asked.pop()
        for one in (*waits[name], *([follower[name]] if name in follower else [])):
            if one in between and one not in needed:
                needed.add(one)
                asked.append(one)
    waiting = set(run)
    for name in between:
        if waiting.intersection(waits[name]):
            waiting.add(name)
    if needed & waiting:
        return window
    early = [name for name in between if name in needed]
    return [*early, *run, *(name for name in between if name not in needed)]
