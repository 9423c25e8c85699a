"""What follows from one line of a seal: grooves, lead-ins, boxes, rings to buy, the sheet.

Housing sizes are those of the printed housing table (see tests/trade/seals); sums by hand.
"""

from __future__ import annotations

from collections.abc import Callable

import pytest

from binder.api import HalfFact, HardwareFact, NumberOff
from binder.compiler import Outcome, Phase
from binder.design import Design, Feature
from binder.pages import Facts, text_of
from binder_plugins.seals.facts import BoxFact, GasketFact, RingFact

Compile = Callable[..., Outcome]
TEXT = """\
format: 1
model: {title: Trial, issue: A, units: mm}
parts:
  barrel:
    material: brass
    quantity: 2
    turned: [{name: tube, diameter: 18 mm, length: 40 mm}]
    features: {bore: {bored: 12 mm, on: tube, depth: through}}
  piston:
    material: brass
    turned: [{name: body, diameter: 12 mm, length: 8 mm}]
  rod:
    material: stainless steel
    stock: drawn rod
    turned: [{name: body, diameter: 4 mm, length: 60 mm}]
  cover:
    material: brass
    turned: [{name: boss, diameter: 14 mm, length: 16 mm}]
    features: {hole: {drilled: 4.2 mm, on: boss, depth: through}%s}
joints:
  %s
assemblies:
  cylinder: {of: [barrel, piston, rod, cover]}
  engine: {of: [2 off cylinder]}
"""
PISTON = "piston in barrel: {sealed: [piston.body, barrel.bore], moving: true, ring: 9 mm x 1.8 mm}"


def design_of(compile_text: Compile, line: str, cover: str = "") -> Design:
    design = compile_text(TEXT.replace("    quantity: 2\n", "") % (cover, line)).design
    assert design is not None
    return design


def named(design: Design, part: str, name: str) -> Feature:
    return next(one for one in design.parts[part].features if one.name == name)


def mm(feature: Feature, name: str) -> float:
    return float(getattr(feature.entry, name).exact)


def test_a_groove_is_made_on_the_piston_and_a_lead_on_the_barrel(compile_text: Compile) -> None:
    design = design_of(compile_text, PISTON)
    groove = named(design, "piston", "piston_in_barrel_groove")
    # Bore 12 less twice 1.45: floor 9.1, 1.45 deep in a 12 mm piston.
    assert (mm(groove, "grooved"), mm(groove, "depth")) == (2.4, 1.45)
    lead = named(design, "barrel", "piston_in_barrel_lead")
    assert (mm(lead, "chamfered"), mm(lead, "angle")) == (2.5, 15)
    assert str(getattr(lead.entry, "on", "")) == "tube"


def test_a_drawn_rod_is_left_and_the_groove_goes_into_the_cover(compile_text: Compile) -> None:
    design = design_of(compile_text, "rod in cover: {sealed: [rod.body, cover.hole], moving: true}")
    (fact,) = design.facts.all(RingFact)
    assert fact.groove.place == "rod"
    groove = named(design, "cover", "rod_in_cover_groove")
    # Rod 4 plus twice the housing, from the surface of a 4.2 mm hole.
    assert mm(groove, "depth") == pytest.approx((fact.groove.diameter_mm - 4.2) / 2)
    assert fact.groove.diameter_mm == pytest.approx(4 + 2 * fact.groove.depth_mm)


def test_a_ring_is_chosen_where_none_is_named(compile_text: Compile) -> None:
    line = "piston in barrel: {sealed: [piston.body, barrel.bore], moving: true}"
    (fact,) = design_of(compile_text, line).facts.all(RingFact)
    assert not fact.groove.remarks
    assert fact.groove.diameter_mm == pytest.approx(12 - 2 * fact.groove.depth_mm)
    by_cord = line.replace("true}", "true, ring: 1.5 mm}")
    (fact,) = design_of(compile_text, by_cord).facts.all(RingFact)
    assert fact.groove.ring.cord_mm == 1.5


