"""Taper pins and split pins: their holes and lengths by the standards; in mm.

ISO 2339: 1 : 50 from the small end, which names it; lengths 10, 12, 14, 16. ASME B18.8.2: no. 0
is 0.156 in at its large end, 1/4 in to the foot (from memory). ISO 1234:1997, table 1: bolts over
5.5 to 7 take 1.6, the length is that under the eye. How far the legs stand out: common practice.
"""

from __future__ import annotations

from collections.abc import Callable

import pytest

from binder.api import Design, Feature, HalfFact, HardwareFact, JointFact
from binder.compiler import Outcome
from binder_trade.fastening import Length, choose_split_pin, choose_taper_pin
from binder_trade.hardware import NotListed, inch_taper_pin, taper_pin_for

Compile = Callable[..., Outcome]
TEXT = """format: 1
model: {title: Trial, issue: A, units: mm}
parts:
  axle:
    material: mild steel
    turned:
      - {name: seat, diameter: 10 mm, length: 20 mm}
      - {name: tip, diameter: 6 mm, length: 25 mm}
  lever:
    material: mild steel
    turned: [{name: boss, diameter: 15 mm, length: 8 mm}]
    features: {bore: {reamed: 6 mm, on: boss, depth: through}}
  washer:
    material: mild steel
    disc: {diameter: 12 mm, thickness: 2 mm}
    features: {hole: {drilled: 6.2 mm, on: top, depth: through}}
joints:
  a: {pinned: [ENDS], fastener: PIN}
"""


def designed(compile_text: Compile, ends: str, pin: str) -> Design:
    outcome = compile_text(TEXT.replace("ENDS", ends).replace("PIN", pin))
    assert outcome.design is not None
    return outcome.design


def bought(design: Design) -> HardwareFact:
    (found,) = design.facts.all(HardwareFact)
    return found


def made(design: Design, owner: str) -> list[Feature]:
    return [one for one in design.parts[owner].features if one.implied_by]


def mm(feature: Feature) -> float:
    return float(getattr(feature.entry, feature.kind).mm)


def test_taper_pin_through_a_boss(compile_text: Compile) -> None:
    """14 is the longest in 15; the large end is 2 + 14 / 50 = 2.28. Both halves get the drill."""
    design = designed(compile_text, "lever.bore, axle.tip", "2 mm taper pin")
    assert bought(design).what == "2 mm × 14 mm taper pin"
    assert [mm(one) for owner in ("lever", "axle") for one in made(design, owner)] == [2, 2]
    halves = {one.subject: one for one in design.facts.all(HalfFact)}
    assert "taper ream 1:50 to ⌀2.28 at the large end" in halves["a: axle.tip"].what


def test_inch_taper_pin_is_drilled_by_its_small_end(compile_text: Compile) -> None:
    """1/2 in long: 0.156 − 0.5 / 48 = 0.1456 in = 3.698; the metric drills have 3.6 under it."""
    design = designed(compile_text, "lever.bore, axle.seat", "no. 0 taper pin")
    assert bought(design).what == "no. 0 × 1/2 in taper pin"
    assert mm(made(design, "lever")[0]) == 3.6
    assert inch_taper_pin("0").small_end_mm(12.7) == pytest.approx(3.698, abs=1e-3)


def test_a_taper_pin_without_a_size_is_a_quarter_of_its_shaft(compile_text: Compile) -> None:
    design = designed(compile_text, "lever.bore, axle.tip", "taper pin")
    assert bought(design).what == "1.5 mm × 14 mm taper pin"
    with pytest.raises(NotListed):
        taper_pin_for(2)


def test_split_pin_behind_a_washer(compile_text: Compile) -> None:
    """6 and two pins of 1.6, 3.2, make 9.2: 10 is sold. The washer is not drilled."""
    design = designed(compile_text, "washer, axle.tip", "split pin")
    assert bought(design).what == "1.6 mm × 10 mm split pin"
    (hole,) = made(design, "axle")
    assert mm(hole) == 1.6
    place = getattr(hole.entry, "at", None)
    assert str(getattr(place, "text", "")) == "3.2 mm from right"
    assert not made(design, "washer")


def test_split_pin_with_nothing_to_bend(compile_text: Compile) -> None:
    text = TEXT.replace("ENDS", "washer, axle.tip").replace("PIN", "1.6 mm x 8 mm split pin")
    found = {one.code.name: one for one in compile_text(text).findings}
    assert (
        found["pin-too-short"].help
        == "10 mm is sold, and its legs stand 4 mm out, to be bent round"
    )


@pytest.mark.parametrize(("hub", "length"), [(14.0, 14.0), (13.6, 14.0), (13.4, 12.0)])
def test_a_taper_pin_stands_out_by_its_rounded_ends(hub: float, length: float) -> None:
    """ISO 2339: the rounded end of 2 is 0.25 high (from memory)."""
    found = choose_taper_pin((10.0, 12.0, 14.0, 16.0), hub, 0.25)
    assert isinstance(found, Length)
    assert found.chosen_mm == length


@pytest.mark.parametrize(("bolt", "least"), [(6.0, 9.2), (20.0, 30.0)])
def test_a_split_pin_has_legs_to_bend(bolt: float, least: float) -> None:
    sold = tuple(one / 10 for one in range(1, 500))
    found = choose_split_pin(sold, 1.6, bolt)
    assert isinstance(found, Length)
    assert found.chosen_mm == pytest.approx(least)


@pytest.mark.parametrize(
    ("pin", "kind"),
    [("3 mm dowel pin", "reamed"), ("2 mm dowel pin", "drilled"), ("2 mm roll pin", "drilled")],
)
def test_a_dowel_is_driven_into_a_reamed_hole_where_the_reamer_is_owned(
    compile_text: Compile, pin: str, kind: str
) -> None:
    """Dowels of ISO 8734 are m6 for a reamed H7 hole (from memory); 2 mm has no reamer here."""
    design = designed(compile_text, "lever.bore, axle.seat", pin)
    assert {one.kind for owner in ("lever", "axle") for one in made(design, owner)} == {kind}


def test_a_pin_whose_hole_is_drilled_before_is_only_driven(compile_text: Compile) -> None:
    """Common practice, no source."""
    text = TEXT.replace("ENDS", "lever.bore, axle.tip").replace(
        "PIN", "2 mm dowel pin, made: drilled together"
    )
    design = compile_text(text).design
    assert design is not None
    fact = design.facts.about(JointFact, "a")
    assert fact is not None
    assert ("drive the pin" in fact.step, "drill" in fact.step) == (True, False)
