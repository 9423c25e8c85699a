"""Sketches of grips: what carries the work is drawn, and work on edge stands on edge."""

from __future__ import annotations

from dataclasses import replace

from binder.api import DrawnBox
from binder_plugins.operations.facts import Grip, Route, SetUp
from binder_plugins.operations.sketch import sketch
from binder_solid.facts import FormFact
from tests.plugins.operations.conftest import HEAD, Plan

CONED = (
    "  part: {material: mild steel, stock: 25 mm round bar, turned: [{name: foot, diameter: 25 mm,"
    " length: 5 mm}, {name: waist, taper: 22 mm to 16 mm, length: 30 mm}, {name: collar,"
    " diameter: 20 mm, length: 8 mm}]}\n"
)
BAR = "  part: {material: mild steel, stock: 40 mm x 6 mm flat bar, cut: 80 mm}\n"


def test_a_steady_is_drawn_on_its_land(plan: Plan) -> None:
    """Both fingers lie over the 5 mm of the foot, which is the end of 43 mm of work."""
    design = plan(HEAD + CONED).design
    assert design is not None
    form, route = design.facts.about(FormFact, "part"), design.facts.about(Route, "part")
    assert route is not None
    held = next(one for one in route.setups if "steady" in one.grip.support)
    bare = replace(held, grip=replace(held.grip, land=(0.0, 0.0)))
    drawn, plain = sketch(held, form), sketch(bare, form)
    assert drawn is not None
    assert plain is not None
    fingers = [one for one in drawn.shapes if one not in plain.shapes]
    assert len(fingers) == 2


def test_thin_work_on_edge_stands_up(plan: Plan) -> None:
    """6 mm wide and 40 mm high between the jaws, not the other way round."""
    design = plan(HEAD + BAR).design
    assert design is not None
    grip = Grip("vice", "vice", "its faces, on edge", 6.0)
    drawn = sketch(
        SetUp(1, "drill", "", grip, "the side up", ()), design.facts.about(FormFact, "part")
    )
    assert drawn is not None
    boxes = [one for one in drawn.shapes if isinstance(one, DrawnBox)]
    assert any(one.height > 6 * one.width for one in boxes)
