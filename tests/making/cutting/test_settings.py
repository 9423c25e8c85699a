"""What is set on a machine: its own speeds, its motor, pilots, pecks, the tap in the hand."""

from __future__ import annotations

from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st

from binder_making import cutting
from binder_making.cutting import Machine, Speeds, Way
from binder_trade.explained import NotDefined

STEPS = Speeds((130, 210, 340, 560, 900, 1450, 2300))
LATHE = Machine(STEPS, (0.05, 0.1, 0.2), motor_w=450, swing_mm=190)
STEEL = cutting.group("mild steel")
SIZES = st.floats(0.5, 100)


@pytest.mark.parametrize(
    ("wanted", "rpm", "way"),
    [
        (398, 340, Way.OWNED),
        (340, 340, Way.OWNED),
        (339.9, 210, Way.OWNED),
        (110, 130, Way.LOWEST),
        (100, 0, Way.BY_HAND),
        (3000, 2300, Way.HIGHEST),
        (9000, 2300, Way.HIGHEST),
    ],
)
def test_the_next_lower_speed(wanted: float, rpm: float, way: Way) -> None:
    found = cutting.spindle(wanted, STEPS)
    assert (found.rpm, found.way) == (rpm, way)
    assert found.light_feed is (wanted > 4600)


def test_of_two_neighbours_the_lower() -> None:
    # A course of machining (read): 310 is wanted, 320 and 275 are there, 275 is taken.
    assert cutting.spindle(310, Speeds((275, 320))).rpm == 275


def test_a_stepless_drive_is_rounded_down() -> None:
    assert cutting.spindle(398, Speeds.between(100, 2000)).rpm == 390
    assert cutting.spindle(1999, Speeds.between(100, 2000)).rpm == 1950


@given(st.floats(1, 1e5), st.lists(st.floats(10, 5000), min_size=1, max_size=9))
def test_no_speed_is_faster_than_wanted_but_the_lowest(wanted: float, owned: list[float]) -> None:
    found = cutting.spindle(wanted, Speeds(tuple(owned)))
    assert found.rpm <= max(wanted, min(owned))
    assert found.rpm in (0, *owned)
    assert found.rpm <= 1.25 * wanted + 1e-6


def test_a_speed_that_is_none() -> None:
    with pytest.raises(NotDefined):
        cutting.spindle(100, Speeds(()))
    with pytest.raises(NotDefined):
        cutting.advise(STEEL, "carve", 10, LATHE)
    with pytest.raises(NotDefined):
        cutting.advise(STEEL, "turn", 10, LATHE, tool="diamond")
    with pytest.raises(NotDefined):
        cutting.advise(STEEL, "turn", 0, LATHE)


def test_turning_a_bar_of_mild_steel() -> None:
    # 25 m/min on 20 mm is 398 r/min: 340 is set, 0.1 a turn, 0.5 deep (common practice).
    cut = cutting.advise(STEEL, "turn", 20, LATHE)
    assert (cut.turning.rpm, cut.feed_mm, cut.depth_mm) == (340, 0.1, 0.5)
    assert cut.speed_mpm == pytest.approx(21.4, abs=0.05)
    assert cut.load is not None
    assert cut.load.cutter_w == pytest.approx(3610 * 0.5 * 0.1 * cut.speed_mpm / 60)


def test_finishing_is_finer() -> None:
    rough, fine = (cutting.advise(STEEL, "turn", 20, LATHE, finish=one) for one in (False, True))
    assert fine.feed_mm < rough.feed_mm
    assert fine.depth_mm < rough.depth_mm


def test_a_weak_motor_takes_a_shallower_cut() -> None:
    weak = Machine(STEPS, (0.1,), motor_w=50, swing_mm=190)
    cut = cutting.advise(STEEL, "turn", 20, weak)
    assert cut.depth_mm < 0.5
    assert cut.load is not None
    assert cut.load.is_carried
    assert cut.load.asked_w == pytest.approx(50)


def test_a_weak_motor_drills_with_less_feed() -> None:
    drilling = Machine(Speeds((500, 850, 1300)), motor_w=150)
    cut = cutting.advise(STEEL, "drill", 10, drilling)
    assert cut.feed_mm < cutting.drill_feed(10)
    assert cut.load is not None
    assert cut.load.asked_w == pytest.approx(150)


def test_a_drill_that_the_motor_cannot_turn() -> None:
    drilling = Machine(Speeds((500,)), motor_w=20)
    cut = cutting.advise(STEEL, "drill", 12, drilling)
    assert cut.load is not None
    assert not cut.load.is_carried


def test_screwcutting_is_never_faster_than_a_hundred_turns() -> None:
    assert cutting.advise(STEEL, "screwcut", 6, Machine(Speeds((40, 75, 130)))).turning.rpm == 75


@given(st.sampled_from(cutting.groups()), SIZES, st.booleans())
def test_carbide_is_faster_and_carbon_slower(group: cutting.Group, size: float, fine: bool) -> None:
    machine = Machine(Speeds.between(1, 100_000), motor_w=500, swing_mm=200)
    speeds = [
        cutting.advise(group, "turn", size, machine, tool=tool, finish=fine).turning.wanted_rpm
        for tool in ("carbon", "hss", "carbide")
    ]
    assert speeds == sorted(speeds)
    assert len(set(speeds)) == 3


