"""Sketches of grips: what carries the work is drawn, and work on edge stands on edge."""

from __future__ import annotations

from dataclasses import replace
from itertools import pairwise

import pytest

from binder.api import DrawnBox, Polyline, Stroke
from binder_plugins.operations.facts import Grip, Route, SetUp
from binder_plugins.operations.leaf import operations
from binder_plugins.operations.sketch import sketch
from binder_plugins.operations.uncut import uncut_in
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


PINNED = (
    "  part: {material: mild steel, stock: 10 mm drawn rod, turned: [{name: pin, diameter: 6 mm,"
    " length: 6 mm}, {name: head, diameter: 10 mm, length: 11 mm}, {name: shank, diameter: 10 mm,"
    " length: 37 mm}], features: {thread: {screwed: M10, on: shank, length: 37 mm}}}\n"
)
THIN = (
    "  part: {material: brass, stock: 9 mm round bar, turned: [{name: plate, diameter: 9 mm,"
    " length: %s mm}], features: {hole: {drilled: 3.4 mm, on: plate, depth: through}}}\n"
)
KNOB = (
    "  part: {material: brass, stock: 7 mm round bar, turned: [{name: ball, diameter: 7 mm, length:"
    " 9 mm}], features: {thread: {tapped: M3, on: ball, depth: 5.5 mm}, round: {rounded: 1.5 mm,"
    " on: ball}}}\n"
)


def drawn_in(plan: Plan, spec: str, number: int) -> tuple[list[Polyline], list[DrawnBox], SetUp]:
    """The outlines and the boxes of the sketch of a set-up in the lathe, counted from 0."""
    design = plan(HEAD + spec).design
    assert design is not None
    form, route = design.facts.about(FormFact, "part"), design.facts.about(Route, "part")
    assert route is not None
    setup = [one for one in route.setups if one.place == "lathe"][number]
    drawn = sketch(setup, form, uncut_in(route, setup))
    assert drawn is not None
    steps = [one for one in drawn.shapes if isinstance(one, Polyline) and len(one.points) == 5]
    return steps, [one for one in drawn.shapes if isinstance(one, DrawnBox)], setup


def tall(step: Polyline) -> float:
    """How high a step is drawn."""
    heights = [y for _, y in step.points]
    return max(heights) - min(heights)


def test_what_is_turned_later_is_bar_in_the_first_grip(plan: Plan) -> None:
    """Sawn rod of 10 mm has no pin of 6 mm yet; in the grip that turns it, it is drawn."""
    first, _, _ = drawn_in(plan, PINNED, 0)
    assert [one.stroke for one in first] == [Stroke.THIN, Stroke.OUTLINE, Stroke.OUTLINE]
    assert tall(first[0]) == pytest.approx(tall(first[1]))
    second, _, _ = drawn_in(plan, PINNED, 1)
    assert {one.stroke for one in second} == {Stroke.OUTLINE}
    assert tall(second[0]) == pytest.approx(0.6 * tall(second[1]))


@pytest.mark.parametrize("thick", ["0.8", "1.5", "3"])
def test_a_thin_disc_stands_out_of_its_jaws(thick: str, plan: Plan) -> None:
    """The facing tool passes what it faces without meeting a jaw: geometry."""
    (disc,), boxes, _ = drawn_in(plan, THIN % thick, 1)
    face = max(x for x, _ in disc.points)
    jaws = [one for one in boxes if one.tint]
    assert jaws
    assert all(one.x + one.width < face - 0.1 for one in jaws)


def test_a_stub_tells_how_far_it_and_its_work_stand_out(plan: Plan) -> None:
    """7 mm of stub, 9 mm of part and 0.5 mm to face are 16.5 mm, told in whole mm: arithmetic."""
    (part,), boxes, setup = drawn_in(plan, KNOB, 1)
    assert setup.grip.stand_out == pytest.approx(16.5)
    assert "its shoulder 7 mm out of the jaws" in setup.grip.on
    xs = [x for x, _ in part.points]
    jaws = max(one.x + one.width for one in boxes[-2:])
    assert (min(xs) - jaws) / (max(xs) - min(xs)) == pytest.approx(7 / 9)
    design = plan(HEAD + KNOB).design
    assert design is not None
    route = design.facts.about(Route, "part")
    assert route is not None
    heads = ["".join(map(str, one.title)) for one in operations(route, design).groups]
    assert any(
        "its shoulder 7 mm out of the jaws, the end of the work 17 mm out" in h for h in heads
    )


PLATES = (
    "  part: {{material: brass, quantity: {count}, stock: {thick} mm plate, plate: {{length: 68 mm,"
    " width: 36 mm, thickness: {thick} mm}}, features: {{hole: {{reamed: 4 mm, depth: through,"
    " at: 10 mm from right}}}}}}\n"
)


def _plates(plan: Plan, count: int, thick: float) -> list[tuple[SetUp, list[DrawnBox]]]:
    """The sketches in which the plates stand or lie in a vice, with their boxes."""
    design = plan(HEAD + PLATES.format(count=count, thick=thick)).design
    assert design is not None
    form, route = design.facts.about(FormFact, "part"), design.facts.about(Route, "part")
    assert route is not None
    drawn = [(one, sketch(one, form)) for one in route.setups if one.grip.kind == "vice"]
    return [
        (setup, [one for one in picture.shapes if isinstance(one, DrawnBox)])
        for setup, picture in drawn
        if picture is not None
    ]


@pytest.mark.parametrize("count", [1, 2, 3])
def test_each_plate_of_a_stack_is_drawn(plan: Plan, count: int) -> None:
    """Of plates of 3 mm cut together all are seen: side by side on edge, one on the other lying.

    Hand reckoning: 4.5 mm of paper is there for what is high, 28 mm for what is wide. On edge 36 mm
    are high, 0.125 mm of paper for each; lying 36 mm are wide, 28 / 36 = 0.778, unless the stack is
    higher than 4.5 / 0.778 = 5.8 mm, as two and three plates are. A plate is 0.8 mm of paper at the
    least.
    """
    seen = _plates(plan, count, 3.0)
    assert {one.grip.on.removeprefix(f"{count} together, ") for one, _ in seen} >= {
        "its faces, the edge up",
        "its sides",
    }
    for setup, boxes in seen:
        is_edge = setup.grip.on == "its faces, the edge up"
        several = f"{count} together" in f"{setup.grip.holder}, {setup.grip.on}"
        assert several == (count > 1)
        high = 4.5 / count if count > 1 else 3 * 28 / 36
        wide, tall = (0.8, 4.5) if is_edge else (36 * min(28 / 36, 1.5 / count), high)
        found = [one for one in boxes if (one.width, one.height) == pytest.approx((wide, tall))]
        assert len(found) == count, setup
        # They touch, and do not lie in one another.
        places = sorted((one.x if is_edge else one.y) for one in found)
        step = wide if is_edge else tall
        assert all(b - a == pytest.approx(step) for a, b in pairwise(places))
