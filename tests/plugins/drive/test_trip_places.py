"""A toothed wheel under a lever's tail: lift and angle by where both stand.

Geometry, reckoned by hand in tests/reckoned/drives.md: axes 56.7 apart and 3 up, a tail of 43.2
with its edge 4.5 above, teeth to radius 14: 5.914 mm over 24.68 degrees.
"""

from __future__ import annotations

from collections.abc import Callable

import pytest

from binder.api import ChainFact, JointFact
from binder.compiler import Outcome
from binder_plugins.drive.duties.duty import DutyFact

Compile = Callable[..., Outcome]
SPEC = """\
format: 1
model: {title: Trial, issue: A, units: mm}
parts:
  base:
    material: brass
    block: {length: 160 mm, width: 10 mm, height: 60 mm}
    features:
      one: {reamed: to suit, on: front, depth: through, at: "43.3 mm from left, ONE"}
      two: {reamed: to suit, on: front, depth: through, at: "PIVOT from left, 30 mm from underside"}
  axle:  {material: silver steel, turned: [{name: journal, diameter: 4 mm, length: 40 mm}]}
  pivot: {material: silver steel, turned: [{name: journal, diameter: 4 mm, length: 40 mm}]}
  wheel:
    material: mild steel
    ratchet: {teeth: 4, outside: 28 mm, depth: 6 mm, width: 8 mm}
    features: {bore: {reamed: to suit, depth: through}}
  lever:
    material: brass
    block: {length: 120 mm, width: 8 mm, height: 9 mm}
    features:
      eye: {reamed: to suit, on: front, depth: through, at: "43.2 mm from left, EYE"}
joints:
  axle in base:   {runs_in: [axle.journal, base.one], duty: slow and oiled}
  pivot in base:  {runs_in: [pivot.journal, base.two], duty: slow and oiled}
  wheel on axle:  {retained: [wheel.bore, axle.journal]}
  lever on pivot: {retained: [lever.eye, pivot.journal]}
drive:
  hand:  {turns: [axle], by: hand, speeds: [60 r/min]}
  helve: {trips: [wheel, lever], lifts: 4, lift: LIFT, arm: 43.2 mm, reach: 76.8 mm}
stands: base
"""
MISSES = "trip-may-miss"
OTHERWISE = "linkage-stands-otherwise"


def trips(pivot: str = "100 mm", lift: str = "6 mm") -> str:
    text = SPEC.replace("ONE", "33 mm from underside").replace("EYE", "4.5 mm from underside")
    return text.replace("PIVOT", pivot).replace("LIFT", lift)


def test_the_angle_is_that_of_the_places(compile_text: Compile) -> None:
    outcome = compile_text(trips())
    assert outcome.design is not None
    duty = outcome.design.facts.about(DutyFact, "helve")
    assert duty is not None
    assert dict(duty.rows)["Lift at the wheel"] == "6 mm up, over 24.7° of it, as they stand"
    assert OTHERWISE not in {one.code.name for one in outcome.findings}


# 53 and 3 up: lets go acos(4508.5 / 4611.4) = 12.127° behind, rests 2.707° before; × 43.434.
@pytest.mark.parametrize(
    ("pivot", "lift", "has"), [("100 mm", "7 mm", "5.91 mm"), ("96.3 mm", "6 mm", "11.24 mm")]
)
def test_a_lift_that_the_places_have_otherwise(
    pivot: str, lift: str, has: str, compile_text: Compile
) -> None:
    text = trips(pivot, lift)
    (found,) = [one for one in compile_text(text).findings if one.code.name == OTHERWISE]
    assert has in found.message
    assert text.splitlines()[found.span.line - 1][found.span.column - 1 :].startswith(lift)


# A tail made 1.5 mm longer, and filed back by as much, lifts as one that was right at once.
def test_a_tail_that_is_left_long_is_reckoned_as_filed(compile_text: Compile) -> None:
    text = trips().replace('"43.2 mm from left', '"44.7 mm from left')
    text = text.replace("reach: 76.8 mm", "reach: 76.8 mm, left_long: 1.5 mm")
    outcome = compile_text(text.replace("length: 120 mm", "length: 121.5 mm"))
    assert outcome.design is not None
    duty = outcome.design.facts.about(DutyFact, "helve")
    assert duty is not None
    assert dict(duty.rows)["Lift at the wheel"] == "6 mm up, over 24.7° of it, as they stand"
    step = outcome.design.facts.about(JointFact, "helve")
    assert step is not None
    assert "left 1.5 mm long" in step.step
    assert MISSES not in {one.code.name for one in outcome.findings}


def test_the_lap_of_tooth_and_tail_is_a_chain(compile_text: Compile) -> None:
    """14 + 43.434 − √(56.7² + 3²) = 0.655; ISO 2768-1 m strays ⌀28 by 0.2, 43.4 and each place of
    the two axes by 0.3: 0.1 + 0.3 + 0.6 = 1.0, so that it may miss by 0.345."""
    outcome = compile_text(trips())
    assert outcome.design is not None
    (chain,) = outcome.design.facts.all(ChainFact)
    assert sum(one.nominal * one.factor for one in chain.links) == pytest.approx(0.655, abs=1e-3)
    assert sum(one.upper for one in chain.links) == pytest.approx(1.0)
    (found,) = [one for one in outcome.findings if one.code.name == MISSES]
    assert "left_long: 1 mm" in found.help


# 43.434 + 14 = 57.4 and no more: at 58 apart the teeth pass the tail by.
def test_a_wheel_that_misses_the_tail(compile_text: Compile) -> None:
    found = {one.code.name: one for one in compile_text(trips("101.3 mm")).findings}
    assert "misses the tail" in found["lift-impossible"].message


FLYWHEEL = """\
  flywheel:
    material: cast iron
    turned: [{name: rim, diameter: 40 mm, length: 10 mm}]
    features: {bore: {reamed: to suit, on: rim, depth: through}}
joints:
  flywheel on axle: {retained: [flywheel.bore, axle.journal]}
"""


@pytest.mark.parametrize(("rpm", "held"), [("60", "0.16 of it"), ("3000", "397")])
def test_what_a_flywheel_holds_is_told_against_a_lift(
    compile_text: Compile, rpm: str, held: str
) -> None:
    """A disc of 7.2 g/cm³ × π/4 × 40² × 10 less its bore of 4: 89.6 g and 18.1 kg mm².

    At 60 r/min ½ I ω² = 0.357 N mm. A lift of 6 × 76.8 / 43.2 = 10.67 mm of 21.5 g takes 2.25 N mm:
    the wheel holds 0.16 of it, and loses all. At 3000 r/min it holds 2500 times as much, 397 lifts.
    """
    text = (
        trips()
        .replace("joints:\n", FLYWHEEL)
        .replace("reach: 76.8 mm}", "reach: 76.8 mm, falls: 21.5 g}")
    )
    text = text.replace("60 r/min", f"{rpm} r/min")
    text = text.replace("stands:", "  wheel: {steadies: [flywheel]}\nstands:")
    outcome = compile_text(text)
    assert outcome.design is not None, [one.message for one in outcome.findings]
    duty = outcome.design.facts.about(DutyFact, "wheel")
    assert duty is not None
    rows = dict(duty.rows)
    assert f"the wheel holds {held}" in rows["Against one lift"]
    assert rows["Speed lost at a lift"].startswith("all of it") == (rpm == "60")
