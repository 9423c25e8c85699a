"""Plugin `fasteners`: screws, pins, keys and rivets, from the joint that they hold."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

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
    LayerFact,
    MaterialFact,
    NumberOff,
    Page,
    PlaceFact,
    PlanStep,
    Reckoning,
    hookimpl,
)
from binder_plugins.fasteners.codes import CODES
from binder_plugins.fasteners.kinds import KINDS, kinds
from binder_plugins.fasteners.page import hardware_pages
from binder_plugins.fasteners.reckonings import reckonings
from binder_plugins.fasteners.shanks import check_shanks
from binder_plugins.fasteners.swivels import check_swivels

_MINE = KINDS | {"belted"}  # whose belt is missing like a screw


@hookimpl
def binder_kinds() -> Sequence[Kind]:
    """One kind of joint for each row of the table."""
    return kinds()


@hookimpl
def binder_codes() -> Sequence[Code]:
    """What can be wrong with holes and hardware."""
    return CODES


@hookimpl
def binder_steps() -> Sequence[PlanStep]:
    """The holes of both halves, the hardware and its length, from each fastened joint."""
    return [
        PlanStep(
            "choose hardware",
            _choose,
            needs=(PlaceFact, MaterialFact),
            gives=(HardwareFact, HalfFact),
            after=(NumberOff, FitFact, LayerFact),
        )
    ]


@hookimpl
def binder_checks() -> Sequence[Check]:
    """Whether screws are left to locate, begin to hold where they should, and keep clear."""
    return [
        Check("screws do not locate", _locating),
        Check("threads begin within what is clamped", check_shanks),
        Check("no screw nips what turns", check_swivels),
        Check("posts do not stand on one screw", _on_one_screw),
        Check("wood screws stand clear of edges and each other", _in_timber),
    ]


@hookimpl
def binder_pages() -> Sequence[Page]:
    """The list of hardware."""
    return [Page("hardware", hardware_pages)]


@hookimpl
def binder_reckonings() -> Sequence[Reckoning]:
    """Screws, keys and circlips, asked for at the bench."""
    return reckonings()


def _locating(design: Design) -> Iterable[Diagnostic]:
    """Only a design with a running joint has bearings to keep in line."""
    if not any(one.kind == "runs_in" for one in design.joints.values()):
        return ()
    from binder_plugins.fasteners.locating import check_locating

    return check_locating(design)


def _on_one_screw(design: Design) -> Iterable[Diagnostic]:
    from binder_plugins.fasteners.one_screw import check_one_screw

    return check_one_screw(design)


def _in_timber(design: Design) -> Iterable[Diagnostic]:
    """Only a design with wood screws is looked over, since the tables are slow to read."""
    if not any("wood screw" in one.what for one in design.facts.all(HardwareFact)):
        return ()
    from binder_plugins.fasteners.end_grain import check_end_grain
    from binder_plugins.fasteners.near_grain import check_near_grain
    from binder_plugins.fasteners.screws_meeting import check_meeting

    return (*check_near_grain(design), *check_end_grain(design), *check_meeting(design))


def _choose(design: Design) -> Contribution:
    """The tables of hardware are read only for a design that has any."""
    has_pattern = any(getattr(one.entry, "pattern", None) for one in design.features())
    if not has_pattern and not any(one.kind in _MINE for one in design.joints.values()):
        return Contribution()
    from binder_plugins.fasteners.deciding import decide

    return decide(design)
