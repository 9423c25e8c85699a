"""Sketches of two parts that are worked together: both are drawn, to one scale, and named."""

from __future__ import annotations

from itertools import pairwise

import pytest

from binder.api import (
    Design,
    DrawnBox,
    DrawnDisc,
    DrawnLabel,
    Line,
    Stroke,
    TogetherFact,
    text_width,
)
from binder_plugins.operations.facts import Route
from binder_plugins.operations.sketch import HEIGHT
from binder_plugins.operations.sketch_together import sketch_together
from binder_plugins.operations.sketch_vice import WIDTH
from tests.plugins.operations.conftest import HEAD, Plan

BASE = (
    "  base: {material: mild steel, block: {length: 40 mm, width: 20 mm, height: 12 mm},"
    " features: {foot: {reamed: 3 mm, on: top, depth: through}}}\n"
)
TOP = (
    "  lid: {material: mild steel, block: {length: 40 mm, width: 20 mm, height: 6 mm},"
    " features: {foot: {reamed: 3 mm, on: top, depth: through}}}\n"
)
POST = (
    "  lid: {material: mild steel, turned: [{name: mast, diameter: 12 mm, length: 40 mm}],"
    " features: {foot: {reamed: 3 mm, across: mast, at: 8 mm from left, depth: through}}}\n"
)
PINNED = (
    "joints:\n  pin: {pinned: [base.foot, lid.foot], fastener: 3 mm x 16 mm steel dowel pin,"
    " made: drilled together}\n"
)
PRESSED = (
    "  bush: {material: bronze, turned: [{name: outside, diameter: 10 mm, length: 8 mm}],"
    " features: {bore: {reamed: 6 mm, on: outside, depth: through}}}\n"
    "  arm: {material: mild steel, block: {length: 30 mm, width: 20 mm, height: 8 mm},"
    " features: {seat: {reamed: 10 mm, on: top, depth: through}}}\n"
    "  axle: {material: silver steel, stock: drawn rod,"
    " turned: [{name: rod, diameter: 6 mm, length: 40 mm}]}\n"
    "joints:\n  bush in arm: {pressed: [bush.outside, arm.seat]}\n"
    "  axle in bush: {runs_in: [axle.rod, bush.bore]}\n"
)


def _drawn(plan: Plan, text: str, how: str) -> tuple[list[object], Design]:
    design = plan(HEAD + text).design
    assert design is not None
    fact = next(one for one in design.facts.all(TogetherFact) if one.how == how)
    route = design.facts.about(Route, fact.subject)
    assert route is not None
    found = sketch_together(route.setups[0], fact, design)
    assert found is not None
    return list(found.shapes), design


def _told(shapes: list[object]) -> list[str]:
    return [one.text for one in shapes if isinstance(one, DrawnLabel)]


def test_two_blocks_stand_one_over_the_other_under_the_drill(plan: Plan) -> None:
    """12 mm high under 6 mm, to one scale, and the drill's arrow ends on the upper."""
    shapes, _ = _drawn(plan, BASE + TOP + PINNED, "drilled together")
    boxes = [one for one in shapes if isinstance(one, DrawnBox)]
    heights = [one.height for one in boxes[2:]]
    assert max(heights) == pytest.approx(2 * min(heights))
    upper = min(boxes[2:], key=lambda one: one.y)
    (arrow,) = [one for one in shapes if isinstance(one, Line) and one.stroke is Stroke.ARROW]
    assert arrow.y2 == pytest.approx(upper.y)
    assert sorted(_told(shapes)) == ["a", "a: base", "b", "b: lid"]
    for letter, box in (("a", upper), ("b", max(boxes[2:], key=lambda one: one.y))):
        mark = next(one for one in shapes if isinstance(one, DrawnLabel) and one.text == letter)
        assert box.y < mark.y <= box.y + box.height + 0.7


