"""Plugin `shapes`: the shapes of parts, what is cut in them, and the stock that they need."""

from __future__ import annotations

from collections.abc import Sequence

from binder.api import (
    AsideFact,
    Check,
    Code,
    CutSize,
    FitFact,
    HalfFact,
    HardwareFact,
    Kind,
    Page,
    PlaceFact,
    PlanStep,
    RoundBottomFact,
    StepSizeFact,
    ThreadFact,
    hookimpl,
)
from binder_plugins.shapes.codes import CODES
from binder_plugins.shapes.feature_kinds import feature_kinds
from binder_plugins.shapes.fitted_codes import FITTED_CODES
from binder_plugins.shapes.form_codes import FORM_CODES
from binder_plugins.shapes.forming.form import form_parts
from binder_plugins.shapes.forming.joined import form_fabrications
from binder_plugins.shapes.judging.behind import check_behind
from binder_plugins.shapes.judging.beside import check_beside
from binder_plugins.shapes.judging.crossing import check_crossing
from binder_plugins.shapes.judging.edges import check_angles, check_edges
from binder_plugins.shapes.judging.fitting import check_fitted
from binder_plugins.shapes.judging.hands import check_hands
from binder_plugins.shapes.judging.machines import check_machines
from binder_plugins.shapes.judging.meeting import check_swallowed
from binder_plugins.shapes.judging.names import check_names
from binder_plugins.shapes.judging.reach import check_reach
from binder_plugins.shapes.judging.undercuts import check_undercuts
from binder_plugins.shapes.judging.walls import check_walls
from binder_plugins.shapes.kinds import shape_kinds
from binder_plugins.shapes.laying.flats import lay_flat
from binder_plugins.shapes.leaves import part_leaves
from binder_plugins.shapes.placing import place_surfaces
from binder_plugins.shapes.rounded import fit_things
from binder_plugins.shapes.settling import settle_shapes
from binder_plugins.shapes.shape_codes import SHAPE_CODES
from binder_plugins.shapes.sizing import size_parts
from binder_plugins.shapes.sold import check_sections
from binder_plugins.shapes.suiting import check_suited
from binder_solid.facts import ContourFact, FlatFact, FormFact, JoinedFact
from binder_solid.rounded import RoundedFact


@hookimpl
def binder_kinds() -> Sequence[Kind]:
    """Shapes (turned, block, plate ...) and features (drilled, tapped, grooved ...)."""
    return [*shape_kinds(), *feature_kinds()]


@hookimpl
def binder_codes() -> Sequence[Code]:
    """Sizes that do not add up, are missing, or do not come out of the stock."""
    return [*CODES, *SHAPE_CODES, *FORM_CODES, *FITTED_CODES]


@hookimpl
def binder_steps() -> Sequence[PlanStep]:
    """What each part needs of stock, and what is known of its places."""
    return [
        PlanStep(
            "settle shapes",
            settle_shapes,
            after=(StepSizeFact, ContourFact),
            settles_shapes=True,
        ),
        PlanStep("size the parts", size_parts, gives=(CutSize,)),
        PlanStep("place the surfaces", place_surfaces, needs=(CutSize,), gives=(PlaceFact,)),
        PlanStep(
            "form the parts",
            form_parts,
            needs=(PlaceFact,),
            gives=(FormFact,),
            after=(AsideFact, FitFact, HalfFact, HardwareFact, RoundBottomFact, ThreadFact),
        ),
        PlanStep("file things to others", fit_things, gives=(RoundedFact,)),
        PlanStep("lay parts flat", lay_flat, needs=(FormFact,), gives=(FlatFact,)),
        PlanStep(
            "form the fabrications",
            form_fabrications,
            needs=(FormFact,),
            gives=(JoinedFact,),
            after=(FitFact, HalfFact, HardwareFact, RoundBottomFact, ThreadFact),
        ),
    ]


@hookimpl
def binder_checks() -> Sequence[Check]:
    """Is the stock sold, the metal there, and does a tool of this workshop get at it."""
    return [
        Check("sections are sold", check_sections),
        Check("nothing waits for a size", check_suited),
        Check("walls are left", check_walls),
        Check("metal is left behind blind holes", check_behind),
        Check("holes stand clear of dovetails", check_undercuts),
        Check("cuts from all faces leave metal between them", check_crossing),
        Check("features leave each other alone", check_swallowed),
        Check("what is round a step is on it", check_beside),
        Check("edges have room", check_edges),
        Check("angles can be cut", check_angles),
        Check("a mirrored part has a hand", check_hands),
        Check("steps have names of their own", check_names),
        Check("what is filed to another has it", check_fitted),
        Check("cutters reach", check_reach),
        Check("parts fit the machines", check_machines),
    ]


@hookimpl
def binder_pages() -> Sequence[Page]:
    """One leaf for each part."""
    return [Page("part leaves", part_leaves)]
