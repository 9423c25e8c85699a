"""Plugin `operations`: how each part is made, set-up by set-up, and in which evenings."""

from __future__ import annotations

from typing import TYPE_CHECKING

from binder.api import (
    ActsFact,
    AsideFact,
    BarUse,
    BuildSequence,
    ChainFact,
    Check,
    Code,
    CordFact,
    FitFact,
    HalfFact,
    HardwareFact,
    HoursFact,
    JointFact,
    LeaningFact,
    MaterialFact,
    Page,
    PlanStep,
    ShaftFact,
    SmallWork,
    SummedFact,
    SupplyFact,
    TaskTime,
    TogetherFact,
    TreatmentFact,
    hookimpl,
    late,
)
from binder_plugins.operations.aids.collecting import collect_tools
from binder_plugins.operations.aids.facts import ToolsFact
from binder_plugins.operations.cautioned import tell_acts
from binder_plugins.operations.checks import (
    check_bars,
    check_floors,
    check_measured,
    check_order,
    check_routes,
    check_warping,
)
from binder_plugins.operations.codes import CODES
from binder_plugins.operations.facts import Route
from binder_plugins.operations.judging.metals import check_metals
from binder_plugins.operations.judging.reach import check_reach
from binder_plugins.operations.judging.room import check_room
from binder_plugins.operations.judging.tools import check_tools
from binder_plugins.operations.planning import WorkPlan, plan_work
from binder_plugins.operations.routes import plan_routes
from binder_solid.facts import FormFact
from binder_solid.pawls import PawlFact
from binder_solid.placed import PlacedFact

if TYPE_CHECKING:
    from collections.abc import Sequence

_HERE = "binder_plugins.operations"


@hookimpl
def binder_codes() -> Sequence[Code]:
    """What cannot be held, cut, divided or measured here."""
    return CODES


@hookimpl
def binder_checks() -> Sequence[Check]:
    """Whether each part can be made in this workshop."""
    return [
        Check("parts can be held and cut", check_routes),
        Check("acts have an order", check_order),
        Check("limits can be measured", check_measured),
        Check("bars can be cut", check_bars),
        Check("floors of holes are flat", check_floors),
        Check("thin pieces stay flat", check_warping),
        Check("tools are owned", check_tools),
        Check("tools reach the bottom", check_reach),
        Check("there is room for work and tool", check_room),
        Check("metals bear what is done to them", check_metals),
    ]


@hookimpl
def binder_steps() -> Sequence[PlanStep]:
    """The route of each part, then all work in order."""
    return [
        PlanStep(
            "plan the routes",
            plan_routes,
            needs=(FormFact,),
            gives=(Route, BarUse, SummedFact),
            after=(
                AsideFact,
                ChainFact,
                FitFact,
                HalfFact,
                PlacedFact,
                HardwareFact,
                JointFact,
                LeaningFact,
                MaterialFact,
                PawlFact,
                TogetherFact,
                TreatmentFact,
            ),
        ),
        PlanStep("tell the acts", tell_acts, needs=(Route,), gives=(ActsFact,)),
        PlanStep(
            "list the tools",
            collect_tools,
            needs=(Route,),
            after=(
                ChainFact,
                CordFact,
                HalfFact,
                HardwareFact,
                JointFact,
                PlacedFact,
                ShaftFact,
                TaskTime,
            ),
            gives=(ToolsFact, SmallWork, SupplyFact),
            for_pages=True,
        ),
        PlanStep(
            "plan the evenings",
            plan_work,
            needs=(Route, BuildSequence),
            after=(TaskTime, TreatmentFact, ToolsFact, SmallWork, SupplyFact),
            gives=(WorkPlan, HoursFact),
            for_pages=True,
        ),
    ]


@hookimpl
def binder_pages() -> Sequence[Page]:
    """The operations on each part's leaf, and the evenings."""
    return [
        Page("operations", late(f"{_HERE}.leaf", "operation_pages")),
        Page("work on parts together", late(f"{_HERE}.together_pages", "together_pages")),
        Page("evenings", late(f"{_HERE}.evening_pages", "evening_pages")),
        Page("tools wanted", late(f"{_HERE}.wanted_page", "wanted_pages")),
        Page("tools to make", late(f"{_HERE}.made_page", "made_pages")),
        Page("holding up", late(f"{_HERE}.holding_page", "holding_pages")),
    ]
