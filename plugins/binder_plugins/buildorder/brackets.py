"""Brackets that a screw lines up: tightened when the screw sits in what it moves."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import Joint


def lined_up(closed: list[Joint]) -> Iterator[tuple[str, str]]:
    """The nut of a feed screw is held last: the screw in it shows where its bracket stands.

    Pairs of the joint that comes first, in its nut or in what it moves, and that of the bracket.
    """
    for lead in closed:
        if lead.kind != "leads" or len(lead.items) != 2:
            continue
        screw, bracket = lead.items
        ends = [
            one
            for one in closed
            if one.kind in ("swivels", "runs_in")
            and screw in one.items
            and bracket not in one.items
        ]
        holds = [one for one in closed if one.kind == "screwed" and bracket in one.items]
        for hold in holds if ends else ():
            yield from ((one.name, hold.name) for one in (lead, *ends))
