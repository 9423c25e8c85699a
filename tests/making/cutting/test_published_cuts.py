"""Speeds, times, powers and wear against printed worked examples; the source stands beside."""

from __future__ import annotations

import math

import pytest

from binder_making import cutting

INCH = 25.4
HORSEPOWER = 745.69987
POUND_N = 4.4482216
MIN_PER_IN = 396_000  # in lb/min in a horsepower


def test_turning_of_a_rod_in_inches() -> None:
    # Kalpakjian and Schmid, Manufacturing Engineering and Technology, example 22.1: 0.5 in
    # to 0.48 in, 400 r/min, 8 in/min, 6 in long, 0.1804 hp by its specific energy.
    mean = (0.5 + 0.48) / 2 * INCH
    feed = 8 * INCH / 400
    speed = cutting.mpm(400, mean)
    assert cutting.mpm(400, 0.5 * INCH) * 1000 / INCH == pytest.approx(628, abs=1)
    removed = cutting.removal(0.01 * INCH, feed, speed)
    assert removed / INCH**3 == pytest.approx(0.1231, abs=2e-4)
    assert cutting.turn_min(6 * INCH, feed, 400) == pytest.approx(0.75, abs=1e-3)
    energy = 1.465201465201465 * HORSEPOWER * 60 / INCH**3  # hp min/in³ to W s/mm³
    power = cutting.power_of_removal(energy, removed)
    assert power / HORSEPOWER == pytest.approx(0.1804, abs=5e-4)
    force = cutting.torque(power, 400) / (mean / 2 / 1000)
    assert force / POUND_N == pytest.approx(116, abs=1)


def test_turning_of_a_rod_in_metric() -> None:
    # P.C. Sharma, Production Engineering, example 15.9, recomputed where the book slips.
    mean = (12.7 + 12.19) / 2
    speed = cutting.mpm(400, 12.7)
    assert speed / 60 == pytest.approx(0.27, abs=0.005)
    depth = (12.7 - 12.19) / 2
    removed = cutting.removal(depth, 203.2 / 400, cutting.mpm(400, mean))
    assert removed == pytest.approx(2025, abs=2)
    assert cutting.turn_min(150, 203.2 / 400, 400) == pytest.approx(0.74, abs=0.005)


def test_drilling_time() -> None:
    # P.C. Sharma, example 4.14; the book takes 0.29 D for the point, both ways.
    turns = cutting.rpm(75, 12.7)
    book = cutting.drill_min(50, 12.7, 0.175, turns, is_through=True, point_mm=0.29 * 12.7)
    assert book == pytest.approx(0.174, abs=1e-3)
    assert cutting.drill_min(50, 12.7, 0.175, turns, is_through=True) == pytest.approx(
        book, rel=0.01
    )


def test_face_milling() -> None:
    # Kalpakjian and Schmid, example 23.2: 60 wide, 3 deep, 500 long, 600 mm/min, ten teeth.
    approach = cutting.face_mill_approach(150)
    assert cutting.mill_min(500, 600, approach) == pytest.approx(1.0833, abs=1e-3)
    assert cutting.mill_feed(0.6, 10, 100) == pytest.approx(600)
    assert cutting.power_of_removal(1.1, 60 * 3 * 600) / 1000 == pytest.approx(1.98, abs=1e-3)


def test_slab_milling() -> None:
    # P.C. Sharma, example 15.2.
    feed = cutting.mill_feed(0.25, 20, 100)
    removed = 100 * 3.2 * feed
    assert removed / 60 == pytest.approx(2666.67, abs=0.01)
    power = cutting.power_of_removal(6, removed)
    assert power == pytest.approx(16000, abs=1)
    assert cutting.torque(power, 100) == pytest.approx(1527.89, abs=0.05)
    approach = cutting.slab_mill_approach(50, 3.2)
    assert cutting.mill_min(300, feed, approach) * 60 == pytest.approx(37.5, abs=0.05)


def test_turning_time() -> None:
    # P.C. Sharma, example 4.12.
    assert cutting.turn_min(32, 0.375, cutting.rpm(60, 38)) == pytest.approx(0.17, abs=0.005)


def test_screwcutting_time() -> None:
    # P.C. Sharma, example 4.21.
    found = cutting.screwcut_min(89, 5, cutting.rpm(6, 44), 5)
    assert found == pytest.approx(2.05, abs=0.01)