def test_a_round_one_lies_in_the_v_block(plan: Plan) -> None:
    shapes, _ = _drawn(plan, BASE + POST + PINNED, "drilled together")
    (disc,) = [one for one in shapes if isinstance(one, DrawnDisc)]
    (box,) = [one for one in shapes if isinstance(one, DrawnBox)]
    assert box.y + box.height == pytest.approx(disc.y - disc.radius)
    assert _told(shapes)[-1] == "b: lid"


def test_a_bush_is_pushed_into_its_housing_between_the_jaws(plan: Plan) -> None:
    """Both 8 mm long along the bore, 10 and 20 mm across it."""
    shapes, _ = _drawn(plan, PRESSED, "sized in place")
    _, housing, bush, *_ = [one for one in shapes if isinstance(one, DrawnBox)]
    assert housing.width == pytest.approx(bush.width)
    assert housing.height == pytest.approx(2 * bush.height)
    assert bush.x == pytest.approx(housing.x + housing.width)
    assert _told(shapes) == ["a", "b", "a: bush", "b: arm"]


@pytest.mark.parametrize("title", ["housing of the post bush", "counterbalancingweighthousing"])
def test_a_long_title_stays_within_the_sketch(title: str, plan: Plan) -> None:
    """Both lie in the 52 mm of its width and one line does not run over the other."""
    text = PRESSED.replace("  arm: {", f"  arm: {{title: {title}, ")
    shapes, _ = _drawn(plan, text, "sized in place")
    labels = [one for one in shapes if isinstance(one, DrawnLabel) and len(one.text) > 1]
    assert " ".join(one.text for one in labels) == f"a: bush b: {title}"
    assert all(one.x + text_width(one.text, one.height) <= WIDTH + 1e-6 for one in labels)
    lines = [one.y for one in labels]
    assert all(b - a >= labels[0].height for a, b in pairwise(lines))
    assert lines[0] - labels[0].height >= 0
    assert lines[-1] <= HEIGHT


FOOTED = (
    "  plate: {material: mild steel, plate: {length: 60 mm, width: 60 mm, thickness: 3 mm},"
    " features: {seat: {bored: to suit, on: top, depth: through}}}\n"
    "  housing: {material: mild steel, turned: [{name: spigot, diameter: 18 mm, length: 3 mm},"
    " {name: body, diameter: 30 mm, length: 18 mm}],"
    " features: {bore: {bored: to suit, on: body, depth: through}}}\n"
    "  bush: {material: bronze, turned: [{name: outside, diameter: 16 mm, length: 21 mm}],"
    " features: {bore: {bored: to suit, on: outside, depth: 20 mm}}}\n"
    "  post: {material: mild steel, turned: [{name: journal, diameter: 12 mm, length: 60 mm}]}\n"
    "joints:\n  housing on plate: {silver_soldered: [housing.spigot, plate.seat]}\n"
    "  bush in housing: {pressed: [bush.outside, housing.bore]}\n"
    "  post in bush: {runs_in: [post.journal, bush.bore]}\n"
    "stands: plate\n"
)


def test_a_plate_fixed_on_the_housing_lies_on_the_jaw_and_the_floor_goes_first(plan: Plan) -> None:
    """The plate is 60 mm wide, the housing 30 mm: twice as high, its face level with that of it."""
    shapes, _ = _drawn(plan, FOOTED, "sized in place")
    jaw, housing, bush, plate, floor, *_ = [one for one in shapes if isinstance(one, DrawnBox)]
    assert plate.height == pytest.approx(2 * housing.height)
    assert plate.height <= HEIGHT
    assert plate.x == pytest.approx(housing.x) == pytest.approx(jaw.x + jaw.width)
    assert plate.x + plate.width < bush.x
    assert floor.x == pytest.approx(bush.x)
    assert floor.height == pytest.approx(bush.height)
    assert "on it" in " ".join(_told(shapes))
    assert "floor" in " ".join(_told(shapes))
