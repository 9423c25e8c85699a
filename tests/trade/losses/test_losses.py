"""Losses of stages, hands and motors."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from binder_trade.explained import NotDefined
from binder_trade.losses.movers import (
    engine_power_w,
    hand,
    hand_kinds,
    motor,
    motor_from_plate,
    motor_kinds,
    synchronous_rpm,
    under_load,
)
from binder_trade.losses.stages import loss, stages, through, worm_loss


# Jindal, Machine Design, Ex 28-4: two starts, q = 8, μ 0.032, 20°: 1.2 kW in, 1.047 out.
def test_a_worm_of_a_textbook() -> None:
    made = worm_loss(math.degrees(math.atan(2 / 8)), 0.032)
    assert 1.2 * made.forward == pytest.approx(1.047, abs=0.001)
    assert 1.2 * (1 - made.forward) == pytest.approx(0.153, abs=0.001)
    assert made.steps[0].value == "87 %"


# Wentzell, Machine Design, Ex 13.6: lead angle 4.77°, friction 0.03, flanks left out: 0.73.
def test_a_worm_in_inches() -> None:
    assert worm_loss(4.77, 0.03, 0).forward == pytest.approx(0.73, abs=0.01)


# Textbook: a worm that holds by friction never reaches half.
@given(lead=st.floats(0.5, 40), friction=st.floats(0.01, 0.3))
def test_a_worm_that_holds_loses_half(lead: float, friction: float) -> None:
    try:
        made = worm_loss(lead, friction)
    except NotDefined:
        return
    assert made.holds == (made.back == 0)
    assert not made.holds or made.forward <= 0.5 + 1e-9
    assert made.holds or not made.holds_when_shaken
    assert made.back < made.forward


# Usual ranges as a model engineer's notes have them: spur 3 to 5 %, bush 3 to 5 %.
@pytest.mark.parametrize("stage", ["spur gears", "plain bush"])
def test_usual_losses(stage: str) -> None:
    found = loss(stage)
    assert (found.least, found.most) == (0.03, 0.05)


@pytest.mark.parametrize("stage", stages())
def test_every_loss_is_a_range_with_a_source(stage: str) -> None:
    found = loss(stage)
    assert 0 < found.least <= found.usual <= found.most < 0.5
    assert "from memory" in found.source or "common practice" in found.source


def test_losses_multiply() -> None:
    made = through(["spur gears", "plain bush", "plain bush"])
    assert made.usual == pytest.approx(0.96**3)
    assert made.least < made.usual < made.most
    assert through([]).usual == 1
    with pytest.raises(NotDefined, match="no loss known"):
        through(["magic"])
    with pytest.raises(NotDefined, match="jams"):
        worm_loss(60, 0.5, 45)


# A published table of human force: 130 N on 0.4 m at 25 r/min is 136 W.
def test_a_hand_on_a_crank() -> None:
    found = hand("standing, full-size crank")
    assert found.power_w == pytest.approx(136, abs=0.5)
    assert found.torque_nmm == 52_000
    assert all(hand(name).power_w < found.power_w for name in hand_kinds()[1:])
    with pytest.raises(NotDefined, match="no hand crank"):
        hand("foot")


# Mains: four poles at 50 Hz make 1500 r/min, at 60 Hz 1800.
def test_synchronous_speeds() -> None:
    assert synchronous_rpm(50, 2) == 1500
    assert synchronous_rpm(60, 2) == 1800


@given(free=st.floats(100, 12_000), stall=st.floats(1, 5000), part=st.floats(0, 0.99))
def test_a_motors_straight_line(free: float, stall: float, part: float) -> None:
    made = motor(free, stall)
    load = stall * part
    assert made.torque_at(made.speed_at(load)) == pytest.approx(load, abs=1e-6 * stall)
    found = under_load(made, load)
    assert found.power_w <= made.most_power_w * (1 + 1e-9)
    assert found.of_stall == pytest.approx(part)


def test_a_motor_by_its_plate() -> None:
    made = motor_from_plate(6000, 5000, 10)
    assert under_load(made, made.torque_at(5000)).power_w == pytest.approx(10)
    assert under_load(made, made.torque_at(5000)).rpm == pytest.approx(5000)
    with pytest.raises(NotDefined, match="not below"):
        motor_from_plate(5000, 5000, 10)
    with pytest.raises(NotDefined, match="stalls"):
        under_load(made, made.stall_nmm)


# p L A N by hand: 0.2 N/mm² on 20 mm bore and stroke, both sides, 300 r/min: 12.57 W.
def test_a_small_engine() -> None:
    power, step = engine_power_w(20, 20, 0.2, 300, 2)
    assert power == pytest.approx(0.2 * math.pi * 100 * 20 * 2 * 5 / 1000)
    assert step.value == "12.6 W"


def test_motor_families_are_ranges() -> None:
    for row in motor_kinds().values():
        assert row["rpm"][0] < row["rpm"][1]
        assert row["torque_nmm"][0] < row["torque_nmm"][1]
