"""Plugin `operations`: how each part is made, set-up by set-up, and in which evenings."""

from __future__ import annotations

from collections.abc import Sequence

from binder.api import FitFact, HalfFact, HardwareFact, JointFact, MaterialFact, PlanStep, hookimpl
from binder_plugins.operations.facts import Route
from binder_plugins.operations.routes import plan_routes
from binder_solid.facts import FormFact


@hookimpl
def binder_steps() -> Sequence[PlanStep]:
    """The route of each part."""
    return [
        PlanStep(
            "plan the routes",
            plan_routes,
            needs=(FormFact,),
            gives=(Route,),
            after=(FitFact, HalfFact, HardwareFact, JointFact, MaterialFact),
        ),
    ]
