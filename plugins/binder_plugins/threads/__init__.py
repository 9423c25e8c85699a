"""Plugin `threads`: every thread of the model, with its drill, depth and measure."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from binder.api import (
    Check,
    Code,
    Contribution,
    Design,
    Diagnostic,
    FitFact,
    HalfFact,
    HardwareFact,
    Kind,
    MaterialFact,
    NumberOff,
    Page,
    PlaceFact,
    PlanStep,
    Reckoning,
    Section,
    ThreadFact,
    hookimpl,
)
from binder_plugins.threads.codes import CODES
from binder_plugins.threads.kinds import kinds


@hookimpl
def binder_kinds() -> Sequence[Kind]:
    """One kind of joint for each row of the table."""
    return kinds()


@hookimpl
def binder_codes() -> Sequence[Code]:
    """What can be wrong with a thread."""
    return CODES


@hookimpl
def binder_steps() -> Sequence[PlanStep]:
    """The figures of every thread, once joints and hardware have asked for theirs."""
    return [
        PlanStep(
            "reckon the threads",
            _reckon,
            needs=(PlaceFact, MaterialFact),
            gives=(ThreadFact, HalfFact),
            after=(HardwareFact, FitFact, NumberOff),
        )
    ]


@hookimpl
def binder_checks() -> Sequence[Check]:
    """Can each thread be cut here, does it hold, and does it meet its mate."""
    return [Check("threads can be cut and hold", _check)]


@hookimpl
def binder_pages() -> Sequence[Page]:
    """The list of all threads."""
    return [Page("threads", _pages)]


@hookimpl
def binder_reckonings() -> Sequence[Reckoning]:
    """A thread, a drill, or the size over three wires."""
    from binder_plugins.threads.questions import RECKONINGS

    return RECKONINGS


# The tables of the trade are read only where a model has a thread.
def _reckon(design: Design) -> Contribution:
    from binder_plugins.threads.facts import reckon_threads

    return reckon_threads(design)


def _check(design: Design) -> Iterator[Diagnostic]:
    from binder_plugins.threads.checks import check_threads

    return check_threads(design)


def _pages(design: Design, findings: tuple[Diagnostic, ...]) -> Iterator[Section]:
    from binder_plugins.threads.page import thread_pages

    return thread_pages(design, findings)
