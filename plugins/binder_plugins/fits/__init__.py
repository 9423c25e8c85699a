"""Plugin `fits`: how two parts fit by size, and what is joined over a gap."""

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
    Joint,
    Kind,
    MaterialFact,
    NumberOff,
    Page,
    PlaceFact,
    PlanStep,
    Reckoning,
    Section,
    SmallWork,
    TogetherFact,
    hookimpl,
)
from binder_plugins.fits.codes import FIT_CODES
from binder_plugins.fits.families import HUBS
from binder_plugins.fits.joining_codes import JOINING_CODES
from binder_plugins.fits.kinds import FitEntry, kinds


@hookimpl
def binder_kinds() -> Sequence[Kind]:
    """One kind of joint for each row of the table."""
    return kinds()


@hookimpl
def binder_codes() -> Sequence[Code]:
    """What can be wrong with a fit, a bearing, a bond or a soldered joint."""
    return [*FIT_CODES, *JOINING_CODES]


@hookimpl
def binder_steps() -> Sequence[PlanStep]:
    """Both halves of every fit, with the order of work that follows."""
    return [
        PlanStep(
            "settle fits",
            _settle,
            needs=(PlaceFact,),
            gives=(FitFact, HalfFact, HardwareFact, TogetherFact, SmallWork),
            after=(MaterialFact, NumberOff),
        )
    ]


@hookimpl
def binder_checks() -> Sequence[Check]:
    """Do fits move or hold, can they be made, do bearings live, do bonds and solder hold."""
    return [Check("fits move, hold and can be made", _check)]


@hookimpl
def binder_pages() -> Sequence[Page]:
    """A sheet for each fit."""
    return [Page("fits", _pages)]


@hookimpl
def binder_reckonings() -> Sequence[Reckoning]:
    """Limits, fits and press fits without a spec."""
    from binder_plugins.fits.press_question import press_reckonings
    from binder_plugins.fits.reckoning import reckonings

    return [*reckonings(), *press_reckonings()]


def _is_fit(joint: Joint) -> bool:
    return isinstance(joint.entry, FitEntry) or joint.kind in HUBS


def _settle(design: Design) -> Contribution:
    """The tables are loaded only for a model that has a fit."""
    if not any(_is_fit(joint) for joint in design.joints.values()):
        return Contribution()
    from binder_plugins.fits.stating import state_fits

    return state_fits(design)


def _check(design: Design) -> Iterator[Diagnostic]:
    from binder_plugins.fits.fit_checks import check_fits
    from binder_plugins.fits.joining_checks import check_joining
    from binder_plugins.fits.oil_reach import check_oil_reach

    yield from check_fits(design)
    yield from check_joining(design)
    yield from check_oil_reach(design)


def _pages(design: Design, findings: tuple[Diagnostic, ...]) -> Iterator[Section]:
    from binder_plugins.fits.page import fit_pages

    yield from fit_pages(design, findings)
