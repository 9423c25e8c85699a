"""What a drawing shows of a part and how: projection, hands, views, callouts, data, stacks."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from binder.api import Design
from binder.compiler import Outcome, Phase
from binder_drafting import Note, Request, draft
from binder_plugins.drawings.page import request_for
from binder_solid.facts import FormFact, JoinedFact, ViewsFact
from binder_solid.placed import PlacedFact
from binder_solid.space import dot, minus, placed
from tests.drafting.proofs import labels_of

Compile = Callable[..., Outcome]
HEAD = "format: 1\nmodel: {title: Trial, issue: A, units: mm%s}\nparts:\n"
CHEEK = """
  cheek:
    material: brass
    stock: 3 mm plate
    plate: {length: 60 mm, width: 30 mm, thickness: 3 mm}
    features:
      lower: {reamed: 4 mm, depth: through, at: 10 mm from right}
"""
BLOCK = """
  block:
    material: brass
    block: {length: 40 mm, width: 20 mm, height: 20 mm}
    features:
      hole: {drilled: 3 mm, on: top, depth: 8 mm, at: 10 mm from left}
"""


def design_of(compile_text: Compile, parts: str, head: str = "") -> Design:
    outcome = compile_text(HEAD % head + parts, Phase.COMPOSE)
    assert outcome.design is not None, [one.message for one in outcome.findings]
    return outcome.design


def request_of(design: Design, name: str, kind: type[FormFact] = FormFact) -> Request:
    fact, views = design.facts.about(kind, name), design.facts.about(ViewsFact, name)
    assert fact is not None
    assert views is not None
    return request_for(fact, views, design)


def words_on(request: Request) -> set[str]:
    return {one.text for one in labels_of(draft(request))}


def notes_of(request: Request) -> set[tuple[str, tuple[str, ...]]]:
    return {(one.view, one.lines) for one in request.sizes if isinstance(one, Note)}


# ISO 5456-2: in first angle the view from above lies under the front view, in third above it.
@pytest.mark.parametrize(("head", "sign"), [("", 1), (", projection: third angle", -1)])
def test_the_model_chooses_the_projection(compile_text: Compile, head: str, sign: int) -> None:
    sheet = draft(request_of(design_of(compile_text, BLOCK, head), "block"))
    boxes = {one.name: one.box for one in sheet.views}
    assert (boxes["top"].middle[1] - boxes["front"].middle[1]) * sign > 0


def test_a_pair_of_hands_says_how_many_of_each(compile_text: Compile) -> None:
    parts = CHEEK.replace("  cheek:", "  cheek:\n    handed: true\n    quantity: 4")
    fields = request_of(design_of(compile_text, parts), "cheek").fields
    assert fields is not None
    assert fields.hand == "2 off as drawn, 2 off opposite hand"


def test_the_opposite_hand_of_a_part_names_it_and_has_its_hole_on_the_other_side(
    compile_text: Compile,
) -> None:
    parts = CHEEK + "  other: {like: cheek, mirrored: true}\n"
    design = design_of(compile_text, parts)
    request = request_of(design, "other")
    assert request.fields is not None
    assert request.fields.hand.startswith("opposite hand of item")
    fact = design.facts.about(FormFact, "other")
    assert fact is not None
    # 10 mm from the left instead of from the right of 60.
    assert fact.located[0].spots[0][0] == pytest.approx(10)


def test_a_flat_part_is_seen_from_above_and_its_thickness_is_said(compile_text: Compile) -> None:
    request = request_of(design_of(compile_text, CHEEK), "cheek")
    assert [view.name for view in request.views] == ["top", "isometric"]
    assert ("top", ("3 thick",)) in notes_of(request)


def test_a_hole_and_its_seat_are_one_callout(compile_text: Compile) -> None:
    seat = "      seat:  {counterbored: 6 mm, on: top, depth: 2 mm, at: 10 mm from left}\n"
    parts = BLOCK.replace("depth: 8 mm", "depth: through") + seat
    (note,) = notes_of(request_of(design_of(compile_text, parts), "block"))
    assert note == ("top", ("drill ⌀3, through", "counterbore ⌀6, 2 deep"))


def test_the_number_of_a_pattern_is_said_once(compile_text: Compile) -> None:
    parts = BLOCK.replace("at: 10 mm from left", "off: 2, pattern: 2 off 12 mm apart")
    (note,) = notes_of(request_of(design_of(compile_text, parts), "block"))
    assert note[1] == ("2 × drill ⌀3, 8 deep, 12 apart",)


# `6 in` for `6 mm in` would be another size.
def test_words_that_would_turn_into_inches_keep_their_unit(compile_text: Compile) -> None:
    parts = BLOCK.replace("at: 10 mm from left", 'off: 4, pattern: "at the corners, 6 mm in"')
    (note,) = notes_of(request_of(design_of(compile_text, parts), "block"))
    assert note[1] == ("4 × drill ⌀3, 8 deep, at the corners, 6 mm in",)


def test_neighbours_of_one_diameter_are_told_once(compile_text: Compile) -> None:
    parts = """
  rod:
    material: mild steel
    stock: drawn rod
    turned:
      - {name: seat, diameter: 6 mm, length: 20 mm}
      - {name: journal, diameter: 6 mm, length: 30 mm}
"""
    request = request_of(design_of(compile_text, parts), "rod")
    assert sorted(one.text for one in request.sizes) == ["20", "50", "⌀6"]  # type: ignore[union-attr]


# m = 1, z = 27, 20°: pitch diameter m z = 27, tip m (z + 2) = 29, depth 2.25 m (ISO 53 profile A);
# span over 4 teeth 10.711 (handbook tables of base tangent lengths, from memory).
def test_a_gear_has_its_table_of_data(compile_text: Compile) -> None:
    parts = """
  wheel:
    material: brass
    stock: round bar
    gear: {module: 1 mm, teeth: 27, width: 5 mm}
    features: {bore: {reamed: 6 mm, depth: through}}
