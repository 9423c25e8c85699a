"""Bearings reamed in line, and the flame before the press: tasks in the order of the bench.

Two bearings are in line only where one reamer goes through both as they stand; common practice,
no source.
"""

from __future__ import annotations

from collections.abc import Callable

from binder.api import BuildSequence, Design
from binder.compiler import Outcome

Compile = Callable[..., Outcome]
LINED = """\
format: 1
model: {title: Trial, issue: A, units: mm}
parts:
  axle:
    material: mild steel
    turned: [{name: rod, diameter: 6 mm, length: 60 mm}]
  bush:
    material: phosphor bronze
    quantity: 2
    turned: [{name: outside, diameter: 10 mm, length: 9 mm}]
    features: {bore: {reamed: to suit, on: outside, depth: through}}
  lug:
    material: mild steel
    quantity: 2
    block: {length: 20 mm, width: 9 mm, height: 20 mm}
    features: {seat: {reamed: to suit, on: front, depth: through}}
  bed:
    material: mild steel
    plate: {length: 60 mm, width: 40 mm, thickness: 6 mm}
joints:
  axle in bushes: {runs_in: [axle.rod, bush.bore], made: reamed in line}
  bush in lug: {pressed: [bush.outside, lug.seat]}
  FIXED
assemblies:
  all: {of: [axle, 2 off bush, 2 off lug, bed], test: it spins}
"""
SCREWED = "lugs on bed: {screwed: [lug.underside, bed.top], fastener: M3 socket cap screw}"
SOLDERED = "lugs on bed: {silver_soldered: [lug.underside, bed.top]}"


def _design(compile_text: Compile, fixed: str) -> Design:
    design = compile_text(LINED.replace("FIXED", fixed)).design
    assert design is not None
    return design


def _order(design: Design) -> list[str]:
    sequence = design.facts.about(BuildSequence, "")
    assert sequence is not None
    return [step.task for step in sequence.steps]


def test_housings_are_screwed_up_and_reamed_in_line_before_the_shaft(
    compile_text: Compile,
) -> None:
    design = _design(compile_text, SCREWED)
    order = _order(design)
    wanted = [
        "make lug", "size bush in lug", "line up axle in bushes", "make axle", "assemble all",
    ]  # fmt: skip
    assert [task for task in order if task in wanted] == wanted
    detail = design.tasks["line up axle in bushes"].detail
    for words in (
        "the bush fixed in place",
        "the lug screwed to the bed",
        "with one 6 mm reamer",
        "write it down, then finish the axle to it",
    ):
        assert words in detail
    assert "finished in line when it stands" in design.tasks["size bush in lug"].detail


def test_without_a_word_of_it_nothing_is_lined_up(compile_text: Compile) -> None:
    text = LINED.replace("FIXED", SCREWED).replace(", made: reamed in line", "")
    design = compile_text(text).design
    assert design is not None
    assert not any(task.startswith("line up") for task in design.tasks)


def test_the_housing_is_soldered_before_the_bush_is_pressed_in_it(compile_text: Compile) -> None:
    # Silver solder runs above 600 °C, where a nip of some µm is gone.
    order = _order(_design(compile_text, SOLDERED))
    wanted = ["make lug", "solder lugs on bed", "size bush in lug", "assemble all"]
    assert [task for task in order if task in wanted] == wanted
