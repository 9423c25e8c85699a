"""A recess on the axis: opened near its floor by what enters, then bored square to size."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING

from binder_plugins.operations.blind_bores import FLOOR_MM, POINT_RISE
from binder_plugins.operations.hole_tools import GROUND, SQUARE, faces_floor

if TYPE_CHECKING:
    from binder_plugins.operations.facts import Act
    from binder_plugins.operations.work import Work
    from binder_solid.facts import FormFact, Located

# What boring has left to take of the diameter, in mm. Common practice, no source.
_WALL = 0.5
_HOLES = frozenset({"drilled", "reamed", "bored", "tapped"})


def recess_acts(
    work: Work, form: FormFact, one: Located, lathe: str, end: str, tags: tuple[str, ...]
) -> Iterator[Act]:
    """No boring tool starts from a hole that it does not enter: a cutter opens it before."""
    across, deep = one.diameter or 1.0, one.depth or 0.0
    hole = _hole(form, across)
    entered = hole
    opener = _opener(work, across, deep, hole)
    if opener is not None:
        tool, size, to = opener
        entered = size
        yield work.act(
            "drill",
            f"open ⌀{work.mm(size)}, {work.mm(to)} deep, for the boring tool to enter",
            machine=lathe,
            feature=one.name,
            tool=tool,
            size=size,
            deep=to,
            start=hole,
            end=end,
            tags=tags,
        )
    yield work.act(
        "bore",
        f"recess {one.note.removeprefix('recess ')}",
        machine=lathe,
        feature=one.name,
        tool=_boring_tool(work, entered, deep, (across, hole)),
        size=across,
        deep=deep,
        start=entered,
        end=end,
        tags=tags,
    )


def _hole(form: FormFact, across: float) -> float:
    """The widest hole on the axis that is there before the recess, in mm; 0 in the solid."""
    return max(
        (
            other.diameter or 0.0
            for other in form.located
            if other.kind in _HOLES
            and len(other.spots) == 1
            and other.face != "across"
            and (other.diameter or 0.0) < across
        ),
        default=0.0,
    )


def _opener(work: Work, across: float, deep: float, hole: float) -> tuple[str, float, float] | None:
    """The widest owned slot drill, or drill, that leaves something to bore, and how deep it goes.

    None where the hole that is there lets the boring tool in, or where nothing owned is wider.
    """
    if _bars(work, hole, deep, (across, hole)):
        return None
    owned = work.design.workshop.owned
    cutters = [one for one in owned.end_cutters if one.plunges and hole < one.mm <= across - _WALL]
    if cutters and deep > FLOOR_MM:
        cutter = max(cutters, key=lambda one: one.mm)
        return f"{cutter.name} slot drill", float(cutter.mm), deep - FLOOR_MM
    drills = [
        (float(one.mm), one.name)
        for one in owned.drills
        if hole < one.mm <= across - _WALL
        and deep - FLOOR_MM > POINT_RISE * (float(one.mm) - hole) / 2
    ]
    if not drills:
        return None
    size, name = max(drills)
    to = deep - FLOOR_MM - POINT_RISE * (size - hole) / 2
    return f"{name} drill", size, to


def _bars(work: Work, entered: float, deep: float, floor: tuple[float, float]) -> list[float]:
    """The least bores of the owned bars that go into a hole, reach its floor and face it.

    The `floor` is told by its diameter and that of the hole in its middle, in mm.
    """
    return [
        bar.least_bore.mm
        for bar in work.design.workshop.entry.cutters.boring_bars
        if bar.least_bore.mm <= entered
        and bar.reach.mm >= deep
        and faces_floor(bar.least_bore.mm, *floor)
    ]


def _boring_tool(work: Work, entered: float, deep: float, floor: tuple[float, float]) -> str:
    found = _bars(work, entered, deep, floor)
    if found:
        return f"boring bar (from ⌀{work.mm(max(found))}){SQUARE}"
    return f"{GROUND}{SQUARE}"
