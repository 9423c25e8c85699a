"""Plugin `solids`: parts as solids, what they weigh, and the views that drawings need."""

from __future__ import annotations

from collections.abc import Sequence

from binder.api import Check, Code, Export, MaterialFact, PlanStep, hookimpl
from binder_plugins.solids.build import build_solids
from binder_plugins.solids.checks import check_solids
from binder_plugins.solids.codes import CODES
from binder_plugins.solids.exports import solid_files
from binder_plugins.solids.flats import cut_flats
from binder_solid.facts import FlatFact, FlatViewsFact, FormFact, JoinedFact, SolidFact, ViewsFact


@hookimpl
def binder_codes() -> Sequence[Code]:
    """A solid that cannot be built, falls apart, or is not there at all."""
    return CODES


@hookimpl
def binder_steps() -> Sequence[PlanStep]:
    """Solids and views, where a binder is built."""
    return [
        PlanStep(
            "build the solids",
            build_solids,
            needs=(FormFact,),
            gives=(SolidFact, ViewsFact),
            after=(JoinedFact, MaterialFact),
            for_pages=True,
        ),
        PlanStep(
            "cut the flats",
            cut_flats,
            needs=(FlatFact,),
            gives=(FlatViewsFact,),
            for_pages=True,
        ),
    ]


@hookimpl
def binder_checks() -> Sequence[Check]:
    """Is each solid one piece, and does it hold together."""
    return [Check("solids are whole", check_solids)]


@hookimpl
def binder_exports() -> Sequence[Export]:
    """Each part as STEP."""
    return [Export("parts as STEP", solid_files)]
