"""Plugin `running`: oil and care, the first run, and the way from a symptom to its joint."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from binder.api import (
    Check,
    Code,
    Contribution,
    Design,
    Diagnostic,
    FitFact,
    MaterialFact,
    Page,
    PlanStep,
    Section,
    SupplyFact,
    TrainFact,
    TurningFact,
    hookimpl,
)
from binder_plugins.running.codes import CODES


@hookimpl
def binder_codes() -> Sequence[Code]:
    """Oil where it harms, none where it is needed, and what is never tried by itself."""
    return CODES


@hookimpl
def binder_checks() -> Sequence[Check]:
    """Is each moving joint looked after."""
    return [Check("what moves is oiled and tried", _check)]


@hookimpl
def binder_steps() -> Sequence[PlanStep]:
    """What has to be bought for the chart of oil."""
    return [
        PlanStep(
            "list the oils",
            _oils,
            after=(FitFact, MaterialFact, TrainFact, TurningFact),
            gives=(SupplyFact,),
            for_pages=True,
        )
    ]


@hookimpl
def binder_pages() -> Sequence[Page]:
    """Care, and the first run with its faults."""
    return [Page("care", _care), Page("first run", _first_run)]


def _check(design: Design) -> Iterator[Diagnostic]:
    if not design.joints:
        return
    from binder_plugins.running.checks import check_running
    from binder_plugins.running.tripping import check_trips

    yield from check_running(design)
    yield from check_trips(design)


def _oils(design: Design) -> Contribution:
    from binder_plugins.running.supplies import supply_oils

    return supply_oils(design)


def _care(design: Design, _findings: tuple[Diagnostic, ...]) -> Iterator[Section]:
    from binder_plugins.running.care_page import care_pages

    yield from care_pages(design)


def _first_run(design: Design, findings: tuple[Diagnostic, ...]) -> Iterator[Section]:
    from binder_plugins.running.first_page import first_run_pages

    yield from first_run_pages(design, findings)
