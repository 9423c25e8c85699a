"""A length that is worked to a sum is in brackets on every page that shows it, with its sum.

What is in brackets is auxiliary, and no tolerance governs it: ISO 129-1. Sums are by hand.
"""

from __future__ import annotations

import pytest

from binder.api import Design, SummedFact
from binder.pages import Link, text_of
from binder_drafting import Along
from binder_plugins.drawings.sizes import sizes_of
from binder_plugins.drawings.suited import suited_note
from binder_plugins.inspection.suited import suited_rows
from binder_plugins.operations.facts import Route
from binder_plugins.shapes.step_names import named_steps
from binder_solid.facts import FormFact
from tests.plugins.operations.conftest import HEAD, Plan, plan
from tests.plugins.operations.test_measured_sums import (
    CLIPPED,
    EACH_END,
    HEADED,
    PLAIN,
    ROW,
    TAILED,
    features,
    pin_design,
)
from tests.plugins.operations.test_order import design_of

__all__ = ["plan"]

# A roller of 4 mm between a head and what is riveted on: 0.1 to 0.3 mm of float is wanted.
ROLLER = (
    HEAD
    + """\
  pin: {material: mild steel, stock: 4 mm drawn rod, turned: [{name: head, diameter: 4 mm, length: 1.5 mm}, {name: journal, diameter: 2.5 mm, length: 4.2 mm}, {name: tail, diameter: 2 mm, length: 4 mm}]}
  roller: {material: brass, stock: 7 mm round bar, turned: [{name: rim, diameter: 7 mm, length: 4 mm}], features: {bore: {drilled: 2.6 mm, on: rim, depth: through}}}
  arm: {material: mild steel, plate: {length: 30 mm, width: 10 mm, thickness: 3 mm}, features: {hole: {drilled: 2.1 mm, depth: through}}}
joints:
  roller on pin: {swivels: [roller.bore, pin.journal], master: roller.bore}
  pin in arm: {riveted: [pin.tail, arm.hole]}
"""  # noqa: E501
)


def lengths(design: Design, item: str) -> list[str]:
    """The texts of the lengths along the axis of a part, as its drawing has them."""
    form = design.facts.about(FormFact, item)
    assert form is not None
    found = sizes_of(form, ("front", "right"), design)
    return [one.text for one in found if isinstance(one, Along) and one.direction == "u"]


def note(design: Design, item: str) -> str:
    """What is said under the drawing."""
    return " ".join(text_of(one.text) for one in suited_note(item, design))


def rows(design: Design, item: str) -> list[list[str]]:
    """The rows of a part on the inspection sheet that a sum gave."""
    return [[text_of(cell) for cell in row] for row in suited_rows(item, design)]


@pytest.mark.parametrize(
    ("pin", "is_one", "whole"),
    [(f"{PLAIN}, {EACH_END}", True, "(8.45) to suit"),
     (f"{TAILED}, {features(1, 7.45)}", False, "(14.45) to suit")],
)  # fmt: skip
def test_a_pin_that_is_faced_to_a_sum_has_its_whole_length_in_brackets(
    plan: Plan, pin: str, whole: str, *, is_one: bool
) -> None:
    design = pin_design(plan, pin, is_one=is_one)
    assert whole in lengths(design, "pin")
    route = design.facts.about(Route, "pin")
    assert route is not None
    (number,) = [one.number for one in route.setups for a in one.acts if "= ______" in a.what]
    said = f"the whole length is made to suit, to the sum in set-up {number}, see End float of"
    assert said in note(design, "pin")
    ((_, _, place, size, tool, _, out),) = rows(design, "pin")
    assert place == "whole length"
    # A float of 0.1 to 0.2 mm leaves 0.05 to either side.
    figure = whole.partition(")")[0]
    assert size.startswith(f"{figure} mm) to suit: the sum in set-up {number}, ± 0.05 mm")
    assert tool == "micrometer"
    assert "face" not in out


def test_a_groove_that_is_placed_from_another_has_its_place_in_brackets(plan: Plan) -> None:
    """Both are cut from the right-hand end, the far one first: its wall is drawn fixed."""
    design = pin_design(plan, f"{HEADED}, {features(6, 12.45)}", is_one=False)
    (fact,) = design.facts.all(SummedFact)
    assert fact.is_groove
    found = lengths(design, "pin")
    assert sum("to suit" in one for one in found) == 1
    assert "19.45" in found
    ((_, _, place, size, tool, _, _),) = rows(design, "pin")
    assert place == "outer walls of the grooves"
    # 12.7 less 5.75.
    assert size.startswith("(6.95 mm) to suit")
    assert "end float" in tool


