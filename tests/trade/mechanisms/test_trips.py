"""Tappets, Geneva wheels, ratchets and toggles."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from binder_trade.explained import NotDefined
from binder_trade.gears.stopping import geneva, pawl_load, position, ratchet_feed, speed
from binder_trade.mechanisms.tappets import (
    blow_energy_nmm,
    blows,
    gravity_share_of,
    trip,
)
from binder_trade.mechanisms.toggle import toggle_force, toggle_reach


# Law of falling bodies: 20 mm in √(2 × 20 / 9806.65) = 0.0639 s.
def test_a_hammer_falls() -> None:
    made = blows(60, 4, 20, math.radians(40))
    assert made.fall_s == pytest.approx(0.06387, abs=1e-5)
    assert made.blows_per_minute == 240
    # Four tappets: 90° less 40° at 6° in a sixtieth of a second, that is 360° a second.
    assert made.free_s == pytest.approx(50 / 360)
    assert made.lands
    assert made.impact_ms == pytest.approx(9.80665 * made.fall_s)


@given(rpm=st.floats(5, 300), count=st.integers(1, 8), lift=st.floats(2, 60))
def test_the_most_speed_leaves_the_margin(rpm: float, count: int, lift: float) -> None:
    made = blows(rpm, count, lift, math.radians(30))
    again = blows(made.most_rpm, count, lift, math.radians(30))
    assert again.free_s == pytest.approx(1.2 * again.fall_s)
    assert made.lands == (rpm <= made.most_rpm * 1.2 + 1e-9)


# At the release the tappet's tip and the tail's tip are one point.
@given(tip=st.floats(15, 25), overlap=st.floats(0.5, 4))
def test_the_tappet_lets_go_where_the_tips_meet(tip: float, overlap: float) -> None:
    tail = 60.0
    apart = tip + tail - overlap
    made = trip(apart, tip, tail, 120)
    swing = made.helve_rad / 2
    end = tail * math.cos(swing), tail * math.sin(swing)
    assert math.dist(end, (apart, 0)) == pytest.approx(tip)
    assert made.head_lift_mm == pytest.approx(120 * 2 * swing)
    assert made.shaft_rad > made.helve_rad
    assert made.steps[2].value == f"{made.head_lift_mm:.3f} mm"
    later = trip(apart, tip, tail, 120, rest_deg=0)
    assert later.helve_rad == pytest.approx(swing)
    assert later.shaft_rad == pytest.approx(made.shaft_rad / 2)


# A heavy head on a light helve falls as a free body; the tail's own weight slows it.
def test_the_helve_slows_the_fall() -> None:
    assert gravity_share_of(1.0, 100, 1e-6, 0, 100) == pytest.approx(1, abs=1e-5)
    assert gravity_share_of(0.2, 100, 0.1, -10, 160) < 1
    # A slender rod about its end: the tip starts with 1.5 g (textbook).
    assert gravity_share_of(1e-6, 100, 1.0, 50, 100) == pytest.approx(1.5, abs=1e-4)
    with pytest.raises(NotDefined, match="does not fall"):
        gravity_share_of(0.1, 100, 1.0, -50, 200)


def test_the_energy_of_a_blow() -> None:
    assert blow_energy_nmm(0.2, 20) == pytest.approx(0.2 * 9.80665 * 20)


def test_trips_that_cannot_be() -> None:
    with pytest.raises(NotDefined, match="misses the tail"):
        trip(100, 20, 60, 120)
    with pytest.raises(NotDefined, match="never lets"):
        trip(30, 20, 60, 120)
    with pytest.raises(NotDefined, match="rests outside"):
        trip(78, 20, 60, 120, rest_deg=45)
    with pytest.raises(NotDefined, match="before it is let go"):
        blows(60, 8, 20, math.radians(50))
    with pytest.raises(NotDefined, match="number of tappets"):
        blows(60, 0, 20, 0.5)


# Peak speed ratios that textbooks print for external Geneva wheels (from memory).
@pytest.mark.parametrize(
    ("slots", "ratio", "share"),
    [(3, 6.464, 1 / 6), (4, 2.414, 1 / 4), (6, 1.0, 1 / 3), (8, 0.620, 3 / 8)],
)
def test_geneva_wheels(slots: int, ratio: float, share: float) -> None:
    made = geneva(slots, 30, 1)
    assert made.top_speed == pytest.approx(ratio, abs=1e-3)
    assert made.moving_deg / 360 == pytest.approx(share)
    assert made.moving_deg + made.resting_deg == 360
    assert (position(slots, 0), speed(slots, 0)) == pytest.approx((0, made.top_speed))


@given(slots=st.integers(3, 12), part=st.floats(-0.99, 0.99))
def test_a_geneva_wheel_moves_smoothly(slots: int, part: float) -> None:
    moving, step = geneva(slots, 30, 1).moving_deg, 1e-5
    angle = part * (moving / 2 - 2 * step)
    one, two = position(slots, angle - step), position(slots, angle + step)
    assert speed(slots, angle) == pytest.approx((two - one) / 2 / step, abs=1e-5)
    end = moving / 2 * (1 - 1e-12)
    assert position(slots, end) == pytest.approx(180 / slots, abs=1e-4)
    assert speed(slots, end) == pytest.approx(0, abs=1e-6)
    assert speed(slots, 180) == 0


# A ratchet of 60 teeth on a screw of 1.5 mm: a swing of 15° is two teeth, 0.05 mm.
def test_a_ratchet_feeds_whole_teeth() -> None:
    made = ratchet_feed(60, 15, 1.5)
    assert (made.teeth, made.degrees, made.lost_degrees) == (2, 12, 3)
    assert made.feed_mm == pytest.approx(0.05)
    assert made.strokes_per_turn == 30
    assert ratchet_feed(60, 15, pawls=2).degrees == 15
    with pytest.raises(NotDefined, match="does not reach"):
        ratchet_feed(60, 5)


def test_what_a_pawl_holds() -> None:
    force, pressure, steps = pawl_load(600, 30, 4, 2)
    assert (force, pressure) == pytest.approx((40, 5))
    assert steps


# Statics of a knee: at 5° a push of 10 N gives 57.2 N.
def test_a_toggle() -> None:
    force, step = toggle_force(10, 5)
    assert force == pytest.approx(57.15, abs=0.01)
    assert step.value == "57.2 N"
    # Virtual work: the ends close by 2 l sin a da while the knee moves l cos a da.
    gap = (toggle_reach(50, 5.001) - toggle_reach(50, 4.999)) * force
    knee = 50 * (math.sin(math.radians(5.001)) - math.sin(math.radians(4.999))) * 10
    assert gap == pytest.approx(knee, rel=1e-4)
    with pytest.raises(NotDefined, match="angle of the links"):
        toggle_force(10, 0)
    with pytest.raises(NotDefined, match="number of slots"):
        geneva(2, 30, 1)
