"""Press fits that the metals would not bear, brought to what they do; thick cylinders by Lamé.

A bush of outside d and bore b under a pressure p on its outside has at its bore a hoop stress of
2 p / (1 - (b/d)^2), and gives there when that is its yield. In a plate without an outside the nip
that makes p is d p (C1/E1 + C2/E2) with C1 = (d^2 + b^2)/(d^2 - b^2) - v1 and C2 = 1 + v2
(Lamé, as in DIN 7190-1). H7/p6 and H7/s6 of 12 mm: 0.011 and 0.021 least, 0.029 and 0.039 most
with a hole of +0.018 (ISO 286-2).
"""

from __future__ import annotations

from collections.abc import Callable

import pytest

from binder.api import Design
from binder.compiler import Outcome
from binder_plugins.fits.facts import MadeFit
from binder_plugins.fits.pressing import Pressing
from binder_trade.fits.metals import metal

Compile = Callable[..., Outcome]
TEXT = """format: 1
model: {title: Trial, issue: A, units: mm}
parts:
  arm:
    material: mild steel
    block: {length: 200 mm, width: 200 mm, height: 12 mm}
    features: {seat: {bored: 12 mm, on: top, depth: through}}
  bush:
    material: brass
    turned: [{name: outside, diameter: 12 mm, length: 12 mm}]
    features: {bore: {drilled: 11 mm, on: outside, depth: through}}
  boss:
    material: brass
    turned: [{name: rim, diameter: OUTSIDE, length: 12 mm}]
    features: {bore: {bored: 12 mm, on: rim, depth: through}}
  pin:
    material: mild steel
    turned: [{name: body, diameter: 12 mm, length: 12 mm}]
joints:
  a: JOINT
"""


def outcome_of(compile_text: Compile, joint: str, outside: str = "16 mm") -> Outcome:
    return compile_text(TEXT.replace("JOINT", joint).replace("OUTSIDE", outside))


def design_of(outcome: Outcome) -> Design:
    assert outcome.design is not None
    return outcome.design


def bush_bears_mm() -> float:
    """The nip at which the bore of the bush gives, by the formulas above."""
    brass, steel = metal("brass"), metal("mild steel")
    pressure = brass.strength_mpa * (1 - (11 / 12) ** 2) / 2
    inner = (144 + 121) / (144 - 121) - brass.poisson
    plate = (200**2 + 144) / (200**2 - 144) + steel.poisson
    return float(12 * pressure * (inner / (brass.modulus_mpa) + plate / (steel.modulus_mpa)))


def test_a_thin_bush_gets_a_nip_that_it_bears(compile_text: Compile) -> None:
    outcome = outcome_of(compile_text, "{pressed: [bush.outside, arm.seat]}")
    (fit,) = design_of(outcome).facts.all(MadeFit)
    (pressing,) = design_of(outcome).facts.all(Pressing)
    assert -fit.wish.least_um / 1000 == pytest.approx(bush_bears_mm(), abs=1.1e-3)
    assert -fit.wish.most_um == pytest.approx(-fit.wish.least_um / 2)
    assert pressing.tightest.shaft_use <= 1
    assert fit.suit == "shaft"
    assert "press-splits-boss" not in {one.code.name for one in outcome.findings}


def test_what_the_maker_wrote_stays_and_is_found(compile_text: Compile) -> None:
    """The way out of H7/s6 is named: a class that both bear, or the outside that bears this one."""
    joint = "{pressed: [pin.body, boss.bore], fit: H7/s6}"
    found = {one.code.name: one for one in outcome_of(compile_text, joint, "14 mm").findings}
    (fit,) = design_of(outcome_of(compile_text, joint, "14 mm")).facts.all(MadeFit)
    assert (fit.wish.least_um, fit.wish.most_um) == (-39, -10)
    words = str(found["press-splits-boss"].help)
    outside = words.split("make the boss ")[1].split(" outside", maxsplit=1)[0]
    mended = outcome_of(compile_text, joint, outside)
    assert "press-splits-boss" not in {one.code.name for one in mended.findings}


def test_the_lighter_class_of_the_way_out_is_borne(compile_text: Compile) -> None:
    joint = "{pressed: [pin.body, boss.bore], fit: H7/CLASS}"
    wrong = outcome_of(compile_text, joint.replace("CLASS", "u6"), "24 mm")
    words = str({one.code.name: one for one in wrong.findings}["press-splits-boss"].help)
    lighter = words.split("write `fit: H7/")[1].split("`", maxsplit=1)[0]
    right = outcome_of(compile_text, joint.replace("CLASS", lighter), "24 mm")
    (pressing,) = design_of(right).facts.all(Pressing)
    assert pressing.tightest.plastic_use <= 0.8


def test_a_bar_is_chosen_that_has_the_nip(compile_text: Compile) -> None:
    """A pressed outside of 12 does not come out of 12 mm bar; the next sold is larger."""
    from binder.api import CutSize

    design = design_of(outcome_of(compile_text, "{pressed: [bush.outside, arm.seat]}"))
    bush, pin = (design.facts.about(CutSize, name) for name in ("bush", "pin"))
    assert bush is not None
    assert pin is not None
    assert float(bush.section[0]) > 12.03
    assert float(pin.section[0]) == 12
