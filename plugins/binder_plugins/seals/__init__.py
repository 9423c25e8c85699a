"""Plugin `seals`: O-rings and their grooves, gaskets, and packed glands."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from binder.api import (
    Code,
    Contribution,
    Design,
    Diagnostic,
    HalfFact,
    HardwareFact,
    Kind,
    LayerFact,
    MaterialFact,
    NumberOff,
    Page,
    PlaceFact,
    PlanStep,
    Reckoning,
    Section,
    hookimpl,
)
from binder_plugins.seals.codes import CODES
from binder_plugins.seals.kinds import SealEntry, kinds
from binder_plugins.seals.questions import RECKONINGS


@hookimpl
def binder_kinds() -> Sequence[Kind]:
    """One kind of joint for each row of the table."""
    return kinds()


@hookimpl
def binder_codes() -> Sequence[Code]:
    """A seal that leaks, grips or cannot be got in."""
    return CODES


@hookimpl
def binder_steps() -> Sequence[PlanStep]:
    """Grooves, gaskets and boxes from what they seal, and what is bought for them."""
    return [
        PlanStep(
            "settle the seals",
            _settle,
            needs=(PlaceFact,),
            gives=(HalfFact, HardwareFact, LayerFact),
            after=(MaterialFact, NumberOff),
        )
    ]


@hookimpl
def binder_pages() -> Sequence[Page]:
    """One section of all seals."""
    return [Page("seals", _pages)]


@hookimpl
def binder_reckonings() -> Sequence[Reckoning]:
    """O-rings and packed glands."""
    return RECKONINGS


# A model without a seal never loads the sums.
def _has_seals(design: Design) -> bool:
    return any(isinstance(joint.entry, SealEntry) for joint in design.joints.values())


def _settle(design: Design) -> Contribution:
    if not _has_seals(design):
        return Contribution()
    from binder_plugins.seals.settling import settle_seals

    return settle_seals(design)


def _pages(design: Design, findings: tuple[Diagnostic, ...]) -> Iterable[Section]:
    if not _has_seals(design):
        return ()
    from binder_plugins.seals.page import seal_pages

    return seal_pages(design, findings)
