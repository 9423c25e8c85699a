"""On which side the gib lies, and where the slide then stands: plain arithmetic, by hand.

A tail of 24 with a gib of 2 and a play of 0.1 at 60° lies in a slot of 24 + 2 / sin 60° + 0.1 =
26.4094; the gap is all on the side of the gib, so the two middles lie 1.2047 apart.
"""

from __future__ import annotations

from collections.abc import Callable

import pytest

from binder.api import AsideFact, HalfFact
from binder.compiler import Outcome
from binder.design import Design, OffMiddleFact
from binder_solid.facts import FlatFact, FormFact, Located
from binder_solid.flats import Flat
from binder_solid.placed import PlacedFact
from binder_solid.space import placed

Compile = Callable[..., Outcome]
OFF = (2 / 0.8660254 + 0.1) / 2
TEXT = """\
format: 1
model: {title: Trial, issue: A, units: mm}
stands: bed
parts:
  bed:
    material: cast iron
    stock: casting
    block: {length: 120 mm, width: 60 mm, height: 20 mm}
    features:
      way: {dovetailed: to suit, on: top, inside: true, at: "%s"}
  table:
    material: mild steel
    block: {length: 60 mm, width: 60 mm, height: 14 mm}
    features:
      tail: {dovetailed: to suit, on: underside}
joints:
  table on bed: {dovetailed: [table.tail, bed.way], width: 24 mm, depth: 5 mm%s}
"""
GIB = ", gib: 2 mm, clearance: 0.1 mm"


def design_of(compile_text: Compile, at: str, gib: str = GIB) -> Design:
    design = compile_text(TEXT % (at, gib)).design
    assert design is not None
    return design


def slot_y(design: Design) -> float:
    form = design.facts.about(FormFact, "bed")
    assert form is not None
    return next(one.frame.origin[1] for one in form.located if one.name == "way")


def table_y(design: Design) -> float:
    """The middle of the table across the bed, from its front."""
    found = next(one for one in design.facts.all(PlacedFact) if one.item == "table")
    return placed((30.0, 30.0, 0.0), found.frame)[1]


def test_the_slot_is_cut_towards_the_gib_so_that_the_tail_runs_on_the_middle(
    compile_text: Compile,
) -> None:
    design = design_of(compile_text, "60 mm from left")
    assert slot_y(design) == pytest.approx(30 + OFF, abs=1e-3)
    assert table_y(design) == pytest.approx(30, abs=1e-3)


def test_a_slot_that_the_maker_places_stays_and_its_slide_stands_off(
    compile_text: Compile,
) -> None:
    design = design_of(compile_text, "60 mm from left, 30 mm from front")
    assert slot_y(design) == pytest.approx(30)
    assert table_y(design) == pytest.approx(30 - OFF, abs=1e-3)


def test_without_a_gib_nothing_is_shifted(compile_text: Compile) -> None:
    design = design_of(compile_text, "60 mm from left", "")
    assert slot_y(design) == pytest.approx(30)
    assert design.facts.about(OffMiddleFact, "bed.way") is None


def test_the_leaf_names_the_side(compile_text: Compile) -> None:
    design = design_of(compile_text, "60 mm from left")
    how = next(one.how for one in design.facts.all(HalfFact) if one.place == "gib_screws")
    assert how.startswith("mark them on the back, where the gib lies")


def test_both_halves_have_their_corners_eased(compile_text: Compile) -> None:
    design = design_of(compile_text, "60 mm from left")
    halves = [one for one in design.facts.all(HalfFact) if one.place in ("way", "tail")]
    assert len(halves) == 2
    assert all("inside corners" in one.eased for one in halves)


def gib_holes(design: Design) -> Located:
    form = design.facts.about(FormFact, "bed")
    assert form is not None
    return next(one for one in form.located if one.name == "gib_screws")


@pytest.mark.parametrize(
    ("said", "side", "y"), [("", "back", 60), (", gib_side: front", "front", 0)]
)
def test_solid_template_and_words_take_the_screws_on_one_side(
    said: str, side: str, y: float, compile_text: Compile
) -> None:
    """The screws bear on the gib from its own side, and are drilled in that face (geometry)."""
    design = design_of(compile_text, "60 mm from left", GIB + said)
    holes = gib_holes(design)
    assert holes.face == side
    assert {spot[1] for spot in holes.spots} == {y}
    flat = template_of(design, side)
    # A strip of 60 about 60, screws at a sixth, the half and five sixths: alike from both ends.
    assert sorted(hole.at[0] for hole in flat.holes) == pytest.approx([40, 60, 80])
    how = next(one.how for one in design.facts.all(HalfFact) if one.place == "gib_screws")
    assert how.startswith(f"mark them on the {side}, where the gib lies")


def test_seen_from_the_back_the_screws_count_from_the_other_corner(compile_text: Compile) -> None:
    """40 mm off the left end of a bed of 120 they lie 80 off its right end (geometry)."""
    flat = template_of(design_of(compile_text, "40 mm from left"), "back")
    assert sorted(hole.at[0] for hole in flat.holes) == pytest.approx([60, 80, 100])


def test_the_gib_at_the_front_turns_the_slide_round(compile_text: Compile) -> None:
    front = GIB + ", gib_side: front"
    design = design_of(compile_text, "60 mm from left, 30 mm from front", front)
    assert table_y(design) == pytest.approx(30 + OFF, abs=1e-3)
    assert slot_y(design_of(compile_text, "60 mm from left", front)) == pytest.approx(
        30 - OFF, abs=1e-3
    )


@pytest.mark.parametrize(("side", "wall"), [("back", 38), ("front", 22)])
def test_the_wall_is_that_between_the_gib_and_its_side(
    side: str, wall: float, compile_text: Compile
) -> None:
    """The slot's middle 22 from the front and 38 from the back of 60; less half its floor, more
    what the flank leans half way up (geometry)."""
    floor, lean = 24 + 2 * OFF + 2 * 5 / 1.7320508, 2.5 / 1.7320508
    said = f"{GIB}, gib_side: {side}"
    design = design_of(compile_text, "60 mm from left, 22 mm from front", said)
    (fact,) = design.facts.all(AsideFact)
    assert fact.wall == pytest.approx(wall - floor / 2 + lean, abs=1e-3)


def template_of(design: Design, face: str) -> Flat:
    fact = design.facts.about(FlatFact, "bed")
    assert fact is not None
    return next(one for one in fact.flats if one.face == face)