def test_the_trades_own_roughing_time() -> None:
    # Common practice, no source: 20 to 12 over 40, 0.5 deep, 0.1 a turn, 400 r/min: 8 minutes.
    cuts = cutting.passes(20, 12, 0.5)
    assert cutting.turn_min(40, 0.1, 400, cuts) == pytest.approx(8)


def test_tool_life() -> None:
    # P.C. Sharma, example 14.1; Kalpakjian and Schmid, example 20.2.
    assert cutting.life(180, 18, 24, 0.125) == pytest.approx(18, abs=0.5)
    assert cutting.life(1, 2, 1, 0.5) - 1 == pytest.approx(3.0)


def test_specific_energy_and_power() -> None:
    # P.C. Sharma, example 14.17: 1850 N at 300 mm, 45 r/min, 2 mm deep, 0.3 a turn.
    power = cutting.cutting_power(1850, cutting.mpm(45, 300))
    assert power / 1000 == pytest.approx(1.31, abs=0.005)
    energy = 1850 / (2 * 0.3) / 1000
    assert energy == pytest.approx(3.08, abs=0.005)
    assert cutting.cutting_force(energy * 1000, 2, 0.3) == pytest.approx(1850)
    minutes = 2.5e6 / cutting.removal(2, 0.3, cutting.mpm(45, 300))
    kwh = cutting.power_of_removal(energy, 2.5e6 / minutes) * minutes / 60 / 1000
    assert kwh == pytest.approx(2.141, abs=0.005)


def test_roughness() -> None:
    # Ghosh and Mallik, Manufacturing Science, problem 24.
    assert cutting.roughness(0.125, 0.7) == pytest.approx(0.0028, abs=1e-4)


@pytest.mark.parametrize(
    ("inches", "turns"), [(0.125, 3667), (0.25, 1833), (0.375, 1222), (0.5, 917)]
)
def test_turns_from_feet(inches: float, turns: float) -> None:
    # Cutting speed table, 120 ft/min.
    assert cutting.rpm(cutting.metres(120), inches * INCH) == pytest.approx(turns, abs=1)


def test_turns_from_metres() -> None:
    assert cutting.rpm(30, 12) == pytest.approx(795.8, abs=0.1)  # n = 1000 v / (π d)


@pytest.mark.parametrize(
    ("feed", "force"), [(0.1, 3610), (0.2, 3100), (0.3, 2720), (0.4, 2500), (0.6, 2280)]
)
def test_specific_force_of_mild_steel(feed: float, force: float) -> None:
    # Published table of specific cutting force by feed (read).
    assert cutting.specific_force(cutting.group("mild steel"), feed) == pytest.approx(force)


def test_power_of_a_published_problem() -> None:
    # The same page: mild steel, 120 m/min, 3 mm deep, 0.2 a turn, 80 per cent: 4.65 kW.
    force = cutting.cutting_force(3100, 3, 0.2)
    assert cutting.cutting_power(force, 120) / 0.8 / 1000 == pytest.approx(4.65, abs=0.005)


def test_push_of_a_drill_is_of_the_published_order() -> None:
    # A course of drilling (read): 10 mm at 0.3 a turn, about 15 N m; steel not named.
    found = cutting.push(cutting.group("mild steel"), 10, 0.3)
    assert found.torque_nm == pytest.approx(15, rel=0.2)
    assert found.thrust_n == pytest.approx(570 * 2.22 * 10 * 0.3**0.85)


def test_a_pilot_halves_the_thrust() -> None:
    # Machinists' handbook, 31st edition, p. 1152, inch example: 7/8 in, 200 HB, feed
    # 0.008 in; K 24 000, Ff 0.021, FT 0.899, B 1.355, J 0.030, W 1.30 (K from memory).
    lips = 2 * 24_000 * 0.021 * 0.899 * 1.30
    whole = lips * 1.355 + 24_000 * 0.875**2 * 0.030 * 1.30
    found = cutting.thrust_after_pilot(0.875 * INCH, 0.008 * INCH)
    assert found == pytest.approx(lips / whole, abs=0.01)
    assert found == pytest.approx(0.5, abs=0.02)


@pytest.mark.parametrize(
    ("drill", "factor"), [(3.2, 2.54), (9.5, 6.06), (16.0, 9.19), (50.0, 22.86)]
)
def test_the_handbooks_factors_are_powers(drill: float, factor: float) -> None:
    # The same handbook, table 9, thrust factor in metric units; the code takes D^0.8.
    assert math.pow(drill, 0.8) == pytest.approx(factor, rel=0.005)
