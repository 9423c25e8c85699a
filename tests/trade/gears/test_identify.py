"""A gear off the scrap heap is told apart by its spans, and bodies of wheels by proportion."""

from __future__ import annotations

import math

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from binder_trade.gears import (
    Gear,
    NotDefined,
    Pitch,
    base_pitch_from,
    body,
    choose_pin,
    identify,
    largest_bore,
    nearest,
    over_pins,
    pitches,
    rack,
    shifted,
    span,
)

# The machines are shared and noisy: no example is held to a time, and each run tries the same.
STEADY = settings(deadline=None, derandomize=True)

COMMON = [each for each in pitches() if each.is_common and 0.3 <= each.module_mm <= 6]


@STEADY
@given(st.sampled_from(COMMON), st.integers(20, 90))
def test_every_common_pitch_is_found_by_its_outside(pitch: Pitch, teeth: int) -> None:
    found = identify(pitch.module_mm * (teeth + 2), teeth)
    assert found.candidates[0].pitch == pitch
    assert found.candidates[0].outside_off_mm == pytest.approx(0, abs=1e-9)


@STEADY
@given(st.sampled_from(COMMON), st.integers(25, 60), st.floats(-0.3, 0.4))
def test_a_shifted_gear_is_found_by_two_spans(pitch: Pitch, teeth: int, shift: float) -> None:
    kind = rack("A") if pitch.system == "module" else rack("20 DP")
    gear = Gear(teeth, pitch.module_mm, kind, shift)
    at = span(Gear(teeth, pitch.module_mm, kind)).across
    try:
        spans = [(each, span(gear, each).span_mm) for each in (at, at + 1)]
    except NotDefined:
        return
    found = identify(gear.tip_mm, teeth, spans_mm=spans)
    best = found.candidates[0]
    assert best.pitch.module_mm == pytest.approx(pitch.module_mm, rel=0.006)
    assert best.rack.angle_deg == 20
    assert best.shift == pytest.approx(shift, abs=0.25)


def test_the_old_angle_is_told_by_the_base_pitch() -> None:
    gear = Gear(32, 25.4 / 20, rack("14.5 DP"))
    spans = [(each, span(gear, each).span_mm) for each in (3, 4)]
    assert identify(gear.tip_mm, 32).candidates[0].rack.angle_deg == 20
    found = identify(gear.tip_mm, 32, spans_mm=spans)
    assert found.candidates[0].name == "20 DP, 14.5°"
    assert found.is_settled
    # π m cos α, whatever the shift.
    base = base_pitch_from(spans[0][1], spans[1][1])
    assert base == pytest.approx(math.pi * 1.27 * math.cos(math.radians(14.5)))


def test_what_to_measure_next_tells_the_likeliest_apart() -> None:
    found = identify(34 * 25.4 / 48, 32)
    assert not found.is_settled
    first = found.measure_next[0]
    assert first.readings[0][0] == found.candidates[0].name
    assert first.certainty == max(each.certainty for each in found.measure_next)
    values = [value for _, value in first.readings]
    apart = min(abs(value - values[0]) for value in values[1:])
    assert first.tells_apart_mm == pytest.approx(apart)


def test_the_bore_tells_what_wall_is_left_and_the_mate_its_centres() -> None:
    best = identify(52, 24, bore_mm=20).candidates[0]
    assert best.wall_mm == pytest.approx((52 - 20) / 2 - 4.5)
    assert best.centres_mm(36) == 60


def test_flat_jaws_over_odd_teeth_read_short() -> None:
    # A tip on one side, two tips on the other: the jaws meet the chord between them.
    reading = 27 / 2 + 27 / 2 * math.cos(math.pi / 25)
    found = identify(reading, 25, by_caliper=True)
    assert found.module_mm == pytest.approx(1)


def test_a_pinion_of_ten_may_be_shifted() -> None:
    # Module 1, x = +0.5, as small pinions are made to be free of undercut.
    found = identify(13, 10, keep=20)
    shifts = {each.name: each.shift for each in found.candidates}
    assert shifts["module 1, 20°"] == pytest.approx(0.5)


def test_the_nearest_pitch_that_is_sold() -> None:
    assert nearest(1.06).name == "24 DP"
    assert nearest(1.06, "module").name == "module 1"


def test_the_best_of_owned_pins_is_used() -> None:
    gear = Gear(20, 1)
    best = over_pins(gear)
    owned = choose_pin(gear, [1.0, 1.5, 1.7, 2.0, 3.0])
    assert owned.pin_mm == min((1.5, 1.7, 2.0), key=lambda pin: abs(pin - best.best_mm))
    assert owned.stands_out


# Trade rule: a millimetre at least each side between bore and roots.
def test_what_is_left_over_a_bore() -> None:
    gear = Gear(18, 0.5)
    assert body(gear, 5).wall_mm == pytest.approx((7.75 - 5) / 2)
    assert body(gear, 5).is_sound
    assert not body(gear, 6).is_sound
    assert not body(gear, 5, keyway_mm=0.8).is_sound
    assert body(gear, largest_bore(gear)).wall_mm == pytest.approx(1)
    assert body(gear, 4).is_pinion
    assert not body(Gear(80, 1), 8).is_pinion


def test_a_gear_that_needs_no_cutting_back_is_left_alone() -> None:
    pair = Gear(20, 1), Gear(30, 1)
    assert shifted(*pair) == pair
