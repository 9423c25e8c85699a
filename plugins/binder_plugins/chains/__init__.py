"""Plugin `chains`: sizes of several parts that add up, and what they leave at the end."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from binder.api import (
    ChainFact,
    Check,
    Code,
    Contribution,
    Design,
    Diagnostic,
    FitFact,
    Page,
    PlaceFact,
    PlanStep,
    Section,
    hookimpl,
)
from binder_plugins.chains.codes import CODES
from binder_plugins.chains.shoulders import shoulder_chains, tried_on
from binder_solid.facts import FormFact


@hookimpl
def binder_codes() -> Sequence[Code]:
    """A row that locks, and gears that bind or let go."""
    return CODES


@hookimpl
def binder_steps() -> Sequence[PlanStep]:
    """What turns between two shoulders; shafts, slides and gears tell their own chains."""
    return [
        PlanStep(
            "find what turns between shoulders",
            _shoulders,
            needs=(PlaceFact,),
            gives=(ChainFact,),
            after=(FitFact, FormFact),
        )
    ]


@hookimpl
def binder_checks() -> Sequence[Check]:
    """Does it still move when every size lies at its worst limit."""
    return [Check("chains of sizes leave room", _check)]


@hookimpl
def binder_pages() -> Sequence[Page]:
    """A sheet for each chain."""
    return [Page("chains", _pages)]


def _shoulders(design: Design) -> Contribution:
    found = tuple(shoulder_chains(design))
    return Contribution(
        facts=found, befores=[one for fact in found for one in tried_on(fact, design)]
    )


def _check(design: Design) -> Iterator[Diagnostic]:
    if not design.joints:
        return
    from binder_plugins.chains.checks import check_chains

    yield from check_chains(design)


def _pages(design: Design, _findings: tuple[Diagnostic, ...]) -> Iterator[Section]:
    if not design.facts.all(ChainFact):
        return
    from binder_plugins.chains.page import chain_pages

    yield from chain_pages(design)
