"""Both halves of a slide from one line: features, leaves, sums and the sheet.

The sizes are reckoned by hand beside each case; formulas: Machinery's Handbook, measuring
dovetail slides.
"""

from __future__ import annotations

from collections.abc import Callable

import pytest

from binder.api import HalfFact, HardwareFact, Size
from binder.compiler import Outcome, Phase
from binder.design import Design, Feature
from binder.pages import Facts, Picture, Section, text_of
from binder_plugins.slides.facts import SlideFact
from binder_plugins.slides.kinds import DovetailFeature
from binder_plugins.slides.page import slide_pages

Compile = Callable[..., Outcome]
TEXT = """\
format: 1
model: {title: Trial, issue: A, units: mm}
parts:
  bed:
    material: cast iron
    stock: casting
    block: {length: 120 mm, width: 50 mm, height: 20 mm}
  table:
    material: mild steel
    block: {length: 60 mm, width: 60 mm, height: 14 mm}
joints:
  table on bed: {dovetailed: [table.underside, bed.top], %s}
"""
WORDS = "width: 24 mm, depth: 5 mm, gib: 2 mm, clearance: 0.1 mm, pins: 3 mm"
TAN = 1.7320508
SIN = 0.8660254


def design_of(compile_text: Compile, text: str) -> Design:
    design = compile_text(text).design
    assert design is not None
    return design


def fact_of(compile_text: Compile, words: str = WORDS) -> SlideFact:
    (fact,) = design_of(compile_text, TEXT % words).facts.all(SlideFact)
    return fact


def named(design: Design, part: str, name: str) -> Feature:
    return next(one for one in design.parts[part].features if one.name == name)


def test_both_halves_follow_from_one_line(compile_text: Compile) -> None:
    fact = fact_of(compile_text)
    assert fact.slide is not None
    # Relief 0.25 (a twentieth of 5), so the tail is 4.75 high: 24 + 2 × 4.75 / tan 60°.
    assert fact.slide.male.wide_mm == pytest.approx(24 + 9.5 / TAN, abs=1e-5)
    # Mouth: 24 + 0.1 + 2 / sin 60°; floor 5 deep.
    mouth = 24.1 + 2 / SIN
    assert fact.slide.female.narrow_mm == pytest.approx(mouth, abs=1e-5)
    assert fact.slide.female.wide_mm == pytest.approx(mouth + 10 / TAN, abs=1e-5)
    assert fact.pins is not None
    # 3 mm pins add 3 × (1 + cot 30°) = 8.19615.
    assert fact.pins.male_over_mm == pytest.approx(24 + 8.1961524, abs=1e-5)
    assert fact.pins.female_between_mm == pytest.approx(mouth + 10 / TAN - 8.1961524, abs=1e-5)


def test_each_part_gets_its_feature(compile_text: Compile) -> None:
    design = design_of(compile_text, TEXT % WORDS)
    tail = named(design, "bed", "table_on_bed_tail")
    slot = named(design, "table", "table_on_bed_slot")
    assert (tail.implied_by, slot.implied_by) == ("table on bed", "table on bed")
    assert "tail, 29.485 mm across its top" in str(tail.entry.note)
    assert "5 mm deep" in str(slot.entry.note)


def test_a_slot_left_to_suit_takes_its_size(compile_text: Compile) -> None:
    text = (TEXT % WORDS).replace("table.underside", "table.ways")
    text = text.replace(
        "height: 14 mm}",
        "height: 14 mm}\n    features: {ways: {dovetailed: to suit, on: underside, inside: true}}",
    )
    design = design_of(compile_text, text)
    (slot,) = design.parts["table"].features
    assert (slot.name, slot.kind) == ("ways", "dovetailed")
    assert isinstance(slot.entry, DovetailFeature)
    assert isinstance(slot.entry.dovetailed, Size)
    assert slot.entry.dovetailed.mm == pytest.approx(24.1 + 2 / SIN, abs=1e-5)


def test_a_written_tail_decides_the_slot(compile_text: Compile) -> None:
    text = (TEXT % "gib: 2 mm, clearance: 0.1 mm").replace("bed.top", "bed.tail")
    text = text.replace(
        "height: 20 mm}",
        "height: 20 mm}\n    features: {tail: {dovetailed: 22 mm, depth: 4 mm, on: top}}",
    )
    (fact,) = design_of(compile_text, text).facts.all(SlideFact)
    assert fact.slide is not None
    assert fact.slide.male.narrow_mm == 22
    assert fact.slide.male.depth_mm == pytest.approx(4)
    assert fact.slide.female.depth_mm == pytest.approx(4.2)


