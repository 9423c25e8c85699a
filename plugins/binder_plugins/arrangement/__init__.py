"""Plugin `arrangement`: the parts put together, drawn as one, and looked at for clashes."""

from __future__ import annotations

from collections.abc import Sequence

from binder.api import (
    Check,
    Code,
    HardwareFact,
    Kind,
    NumberOff,
    OffMiddleFact,
    Page,
    PlanStep,
    ShaftFact,
    hookimpl,
    late,
)
from binder_plugins.arrangement.codes import CODES
from binder_plugins.arrangement.facts import place_parts
from binder_plugins.arrangement.gathering import PictureFact
from binder_plugins.arrangement.kinds import section_kinds
from binder_plugins.arrangement.wandering import wandering
from binder_solid.facts import FormFact, SolidFact
from binder_solid.placed import CentresFact, MotionFact, PlacedFact

_HERE = "binder_plugins.arrangement"


@hookimpl
def binder_kinds() -> Sequence[Kind]:
    """The sections `stands` and `positions`."""
    return section_kinds()


@hookimpl
def binder_codes() -> Sequence[Code]:
    """Parts that do not meet, are not placed, collide, or cannot be put in."""
    return CODES


@hookimpl
def binder_steps() -> Sequence[PlanStep]:
    """Where every part stands."""
    return [
        PlanStep(
            "put the parts together",
            place_parts,
            needs=(FormFact, NumberOff),
            gives=(PlacedFact, MotionFact),
            after=(ShaftFact, HardwareFact, CentresFact, OffMiddleFact),
        ),
        PlanStep(
            "picture the parts together",
            late(f"{_HERE}.picturing", "picture_parts"),
            needs=(PlacedFact,),
            gives=(PictureFact,),
            after=(SolidFact,),
            for_pages=True,
        ),
    ]


@hookimpl
def binder_checks() -> Sequence[Check]:
    """Whether wheels stay where they run."""
    return [Check("wheels on pins stay between their plates", wandering)]


@hookimpl
def binder_pages() -> Sequence[Page]:
    """The general arrangement, and assemblies taken apart."""
    return [Page("arrangement", late(f"{_HERE}.page", "arrangement_pages"))]
