"""The groove of a round belt is as round at its bottom as the cord; of a flat one it is square."""

from __future__ import annotations

import math
from collections.abc import Callable

import pytest

from binder.api import HalfFact, SmallWork
from binder.compiler import Outcome
from binder_solid.facts import FormFact
from binder_solid.presence import is_kernel_there

Compile = Callable[..., Outcome]
SPEC = """\
format: 1
model: {title: Trial, issue: A, units: mm}
parts:
  one:
    material: mild steel
    turned: [{name: rim, diameter: 24 mm, length: 8 mm}]
    features: {ring: {grooved: 3 mm, on: rim, depth: %s mm, at: 4 mm from left}}
  other:
    material: mild steel
    turned: [{name: rim, diameter: 24 mm, length: 8 mm}]
    features:
      ring: {grooved: 3 mm, on: rim, depth: 2 mm}
drive:
  belt: {belted: [one, other], belt: %s, section: 3 mm, diameters: [24 mm, 24 mm]}
"""
FULL = math.pi * 12**2 * 8


def below(radius: float, bottom: float) -> float:
    """Swept by the half disc under its middle, by Pappus: its centroid lies 4 r / 3 π below."""
    middle = bottom + radius
    area = math.pi * radius**2 / 2
    return area * 2 * math.pi * (middle - 4 * radius / (3 * math.pi))


# [geo] In mm³, by the rule of Pappus and Guldin, or as a ring where it is square.
REMOVED = {
    # Half round, and a strip 0.5 mm high and 3 mm wide over it.
    ("round", 2.0): below(1.5, 10) + 3 * 0.5 * 2 * math.pi * 11.75,
    # Just half round.
    ("round", 1.5): below(1.5, 10.5),
    ("flat", 2.0): math.pi * (12**2 - 10**2) * 3,
}


@pytest.mark.skipif(not is_kernel_there(), reason="the kernel is not installed")
@pytest.mark.parametrize(("belt", "deep"), REMOVED)
def test_a_groove_is_cut_to_the_form_of_its_belt(
    compile_text: Compile, belt: str, deep: float
) -> None:
    from binder_solid.solids import measured

    design = compile_text(SPEC % (deep, belt)).design
    assert design is not None
    form = design.facts.about(FormFact, "one")
    assert form is not None
    assert FULL - measured(form.form).volume_mm3 == pytest.approx(REMOVED[belt, deep], rel=1e-6)


def test_a_shallow_groove_is_narrower_at_its_mouth(compile_text: Compile) -> None:
    """A groove 1 mm deep with R 1.5: the lens between the circle and the outside, at most."""
    if not is_kernel_there():
        pytest.skip("the kernel is not installed")
    from binder_solid.solids import measured

    design = compile_text(SPEC % (1.0, "round")).design
    assert design is not None
    form = design.facts.about(FormFact, "one")
    assert form is not None
    # A segment of height 1 of a circle of radius 1.5; its area by the handbook's formula.
    area = 1.5**2 * math.acos(0.5 / 1.5) - 0.5 * math.sqrt(2 * 1.5 - 1)
    removed = FULL - measured(form.form).volume_mm3
    assert 2 * math.pi * 11 * area < removed < 2 * math.pi * 12 * area


@pytest.mark.parametrize(("belt", "says"), [("round", True), ("flat", False)])
def test_drawing_and_leaf_say_that_it_is_round(
    compile_text: Compile, belt: str, *, says: bool
) -> None:
    design = compile_text(SPEC % (2.0, belt)).design
    assert design is not None
    form = design.facts.about(FormFact, "one")
    assert form is not None
    note = next(one.note for one in form.located if one.name == "ring")
    assert ("round at its bottom" in note) is says
    rows = [one.what for one in design.facts.all(HalfFact) if one.item == "one"]
    assert rows == (["groove 3 mm wide, round at its bottom, R 1.5 mm"] if says else [])


@pytest.mark.parametrize(("belt", "off"), [("round", 1), ("flat", 0)])
def test_a_round_belt_is_welded_before_it_goes_on(
    compile_text: Compile, belt: str, off: int
) -> None:
    """Two pulleys of 24 mm, 60 apart, the cord a tenth stretched: (120 + 24 pi) / 1.1 = 177.6."""
    text = (SPEC % (1.5, belt)).replace("24 mm]}", "24 mm], centres: 60 mm}")
    design = compile_text(text).design
    assert design is not None
    works = [one for one in design.facts.all(SmallWork) if one.subject == "belt, belt"]
    assert len(works) == off
    for one in works:
        assert one.minutes > 0
        assert one.joints == ("belt",)
        assert "177.6 mm" in one.steps[0]
