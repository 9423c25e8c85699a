"""Plugin `slides`: dovetail slides, both halves from one definition; sums of slides and tapers."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from binder.api import (
    AsideFact,
    ChainFact,
    Check,
    Code,
    Contribution,
    Design,
    Diagnostic,
    HalfFact,
    HardwareFact,
    Kind,
    MaterialFact,
    OffMiddleFact,
    Page,
    PlaceFact,
    PlanStep,
    Reckoning,
    Section,
    SmallWork,
    hookimpl,
)
from binder_plugins.slides.codes import CODES
from binder_plugins.slides.kinds import DovetailEntry, kinds
from binder_plugins.slides.questions import RECKONINGS


@hookimpl
def binder_kinds() -> Sequence[Kind]:
    """The dovetailed joint, and a dovetail as a feature."""
    return kinds()


@hookimpl
def binder_codes() -> Sequence[Code]:
    """A slide that cannot be cut, measured or set."""
    return CODES


@hookimpl
def binder_steps() -> Sequence[PlanStep]:
    """Both halves of each slide, from what is said of it."""
    return [
        PlanStep(
            "settle the slides",
            _settle,
            needs=(PlaceFact,),
            gives=(HalfFact, AsideFact, ChainFact, HardwareFact, OffMiddleFact, SmallWork),
            after=(MaterialFact,),
        )
    ]


@hookimpl
def binder_checks() -> Sequence[Check]:
    """Can each slide be cut, and do its halves agree."""
    return [Check("slides can be cut and set", _check)]


@hookimpl
def binder_pages() -> Sequence[Page]:
    """A sheet for each slide."""
    return [Page("dovetail slides", _pages)]


@hookimpl
def binder_reckonings() -> Sequence[Reckoning]:
    """Dovetails, tapers, screws that move and wood that moves."""
    return RECKONINGS


# A model without a slide never loads the sums.
def _has_slides(design: Design) -> bool:
    return any(isinstance(joint.entry, DovetailEntry) for joint in design.joints.values())


def _settle(design: Design) -> Contribution:
    if not _has_slides(design):
        return Contribution()
    from binder_plugins.slides.settling import settle_slides

    return settle_slides(design)


def _check(design: Design) -> Iterable[Diagnostic]:
    if not _has_slides(design):
        return ()
    from binder_plugins.slides.checks import check_feeds, check_slides

    return (*check_slides(design), *check_feeds(design))


def _pages(design: Design, findings: tuple[Diagnostic, ...]) -> Iterable[Section]:
    if not _has_slides(design):
        return ()
    from binder_plugins.slides.page import slide_pages

    return slide_pages(design, findings)
