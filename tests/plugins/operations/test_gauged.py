"""A drilled hole is accepted by one rule: its limits are those that its gauge tells.

A limit gauge's two ends are the two limits: ISO 1938, Taylor's principle.
"""

from __future__ import annotations

import re

import pytest

from binder.api import Design, FitFact, HalfFact
from binder_plugins.inspection.gauging import tool_for
from binder_plugins.operations.facts import Route
from tests.plugins.operations.conftest import HEAD, Plan, without

EYE = (
    "  part: {material: mild steel, stock: 10 mm drawn rod, turned: [{name: head, diameter: 10 mm,"
    " length: 40 mm}], features: {eye: {drilled: %s mm, across: head, at: middle, depth:"
    " through}}}\n"
    "  bar: {material: silver steel, stock: drawn rod, turned: [{name: rod, diameter: 3 mm, length:"
    " 60 mm}]}\njoints: {it: {slides: [bar.rod, part.eye], fit: loose}}\n"
)
GAUGE = "{measures: [inside], range: 2 mm to 6 mm, resolution: 0.01 mm}"


def eye_of(design: Design | None) -> tuple[Design, HalfFact]:
    """The half that is drilled."""
    assert design is not None
    return design, next(one for one in design.facts.all(HalfFact) if one.place == "eye")


@pytest.mark.parametrize("size", ["3.1", "3.2"])
def test_limits_gauge_and_clearance_of_a_drilled_hole_agree(size: str, plan: Plan) -> None:
    design, half = eye_of(plan(HEAD + EYE % size).design)
    told = tool_for(half, design.workshop)
    ends = [float(one) for one in re.findall(r"([\d.]+) mm (?:goes in|does not)", told)]
    assert [half.lower, half.upper] == pytest.approx(ends)
    assert ends == pytest.approx([float(size), float(size) + 0.1])
    assert f"{ends[0]:.3f} to {ends[1]:.3f}" in half.what
    route = design.facts.about(Route, "part")
    assert route is not None
    (drill,) = (one for one in route.acts if one.lower is not None)
    assert (drill.lower, drill.upper, drill.measure) == (half.lower, half.upper, told)
    fit = design.facts.about(FitFact, "it")
    assert fit is not None
    # The rod is 3 mm at the most: h8 is 0/−14 at 3 mm (ISO 286-2).
    assert fit.clearance_min_um == pytest.approx((ends[0] - 3) * 1000)
    assert fit.clearance_max_um == pytest.approx((ends[1] - 2.986) * 1000)


@pytest.mark.parametrize(
    "workshop",
    [without("drills"), without(measuring__small_bore_gauge=GAUGE)],
    ids=["no drills", "a gauge that reads"],
)
def test_what_no_shanks_tell_keeps_the_limits_of_its_drill(workshop: str, plan: Plan) -> None:
    """3.1 mm less 0.001 in and over by 0.004 in: AND10387, as the table of drilled holes has it."""
    _, half = eye_of(plan(HEAD + EYE % "3.1", workshop).design)
    assert (half.lower, half.upper) == pytest.approx((3.0746, 3.2016))
