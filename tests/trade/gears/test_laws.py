"""Laws that gears keep whatever their sizes: involutes, meshes, measures, cones, worms."""

from __future__ import annotations

import math
from dataclasses import replace

import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st

from binder_trade.gears import (
    Gear,
    NotDefined,
    angle_of,
    back_efficiency,
    best_pin,
    bevel,
    crossed,
    efficiency,
    holds,
    involute,
    least_teeth,
    limits,
    mesh,
    over_pins,
    rack,
    rack_drive,
    shift_for,
    span,
    tight_centres,
    top_of,
    usual_backlash,
    worm,
)
from binder_trade.gears.clock_teeth import addendum_factor

# The machines are shared and noisy: no example is held to a time, and each run tries the same.
STEADY = settings(deadline=None, derandomize=True)
FEW = settings(STEADY, max_examples=20)

TEETH = st.integers(18, 120)
MODULES = st.floats(0.2, 6)
SHIFTS = st.floats(-0.2, 0.6)
Point = tuple[float, float]


@STEADY
@given(st.floats(0.01, 1.4))
def test_the_involute_and_its_inverse(angle: float) -> None:
    assert angle_of(involute(angle)) == pytest.approx(angle, rel=1e-9)


@STEADY
@given(st.floats(0, 50))
def test_the_inverse_gives_the_involute_back(value: float) -> None:
    assert involute(angle_of(value)) == pytest.approx(value, rel=1e-9, abs=1e-12)


@STEADY
@given(TEETH, TEETH, MODULES)
def test_contact_ratio_of_full_teeth_lies_between_1_and_2(
    one: int, other: int, module: float
) -> None:
    made = mesh(Gear(one, module), Gear(other, module))
    # 1.98 is what two racks of 20° have, 2 (h_a / sin α) / (π m cos α).
    assert 1 < made.contact_ratio < 2 / (math.pi * math.sin(A.angle) * math.cos(A.angle))
    assert made.clearance_mm == pytest.approx(0.25 * module)
    assert not made.has_interference


A = rack("A")


@STEADY
@given(TEETH, TEETH, MODULES, SHIFTS, SHIFTS)
def test_without_play_the_teeth_fill_the_pitch(
    one: int, other: int, module: float, first: float, second: float
) -> None:
    pair = Gear(one, module, shift=first), Gear(other, module, shift=second)
    made = mesh(*pair)
    assert made.backlash_mm == pytest.approx(0, abs=1e-8 * module)
    assert made.centres_mm == pytest.approx(made.tight_mm)
    assert shift_for(*pair, made.centres_mm) == pytest.approx(first + second, abs=1e-6)


@STEADY
@given(TEETH, TEETH, MODULES, st.floats(0.01, 0.2))
def test_backlash_to_centres_and_back(one: int, other: int, module: float, play: float) -> None:
    pair = Gear(one, module), Gear(other, module)
    there = mesh(*pair, backlash_mm=play * module)
    back = mesh(*pair, centres_mm=there.centres_mm)
    assert back.backlash_mm == pytest.approx(play * module, rel=1e-6)
    # Near the reference distance play is 2 da tan α.
    apart = there.centres_mm - there.tight_mm
    assert 2 * apart * math.tan(A.angle) == pytest.approx(play * module, rel=0.2)


@STEADY
@given(st.integers(18, 40), st.integers(20, 80), MODULES, st.floats(0.01, 0.1))
def test_an_internal_gear_is_brought_nearer_for_play(
    one: int, more: int, module: float, play: float
) -> None:
    pair = Gear(one, module), Gear(one + more, module, is_internal=True)
    made = mesh(*pair, backlash_mm=play * module)
    assert made.centres_mm < tight_centres(*pair)
    assert made.backlash_mm == pytest.approx(play * module, rel=1e-6)
    assert not made.reverses


@STEADY
@given(TEETH, st.integers(20, 80), MODULES)
def test_an_internal_pair_has_more_contact_than_an_external(
    one: int, more: int, module: float
) -> None:
    ring = Gear(one + more, module)
    outside = mesh(Gear(one, module), ring).contact_ratio
    assert mesh(Gear(one, module), replace(ring, is_internal=True)).contact_ratio > outside


@STEADY
@given(TEETH, TEETH, MODULES)
def test_the_usual_play_costs_little_contact(one: int, other: int, module: float) -> None:
    least, most = usual_backlash(module)
    for play in (least, most):
        made = mesh(Gear(one, module), Gear(other, module), backlash_mm=play)
        assert 0 < made.centres_mm - made.reference_mm < 0.08 * module
        assert made.contact_ratio > 1.2