def test_spacers_share_what_the_sum_may_be_out(plan: Plan) -> None:
    """One ring of 4 mm: ± 0.05 mm, the half of 0.1 mm of float between its limits."""
    design = plan(ROW.replace("MEASURED", "")).design
    assert design is not None
    assert "(4) to suit" in lengths(design, "ring")
    ((_, _, _, size, _, _, _),) = rows(design, "ring")
    assert "± 0.05 mm" in size


def test_what_lies_beyond_a_step_to_suit_is_in_brackets(plan: Plan) -> None:
    """1.5 + 4.2 = 5.7, and 4 more: the head alone stays where it is drawn."""
    design = plan(ROLLER).design
    assert design is not None
    found = lengths(design, "pin")
    assert {"1.5", "(5.7) to suit", "(9.7)"} <= set(found)
    assert not {"5.7", "9.7"} & set(found)
    (table,) = named_steps(design.parts["pin"], design)
    told = [[text_of(cell) for cell in row] for row in table.rows]  # type: ignore[union-attr]
    assert told[0][2:] == ["1.5 mm", "0 mm to 1.5 mm"]
    assert told[1][2:] == ["(4.2 mm) to suit", "(1.5 mm to 5.7 mm)"]
    assert told[2][2:] == ["4 mm", "(5.7 mm to 9.7 mm)"]
    ((_, _, place, size, tool, _, remedy),) = rows(design, "pin")
    assert place == "journal, its length"
    # Between a head and a thinner tail: the tail's shoulder is the journal's own face.
    assert remedy == "too long: take its own face back; too short: take the face of the head back"
    assert "± 0.1 mm" in size
    # The anvils of a micrometer do not come down between two shoulders.
    assert tool == "digital caliper"


@pytest.mark.parametrize(
    ("model", "item", "shoulder", "drawn", "table"),
    [
        # Turned from the left, to 54.2 mm over all: what is right of 6.2 was cut before.
        ("screw-jack/screw-jack", "screw", 6.2, {"(6.2) to suit", "17.2", "54.2"},
         [["(6.2 mm) to suit", "(0 mm to 6.2 mm)"], ["(11 mm)", "(6.2 mm to 17.2 mm)"],
          ["37 mm", "17.2 mm to 54.2 mm"]]),
        # Both ends turned down, the left one last, till the journal is as long as it is wanted.
        ("wharf-crane/wharf-crane", "block_pin", 2.5, {"(2.5) to suit", "6.7", "9.2"},
         [["(2.5 mm)", "(0 mm to 2.5 mm)"], ["(4.2 mm) to suit", "(2.5 mm to 6.7 mm)"],
          ["2.5 mm", "6.7 mm to 9.2 mm"]]),
    ],
)  # fmt: skip
def test_where_the_whole_is_cut_as_drawn_one_shoulder_moves(
    model: str, item: str, shoulder: float, drawn: set[str], table: list[list[str]]
) -> None:
    """What lies beyond that shoulder keeps its place; what it divides is in brackets."""
    design = design_of(model)
    (fact,) = [one for one in design.facts.all(SummedFact) if one.item == item]
    assert not fact.moves_whole
    assert fact.shoulder == pytest.approx(shoulder)
    assert drawn <= set(lengths(design, item))
    (found,) = named_steps(design.parts[item], design)
    told = [[text_of(cell) for cell in row[2:]] for row in found.rows]  # type: ignore[union-attr]
    assert told == table


def test_a_step_at_the_end_gets_shorter_at_that_end() -> None:
    """The pin of the jack's screw runs from its free end to the head: plain geometry."""
    ((*_, remedy),) = rows(design_of("screw-jack/screw-jack"), "screw")
    assert remedy == "too long: face its end back; too short: take the face of the head back"


def test_the_note_leads_to_the_sheet_of_the_sum(plan: Plan) -> None:
    design = pin_design(plan, f"{PLAIN}, {EACH_END}", is_one=True)
    (paragraph,) = suited_note("pin", design)
    (link,) = [one for one in paragraph.text if isinstance(one, Link)]
    assert link.target == "chain-1"


def test_a_part_of_no_sum_has_no_brackets(plan: Plan) -> None:
    design = plan(CLIPPED.partition("joints:")[0].replace("PIN", PLAIN)).design
    assert design is not None
    assert lengths(design, "pin") == ["8.45"]
    assert not note(design, "pin")
    assert not rows(design, "pin")
