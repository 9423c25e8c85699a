"""What shafts carry in small trains: by statics alone, and whatever is written, without a fault."""

from __future__ import annotations

from collections.abc import Callable
from math import tan

import pytest

from binder.compiler import Outcome
from binder_plugins.drive.carrying.facts import CarriedFact, InertiaFact
from tests.plugins.drive.shaft_specs import HEAD, axle, belt, three

Compile = Callable[..., Outcome]
G = 9.80665e-3  # N to a gramme


def carried(outcome: Outcome, body: str) -> CarriedFact:
    assert outcome.design is not None
    found = outcome.design.facts.about(CarriedFact, body)
    assert found is not None
    return found


# Statics: the belt is put on with 20 N in each strand, the wheel stands in the middle.
def test_a_belt_in_the_middle_loads_both_cheeks_alike(compile_text: Compile) -> None:
    found = carried(compile_text(axle()), "axle")
    assert not found.is_placed  # the row alone tells
    weight = (3.14159 / 4 * (30**2 - 4**2) * 6 * 8.47e-3) * G
    shaft = (3.14159 / 4 * 4**2 * 60 * 7.85e-3) * G
    # The axle's own weight lies a little aside, since the row does not tell where it ends.
    assert sum(one.load for one in found.bearings) == pytest.approx(40 + weight + shaft, rel=1e-3)
    assert found.bearings[0].load == pytest.approx(20, abs=0.4)
    assert found.bearings[0].long == 6


# Statics: a torque of 100 N mm is 100 / 9 at the pitch circle of a pinion of 18, and as much as
# tan 20° of that apart; the shaft stands upright, so that weights push on nothing.
def test_teeth_push_on_a_shaft_that_overhangs(compile_text: Compile) -> None:
    found = carried(compile_text(three("130 mm")), "b")
    assert found.is_placed
    into = 100 * 0.9216  # N mm at the pinion's, less 4 % at the teeth and 4 % in the bearings
    push = into / 9 * (1 + tan(0.349066) ** 2) ** 0.5
    # One bush, 12 long, carries by its halves at 3 and 9; the wheel is 6 wide on its face at 12.
    near, far = (
        max(found.bearings, key=lambda one: one.load),
        min(found.bearings, key=lambda one: one.load),
    )
    assert near.load == pytest.approx(push * 12 / 6, rel=1e-3)
    assert far.load == pytest.approx(push * 6 / 6, rel=1e-3)
    assert near.is_half
    assert near.wear is not None
    assert near.wear.pressure_mpa == pytest.approx(near.load / (4 * 6), rel=1e-6)


# Theory of machines: J ω / T, here of the two bodies that turn as fast.
def test_a_motor_is_given_its_time_to_speed(compile_text: Compile) -> None:
    outcome = compile_text(axle(torque=", torque: 0.1 N·m"))
    assert outcome.design is not None
    found = outcome.design.facts.about(InertiaFact, "")
    assert found is not None
    total = sum(one.own for one in found.bodies)
    assert found.total == pytest.approx((total,))
    omega = 600 * 3.14159265 / 30
    assert found.run_up == pytest.approx((total / 1000 * omega / 100,), rel=1e-6)


def test_where_nothing_tells_it_is_said(compile_text: Compile) -> None:
    found = carried(compile_text(axle()), "far")
    assert not found.bearings
    assert "bearing" in found.refusal


WILD = {
    "nothing pulls": axle(drive=belt("0 N")),
    "no torque": axle(torque=", torque: 0 N·m"),
    "a still motor": axle(speed="0 r/min"),
    "a shaft as thick as a hair": axle(across="0.01 mm"),
    "a shaft as thick as a house": axle(across="9000 mm"),
    "no length": axle(long="0 mm"),
    "no gap": axle(apart="0 mm"),
    "cheeks of paper": axle(thick="0.001 mm"),
    "an unheard-of metal": axle(metal="unobtainium"),
    "wood for a bush": axle(metal="oak"),
    "a race of a speed": axle(speed="9000000 r/min"),
    "a giant pull": axle(drive=belt("900000000000 N")),
    "a slippery belt": axle(drive=belt("20 N").replace("pull", "friction: 0, pull")),
    "a slippery belt, loose": axle(
        torque=", torque: 1 N·m", drive=belt("20 N").replace("pull: 20 N", "friction: 0")
    ),
    "pulleys that touch": axle(drive=belt("20 N").replace("90 mm", "3 mm")),
    "a chain": axle(drive="{chained: [wheel, far], teeth: [1, 2], pitch: 3 mm}"),
    "bare friction": axle(drive="{rubs: [wheel, far], diameters: [30 mm, 0 mm]}"),
    "a worm": axle(drive="{worms: [wheel, far], teeth: 40, module: 1 mm, diameter: 0 mm}"),
    "bevels": axle(drive="{bevels: [wheel, far], teeth: [20, 40], module: 1 mm}"),
    "itself": axle(drive="{belted: [wheel, axle], belt: flat, diameters: [30 mm, 30 mm]}"),
    "a third shaft through the middle": three("56.05 mm"),
}


@pytest.mark.parametrize("what", sorted(WILD))
def test_whatever_is_written_no_plugin_fails(what: str, compile_text: Compile) -> None:
    found = [one.code.name for one in compile_text(WILD[what]).findings]
    assert "plugin-failed" not in found


WORM = (
    HEAD + "parts:\n  worm:\n    material: mild steel\n    turned: [{name: screw, diameter: 16 mm, "
    "length: 40 mm}]\n    features: {thread: {screwed: %s, on: screw}}\n"
    "  wheel: {material: brass, disc: {diameter: 42 mm, thickness: 8 mm}}\n"
    "drive:\n  hand: {turns: [worm], by: hand, speeds: [60 r/min]}\n"
    "  x: {worms: [worm.thread, wheel], teeth: 40, module: 1 mm, hand: right}\n"
)


def test_the_thread_of_a_worm_tells_its_hand(compile_text: Compile) -> None:
    for thread, is_wrong in (("M16 LH", True), ("M16", False)):
        found = [one.code.name for one in compile_text(WORM % thread).findings]
        assert ("worm-hand-wrong" in found) == is_wrong, found