def test_rings_are_bought_as_often_as_the_joint_is_made(compile_text: Compile) -> None:
    design = design_of(compile_text, PISTON)
    (hardware,) = design.facts.all(HardwareFact)
    assert (hardware.what, hardware.count, hardware.spares) == ("O-ring 9 × 1.8 mm", 2, 1)
    assert design.bought[hardware.name].what == "O-ring 9 × 1.8 mm"
    number = design.facts.about(NumberOff, hardware.name)
    assert number is not None
    assert number.count == 2


def test_one_kind_of_ring_in_two_joints_is_one_line_to_buy(compile_text: Compile) -> None:
    line = f"{PISTON}\n  cap in barrel: {{sealed: [cover.boss, barrel.bore], ring: 9 mm x 1.8 mm}}"
    design = design_of(compile_text, line)
    assert list(design.bought) == ["o_ring_9_x_1_8_mm"]
    number = design.facts.about(NumberOff, "o_ring_9_x_1_8_mm")
    assert number is not None
    assert number.count == 4


def test_a_ring_that_the_maker_lists_is_not_bought_twice(compile_text: Compile) -> None:
    line = PISTON.replace(", ring: 9 mm x 1.8 mm", ", held_by: oring")
    line += "\nbought:\n  oring: {what: O-ring 8.75 mm x 1.8 mm}"
    design = design_of(compile_text, line)
    (fact,) = design.facts.all(RingFact)
    assert fact.groove.ring.inside_mm == 8.75
    assert not design.facts.all(HardwareFact)


def test_a_gasket_has_its_thickness_when_pulled_down(compile_text: Compile) -> None:
    line = (
        "cover on barrel: {gasketed: [cover.underside, barrel.top], gasket: rubber,"
        " thickness: 2 mm}"
    )
    design = design_of(compile_text, line)
    (fact,) = design.facts.all(GasketFact)
    # Rubber is pulled down by 15 to 40 %: 1.2 to 1.7 mm.
    assert (fact.gasket.closed_least_mm, fact.gasket.closed_most_mm) == pytest.approx((1.2, 1.7))
    assert all("1.45 mm" in half.what for half in design.facts.all(HalfFact))


def test_a_box_is_bored_for_the_packing(compile_text: Compile) -> None:
    line = "rod in cover: {packed: [rod.body, cover.top], packing: 1.5 mm}"
    design = design_of(compile_text, line)
    (fact,) = design.facts.all(BoxFact)
    box = named(design, "cover", "rod_in_cover_box")
    # 4 + 2 × 1.5; four rings of 1.5 and half a nose of 3 mm.
    assert (mm(box, "bored"), mm(box, "depth")) == (7, 7.5)
    assert fact.box.ring_mm == pytest.approx(3.14159265 * 5.5)
    (hardware,) = design.facts.all(HardwareFact)
    assert hardware.count == 8


def test_a_written_box_decides_the_packing(compile_text: Compile) -> None:
    line = "rod in cover: {packed: [rod.body, cover.box]}"
    design = design_of(compile_text, line, ", box: {bored: 8 mm, on: boss, depth: 10 mm}")
    (fact,) = design.facts.all(BoxFact)
    assert fact.box.section_mm == 2
    assert len(design.parts["cover"].features) == 2


def test_the_sheet_lets_the_floor_follow_the_bore(compile_text: Compile) -> None:
    text = TEXT.replace("    quantity: 2\n", "") % ("", PISTON)
    binder = compile_text(text, Phase.COMPOSE).binder
    assert binder is not None
    (sheet,) = next(one.sections for one in binder.sections if one.id == "seals")
    facts = next(block for block in sheet.blocks if isinstance(block, Facts))
    words = {name: text_of(value) for name, value in facts.pairs}
    assert "− 2.9 mm = cut the floor to" in words["Floor of the groove"]
    assert words["Pressed by"] == "19 %"


def test_every_figure_has_its_sum(compile_text: Compile) -> None:
    working = design_of(compile_text, PISTON).workings["piston_in_barrel.squeeze"]
    assert working.formula == "(cord − depth) / cord"
    assert working.result == "18.6 %"
