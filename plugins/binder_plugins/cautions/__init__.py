"""Plugin `cautions`: the usual published cautions that a model's work calls for."""

from __future__ import annotations

from collections.abc import Sequence

from binder.api import (
    ActsFact,
    CautionFact,
    Check,
    Code,
    JointFact,
    Kind,
    MaterialFact,
    Page,
    PlanStep,
    SmallWork,
    hookimpl,
)
from binder_plugins.cautions.checks import check_pressure, check_trades
from binder_plugins.cautions.codes import CODES
from binder_plugins.cautions.facts import state_cautions
from binder_plugins.cautions.kinds import section_kinds
from binder_plugins.cautions.page import caution_pages


@hookimpl
def binder_kinds() -> Sequence[Kind]:
    """The section in which a maker adds cautions of his own."""
    return section_kinds()


@hookimpl
def binder_codes() -> Sequence[Code]:
    """What is left to an inspector."""
    return CODES


@hookimpl
def binder_steps() -> Sequence[PlanStep]:
    """The facts about cautions, once materials and joints are settled."""
    needed = (MaterialFact, JointFact, ActsFact, SmallWork)
    return [PlanStep("state cautions", state_cautions, gives=(CautionFact,), after=needed)]


@hookimpl
def binder_checks() -> Sequence[Check]:
    """Does anything hold pressure, and is anything no work for a home workshop."""
    return [
        Check("pressure is left to an inspector", check_pressure),
        Check("trades keep what is theirs", check_trades),
    ]


@hookimpl
def binder_pages() -> Sequence[Page]:
    """The cautions that apply."""
    return [Page("cautions", caution_pages)]
