"""Forces of bevel, helical and skew gears against worked examples and statics."""

from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from binder_trade.gears.bevel import bevel
from binder_trade.gears.gear import Gear
from binder_trade.gears.pitches import from_dp
from binder_trade.gears.strength import forces
from binder_trade.gears.thrust import bevel_forces, crossed_forces, mean_diameter

POUND, INCH = 4.4482216, 25.4


# Shigley, Mechanical Engineering Design, ex. 13-7 (13-8 in later editions), bevels of 3 and 9 in;
# 406 lb along the pitch circle makes 46.6 and 140 lb; from memory. Its r_av of the wheel, 3.88 in,
# is that of a face of 1.25 in.
def test_bevels_push_apart_and_along() -> None:
    pair = bevel(15, 45, 0.2 * INCH, face_mm=1.25 * INCH)
    assert mean_diameter(pair, pair.wheel) / INCH / 2 == pytest.approx(3.88, abs=0.03)
    torque = 406 * POUND * mean_diameter(pair, pair.wheel) / 2
    pinion, wheel = bevel_forces(pair, torque)
    assert pinion.tangential_n / POUND == pytest.approx(406, abs=0.1)
    assert wheel.radial_n / POUND == pytest.approx(46.6, abs=0.3)
    assert wheel.axial_n / POUND == pytest.approx(140, abs=0.3)
    # Statics: at a right angle what pushes the one apart pushes the other along.
    assert pinion.radial_n == pytest.approx(wheel.axial_n)
    assert pinion.axial_n == pytest.approx(wheel.radial_n)


# Shigley, ex. 13-8 (13-9): 18 teeth of 12 DP in the normal section, helix 30°, 40.4 lb along the
# pitch circle makes 17.0 lb apart and 23.3 lb along the shaft, from memory; all together is
# F_t / (cos α_n cos β), the force square to the tooth (ISO 1122-1 terms; statics).
def test_a_helical_pinion() -> None:
    gear = Gear(18, from_dp(12).module_mm, helix_deg=30)
    made = forces(gear, 40.4 * POUND * gear.pitch_mm / 2)
    assert made.radial_n / POUND == pytest.approx(17.0, abs=0.05)
    assert made.axial_n / POUND == pytest.approx(23.3, abs=0.05)
    square = 40.4 / math.cos(math.radians(20)) / math.cos(math.radians(30))
    assert made.total_n / POUND == pytest.approx(square)


# Statics: one force square to the teeth acts on both; at a right angle, of one hand, what turns
# the one is what pushes the other along.
@given(helix=st.floats(20, 59), torque=st.floats(1, 1e5))
def test_skew_gears_give_one_another_the_same_force(helix: float, torque: float) -> None:
    first, second = Gear(12, 1, helix_deg=helix), Gear(30, 1, helix_deg=max(0, 90 - helix - 30))
    one, other = crossed_forces(first, second, torque)
    assert one.total_n == pytest.approx(other.total_n)
    assert one.radial_n == pytest.approx(other.radial_n)
    assert one.axial_n / one.tangential_n == pytest.approx(math.tan(math.radians(helix)))


def test_skew_gears_at_a_right_angle_exchange_turn_and_thrust() -> None:
    one, other = crossed_forces(Gear(12, 1, helix_deg=50), Gear(30, 1, helix_deg=40), 100)
    assert one.axial_n == pytest.approx(other.tangential_n)
    assert other.axial_n == pytest.approx(one.tangential_n)
