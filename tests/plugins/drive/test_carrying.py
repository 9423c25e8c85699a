"""What shafts carry in small trains: by statics alone, and whatever is written, without a fault."""

from __future__ import annotations

from collections.abc import Callable
from math import cos, hypot, pi, radians, tan

import pytest

from binder.compiler import Outcome
from binder_plugins.drive.carrying.facts import CarriedFact, InertiaFact
from tests.plugins.drive.shaft_specs import HEAD, axle, belt, three, unstopped

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


# Statics: a helical wheel is pushed along at its rim, which tilts its shaft: the thrust times the
# radius over the 6 mm between the halves of the bush, added where it adds to the push apart.
def test_a_thrust_tilts_the_shaft_and_is_said(compile_text: Compile) -> None:
    turned = three("130 mm").replace("[pinion, wheel]", "[pinion, wheel], helix: 20 deg")
    found = carried(compile_text(turned), "b")
    beta = radians(20)
    along = 100 * 0.9216 / (9 / cos(beta))
    apart, thrust = along * tan(beta) / cos(beta), along * tan(beta)
    near = hypot(along * 12 / 6, (apart * 12 + thrust * 27 / cos(beta)) / 6)
    assert max(one.load for one in found.bearings) == pytest.approx(near, rel=1e-3)
    assert [(one.way, one.by_what) for one in found.thrusts] == [(1, None), (-1, None)]
    assert found.thrusts[0].size == pytest.approx(thrust, rel=1e-3)


# By the model alone: the wheel comes up against the plate one way, the collar the other.
@pytest.mark.parametrize("collar", ["", "{name: collar, diameter: 8 mm, length: 3 mm}, "])
def test_what_takes_the_thrust_of_either_way(collar: str, compile_text: Compile) -> None:
    found = carried(compile_text(unstopped(collar=collar)), "b")
    told = {one.way: one.by_what for one in found.thrusts}
    assert told[-1] == "the wheel against the plate"
    assert told[1] == ("a shoulder of its own against the plate" if collar else "")


# Nothing tells where along its shaft the wheel stands, so that it is not said to slide either.
def test_a_wheel_that_stands_in_its_bearing_tells_nothing(compile_text: Compile) -> None:
    text = unstopped().replace(".seat", ".journal")
    found = carried(compile_text(text), "b")
    assert {one.by_what for one in found.thrusts} == {None}


# Work: a small turn of the cam does what a small lift takes, whatever the outline between.
def test_a_cam_pushes_back_on_its_shaft(compile_text: Compile) -> None:
    cam = (
        "{cams: [wheel, far], lift: 6 mm, base: 30 mm, rise: 90 deg, fall: 90 deg, law: uniform,"
        " follower: flat}"
    )
    still, driven = (
        carried(compile_text(axle(drive=cam, torque=told)), "axle")
        for told in (", torque: 0 N·m", ", torque: 0.1 N·m")
    )
    pairs = zip(still.bearings, driven.bearings, strict=True)
    more = sum(two.load - one.load for one, two in pairs)
    # 6 mm in a quarter turn are 3.82 mm/rad; a flat follower is pushed along its own line.
    assert more == pytest.approx(100 / (6 / (pi / 2)), rel=1e-2)
    assert "the push of 'belt'" in still.missing


# Statics by hand, the work of a small turn: a slotted link is pushed by the torque over its
# throw at its fastest; with a throw of 10 and a rod of 40 the slide is fastest at 76.72° from the
# outer dead point, where the rod leans asin(10 sin 76.72° / 40) = 14.08° and the slide goes
# 10 sin (76.72° + 14.08°) / cos 14.08° = 10.309 mm/rad: 100 / 10.309 / cos 14.08° = 10.0 N.
@pytest.mark.parametrize(("rod", "push"), [("", 10.0), (", rod: 40 mm", 10.001)])
def test_a_crank_is_pushed_by_its_rod(rod: str, push: float, compile_text: Compile) -> None:
    crank = f"{{cranks: [wheel, far], throw: 10 mm{rod}}}"
    still, driven = (
        carried(compile_text(axle(drive=crank, torque=told)), "axle")
        for told in (", torque: 0 N·m", ", torque: 0.1 N·m")
    )
    pairs = zip(still.bearings, driven.bearings, strict=True)
    assert sum(two.load - one.load for one, two in pairs) == pytest.approx(push, rel=1e-3)
    assert "the push of 'belt'" in still.missing
    assert "what comes near the dead points of 'belt'" in driven.missing