"""
    request = request_of(design_of(compile_text, parts), "wheel")
    data = {one.caption: one.text for one in request.data}
    assert data["Module"] == "1"
    assert data["Number of teeth"] == "27"
    assert data["Pressure angle"] == "20°"
    assert float(data["Pitch diameter"]) == pytest.approx(27)
    assert float(data["Depth of tooth"]) == pytest.approx(2.25)
    assert float(data["Span over 4 teeth"]) == pytest.approx(10.711, abs=5e-4)
    assert {"⌀29", "Module", "10.711"} <= words_on(request)


# The gap of a retaining compound is 0.02 to 0.05 mm (from memory of makers' data).
def test_a_rod_as_bought_has_the_bar_s_limits_and_a_row_for_what_is_eased(
    compile_text: Compile,
) -> None:
    parts = """
  rod:
    material: silver steel
    stock: drawn rod
    turned: [{name: journal, diameter: 6 mm, length: 50 mm}]
  hub:
    material: brass
    stock: round bar
    turned: [{name: boss, diameter: 16 mm, length: 10 mm}]
    features: {bore: {reamed: 6 mm, on: boss, depth: through}}
joints:
  hub on rod: {retained: [hub.bore, rod.journal]}
"""
    request = request_of(design_of(compile_text, parts), "rod")
    (row,) = request.data
    assert row.text == "bore −0.020 to −0.050"
    # A 6 mm bar of h8: 5.982 to 6.000 (ISO 286-2).
    assert {"+0.000", "−0.018"} <= words_on(request)


# Mouth 1.5 × 2 mm at 90°: common practice, no source. The pin's body stands on one face of the arm,
# and its tail is spread into the other: where the body is, is worked out from both places.
@pytest.mark.parametrize("count", [1, 2])
def test_a_hole_in_which_a_tail_is_riveted_shows_how_it_is_sunk(
    count: int, compile_text: Compile
) -> None:
    parts = f"""
  pin:
    material: mild steel
    stock: drawn rod
    turned:
      - {{name: body, diameter: 4 mm, length: 10 mm}}
      - {{name: tail, diameter: 2 mm, length: 4.5 mm}}
  arm:
    material: mild steel
    stock: 10 mm x 3 mm flat bar
    cut: 30 mm
    quantity: {count}
    features: {{tip: {{drilled: 2.1 mm, depth: through, at: 5 mm from right}}}}
joints: {{pin in arm: {{riveted: [pin.tail, arm.tip]}}}}
stands: pin
"""
    design = design_of(compile_text, parts)
    request = request_of(design, "arm")
    notes = [one.lines for one in request.sizes if isinstance(one, Note)]
    (lines,) = (one for one in notes if "2.1" in one[0])
    assert lines[-1].startswith("countersunk ⌀3 × 90° on the ")
    face = lines[-1].removeprefix("countersunk ⌀3 × 90° on the ")
    if count == 2:
        assert face == "outer face"
        return
    arm, pin = (
        next(one for one in design.facts.all(PlacedFact) if one.item == name)
        for name in ("arm", "pin")
    )
    body, middle = placed((5.0, 0.0, 0.0), pin.frame), placed((25.0, 5.0, 1.5), arm.frame)
    is_above = dot(minus(body, middle), arm.frame.z) > 0
    assert face == ("underside" if is_above else "top")


FRAME = """
  side:
    material: mild steel
    stock: 2 mm plate
    plate: {length: 80 mm, width: 20 mm, thickness: 2 mm}
  bar: {material: mild steel, stock: 6 mm x 3 mm flat bar, cut: 16 mm}
fabrications:
  frame:
    pieces: [2 off side, 2 off bar]
    joined: riveted
    stack:
      - {piece: side}
      - {piece: bar, stands: on end, off: 2, pattern: "in a row, 40 mm apart"}
      - {piece: side}
    features:
      head: {reamed: 4 mm, depth: through, at: 5 mm from right}
"""


def test_pieces_are_stacked_as_told_and_cut_when_joined(compile_text: Compile) -> None:
    design = design_of(compile_text, FRAME)
    fact = design.facts.about(JoinedFact, "frame")
    assert fact is not None
    # Two sides of 2 mm and bars of 16 mm between them.
    assert fact.size == pytest.approx((80, 20, 2 + 16 + 2))
    assert fact.located[0].spots[0] == pytest.approx((75, 10, 20))
    request = request_of(design, "frame", JoinedFact)
    assert {"(80)", "(20)", "5", "ream ⌀4, through"} <= words_on(request)


def test_a_stack_has_no_more_than_the_pieces_that_there_are(compile_text: Compile) -> None:
    outcome = compile_text(HEAD % "" + FRAME.replace("2 off side", "1 off side"))
    assert "stack-of-others" in {one.code.name for one in outcome.findings}


def test_a_layer_of_hundreds_is_refused_at_once(compile_text: Compile) -> None:
    text = FRAME.replace("2 off bar", "500 off bar").replace("off: 2", "off: 500")
    outcome = compile_text(HEAD % "" + text)
    assert "stack-not-laid-out" in {one.code.name for one in outcome.findings}


def test_a_layer_of_several_wants_a_pattern(compile_text: Compile) -> None:
    text = FRAME.replace(', pattern: "in a row, 40 mm apart"', "")
    outcome = compile_text(HEAD % "" + text)
    assert "stack-not-laid-out" in {one.code.name for one in outcome.findings}
