"""A hub that is split and drawn together by a screw across the slit; reckoned by hand, in mm.

M4: clear 4.5 (ISO 273, medium), pitch 0.7; in steel one diameter must hold. Lengths of cap screws:
12, 16, 20 (ISO 888). The workshop's thinnest slitting saw is 1 wide. Two holes of metal and hole
beside the bore: common practice, no source.
"""

from __future__ import annotations

from collections.abc import Callable

import pytest

from binder.api import Design, Feature, HalfFact, HardwareFact
from binder.compiler import Outcome

Compile = Callable[..., Outcome]
TEXT = """format: 1
model: {title: Trial, issue: A, units: mm}
parts:
  lever:
    material: mild steel
    block: {length: 40 mm, width: 20 mm, height: 10 mm}
    features: {bore: {reamed: 10 mm, on: BORE, depth: through, at: AT}}
  collar:
    material: mild steel
    turned: [{name: rim, diameter: 30 mm, length: 12 mm}]
    features: {bore: {reamed: 10 mm, on: rim, depth: through}}
  shaft: {material: mild steel, turned: [{name: seat, diameter: 10 mm, length: 30 mm}]}
joints:
  a: {clamped: [HUB, shaft.seat], fastener: SCREW}
"""


def designed(
    compile_text: Compile, bore: str = "top", at: str = "18 mm from left", hub: str = "lever.bore",
    screw: str = "M4 cap screw",
) -> Design:  # fmt: skip
    text = TEXT.replace("BORE", bore).replace("AT", at).replace("HUB", hub).replace("SCREW", screw)
    outcome = compile_text(text)
    assert outcome.design is not None
    assert "plugin-failed" not in {one.code.name for one in outcome.findings}
    return outcome.design


def made(design: Design, name: str) -> Feature:
    return next(one for one in design.parts["lever"].features if one.name == name)


def words(feature: Feature, field: str) -> str:
    value = getattr(feature.entry, field)
    return str(getattr(value, "text", value))


def test_the_slit_and_both_halves_of_the_hole(compile_text: Compile) -> None:
    """13 beside the bore: the hole 6.5 in, in the middle of 10. The slit goes 18 into the bore.
    The screw passes 10 and half a slit, 9.5 are left to hold: 16 holds by 5.5."""
    design = designed(compile_text)
    slit, clear, tap = (made(design, f"a_{name}") for name in ("slit", "clear", "tap"))
    assert (words(slit, "slotted"), words(slit, "on"), words(slit, "depth")) == (
        "1 mm", "left", "18 mm",
    )  # fmt: skip
    assert (words(clear, "drilled"), words(clear, "on")) == ("4.5 mm", "front")
    assert words(clear, "at") == words(tap, "at") == "6.5 mm from left, 5 mm from underside"
    assert (words(tap, "tapped"), words(tap, "on"), words(tap, "depth")) == (
        "M4", "back", "10.5 mm",
    )  # fmt: skip
    (screw,) = design.facts.all(HardwareFact)
    assert (screw.what, screw.grip) == ("M4 × 16 mm cap screw", 10.5)
    assert screw.engagement == pytest.approx(5.5)


def test_the_saw_comes_last(compile_text: Compile) -> None:
    halves = {one.subject: one for one in designed(compile_text).facts.all(HalfFact)}
    assert halves["a: lever.a_slit"].how.startswith("last, when the bore is reamed")
    assert halves["a: lever.a_tap"].how.startswith("before the slit is sawn")


def test_a_bore_from_the_front_is_split_at_its_nearer_end(compile_text: Compile) -> None:
    """28 from the left is 12 from the right, 7 beside the bore: room for M3, not for M4."""
    design = designed(compile_text, "front", "28 mm from left", screw="M3 cap screw")
    assert words(made(design, "a_slit"), "on") == "right"
    assert words(made(design, "a_slit"), "runs") == "along"
    assert words(made(design, "a_clear"), "on") == "underside"
    assert words(made(design, "a_clear"), "at") == "3.5 mm from right, 10 mm from front"


def test_a_round_hub_is_told(compile_text: Compile) -> None:
    """Between 10 and 30: the hole 10 from the axis."""
    design = designed(compile_text, hub="collar.bore")
    half = next(
        one for one in design.facts.all(HalfFact) if one.item == "collar" and "saw" in one.what
    )
    assert "10.0 mm from the axis, drill 4.5 mm to the slit and tap M4" in half.what
    assert half.how.endswith("saw last")


@pytest.mark.parametrize("hub", ["lever", "lever.left", "shaft.seat", "collar.rim"])
def test_nothing_makes_it_fall_over(hub: str, compile_text: Compile) -> None:
    designed(compile_text, hub=hub)
