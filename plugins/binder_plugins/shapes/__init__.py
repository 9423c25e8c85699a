"""Plugin `shapes`: the shapes of parts, what is cut in them, and the stock that they need."""

from __future__ import annotations

from collections.abc import Sequence

from binder.api import (
    Check,
    Code,
    CutSize,
    Kind,
    Page,
    PlaceFact,
    PlanStep,
    hookimpl,
)
from binder_plugins.shapes.codes import CODES
from binder_plugins.shapes.features import feature_kinds
from binder_plugins.shapes.kinds import shape_kinds
from binder_plugins.shapes.leaves import part_leaves
from binder_plugins.shapes.placing import place_surfaces
from binder_plugins.shapes.sizing import size_parts
from binder_plugins.shapes.sold import check_sections


@hookimpl
def binder_kinds() -> Sequence[Kind]:
    """Shapes (turned, block, plate ...) and features (drilled, tapped, grooved ...)."""
    return [*shape_kinds(), *feature_kinds()]


@hookimpl
def binder_codes() -> Sequence[Code]:
    """Sizes that do not add up, are missing, or do not come out of the stock."""
    return CODES


@hookimpl
def binder_steps() -> Sequence[PlanStep]:
    """What each part needs of stock, and what is known of its places."""
    return [
        PlanStep("size the parts", size_parts, gives=(CutSize,)),
        PlanStep("place the surfaces", place_surfaces, needs=(CutSize,), gives=(PlaceFact,)),
    ]


@hookimpl
def binder_checks() -> Sequence[Check]:
    """Is the section of each bar one that is sold."""
    return [Check("sections are sold", check_sections)]


@hookimpl
def binder_pages() -> Sequence[Page]:
    """One leaf for each part."""
    return [Page("part leaves", part_leaves)]
