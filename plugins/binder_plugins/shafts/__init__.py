"""Plugin `shafts`: what sits along a shaft, told once, and the play that is left."""

from __future__ import annotations

from collections.abc import Sequence

from binder.api import (
    ChainFact,
    Check,
    Code,
    Contribution,
    Design,
    FitFact,
    HardwareFact,
    Kind,
    Page,
    PlaceFact,
    PlanStep,
    ShaftFact,
    TogetherFact,
    hookimpl,
)
from binder_plugins.shafts.chaining import chain_of, tube_chain
from binder_plugins.shafts.checks import check_shafts
from binder_plugins.shafts.clip_chaining import clip_chain
from binder_plugins.shafts.closing import set_last
from binder_plugins.shafts.codes import CODES
from binder_plugins.shafts.kinds import section_kinds
from binder_plugins.shafts.lying import check_lying
from binder_plugins.shafts.page import shaft_pages
from binder_plugins.shafts.row_chaining import row_chain, spaced_last
from binder_plugins.shafts.seated import check_seated
from binder_plugins.shafts.stacking import stack_shafts
from binder_solid.facts import FormFact
from binder_solid.placed import PlacedFact


@hookimpl
def binder_kinds() -> Sequence[Kind]:
    """The section `shafts`."""
    return section_kinds()


@hookimpl
def binder_codes() -> Sequence[Code]:
    """A shaft that slides out, locks, or cannot be put together."""
    return CODES


@hookimpl
def binder_steps() -> Sequence[PlanStep]:
    """The pieces of each shaft, added up."""
    return [
        PlanStep(
            "stack the shafts",
            stack_shafts,
            needs=(PlaceFact,),
            after=(FitFact,),
            gives=(ShaftFact,),
        ),
        PlanStep(
            "chain the shafts",
            _chain,
            needs=(ShaftFact,),
            after=(FormFact, PlacedFact, HardwareFact, TogetherFact),
            gives=(ChainFact,),
        ),
    ]


def _chain(design: Design) -> Contribution:
    found = (
        chain_of(fact, design) or clip_chain(fact, design) or tube_chain(fact, design)
        for fact in design.facts.all(ShaftFact)
    )
    rows = (row_chain(fact, design) for fact in design.facts.all(ShaftFact))
    befores = [
        one
        for fact in design.facts.all(ShaftFact)
        for one in (*set_last(fact, design), *spaced_last(fact, design))
    ]
    return Contribution(facts=[one for one in (*found, *rows) if one is not None], befores=befores)


@hookimpl
def binder_checks() -> Sequence[Check]:
    """Does each shaft stay in place, and can it be put together."""
    return [
        Check("shafts stay in place", check_shafts),
        Check("bearings lie on their journals", check_lying),
        Check("hubs lie on their seats", check_seated),
    ]


@hookimpl
def binder_pages() -> Sequence[Page]:
    """A sheet for each shaft."""
    return [Page("shafts", shaft_pages)]