def test_near_sizes_of_an_internal_pair_foul() -> None:
    made = [mesh(Gear(30, 1), Gear(30 + more, 1, is_internal=True)) for more in (4, 20)]
    assert [each.has_interference for each in made] == [True, False]


def test_tips_dig_in_where_the_pinion_is_small() -> None:
    # T. Bevan: 13 teeth at least for equal gears at 20°, drawn full depth.
    made = [mesh(Gear(teeth, 1), Gear(teeth, 1)).has_interference for teeth in (12, 13)]
    assert made == [True, False]


def flank(gear: Gear, side: int, diameter: float) -> Point:
    """A point of the flank of a tooth that stands on +x, from the involute's own parameter."""
    roll = math.sqrt((diameter / gear.base_mm) ** 2 - 1)
    unwound = roll - math.atan(roll)
    half = gear.thickness_mm / gear.pitch_mm + involute(gear.angle)
    turn = side * (half - unwound)
    return diameter / 2 * math.cos(turn), diameter / 2 * math.sin(turn)


@STEADY
@given(TEETH, MODULES, SHIFTS)
def test_a_pin_so_placed_touches_both_flanks(teeth: int, module: float, shift: float) -> None:
    gear = Gear(2 * (teeth // 2), module, shift=shift)
    pins = over_pins(gear)
    centre = (pins.size_mm - pins.pin_mm) / 2
    # The pin lies half a pitch from the tooth on +x.
    place = (centre * math.cos(math.pi / gear.teeth), centre * math.sin(math.pi / gear.teeth))
    near = min(
        math.dist(place, flank(gear, 1, pins.touches_mm + step * module / 400))
        for step in range(-100, 101)
        if pins.touches_mm + step * module / 400 > gear.base_mm
    )
    assert near == pytest.approx(pins.pin_mm / 2, rel=1e-6)
    assert pins.touches_mm == pytest.approx(gear.pitch_mm + 2 * shift * module)


@STEADY
@given(TEETH, MODULES, SHIFTS)
def test_a_pin_in_a_ring_touches_both_flanks(teeth: int, module: float, shift: float) -> None:
    # The space of a ring has the flanks of the tooth of a gear of the same size, about +x.
    gear = Gear(2 * (teeth // 2), module, shift=shift)
    ring = replace(gear, is_internal=True)
    assert gear.thickness_mm + ring.thickness_mm == pytest.approx(math.pi * module)
    made = over_pins(ring, best_pin(ring))
    place = ((made.size_mm + made.pin_mm) / 2, 0.0)
    near = min(
        math.dist(place, flank(gear, 1, made.touches_mm + step * module / 400))
        for step in range(-100, 101)
        if made.touches_mm + step * module / 400 > gear.base_mm
    )
    assert near == pytest.approx(made.pin_mm / 2, rel=1e-6)
    assert made.touches_mm == pytest.approx(ring.pitch_mm + 2 * shift * module)


@STEADY
@given(TEETH, MODULES, SHIFTS)
def test_the_span_is_as_long_as_the_line_between_the_flanks(
    teeth: int, module: float, shift: float
) -> None:
    gear = Gear(teeth, module, shift=shift)
    made = span(gear)
    # Both ends lie on flanks of teeth k − 1 pitches apart; the line touches the base circle.
    turn = math.pi * (made.across - 1) / teeth
    upper = flank(gear, 1, made.touches_mm)
    angle = math.atan2(upper[1], upper[0]) + turn
    assert made.touches_mm * math.sin(angle) == pytest.approx(made.span_mm, rel=1e-9)
    assert made.touches_mm * math.cos(angle) == pytest.approx(gear.base_mm, rel=1e-9)


@STEADY
@given(TEETH, MODULES, SHIFTS, st.floats(0, 40))
def test_one_more_tooth_adds_a_base_pitch(
    teeth: int, module: float, shift: float, helix: float
) -> None:
    gear = Gear(teeth, module, shift=shift, helix_deg=helix)
    first = span(gear)
    try:
        more = span(gear, first.across + 1).span_mm - first.span_mm
    except NotDefined:
        assume(False)
    assert more == pytest.approx(math.pi * module * math.cos(A.angle))


@STEADY
@given(st.integers(6, 17))
def test_the_least_shift_is_just_enough(teeth: int) -> None:
    found = limits(Gear(teeth, 1))
    assert found.is_undercut
    assert least_teeth(A, found.least_shift) == pytest.approx(teeth)
    assert not limits(Gear(teeth, 1, shift=found.least_shift)).is_undercut
    assert top_of(Gear(teeth, 1, shift=found.most_shift)) == pytest.approx(0.25, abs=1e-6)


# Published in every handbook: 17 teeth at 20°, 32 at 14½°, 8 at 30°.
def test_least_teeth_by_the_angle() -> None:
    assert least_teeth(A) == pytest.approx(17.097, abs=1e-3)
    assert least_teeth(rack("14.5 DP")) == pytest.approx(31.9, abs=0.05)


@STEADY
@given(st.integers(12, 60), st.integers(12, 60), MODULES, st.floats(40, 90))
def test_bevel_cones_fill_the_angle_and_share_an_apex(
    one: int, other: int, module: float, shafts: float
) -> None:
    made = bevel(one, other, module, shafts_deg=shafts)
    assert made.pinion.pitch_cone_deg + made.wheel.pitch_cone_deg == pytest.approx(shafts)
    for gear in (made.pinion, made.wheel):
        half = math.radians(gear.pitch_cone_deg)
        assert gear.pitch_mm / 2 / math.sin(half) == pytest.approx(made.cone_mm)
        # The tip's edge lies on the face cone.
        face = math.atan2(gear.outside_mm / 2, gear.crown_mm)
        assert math.degrees(face) == pytest.approx(gear.face_cone_deg)
    assert made.face_mm <= made.cone_mm / 3 + 1e-9


@STEADY
@given(st.floats(1, 40), st.floats(0.01, 0.3))
def test_a_worm_holds_where_the_wheel_cannot_drive_it(lead: float, friction: float) -> None:
    back = back_efficiency(lead, friction)
    assert (holds(lead, friction) == "runs back") == (back > 0)
    assert 0 < efficiency(lead, friction) < 1
    if back <= 0:
        # A screw that holds by itself wastes half or more.
        assert efficiency(lead, friction) < 0.51


@STEADY
@given(st.integers(1, 4), st.integers(20, 80), MODULES, st.floats(8, 20))
def test_a_worm_rolls_its_wheel_on(starts: int, teeth: int, module: float, thick: float) -> None:
    pair = worm(starts, teeth, module, thick * module)
    assert pair.lead_mm == pytest.approx(math.pi * pair.wheel_mm / pair.ratio)
    slope = pair.lead_mm / (math.pi * pair.worm_mm)
    assert math.tan(math.radians(pair.lead_deg)) == pytest.approx(slope)


@STEADY
@given(TEETH, TEETH, st.floats(5, 40))
def test_crossed_gears_of_one_hand_add_their_helices(one: int, other: int, helix: float) -> None:
    pair = Gear(one, 1, helix_deg=helix), Gear(other, 1, helix_deg=helix)
    assert crossed(*pair).shafts_deg == pytest.approx(2 * helix)
    parallel = crossed(*pair, same_hand=False)
    assert parallel.shafts_deg == 0
    assert parallel.centres_mm == pytest.approx(mesh(*pair).centres_mm)


@STEADY
@given(TEETH, MODULES)
def test_a_rack_moves_a_tooth_for_a_tooth(teeth: int, module: float) -> None:
    made = rack_drive(Gear(teeth, module), 100)
    assert made.travel_mm == pytest.approx(teeth * made.tooth_mm)
    assert made.rack_teeth * made.tooth_mm >= 100
    # A rack is a wheel without end.
    wheel = mesh(Gear(teeth, module), Gear(2000, module))
    assert made.contact_ratio == pytest.approx(wheel.contact_ratio, rel=0.02)


@FEW
@given(st.integers(6, 16), st.integers(24, 120))
def test_a_clock_wheel_ends_where_its_epicycloids_meet(leaves: int, teeth: int) -> None:
    # Rolled by hand: a circle of half the pinion's radius on the wheel's pitch circle.
    wheel, roller = teeth / 2, leaves / 4
    step, height = 0.0, 0.0
    while True:
        step += 2e-5
        far, turn = wheel + roller, step * wheel / roller
        x = far * math.cos(step) - roller * math.cos(step + turn)
        y = far * math.sin(step) - roller * math.sin(step + turn)
        if math.atan2(y, x) >= math.pi / 2 / teeth:
            break
        height = math.hypot(x, y) - wheel
    assert addendum_factor(teeth, leaves) == pytest.approx(height, abs=2e-3)
