"""Trains, change wheels, planetary gears and dividing against published examples."""

from __future__ import annotations

from fractions import Fraction

import pytest

from binder_trade.gears import Gear, mesh
from binder_trade.gears.dividing import (
    NotDefined,
    compound,
    differential,
    index,
    index_angle,
    nearest,
    plates_sold,
)
from binder_trade.gears.trains import (
    MeshOf,
    arm_speed,
    basic_ratio,
    first_speed,
    last_speed,
    pitch_of,
    planetary,
    reverted,
    run_train,
    screws,
    search,
    transposing,
)

PLATES = plates_sold("set of three")
POUND_INCH = 4.4482216 * 25.4


# R.S. Khurmi and J.K. Gupta, Theory of Machines, ex. 13.3: the teeth are the book's choice.
def test_a_reverted_train() -> None:
    made = run_train([MeshOf(28, 99), MeshOf(36, 124)], 1)
    assert 1 / float(made.ratio) == pytest.approx(12.18, abs=0.005)
    assert mesh(Gear(28, 3.125), Gear(99, 3.125)).centres_mm == pytest.approx(198.44, abs=0.005)
    assert mesh(Gear(36, 2.5), Gear(124, 2.5)).centres_mm == pytest.approx(200)
    # What is found for the same centres and modules lies nearer to 12 than the book's.
    best = reverted(Fraction(1, 12), 200, (3.125, 2.5))[0]
    assert abs(best.error) < abs(made.ratio * 12 - 1)
    assert best.centres_mm == pytest.approx(200)
    assert best.apart_mm == pytest.approx(0)


# T.H. Wentzell, Machine Design, ex. 11.1; r/min, lb in, hp at 63 000 lb in r/min.
def test_a_compound_train() -> None:
    made = run_train([MeshOf(20, 60), MeshOf(20, 60)], 3600, 200 * POUND_INCH)
    last = made.shafts[-1]
    assert last.rpm == pytest.approx(400)
    assert last.torque_n_mm / POUND_INCH == pytest.approx(1800)
    assert last.power_w / 745.6999 == pytest.approx(11.43, abs=0.02)


# R.S. Khurmi and J.K. Gupta, Theory of Machines, ex. 13.4; r/min.
def test_an_epicyclic_pair() -> None:
    basic = basic_ratio((36, 45, True))
    assert last_speed(basic, 0, 150) == pytest.approx(270, abs=0.5)
    assert last_speed(basic, -300, 150) == pytest.approx(510, abs=0.5)


# R.S. Khurmi and J.K. Gupta, Theory of Machines, ex. 13.6; r/min.
def test_a_planetary_train_with_its_ring_held() -> None:
    made = planetary(32, 72, "ring", "arm")
    assert made.planet == 20
    assert 18 / made.ratio == pytest.approx(58.5, abs=0.05)
    assert 18 * made.planet_turns == pytest.approx(-46.8, abs=0.05)


# R.S. Khurmi and J.K. Gupta, Theory of Machines, ex. 13.9: ring 224 mm, module 4, 5 : 1.
def test_a_planetary_train_of_5_to_1() -> None:
    made = planetary(14, 56, "ring", "sun")
    assert made.ratio == 5
    assert (made.planet, 4 * made.ring) == (21, 224)


# T. Bevan, The Theory of Machines, ch. 11 ex. 5: arm to D, E held.
def test_an_epicyclic_train_of_stepped_planets() -> None:
    basic = basic_ratio((21, 30, True), (27, 24, True))
    assert 1 / last_speed(basic, 0, 1) == pytest.approx(1 / (1 - 21 * 27 / (30 * 24)), abs=1e-9)
    assert 1 / last_speed(basic, 0, 1) == pytest.approx(4.71, abs=5e-3)


# R.S. Khurmi and J.K. Gupta, Theory of Machines, ex. 13.13.
def test_ferguson_paradox() -> None:
    turns = [last_speed(basic_ratio((100, teeth, False)), 0, 1) for teeth in (101, 99)]
    assert turns == pytest.approx([0.0099, -0.0101], abs=1e-4)


# R.S. Khurmi and J.K. Gupta, Theory of Machines, ex. 13.20: 5 : 1, sun 16, 100 N m.
def test_torque_that_holds_a_ring() -> None:
    made = planetary(16, 64, "ring", "sun")
    assert made.ratio == 5
    assert [100 * each for each in made.torques] == [100, 400, -500]


# R.S. Khurmi and J.K. Gupta, Theory of Machines, ex. 13.23: suns Z and Y on the shaft I, R held,
# the first arm carries the ring Q of the second train, whose arm is O; P by X. r/min.
def test_a_two_stage_epicyclic() -> None:
    first_arm = arm_speed(basic_ratio((30, 120, True)), -1500, 0)
    out = arm_speed(basic_ratio((24, 120, True)), -1500, first_arm)
    assert out == pytest.approx(-500, abs=0.5)
    wheel = last_speed(basic_ratio((24, 120, True), (36, 144, True)), -1500, out)
    assert wheel == pytest.approx(-550, abs=0.5)
    assert first_speed(basic_ratio((24, 120, True)), first_arm, out) == pytest.approx(-1500)


