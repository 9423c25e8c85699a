"""Plugin `buildorder`: the tasks of the build, what comes before what, and why."""

from __future__ import annotations

from collections.abc import Sequence

from binder.api import (
    BuildSequence,
    Check,
    ClosedWithFact,
    Code,
    CordFact,
    FitFact,
    HardwareFact,
    ItemNumber,
    JointFact,
    NumberOff,
    Page,
    PlanStep,
    ShaftFact,
    TaskTime,
    TogetherFact,
    TreatmentFact,
    TurningFact,
    hookimpl,
    late,
)
from binder_plugins.buildorder.assembly import assembly_pages
from binder_plugins.buildorder.closed_with import tell_hardware
from binder_plugins.buildorder.codes import CODES
from binder_plugins.buildorder.driven_home import check_heads
from binder_plugins.buildorder.facts import TasksKnown
from binder_plugins.buildorder.pages import order_pages
from binder_plugins.buildorder.sequence import put_in_order
from binder_plugins.buildorder.standing import check_tests
from binder_plugins.buildorder.tasks import plan_tasks
from binder_plugins.buildorder.unput import check_unput
from binder_solid.placed import PlacedFact

_HERE = "binder_plugins.buildorder"


@hookimpl
def binder_codes() -> Sequence[Code]:
    """Orders that loop."""
    return CODES


@hookimpl
def binder_steps() -> Sequence[PlanStep]:
    """Tasks from parts and assemblies, then their order once all reasons are known."""
    return [
        PlanStep(
            "plan the tasks",
            plan_tasks,
            needs=(JointFact,),
            after=(TreatmentFact, FitFact, ShaftFact, HardwareFact, PlacedFact),
            gives=(TasksKnown,),
        ),
        PlanStep(
            "put the tasks in order",
            put_in_order,
            needs=(TasksKnown,),
            gives=(BuildSequence,),
            after=(FitFact, JointFact, ShaftFact, ItemNumber, TogetherFact),
        ),
        PlanStep(
            "tell what closes each assembly",
            tell_hardware,
            needs=(TasksKnown,),
            after=(HardwareFact, NumberOff),
            gives=(ClosedWithFact,),
            for_pages=True,
        ),
        PlanStep(
            "time the tasks",
            late(f"{_HERE}.timing", "time_tasks"),
            needs=(BuildSequence,),
            after=(CordFact, HardwareFact, NumberOff, PlacedFact, TogetherFact, TurningFact),
            gives=(TaskTime,),
            for_pages=True,
        ),
    ]


@hookimpl
def binder_checks() -> Sequence[Check]:
    """Whether a test comes when what carries the motion stands, and a screw while it is reached."""
    return [
        Check("tests wait for what carries the motion", check_tests),
        Check("every piece has its step", check_unput),
        Check("every head is reached by a driver", check_heads),
    ]


@hookimpl
def binder_pages() -> Sequence[Page]:
    """The build order, its picture, and a sheet for each assembly."""
    return [Page("build order", order_pages), Page("assembly sheets", assembly_pages)]
