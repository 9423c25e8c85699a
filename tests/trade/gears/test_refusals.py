"""What no gear can be is refused in words, each with a way out."""

from __future__ import annotations

import math
from collections.abc import Callable
from fractions import Fraction

import pytest

from binder_trade.gears import (
    Gear,
    NotDefined,
    bevel,
    blank,
    body,
    choose_pin,
    chordal,
    clock_pair,
    crossed,
    cutter_for,
    form_cutter,
    form_factor,
    from_dp,
    from_module,
    identify,
    largest_bore,
    least_teeth_with,
    limits,
    mesh,
    over_pins,
    rack,
    rack_drive,
    shifted,
    span,
    strength,
    stress_of,
    tabulated_factor,
    worm,
    worm_forces,
)
from binder_trade.gears.trains import (
    MeshOf,
    arm_speed,
    basic_ratio,
    pitch_of,
    planetary,
    reverted,
    run_train,
    screws,
)

SPUR = Gear(20, 1)
RING = Gear(60, 1, is_internal=True)
ASKED: dict[str, Callable[[], object]] = {
    "no teeth": lambda: Gear(0, 1),
    "teeth under nothing": lambda: Gear(-20, 1),
    "no module": lambda: Gear(20, 0),
    "module of no number": lambda: Gear(20, math.nan),
    "endless module": lambda: Gear(20, math.inf),
    "helix past making": lambda: Gear(20, 1, helix_deg=89),
    "shift past making": lambda: Gear(20, 1, shift=9),
    "ring of four teeth that close": lambda: Gear(4, 1, shift=-2),
    "teeth thinned away": lambda: Gear(20, 1, thinning_mm=3),
    "pointed teeth": lambda: blank(Gear(8, 1, shift=1.2)),
    "no rack": lambda: rack("Z"),
    "dp of nothing": lambda: from_dp(0),
    "module of nothing": lambda: from_module(0),
    "two modules": lambda: mesh(SPUR, Gear(20, 1.25)),
    "module and dp": lambda: mesh(Gear(20, 1.0583), Gear(20, from_dp(25).module_mm)),
    "two angles": lambda: mesh(SPUR, Gear(20, 1, rack("14.5 DP"))),
    "two helices": lambda: mesh(SPUR, Gear(20, 1, helix_deg=10)),
    "ring as pinion": lambda: mesh(RING, SPUR),
    "ring too small": lambda: mesh(Gear(70, 1), RING),
    "centres too near": lambda: mesh(SPUR, SPUR, centres_mm=10),
    "centres of nothing": lambda: mesh(SPUR, SPUR, centres_mm=0),
    "play past the teeth": lambda: mesh(SPUR, SPUR, backlash_mm=5),
    "tips of a ring": lambda: shifted(SPUR, RING),
    "undercut of a ring": lambda: limits(RING),
    "smaller mate": lambda: least_teeth_with(0.5),
    "span of a ring": lambda: span(RING),
    "span over too many": lambda: span(SPUR, 9),
    "span over one": lambda: span(SPUR, 1),
    "pin too thin": lambda: over_pins(SPUR, 0.2),
    "pin too thick": lambda: over_pins(SPUR, 6),
    "pins of none": lambda: choose_pin(SPUR, []),
    "pins that miss": lambda: choose_pin(SPUR, [0.3, 9]),
    "caliper in a ring": lambda: chordal(RING),
    "cutter for 11": lambda: form_cutter(11),
    "cutter in a ring": lambda: cutter_for(RING),
    "Lewis for few": lambda: form_factor(5, rack("A")),
    "Lewis by table for few": lambda: tabulated_factor(9),
    "no such metal": lambda: stress_of("cheese"),
    "no face": lambda: strength(SPUR, 0, 100),
    "speed under nothing": lambda: strength(SPUR, 10, 100, rpm=-5),
    "bore of a ring": lambda: body(RING, 5),
    "no bore left": lambda: largest_bore(Gear(8, 0.3)),
    "wide bevel": lambda: bevel(20, 20, 1, face_mm=9),
    "bevel of no teeth": lambda: bevel(0, 20, 1),
    "internal bevel": lambda: bevel(12, 60, 1, shafts_deg=120),
    "thin worm": lambda: worm(1, 30, 5, 15),
    "worm of no starts": lambda: worm(0, 30, 5, 50),
    "torque of no number": lambda: worm_forces(worm(1, 30, 5, 50), math.nan),
    "crossed ring": lambda: crossed(SPUR, RING),
    "crossed strangers": lambda: crossed(SPUR, Gear(20, 2)),
    "rack of a ring": lambda: rack_drive(RING),
    "leaves too few": lambda: clock_pair(60, 4, 1),
    "clock driven by its pinion": lambda: clock_pair(8, 10, 1),
    "salvaged without teeth": lambda: identify(30, 0),
    "salvaged of no size": lambda: identify(0, 30),
    "salvaged nonsense": lambda: identify(3000, 12),
    "span of a salvaged gear": lambda: identify(52, 24, spans_mm=[(1, 10)]),
    "no train": lambda: run_train([], 100),
    "train without teeth": lambda: run_train([MeshOf(0, 20)], 100),
    "more than all the power": lambda: run_train([MeshOf(20, 20, efficiency=1.2)], 100),
    "no threads": lambda: pitch_of(0),
    "no pitch": lambda: screws(Fraction(0), Fraction(2), [20, 30]),
    "centres too near for teeth": lambda: reverted(Fraction(1, 4), 5, (1, 1)),
    "ratio of nothing": lambda: reverted(Fraction(0), 50, (1, 1)),
    "held and driving": lambda: planetary(20, 60, "sun", "sun"),
    "half a planet": lambda: planetary(20, 61, "ring", "sun"),
    "sun as big as its ring": lambda: planetary(60, 60, "ring", "sun"),
    "no planets": lambda: planetary(20, 60, "ring", "sun", planets=0),
    "free arm": lambda: arm_speed(Fraction(1), 100, 100),
    "basic ratio of nothing": lambda: basic_ratio((0, 20, True)),
}


@pytest.mark.parametrize("name", list(ASKED))
def test_it_is_refused_with_a_way_out(name: str) -> None:
    with pytest.raises(NotDefined) as told:
        ASKED[name]()
    assert told.value.reason
    assert told.value.way_out
