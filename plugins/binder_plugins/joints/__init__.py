"""Plugin `joints`: how two parts meet, which half comes first, and the step that joins them."""

from __future__ import annotations

from collections.abc import Sequence

from binder.api import (
    Check,
    Code,
    FitFact,
    HalfFact,
    HardwareFact,
    JointFact,
    Kind,
    Page,
    PlaceFact,
    PlanStep,
    TogetherFact,
    hookimpl,
)
from binder_plugins.joints.checks import check_joints
from binder_plugins.joints.codes import CODES
from binder_plugins.joints.kinds import kinds
from binder_plugins.joints.order import state_joints
from binder_plugins.joints.page import joint_pages


@hookimpl
def binder_kinds() -> Sequence[Kind]:
    """One kind of joint for each row of the table."""
    return kinds()


@hookimpl
def binder_codes() -> Sequence[Code]:
    """What a joint may lack."""
    return CODES


@hookimpl
def binder_steps() -> Sequence[PlanStep]:
    """What is said and done at each joint, and which half is made first."""
    return [
        PlanStep(
            "settle joints",
            state_joints,
            gives=(JointFact, TogetherFact),
            after=(FitFact, HalfFact, HardwareFact, PlaceFact),
        )
    ]


@hookimpl
def binder_checks() -> Sequence[Check]:
    """Is the right half named first, and every surface claimed once."""
    return [Check("joints claim their own surfaces", check_joints)]


@hookimpl
def binder_pages() -> Sequence[Page]:
    """The list of joints with masters and how they are made."""
    return [Page("joints", joint_pages)]