def test_a_large_hole_has_a_pilot_and_a_middle_drill() -> None:
    owned = [2, 2.5, 3, 3.5, 4, 5, 6, 8, 10, 12]
    assert cutting.drills_in_order(5, owned, STEEL).sizes_mm == (5,)
    assert cutting.drills_in_order(10, owned, STEEL).sizes_mm == (3, 10)
    assert cutting.drills_in_order(20, owned, STEEL).sizes_mm == (6, 12, 20)


@given(st.floats(1, 40), st.lists(st.floats(0.5, 40), max_size=12))
def test_drills_rise_and_clear_the_web(size: float, owned: list[float]) -> None:
    found = cutting.drills_in_order(size, owned, STEEL).sizes_mm
    assert list(found) == sorted(set(found))
    assert found[-1] == size
    assert all(one > cutting.web(size) for one in found)


def test_brass_is_told_to_snatch() -> None:
    assert "snatches" in cutting.drills_in_order(10, [3], cutting.group("brass")).caution
    assert not cutting.drills_in_order(10, [3], STEEL).caution


def test_pecks_of_a_deep_hole() -> None:
    # Two diameters at once (a maker's guide, read), then one at a time (common practice).
    assert cutting.pecks(9, 3).depths_mm == (9,)
    assert cutting.pecks(14, 3).depths_mm == (6, 9, 12, 14)


def test_a_deep_hole_is_drilled_slower_and_lighter() -> None:
    # Published guide to drilling: 10 and 10 % at three diameters, 37.5 and 20 % at six.
    machine = Machine(Speeds.between(1, 100_000))
    flat = cutting.advise(STEEL, "drill", 5, machine)
    for deep, speed, feed in ((10, 1, 1), (15, 0.9, 0.9), (30, 0.625, 0.8), (60, 0.625, 0.8)):
        cut = cutting.advise(STEEL, "drill", 5, machine, deep_mm=deep)
        assert cut.turning.wanted_rpm == pytest.approx(flat.turning.wanted_rpm * speed)
        assert cut.feed_mm == pytest.approx(flat.feed_mm * feed)
    assert (
        cutting.advise(STEEL, "turn", 5, machine, deep_mm=60).turning
        == cutting.advise(STEEL, "turn", 5, machine).turning
    )


def test_it_is_told_where_the_motor_holds_the_cut_back() -> None:
    for act, watts in (("turn", 40), ("drill", 250)):
        weak, strong = (Machine(Speeds((400,)), motor_w=w, swing_mm=200) for w in (watts, 2000))
        assert cutting.advise(STEEL, act, 12, weak).by_motor
        assert not cutting.advise(STEEL, act, 12, strong).by_motor


def test_a_hole_that_no_drill_reaches() -> None:
    with pytest.raises(NotDefined):
        cutting.pecks(200, 3)


@given(st.floats(0.1, 60), st.floats(0.5, 20))
def test_pecks_rise_to_the_depth(ratio: float, size: float) -> None:
    depth = ratio * size * (1 - 1e-9)
    found = cutting.pecks(depth, size).depths_mm
    assert list(found) == sorted(set(found))
    assert found[-1] == depth
    assert all(two - one <= size + 1e-9 for one, two in pairwise(found))


@pytest.mark.parametrize(
    ("size", "blind", "reverses", "speeds", "by_hand"),
    [
        (6, False, True, Speeds((50, 200)), False),
        (6, True, True, Speeds((50, 200)), True),
        (2, False, True, Speeds((50, 200)), True),
        (16, False, True, Speeds((50, 200)), True),
        (6, False, False, Speeds((50, 200)), True),
        (6, False, True, Speeds((500, 800)), True),
        (6, False, True, None, True),
    ],
)
def test_taps_by_hand_unless_all_speaks_for_power(
    size: float, blind: bool, reverses: bool, speeds: Speeds | None, by_hand: bool
) -> None:
    found = cutting.tapping(STEEL, size, is_blind=blind, speeds=speeds, reverses=reverses)
    assert found.by_hand is by_hand
    assert (found.rpm > 0) is not by_hand


def test_a_facing_cut_needs_a_width() -> None:
    assert cutting.face_min(20, 0.1, 400) == pytest.approx(0.25)
    with pytest.raises(NotDefined):
        cutting.face_min(20, 0.1, 400, 20)
    with pytest.raises(NotDefined):
        cutting.slab_mill_approach(3, 5)
    with pytest.raises(NotDefined):
        cutting.turn_min(10, 0.1, 400, 0)


def test_the_machines_own_feeds() -> None:
    assert cutting.turning_feed(STEEL, "turn", owned=(0.04, 0.09, 0.2)) == 0.09
    assert cutting.turning_feed(STEEL, "turn", owned=(0.3,)) == pytest.approx(0.1)
    with pytest.raises(NotDefined):
        cutting.turning_feed(STEEL, "drill")


def test_teeth_take_little() -> None:
    assert cutting.tooth_feed(STEEL, 6) == pytest.approx(0.03)
    assert cutting.tooth_feed(STEEL, 1) == pytest.approx(0.01)
    assert cutting.tooth_feed(STEEL, 50) == pytest.approx(0.05)


def test_finer_feeds_take_more_force_for_each_square_millimetre() -> None:
    for group in cutting.groups():
        forces = [cutting.specific_force(group, feed) for feed in (0.02, 0.1, 0.15, 0.5, 1.0)]
        assert forces == sorted(forces, reverse=True)
