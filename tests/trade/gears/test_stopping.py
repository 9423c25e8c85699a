"""Ratchets, Geneva wheels, mutilated gears and chain wheels against their geometry."""

from __future__ import annotations

import math
from collections.abc import Callable

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from binder_trade.chains.bead import bead_wheel
from binder_trade.chains.roller import chain, chains
from binder_trade.chains.sprockets import sprocket
from binder_trade.gears.stopping import NotDefined, geneva, mutilated, position, ratchet

# The machines are shared and noisy: no example is held to a time, and each run tries the same.
STEADY = settings(deadline=None, derandomize=True)

SLOTS = st.integers(3, 12)


# Centre distance r / sin(180° / n), common practice; 4 slots: √2 r, moving a quarter turn.
def test_a_geneva_wheel_of_four_slots() -> None:
    made = geneva(4, 20, 4)
    assert made.centres_mm == pytest.approx(28.284, abs=1e-3)
    assert (made.moving_deg, made.resting_deg, made.step_deg) == pytest.approx((90, 270, 90))
    # Published for four slots: greatest speed 2.41 times the crank's (from memory).
    assert made.top_speed == pytest.approx(2.414, abs=1e-3)


@STEADY
@given(SLOTS)
def test_the_pin_enters_along_the_slot(slots: int) -> None:
    made = geneva(slots, 30, 2)
    rim = math.sqrt(made.centres_mm**2 - 30**2)
    assert made.wheel_mm == pytest.approx(2 * math.hypot(rim, 1))
    # The slot is as deep as the pin comes in, with the play.
    deepest = made.centres_mm - 30 - 1
    assert rim - made.slot_mm == pytest.approx(deepest - 0.1)
    assert made.locking_mm + 1 < 30


@STEADY
@given(SLOTS, st.floats(-0.99, 0.99))
def test_the_wheel_stands_where_the_pin_is(slots: int, part: float) -> None:
    made = geneva(slots, 30, 2)
    crank = math.radians(part * made.moving_deg / 2)
    x, y = made.centres_mm - 30 * math.cos(crank), 30 * math.sin(crank)
    assert position(slots, math.degrees(crank)) == pytest.approx(
        math.degrees(math.atan2(y, x)), abs=1e-9
    )
    assert abs(position(slots, made.moving_deg)) == pytest.approx(made.step_deg / 2)


@STEADY
@given(SLOTS)
def test_its_greatest_speed_is_in_mid_step(slots: int) -> None:
    step = 1e-4
    speed = (position(slots, step) - position(slots, -step)) / (2 * step)
    assert geneva(slots, 30, 2).top_speed == pytest.approx(speed, rel=1e-6)


@STEADY
@given(st.integers(6, 60), st.floats(10, 80), st.floats(5, 40))
def test_the_pawl_stands_on_the_tangent(teeth: int, outside: float, pawl: float) -> None:
    made = ratchet(teeth, outside, pawl, depth_mm=outside / 20)
    meets = (made.outside_mm + made.root_mm) / 4
    # A right angle at the nose: the push goes past the centre at the arm of the tooth.
    assert made.pivot_mm**2 == pytest.approx(meets**2 + pawl**2)
    assert made.slack_mm == pytest.approx(math.pi * outside / teeth)


def test_two_pawls_halve_the_slack_and_the_load_is_on_one() -> None:
    one, two = (ratchet(12, 30, 15, pawls=many, torque_n_mm=1400) for many in (1, 2))
    assert (one.slack_deg, two.slack_deg) == (30, 15)
    assert one.load_n == two.load_n == pytest.approx(1400 / (15 - one.depth_mm / 2))
    assert one.draws_in
    assert not ratchet(12, 30, 15, undercut_deg=0).draws_in


@STEADY
@given(st.integers(8, 60), st.integers(6, 60), st.data())
def test_a_mutilated_gear_comes_back(full: int, mate: int, data: st.DataObject) -> None:
    kept = data.draw(st.integers(1, full - 2))
    made = mutilated(full, kept, mate)
    assert made.repeats * kept % mate == 0
    assert not any(turn * kept % mate == 0 for turn in range(1, made.repeats))
    assert made.moving_deg + made.resting_deg == pytest.approx(360)


# ISO 606: 08B has rollers of 8.51 mm; a published sheet of sprocket formulas gives the ends.
def test_a_sprocket_of_half_inch_chain() -> None:
    made = sprocket(chain("08B"), 17)
    pitch = 12.7 / math.sin(math.pi / 17)
    assert made.pitch_mm == pytest.approx(69.12, abs=0.01)
    assert made.root_mm == pytest.approx(pitch - 8.51)
    assert made.outside_most_mm == pytest.approx(pitch + 1.25 * 12.7 - 8.51)
    assert made.outside_least_mm == pytest.approx(pitch + (1 - 1.6 / 17) * 12.7 - 8.51)
    # The same sheet: 7.21 mm wide for one row.
    assert made.tooth_width_mm == pytest.approx(7.21, abs=0.01)
    # A handbook's customary outside, p (0.54 + cot (180° / z)), lies between.
    usual = 12.7 * (0.54 + 1 / math.tan(math.pi / 17))
    assert made.outside_least_mm < usual < made.outside_most_mm


@pytest.mark.parametrize("name", chains())
def test_the_table_of_chains_is_sound(name: str) -> None:
    each = chain(name)
    assert each.roller_mm < each.pitch_mm
    assert each.inner_mm < each.pitch_mm
    if name[:2] not in {"04", "08"} and name[-1] in "AB":
        # ISO 606 counts pitches in sixteenths of an inch; 05B is 8 mm.
        assert each.pitch_mm == pytest.approx(int(name[:2]) * 25.4 / 16, rel=0.01)


@STEADY
@given(st.integers(6, 60))
def test_beads_lie_in_their_pockets(pockets: int) -> None:
    made = bead_wheel(4.2, 3.2, pockets)
    chord = made.pitch_circle_mm * math.sin(math.pi / pockets)
    assert chord == pytest.approx(4.2)
    assert made.pocket_mm > 3.2


@pytest.mark.parametrize(
    "asked",
    [
        lambda: geneva(2, 20, 4),
        lambda: geneva(4, 20, 30),
        lambda: geneva(3, 20, 8),
        lambda: position(1, 0),
        lambda: position(4, math.inf),
        lambda: ratchet(3, 30, 15),
        lambda: ratchet(12, 30, 15, depth_mm=12),
        lambda: ratchet(12, 30, 15, undercut_deg=60),
        lambda: ratchet(12, -30, 15),
        lambda: mutilated(20, 20, 20),
        lambda: mutilated(20, 0, 20),
        lambda: mutilated(3, 1, 20),
        lambda: sprocket(chain("08B"), 5),
        lambda: chain("99Z"),
        lambda: bead_wheel(3, 3.2, 12),
        lambda: bead_wheel(4.2, 3.2, 2),
    ],
)
def test_refusals(asked: Callable[[], object]) -> None:
    with pytest.raises(NotDefined) as told:
        asked()
    assert told.value.reason
    assert told.value.way_out