def test_the_cutter_decides_the_depth_and_angle_that_nobody_wrote(compile_text: Compile) -> None:
    fact = fact_of(compile_text, "width: 24 mm, gib: 2 mm")
    assert fact.wanted is not None
    # A quarter of 24 mm is 6 mm; the 60° cutter of the built-in workshop is 5 mm deep.
    assert (fact.wanted.angle_deg, fact.wanted.depth_mm) == (60, 5)


def test_the_leaves_print_both_halves(compile_text: Compile) -> None:
    design = design_of(compile_text, TEXT % WORDS)
    halves = {one.item: one for one in design.facts.all(HalfFact)}
    assert halves["bed"].is_master
    assert "32.196 mm over two 3 mm pins" in halves["bed"].what
    assert halves["table"].mate == "bed.top"


@pytest.mark.parametrize(
    ("master", "second", "words"),
    [
        ("", "table", "between two 3 mm pins: the tail as measured over them − "),
        (", master: table.underside", "bed",
         "over two 3 mm pins: the slot as measured between them + "),
    ],
)  # fmt: skip
def test_the_second_half_goes_by_what_the_first_was_measured(
    compile_text: Compile, master: str, second: str, words: str
) -> None:
    design = design_of(compile_text, TEXT % (WORDS + master))
    halves = {one.item: one for one in design.facts.all(HalfFact) if one.over is not None}
    fact = design.facts.all(SlideFact)[0]
    assert fact.pins is not None
    # Whatever width it has, what is added leaves the play that was wanted.
    apart = fact.pins.male_over_mm - fact.pins.female_between_mm
    assert f"{words}{apart:.3f} mm (" in halves[second].what
    assert "as measured" not in next(one.what for one in halves.values() if one.is_master)


def test_every_size_has_its_sum(compile_text: Compile) -> None:
    working = design_of(compile_text, TEXT % WORDS).workings["table_on_bed.male_over_two_pins"]
    assert working.formula == "x = a + d (1 + cot θ/2)"
    assert working.result == "32.196 mm"
    assert "Machinery's Handbook" in working.source


def sheets(compile_text: Compile, words: str) -> tuple[Section, ...]:
    binder = compile_text(TEXT % words, Phase.COMPOSE).binder
    assert binder is not None
    return next((one.sections for one in binder.sections if one.id == "slides"), ())


def test_the_sheet_has_a_section_and_the_sum_for_the_second_half(compile_text: Compile) -> None:
    (sheet,) = sheets(compile_text, WORDS)
    assert isinstance(sheet.blocks[0], Picture)
    facts = next(block for block in sheet.blocks if isinstance(block, Facts))
    words = {name: text_of(text) for name, text in facts.pairs}
    # Over 32.196, between 26.409 + 5.774 − 8.196 = 23.987: apart 8.209.
    assert "− 8.209 mm = slot" in words["Second half to suit"]
    assert "screws at" in words["Gib"]


def test_a_master_slot_turns_the_sum_round(compile_text: Compile) -> None:
    (sheet,) = sheets(compile_text, f"{WORDS}, master: table.underside")
    facts = next(block for block in sheet.blocks if isinstance(block, Facts))
    words = {name: text_of(text) for name, text in facts.pairs}
    assert words["Second half to suit"].startswith("slot between pins")
    assert "+ 8.209 mm = tail" in words["Second half to suit"]


def test_nothing_is_printed_where_nothing_is_known(compile_text: Compile) -> None:
    design = design_of(compile_text, TEXT % "gib: 2 mm")
    assert not list(slide_pages(design, ()))


def test_the_gib_and_its_screws_are_items_and_their_holes_are_told(compile_text: Compile) -> None:
    """Strip 2 mm, as high as the flank: 4.75 / sin 60° = 5.5; as long as the table, 60 mm.

    One screw to ten thicknesses: 3, at 10, 30 and 50 mm. 0.7 of a slot 5 mm deep is 3.5 mm, so
    M3 of what is owned, drilled 2.5 (ISO 2306). Both rules of thumb: common practice, no source.
    """
    design = design_of(compile_text, TEXT % WORDS)
    hardware = {one.what: one.count for one in design.facts.all(HardwareFact)}
    strip, nut, screw = sorted(hardware, key=lambda one: (hardware[one], "×" in one))
    assert strip.startswith("brass strip 2 mm × ")
    assert "60 mm long" in strip
    assert screw.startswith("M3 × ")
    assert nut == "M3 nut, for the gib"
    assert hardware[screw] == hardware[nut] == 3
    assert set(hardware) == {one.what for one in design.bought.values()}
    (told,) = (one for one in design.facts.all(HalfFact) if one.place == "gib_screws")
    assert told.item == "table"  # the slot is in it, the tail on the bed
    assert told.what.endswith("10 mm, 30 mm, 50 mm from the end of the gib, 2.5 mm below the face")
    assert "drill 2.5 mm" in told.what
