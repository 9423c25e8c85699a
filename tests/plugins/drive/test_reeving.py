"""The way of a rope and how much of it is cut; the lengths are reckoned by hand beside each."""

from __future__ import annotations

from collections.abc import Callable
from math import pi

import pytest

from binder.compiler import Outcome
from binder_plugins.drive.duties.duty import DutyFact

Compile = Callable[..., Outcome]
SPEC = """format: 1
model: {title: Trial, issue: A, units: mm}
parts:
  drum: {material: brass, turned: [{name: barrel, diameter: 20 mm, length: 20 mm}]}
  top: {material: brass, turned: [{name: rim, diameter: 16 mm, length: 20 mm}]}
  block: {material: brass, turned: [{name: rim, diameter: 12 mm, length: 20 mm}]}
  eye: {material: brass, block: {length: 20 mm, width: 20 mm, height: 10 mm}}
bought:
  cord: {what: braided cord, sizes: {length: LONG}}
drive:
  hand: {turns: [drum], by: hand, speeds: [60 r/min], radius: 20 mm, force: 10 N}
  rope: {winds: [drum.barrel, cord], rope: 1 mm, load: 1 kg, lines: 2, height: 100 mm,
    over: [top, block], dead_end: eye}
stands: drum
positions:
  top: {at: "100 mm above drum, middle of drum"}
  block: {at: "60 mm below top, middle of top"}
  eye: {at: "24 mm above block, middle of block"}
"""


def rows(outcome: Outcome) -> dict[str, str]:
    """What the page says of the rope."""
    assert outcome.design is not None, [one.message for one in outcome.findings]
    duty = outcome.design.facts.about(DutyFact, "rope")
    assert duty is not None
    return dict(duty.rows)


def test_a_rope_is_told_its_way_and_its_length(compile_text: Compile) -> None:
    """Drum, top sheave, block, eye, as they stand above one another.

    `A above B` goes from the middle of B to the nearest side of A. The drum stands, the sheaves
    lie: 100 + 8 from middle to middle, then 60 + 6, then 24 + 5: 203. Half round 16 mm and 12 mm:
    44.0. Two lines of 100 mm. Two turns at 21 mm to the middle of the rope: 131.9. Two knots of
    60 mm. 698.9, so 700.
    """
    found = rows(compile_text(SPEC.replace("LONG", "1 m")))
    assert found["The rope goes"] == (
        "from the barrel of the drum, over the top, round the block, its end made fast to the eye"
    )
    way = 108 + 66 + 29 + pi / 2 * (16 + 12)
    whole = way + 2 * 100 + 2 * 21 * pi + 2 * 60
    assert whole == pytest.approx(698.9, abs=0.1)
    assert found["Cut of rope"].startswith("700 mm: 247 mm its way as drawn")


@pytest.mark.parametrize(("long", "said"), [("500 mm", True), ("700 mm", False)])
def test_rope_that_is_bought_too_short(long: str, said: bool, compile_text: Compile) -> None:
    outcome = compile_text(SPEC.replace("LONG", long))
    found = [one for one in outcome.findings if one.code.name == "rope-too-short"]
    assert bool(found) == said
    if said:
        line = SPEC.replace("LONG", long).splitlines()[found[0].span.line - 1]
        assert line[found[0].span.column - 1 :].startswith(long)


@pytest.mark.parametrize("way", ["over: [top], dead_end: eye", "over: [top, blok], dead_end: eye"])
def test_a_way_that_cannot_be(way: str, compile_text: Compile) -> None:
    """One sheave too few for two lines, and one that is not there."""
    text = SPEC.replace("LONG", "1 m").replace("over: [top, block], dead_end: eye", way)
    assert "rope-way-wrong" in {one.code.name for one in compile_text(text).findings}
