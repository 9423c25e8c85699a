"""The stub that tells an inside gap: faced at the lathe till it just goes in, while all stands."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from binder_plugins.operations.bench import lathe_for, place_of, round_holder
from binder_plugins.operations.closing_piece import gaps_of
from binder_plugins.operations.facts import Grip, SetUp
from binder_plugins.operations.words import holding_min

if TYPE_CHECKING:
    from collections.abc import Sequence

    from binder.api import TogetherFact
    from binder_plugins.operations.closing_piece import Gap
    from binder_plugins.operations.facts import Act
    from binder_plugins.operations.rows import Hole
    from binder_plugins.operations.work import Work

# How much thicker than the bores a stub is, so that it bears on the faces round them, and how
# thin it may be, so that its ends are faced square, both in mm; how often it is tried. Common
# practice, no source.
_OVER_MM, _LEAST_MM, _TRIES = 4.0, 8.0, 3
_FACED, _TRUE = "the end that is faced already", "the other end square to the stub"


def stubs_faced(fact: TogetherFact, work: Work, rows: Sequence[Sequence[Hole]]) -> SetUp | None:
    """Each stub faced to its gap, tried between the faces again and again; None for no gap.

    Where no lathe is there it is rubbed down at the bench, as the measuring tells.
    """
    gaps = [one for one in gaps_of(fact, work) if one.is_inside]
    bore = max((one.one.diameter or 0.0 for row in rows for one in row), default=0.0)
    across = max(bore + _OVER_MM, _LEAST_MM)
    workshop = work.design.workshop
    lathe = lathe_for(workshop, across)
    holder, kind = round_holder(workshop, across, true=False)
    if not gaps or not lathe or not holder:
        return None
    acts = tuple(replace(_faced(work, one, across), joints=fact.joints) for one in gaps)
    grip = Grip(holder, kind, "the stub", across)
    return SetUp(
        2,
        place_of(workshop, lathe),
        lathe,
        grip,
        _FACED,
        acts,
        _TRUE,
        "it goes in",
        holding_min(kind),
    )


def _faced(work: Work, gap: Gap, across: float) -> Act:
    wide = work.mm(gap.wide)
    return work.act(
        "face",
        "the parts stay up on the bench: face the other end of the stub, a little at a time, till "
        f"it just goes in between the inner faces of the {gap.bearing}, without force and without "
        f"shake ({wide} as drawn); each time the burr off its edge, the stub and both faces wiped",
        feature="gap stub",
        tool=f"knife tool, gauge stub ⌀{work.mm(across)} × {wide}",
        times=_TRIES,
        tags=("in-line", "later"),
        spoils="a warm stub; one that is pushed in spreads the bearings",
    )
