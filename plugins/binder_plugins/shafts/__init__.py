"""Plugin `shafts`: what sits along a shaft, told once, and the play that is left."""

from __future__ import annotations

from collections.abc import Sequence

from binder.api import Check, Code, Kind, Page, PlaceFact, PlanStep, ShaftFact, hookimpl
from binder_plugins.shafts.checks import check_shafts
from binder_plugins.shafts.codes import CODES
from binder_plugins.shafts.kinds import section_kinds
from binder_plugins.shafts.page import shaft_pages
from binder_plugins.shafts.stacking import stack_shafts


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
    return [PlanStep("stack the shafts", stack_shafts, needs=(PlaceFact,), gives=(ShaftFact,))]


@hookimpl
def binder_checks() -> Sequence[Check]:
    """Does each shaft stay in place, and can it be put together."""
    return [Check("shafts stay in place", check_shafts)]


@hookimpl
def binder_pages() -> Sequence[Page]:
    """A sheet for each shaft."""
    return [Page("shafts", shaft_pages)]