# T. Bevan, The Theory of Machines, ch. 11 ex. 1a: 26 threads from a leadscrew of 4.
def test_change_wheels_for_an_inch_thread() -> None:
    found = screws(pitch_of(26), pitch_of(4), [25, 30, 65, 75])
    assert found[0].train.ratio == Fraction(4, 26)
    assert float(found[0].train.ratio) == pytest.approx(0.15384615384615385, abs=1e-9)
    assert found[0].error_ppm == 0
    assert (set(found[0].train.drivers), set(found[0].train.driven)) == ({25, 30}, {65, 75})


# F.D. Jones, Turning and Boring (1914): screw constant 6, pitch 3 mm, wheels 90 and 127.
def test_a_metric_pitch_from_an_inch_leadscrew() -> None:
    found = screws(Fraction(3), pitch_of(6), [30, 40, 60, 90, 100, 120, 127])
    assert (found[0].train.drivers, found[0].train.driven) == ((90,), (127,))
    assert found[0].pitch_mm == 3
    assert found[0].error_ppm == 0


# A published note on change gears: 120/127 on 8 threads gives 3 mm.
def test_the_transposing_pair() -> None:
    assert pitch_of(8) * Fraction(120, 127) == 3
    assert screws(Fraction(3), pitch_of(8), [120, 127])[0].error_ppm == 0


# A workshop forum: 80/63 = 1.2698, 47/37 = 1.2702; the errors follow.
def test_approximations_of_the_transposing_pair() -> None:
    pairs = {(each.large, each.small): each for each in transposing()}
    assert (80, 63) in pairs
    assert pairs[80, 63].error_ppm == pytest.approx(-125, abs=1)
    assert pairs[80, 63].per_100_mm == pytest.approx(-0.0125, abs=1e-4)
    assert pairs[47, 37].error_ppm == pytest.approx(212.8, abs=1)
    assert pairs[127, 100].error_ppm == 0


# 25.4 = 127 / 5.
def test_an_inch_is_127_fifths_of_a_millimetre() -> None:
    assert pitch_of(1) == Fraction(127, 5) == Fraction("25.4")


# A published article on compound indexing: the set of three plates that was most copied.
def test_the_plates_sold_brown_and_sharpe() -> None:
    assert list(PLATES.values()) == [
        (15, 16, 17, 18, 19, 20),
        (21, 23, 27, 29, 31, 33),
        (37, 39, 41, 43, 47, 49),
    ]


# US Army course OD1644: 6 divisions 6 turns and 12 of 18 or 26 of 39; 42 divisions 20 of 21.
def test_simple_indexing() -> None:
    six = index(6, 40, {"a": [18], "b": [39]})
    assert (six.turns, six.holes, six.circle, six.others) == (6, 26, 39, ((12, 18),))
    many = index(42, 40, {"a": [21, 42]})
    assert (many.turns, many.holes, many.circle, many.others) == (0, 40, 42, ((20, 21),))


# Machinery's Handbook, 1916 edition: 11½° on 18 holes.
def test_angular_indexing() -> None:
    made = index_angle(Fraction(23, 2), 40, {"a": [18]})
    assert (made.turns, made.holes, made.circle) == (1, 5, 18)


# The article on compound indexing: no circle is divisible by 127.
def test_127_cannot_be_indexed() -> None:
    with pytest.raises(NotDefined, match="127"):
        index(127, 40, PLATES)
    assert (nearest(127, 40, PLATES).below, nearest(127, 40, PLATES).above) == (124, 128)


# Enumeration over the circles of the set.
def test_33_divisions() -> None:
    made = index(33, 40, PLATES)
    assert (made.turns, made.holes, made.circle, made.plate) == (1, 7, 33, "plate 2")


# Enumeration: 14 divisions on a table of 90 : 1.
def test_14_divisions_on_a_rotary_table() -> None:
    made = index(14, 90, PLATES)
    assert (made.turns, made.holes, made.circle) == (6, 21, 49)
    assert (9, 21) in made.others


# Machinery's Handbook, table of compound indexing, from memory: 77 and 91 divisions.
@pytest.mark.parametrize(("divisions", "moves"), [(77, (9, 21, 3, 33)), (91, (6, 39, 14, 49))])
def test_compound_indexing(divisions: int, moves: tuple[int, int, int, int]) -> None:
    made = compound(divisions, 40, PLATES)
    assert (made.first, made.first_circle, made.second, made.second_circle) == moves


# The textbook example of differential indexing, from memory: 57 as 56 or 60, gearing exact.
def test_differential_indexing() -> None:
    wheels = [24, 24, 28, 32, 40, 44, 48, 56, 64, 72, 86, 100]
    made = differential(57, 40, PLATES, wheels)
    turns = made.indexing.crank_turns + made.gearing / 57
    assert turns == Fraction(40, 57)
    assert made.train.ratio == abs(made.gearing)


# A clock: 12 : 1 from minute hand to hour hand, as in most clocks (common practice, no source).
def test_the_motion_work_of_a_clock() -> None:
    best = search(Fraction(1, 12), [10, 30, 8, 32, 12, 36], sizes=(4,)).trains[0]
    assert best.ratio == Fraction(1, 12)
    assert not best.reverses
