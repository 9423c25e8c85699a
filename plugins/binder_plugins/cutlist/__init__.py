"""Plugin `cutlist`: which bars are needed, and how each is sawn."""

from __future__ import annotations

from collections.abc import Sequence

from binder.api import (
    BarPlan,
    BarUse,
    Code,
    CutSize,
    MaterialFact,
    NumberOff,
    Page,
    PlanStep,
    SmallWork,
    hookimpl,
)
from binder_plugins.cutlist.bars import plan_bars
from binder_plugins.cutlist.codes import CODES
from binder_plugins.cutlist.pages import cut_pages


@hookimpl
def binder_codes() -> Sequence[Code]:
    """Parts that no bar gives."""
    return CODES


@hookimpl
def binder_steps() -> Sequence[PlanStep]:
    """A cutting plan for the bars of each material and section."""
    return [
        PlanStep(
            "cut the bars",
            plan_bars,
            needs=(CutSize, NumberOff),
            gives=(BarPlan,),
            after=(MaterialFact, BarUse, SmallWork),
        )
    ]


@hookimpl
def binder_pages() -> Sequence[Page]:
    """The cut list, with a picture of each bar."""
    return [Page("cut list", cut_pages)]
