"""Drills, reamers, taps and dies to their tables."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import Block, Column, Design, Subheading, Table
from binder_plugins.toollist.said import said

_USED = {True: "by hand", False: "in a machine"}


def cutting_sets(design: Design) -> Iterator[Block]:
    """Drills and reamers by set: the sizes as written, and how many."""
    entry = design.workshop.entry
    if entry.drills:
        columns = (Column("Set", 2), Column("Sizes", 5), Column("How many", is_figure=True))
        rows = tuple(
            ((name,), (said(runs),), (str(sum(len(run.members) for run in runs)),))
            for name, runs in entry.drills.items()
        )
        yield Subheading("Drills")
        yield Table(columns, rows)
    if entry.reamers:
        yield Subheading("Reamers")
        yield Table(
            (Column("Set", 2), Column("Sizes", 5), Column("Leaves"), Column("Used")),
            tuple(
                ((name,), (said(one.sizes),), (said(one.gives),), (_USED[one.by_hand],))
                for name, one in entry.reamers.items()
            ),
        )


def threads(design: Design) -> Iterator[Block]:
    """Which taps and which die there are of each thread."""
    taps = {tap.designation: ", ".join(tap.kinds) for tap in design.workshop.taps()}
    dies = [die.designation for die in design.workshop.dies()]
    names = tuple(dict.fromkeys((*taps, *dies)))
    if names:
        yield Subheading("Taps and dies")
        yield Table(
            (Column("Thread", 2), Column("Taps", 4), Column("Die")),
            tuple(
                ((name,), (taps.get(name, "none"),), ("yes" if name in dies else "none",))
                for name in names
            ),
        )