# Theory of machines: planets evenly round a sun push it from all sides alike.
@pytest.mark.parametrize(("planets", "is_left"), [("", True), (", planets: 3", False)])
def test_what_planets_leave_over(planets: str, is_left: bool, compile_text: Compile) -> None:
    text = axle(
        drive=f"{{orbits: [wheel, small, ring, far], teeth: [12, 18, 48], module: 1 mm, "
        f"held: ring{planets}}}"
    ).replace(
        "  far:",
        "  small: {material: brass, disc: {diameter: 18 mm, thickness: 6 mm}}\n"
        "  ring: {material: brass, disc: {diameter: 60 mm, thickness: 6 mm}}\n  far:",
    )
    found = carried(compile_text(text), "axle")
    assert ("the push of 'belt'" in found.missing) == is_left


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


# Levers: 50 g that fall at 80 mm weigh twice as much on a wheel that lifts at 40 mm; and what
# comes on at once strains twice as much as what is laid on (strength of materials, from memory).
def test_a_lever_weighs_on_the_wheel_that_lifts_it(compile_text: Compile) -> None:
    trips = "{trips: [wheel, far], lifts: 4, lift: 3 mm, arm: 40 mm, reach: 80 mm, falls: 50 g}"
    light = carried(compile_text(axle(drive=trips.replace("50 g", "0.0001 g"))), "axle")
    heavy = carried(compile_text(axle(drive=trips)), "axle")
    more = sum(two.load - one.load for one, two in zip(light.bearings, heavy.bearings, strict=True))
    assert more == pytest.approx(0.050 * 9.80665 * 2 * 2, rel=1e-4)
    assert "the speed of the pick-up of 'belt'" in heavy.missing


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
    **{
        f"bevels {more}": axle(
            torque=", torque: 1 N·m",
            drive=f"{{bevels: [wheel, far], teeth: [20, 40], module: 1 mm, {more}}}",
        )
        for more in (
            *("shafts_at: 0 deg", "shafts_at: 180 deg", "shafts_at: -90 deg", "face: 0 mm"),
            *("face: -1 mm", "face: 900 mm", "pressure_angle: 90 deg", "pressure_angle: -20 deg"),
        )
    },
    **{
        f"helix {helix}": axle(
            torque=", torque: 1 N·m",
            drive=f"{{skews: [wheel, far], teeth: [20, 40], module: 1 mm, helix: [{helix}]}}",
        )
        for helix in ("90 deg, 0 deg", "-45 deg, 45 deg", "0 deg, 0 deg", "360 deg, 1 deg")
    },
    **{
        f"{planets} planets": axle(
            drive="{orbits: [wheel, axle, far, cheek], teeth: [12, 18, 48], module: 1 mm, "
            f"held: far, planets: {planets}}}"
        )
        for planets in ("0", "-3", "1e9", "3.5")
    },
    **{
        f"a cam {cam}": axle(
            torque=", torque: 1 N·m", drive=f"{{cams: [wheel, far], base: 30 mm, {cam}}}"
        )
        for cam in (
            *("lift: 0 mm, rise: 90 deg", "lift: -3 mm, rise: 90 deg", "lift: 3 mm, rise: 0 deg"),
            *("lift: 3 mm, nose: 0 mm", "lift: 1 mm, rise: 1 deg, follower: pointed", "lift: 9 m"),
        )
    },
    "a trip of nothing": axle(
        drive="{trips: [wheel, far], lifts: 4, lift: 3 mm, arm: 0 mm, reach: -8 mm, falls: 0 g}"
    ),
    "a helix past making": three("130 mm").replace("wheel]}", "wheel], helix: 89 deg}"),
    "a helix the other way": three("130 mm").replace("wheel]}", "wheel], helix: -20 deg}"),
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
