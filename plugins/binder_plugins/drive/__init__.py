"""Plugin `drive`: what turns what, how fast, how strongly, which way round."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from binder.api import (
    Check,
    Code,
    Contribution,
    Design,
    Diagnostic,
    Kind,
    Page,
    PlaceFact,
    PlanStep,
    Section,
    hookimpl,
)
from binder_plugins.drive.codes import CODES
from binder_plugins.drive.facts import LoadFact, TrainFact, TurningFact
from binder_plugins.drive.kinds import kinds


@hookimpl
def binder_kinds() -> Sequence[Kind]:
    """The kinds of drive, and teeth as a feature."""
    return kinds()


@hookimpl
def binder_codes() -> Sequence[Code]:
    """A drive that locks, slips, stalls or does not fit together."""
    return CODES


@hookimpl
def binder_steps() -> Sequence[PlanStep]:
    """Speeds, ways round and torques of all that turns."""
    return [
        PlanStep(
            "settle the drive",
            _settle,
            after=(PlaceFact,),
            gives=(TurningFact, TrainFact, LoadFact),
        )
    ]


@hookimpl
def binder_checks() -> Sequence[Check]:
    """Does it turn, the right way, at the right speed, and is it strong enough."""
    return [Check("the drive turns and holds", _check)]


@hookimpl
def binder_pages() -> Sequence[Page]:
    """The page of the drive."""
    return [Page("drive", _pages)]


# A model without a drive never loads the sums.
def _has_drive(design: Design) -> bool:
    return bool(design.spec.written.drive)


def _settle(design: Design) -> Contribution:
    if not _has_drive(design):
        return Contribution()
    from binder_plugins.drive.settling import settle_drive

    return settle_drive(design)


def _check(design: Design) -> Iterator[Diagnostic]:
    if not _has_drive(design):
        return
    from binder_plugins.drive.judging.ropes import check_ropes
    from binder_plugins.drive.judging.running import check_running

    yield from check_running(design)
    yield from check_ropes(design)


def _pages(design: Design, findings: tuple[Diagnostic, ...]) -> Iterator[Section]:
    if not _has_drive(design):
        return
    from binder_plugins.drive.page import drive_pages

    yield from drive_pages(design)
