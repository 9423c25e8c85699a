"""The plainest set-ups: what is done at the bench, and holes drilled at their marks."""

from __future__ import annotations

from typing import TYPE_CHECKING

from binder.api import Fabrication
from binder_plugins.operations import words
from binder_plugins.operations.along import told_along
from binder_plugins.operations.bench import bench_vice, drill_for, place_of, vice_for
from binder_plugins.operations.facts import Act, Grip, SetUp
from binder_plugins.operations.hole_kinds import Where
from binder_plugins.operations.holes import hole_acts
from binder_solid.facts import FormFact, JoinedFact

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

    from binder_plugins.operations.work import Work
    from binder_solid.facts import Located


def at_bench(work: Work, on: str, datum: str, acts: Sequence[Act]) -> SetUp:
    """Acts in the bench vice, or by hand where there is none; `on` says what is held."""
    vice = bench_vice(work.design.workshop)
    return SetUp(1, "bench", "", Grip(vice or "by hand", "bench", on), datum, tuple(acts))


def drilled(work: Work, holes: Sequence[Located]) -> SetUp:
    """Holes at their marks, in a vice on the drilling machine."""
    workshop = work.design.workshop
    largest = max(one.diameter or 0.0 for one in holes)
    machine = drill_for(workshop, min(largest, 13.0))
    joined = work.design.facts.about(JoinedFact, work.name)
    size = work.form.size if work.form is not None else joined.size if joined else (largest,)
    acts = list(_marks(work, holes))
    for one in holes:
        deep = one.depth or max(_through(one, size, joined), 1.0)
        where = Where(machine, deep, first=in_pieces(work, one))
        acts += told_along(work, one, hole_acts(work, one, where))
    vice = vice_for(workshop)
    grip = Grip(vice or "clamps", "vice", "the piece")
    return SetUp(
        1,
        place_of(workshop, machine),
        machine,
        grip,
        "the marks",
        tuple(acts),
        minutes=words.holding_min("vice"),
    )


def _through(one: Located, size: Sequence[float], joined: JoinedFact | None) -> float:
    """What a hole goes through in mm: of joined pieces the whole of its way, else the thinnest."""
    for found in joined.located if joined is not None else ():
        if found.name == one.name and len(size) == len(found.frame.z):
            return size[max(range(len(size)), key=lambda n: abs(found.frame.z[n]))]
    return min(size)


def _marks(work: Work, holes: Sequence[Located]) -> Iterator[Act]:
    """The marks that are drilled to; a hole that the pieces bring with them is its own mark."""
    for one in holes:
        if in_pieces(work, one):
            continue
        feature = work.feature(one.name)
        at = getattr(getattr(feature.entry if feature else None, "at", None), "text", "")
        place = f" {at}" if at else ""
        yield work.act(
            "mark-out",
            f"mark the {one.name.replace('_', ' ')}{place}, in the middle of the width, and pop it",
            feature=one.name,
            amount=float(len(one.spots)),
        )


def in_pieces(work: Work, one: Located) -> float:
    """The size in mm of a hole that the pieces of a fabrication bring with them, else 0."""
    pieces = work.item.pieces if isinstance(work.item, Fabrication) else ()
    sizes = [
        found.diameter
        for piece in pieces
        if (form := work.design.facts.about(FormFact, str(piece.item))) is not None
        for found in form.located
        if found.name == one.name and found.kind == "drilled" and found.diameter
    ]
    return min(sizes, default=0.0)
