"""A taper and its bore from one definition; the sums by plane geometry, in mm.

1 : n changes the diameter by 1 in n; half the angle is atan(1 / 2n), 2.8624 deg at 1 : 10 (ISO
1119, table 1: 5 deg 43' 29.3'' included). A hub bored d smaller stands n d off the large end.
"""

from __future__ import annotations

import math
from collections.abc import Callable

import pytest

from binder.api import Design, Feature, HalfFact
from binder.compiler import Outcome

Compile = Callable[..., Outcome]
TEXT = """format: 1
model: {title: Trial, issue: A, units: mm}
parts:
  wheel:
    material: brass
    turned: [{name: boss, diameter: 24 mm, length: 16 mm}]
    features: {bore: {bored: BORE, on: boss, depth: through}}
  block: {material: mild steel, block: {length: 40 mm, width: 40 mm, height: 15 mm}}
  arbor:
    material: mild steel
    turned: [{diameter: 16 mm, length: 20 mm}, {name: nose, taper: 12 mm to 10 mm, length: 20 mm}]
joints:
  a: {tapered: [HUB, arbor.nose]}
"""


def designed(compile_text: Compile, bore: str = "to suit", hub: str = "wheel.bore") -> Design:
    outcome = compile_text(TEXT.replace("BORE", bore).replace("HUB", hub))
    assert outcome.design is not None
    codes = {one.code.name for one in outcome.findings}
    assert not codes & {"still-to-suit", "taper-missing", "taper-halves-differ", "plugin-failed"}
    return outcome.design


def mm(feature: Feature, field: str = "") -> float:
    return float(getattr(feature.entry, field or feature.kind).mm)


def half(design: Design, subject: str) -> HalfFact:
    return next(one for one in design.facts.all(HalfFact) if one.subject == subject)


def test_a_bore_to_suit_follows_from_the_shaft(compile_text: Compile) -> None:
    """A thousandth of 12 is 0.012: the mouth is 11.988, and the hub stands 0.12 off."""
    design = designed(compile_text)
    bore = next(one for one in design.parts["wheel"].features if one.name == "bore")
    assert mm(bore) == pytest.approx(11.988)
    assert mm(bore, "narrows_to") == pytest.approx(11.988 - 16 / 10)
    assert "⌀11.988 at its mouth to ⌀10.388" in half(design, "a: wheel.bore").what
    for subject in ("a: wheel.bore", "a: arbor.nose"):
        setting = f"topslide {math.degrees(math.atan(1 / 20)):.3f}°, "
        assert half(design, subject).how.startswith(setting)
        assert half(design, subject).how.endswith("0.12 mm from the large end")
    assert design.workings["a.taper"].result == "1 in 10, draw 0.12 mm"


def test_no_half_claims_a_setting_that_stands_for_both(compile_text: Compile) -> None:
    """Parting off and facing come between, with the slide at 0°: common practice, no source."""
    design = designed(compile_text)
    shaft, bore = half(design, "a: arbor.nose"), half(design, "a: wheel.bore")
    assert shaft.is_master
    assert "set once" not in shaft.how + bore.how
    assert "written down" in shaft.how
    assert "blue" not in shaft.how
    assert "set again by what was written down" in bore.how
    assert "by blue" in bore.how


def test_a_hub_longer_than_the_cone_keeps_the_rate(compile_text: Compile) -> None:
    """One cone along all of it: 30 mm at 1 in 10 take 3 mm off the mouth. Geometry."""
    text = TEXT.replace("length: 16 mm", "length: 30 mm").replace("BORE", "to suit")
    design = compile_text(text.replace("HUB", "wheel.bore")).design
    assert design is not None
    bore = next(one for one in design.parts["wheel"].features if one.name == "bore")
    assert mm(bore, "narrows_to") == pytest.approx(11.988 - 30 / 10)


def test_a_face_gets_its_taper_bore(compile_text: Compile) -> None:
    design = designed(compile_text, "9 mm", "block.top")
    (bore,) = [one for one in design.parts["block"].features if one.implied_by]
    assert bore.kind == "bored"
    assert mm(bore) == pytest.approx(11.988)
    assert mm(bore, "narrows_to") == pytest.approx(11.988 - 1.5)


def test_a_written_bore_says_how_far_it_stands_off(compile_text: Compile) -> None:
    """11.9 on 12 at 1 in 10: 1 mm."""
    design = designed(compile_text, "11.9 mm, narrows_to: 10.3 mm")
    assert half(design, "a: wheel.bore").how.endswith("stands 1 mm from the large end")


HOSTILE = (
    ("0.001 mm, narrows_to: 900 m", "wheel.bore"),
    ("12 mm, narrows_to: 12 mm", "wheel.bore"),
    ("to suit", "wheel"),
    ("to suit", "arbor.nose"),
    ("to suit, narrows_to: 1 mm", "wheel.boss"),
)


@pytest.mark.parametrize(("bore", "hub"), HOSTILE)
def test_nothing_makes_it_fall_over(bore: str, hub: str, compile_text: Compile) -> None:
    outcome = compile_text(TEXT.replace("BORE", bore).replace("HUB", hub))
    assert "plugin-failed" not in {one.code.name for one in outcome.findings}
