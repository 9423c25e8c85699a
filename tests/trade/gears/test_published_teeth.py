"""Teeth, blanks, meshes and strength against published examples; the source stands at each."""

from __future__ import annotations

import math
from dataclasses import replace

import pytest

from binder_trade.gears import (
    Gear,
    bevel,
    blank,
    chordal,
    clock_pair,
    cutter_for,
    efficiency,
    forces,
    form_cutter,
    form_factor,
    from_circular,
    from_dp,
    identify,
    involute,
    least_teeth,
    least_teeth_with,
    mesh,
    modules,
    over_pins,
    rack,
    shift_for,
    shifted,
    span,
    strength,
    tabulated_factor,
    worm,
    worm_forces,
)

INCH = 25.4
POUND = 4.4482216
A = rack("A")


# T. Bevan, The Theory of Machines, ch. 10 ex. 1.
def test_pitch_diameter_from_circular_pitch() -> None:
    gear = Gear(48, from_circular(0.75 * INCH).module_mm)
    assert gear.pitch_mm / INCH == pytest.approx(11.459, abs=1e-3)


# T. Bevan, The Theory of Machines, ch. 10 ex. 2.
def test_pitch_diameter_and_circular_pitch_from_diametral_pitch() -> None:
    pitch = from_dp(4)
    assert Gear(48, pitch.module_mm).pitch_mm / INCH == pytest.approx(12)
    assert pitch.circular_mm / INCH == pytest.approx(0.7854, abs=1e-4)


# T. Bevan, The Theory of Machines, ch. 10 ex. 4: rack 18, equal 13, ratio 3 15.
def test_least_teeth_at_20_degrees() -> None:
    assert math.ceil(least_teeth(A)) == 18
    assert math.ceil(least_teeth_with(1, A)) == 13
    assert math.ceil(least_teeth_with(3, A)) == 15


# R.S. Khurmi and J.K. Gupta, Theory of Machines, ex. 12.3: addendum 10 at module 12.
def test_path_and_arc_of_contact() -> None:
    low = replace(A, addendum=10 / 12)
    made = mesh(Gear(30, 12, low), Gear(80, 12, low))
    assert made.path_mm == pytest.approx(52.3, abs=0.1)
    assert made.arc_mm == pytest.approx(55.61, abs=0.1)
    assert made.contact_ratio == pytest.approx(1.475, abs=0.005)


# B.K. Sarkar, Theory of Machines, ch. 4 ill. 1.
def test_arc_of_contact_of_30_and_48_teeth() -> None:
    assert mesh(Gear(30, 5), Gear(48, 5)).arc_mm == pytest.approx(26.7, abs=0.1)


# R.S. Khurmi and J.K. Gupta, Theory of Machines, ex. 12.5; mm/s.
def test_sliding_speeds_where_teeth_meet_and_part() -> None:
    meets, parts = mesh(Gear(20, 5), Gear(40, 5)).sliding_mm_s(2000)
    assert meets == pytest.approx(3973, abs=5)
    assert parts == pytest.approx(3610, abs=5)


# A machine design text, ex. 18.1: 14½°, module 10, depth 2.157 m.
def test_a_pair_of_the_old_14_and_a_half_degrees() -> None:
    pinion, wheel = (blank(Gear(teeth, 10, rack("14.5 DP"))) for teeth in (16, 24))
    assert pinion.depth_mm == pytest.approx(21.57)
    assert (pinion.blank_mm, wheel.blank_mm) == pytest.approx((180, 260))
    assert (pinion.root_mm, wheel.root_mm) == pytest.approx((136.86, 216.86))
    assert pinion.base_mm / 2 == pytest.approx(77.45, abs=0.01)
    assert wheel.base_mm / 2 == pytest.approx(116.18, abs=0.01)


# T.H. Wentzell, Machine Design, ex. 11.3.
def test_a_pair_of_8_dp() -> None:
    pitch = from_dp(8)
    pinion, wheel = (Gear(teeth, pitch.module_mm, rack("20 DP")) for teeth in (16, 32))
    assert pinion.pitch_mm / INCH == pytest.approx(2)
    assert wheel.pitch_mm / INCH == pytest.approx(4)
    assert pitch.circular_mm / INCH == pytest.approx(0.3927, abs=1e-4)
    assert mesh(pinion, wheel).centres_mm / INCH == pytest.approx(3)


# SDP/SI, Elements of Metric Gear Technology, table 10-1.
def test_chordal_thickness_of_a_shifted_gear() -> None:
    gear = Gear(12, 10, shift=0.3)
    chord = chordal(gear)
    assert gear.thickness_mm == pytest.approx(17.8918, abs=2e-4)
    assert chord.half_angle_deg == pytest.approx(8.5427, abs=2e-4)
    assert chord.thickness_mm == pytest.approx(17.8256, abs=2e-4)
    assert chord.height_mm == pytest.approx(13.6657, abs=2e-4)


# P.C. Sharma, A Textbook of Production Engineering, ex. 16.1.
def test_chordal_thickness_without_shift() -> None:
    chord = chordal(Gear(34, 5))
    assert chord.thickness_mm == pytest.approx(7.851, abs=1e-3)
    assert chord.height_mm == pytest.approx(5.091, abs=1e-3)


# Closed formula of the span (a published sheet on spur gears), figures worked from it.
@pytest.mark.parametrize(
    ("teeth", "across", "size"), [(12, 2, 4.5963), (20, 3, 7.6604), (30, 4, 10.7526)]
)
def test_span_at_module_1(teeth: int, across: int, size: float) -> None:
    chosen = span(Gear(teeth, 1))
    assert chosen.across == across
    assert chosen.span_mm == pytest.approx(size, abs=1e-4)
    assert span(Gear(teeth, 2.5), across).span_mm == pytest.approx(2.5 * size, abs=3e-4)


# A gear maker's table of over-pin measures, from memory: m 1, z 20, pin 1.7.
def test_size_over_pins() -> None:
    pins = over_pins(Gear(20, 1), 1.7)
    assert pins.size_mm == pytest.approx(22.2941, abs=2e-4)
    assert "24.135" in pins.steps[1].value
    assert involute(math.radians(24.135)) == pytest.approx(0.0268197, abs=1e-7)


# m = 25.4 / P, 25.4 exact.
@pytest.mark.parametrize(
    ("dp", "module"),
    [
        (8, 3.175),
        (10, 2.54),
        (12, 2.1166667),
        (16, 1.5875),
        (20, 1.27),
        (24, 1.0583333),
        (32, 0.79375),
        (48, 0.5291667),
    ],
)
def test_module_of_a_diametral_pitch(dp: int, module: float) -> None:
    assert from_dp(dp).module_mm == pytest.approx(module, abs=1e-6)


# Outside diameter (z + 2) m of full-depth teeth.
@pytest.mark.parametrize(("outside", "teeth"), [(52, 24), (44, 20)])
def test_a_salvaged_gear_of_module_2(outside: float, teeth: int) -> None:
    found = identify(outside, teeth)
    assert found.module_mm == pytest.approx(2, abs=5e-4)
    assert found.dp == pytest.approx(12.7, abs=5e-4)
    assert found.candidates[0].pitch.name == "module 2"


# ISO 54 (1996), from memory.
def test_the_first_and_second_series_of_modules() -> None:
    first = [each for each in modules(1) if 1 <= each <= 10]
    second = [each for each in modules(2) if 1 <= each <= 10]
    assert first == [1, 1.25, 1.5, 2, 2.5, 3, 4, 5, 6, 8, 10]
    assert second == [1.125, 1.375, 1.75, 2.25, 2.75, 3.5, 4.5, 5.5, 6.5, 7, 9]


# ISO 53 (1998), profile A, from memory.
def test_the_basic_rack_of_iso_53() -> None:
    found = {"angle": A.angle_deg, "h_a": A.addendum, "c": A.clearance, "rho": A.fillet}
    assert found == {"angle": 20, "h_a": 1, "c": 0.25, "rho": 0.38}
    assert A.dedendum == 1.25


# A gear maker's worked table of shifted spur gears, from memory: m 3, z 12 and 24, x 0.6 and
# 0.36: centres 56.4999, angle 26.0886°, outsides 44.840 and 79.400, roots 32.100 and 66.660.
# The centres are met with in public test suites as well.
def test_a_pair_of_shifted_gears() -> None:
    pair = shifted(Gear(12, 3, shift=0.6), Gear(24, 3, shift=0.36))
    made = mesh(*pair)
    assert made.centres_mm == pytest.approx(56.4999, abs=1e-4)
    assert made.working_angle_deg == pytest.approx(26.0886, abs=1e-4)
    assert [each.tip_mm for each in pair] == pytest.approx([44.840, 79.400], abs=1e-3)
    assert [each.root_mm for each in pair] == pytest.approx([32.100, 66.660], abs=1e-3)
    assert made.clearance_mm == pytest.approx(0.25 * 3)
    assert shift_for(*pair, 56.4999) == pytest.approx(0.96, abs=1e-4)


# A gear maker's worked table of internal gears, from memory: m 3, z 16 and 24, x 0 and 0.5.
def test_an_internal_pair() -> None:
    made = mesh(Gear(16, 3), Gear(24, 3, shift=0.5, is_internal=True))
    assert made.centres_mm == pytest.approx(13.1683, abs=1e-3)
    assert made.working_angle_deg == pytest.approx(31.0937, abs=1e-3)


# A gear maker's worked table of straight bevel gears, from memory: m 3, 20 and 40, face 22.
def test_a_pair_of_straight_bevel_gears() -> None:
    made = bevel(20, 40, 3, face_mm=22)
    assert made.cone_mm == pytest.approx(67.08204, abs=1e-5)
    small, large = made.pinion, made.wheel
    assert small.pitch_cone_deg == pytest.approx(26.56505, abs=1e-5)
    assert large.pitch_cone_deg == pytest.approx(63.43495, abs=1e-5)
    assert (small.face_cone_deg, large.face_cone_deg) == pytest.approx((29.12569, 65.99559))
    assert (small.root_cone_deg, large.root_cone_deg) == pytest.approx((23.36545, 60.23535))
    assert (small.outside_mm, large.outside_mm) == pytest.approx((65.3666, 122.6833), abs=1e-4)
    assert (small.crown_mm, large.crown_mm) == pytest.approx((58.6584, 27.3167), abs=1e-4)
    inner = (small.inner_outside_mm, large.inner_outside_mm)
    assert inner == pytest.approx((43.9292, 82.4485), abs=1e-4)


# The involute set of eight, from memory; module cutters counted the other way.
@pytest.mark.parametrize(
    ("teeth", "number"),
    [(12, 8), (13, 8), (14, 7), (17, 6), (20, 6), (25, 5), (26, 4), (54, 3), (134, 2), (135, 1)],
)
def test_the_cutter_of_the_set_of_eight(teeth: int, number: int) -> None:
    inch, metric = form_cutter(teeth, "DP"), form_cutter(teeth, "module")
    assert (inch.number, inch.other_number) == (number, 9 - number)
    assert (metric.number, metric.other_number) == (9 - number, number)
    assert inch.range_name == metric.range_name


# z / cos³ β: 20 teeth at 30° are cut as 30.8.
def test_a_helical_gear_is_cut_as_one_of_more_teeth() -> None:
    assert cutter_for(Gear(20, 1, helix_deg=30)).least == 26


# U.C. Jindal, Machine Design, ex. 28-1: 1/30/10/5.
def test_a_worm_and_its_wheel() -> None:
    pair = worm(1, 30, 5, 50)
    assert (pair.ratio, pair.centres_mm, pair.worm_mm, pair.wheel_mm) == (30, 100, 50, 150)


# U.C. Jindal, Machine Design, ex. 28-3; the radial force recomputed with sin of the pressure
# angle (the printed 1188 N has the sine of the lead).
def test_forces_of_a_worm() -> None:
    torque = 6_000_000 / (2 * math.pi * 1440 / 60)
    made = worm_forces(worm(2, 30, 5, 50, friction=0.08), torque)
    assert made.tangential_n == pytest.approx(1591.5, abs=0.5)
    assert made.axial_n == pytest.approx(5487, abs=5)
    assert made.radial_n == pytest.approx(2072, abs=1)


# U.C. Jindal, Machine Design, ex. 28-4; kW.
def test_what_a_worm_passes_on() -> None:
    pair = worm(2, 30, 5, 40, friction=0.032)
    assert 1.2 * pair.efficiency == pytest.approx(1.047, abs=1e-3)
    assert 1.2 * (1 - pair.efficiency) == pytest.approx(0.153, abs=1e-3)


# T.H. Wentzell, Machine Design, ex. 13.6, square thread.
def test_efficiency_of_a_worm_of_inch_pitch() -> None:
    assert efficiency(4.77, 0.03, 0) == pytest.approx(0.73, abs=0.01)


# T.H. Wentzell, Machine Design, ex. 12.1; lb.
def test_tooth_forces() -> None:
    gear = Gear(20, from_dp(8).module_mm, rack("20 DP"))
    torque = 63000 * 5 / 1725 * INCH * POUND
    made = forces(gear, torque)
    assert made.tangential_n / POUND == pytest.approx(146.09, abs=0.05)
    assert made.radial_n / POUND == pytest.approx(53.17, abs=0.05)
    assert made.total_n / POUND == pytest.approx(155.46, abs=0.05)


# R.S. Khurmi and J.K. Gupta, Theory of Machines, ex. 12.1: 120 kW, 650 r/min, d 250 mm.
def test_total_load_of_a_tooth() -> None:
    torque = 120e6 / (2 * math.pi * 650 / 60)
    assert forces(Gear(50, 5), torque).total_n / 1000 == pytest.approx(15.01, abs=0.01)


# T.H. Wentzell, Machine Design, ex. 12.5: 55 000 lb/in² over 2, Y 0.302, 12 DP, 24 teeth.
def test_lewis_and_barth() -> None:
    gear = Gear(24, from_dp(12).module_mm, rack("20 DP"))
    mpa = 55000 / 2 * POUND / INCH**2
    made = strength(gear, 0.75 * INCH, mpa, rpm=1800, form=0.302)
    assert made.speed_m_s / 0.00508 == pytest.approx(942.48, abs=0.02)
    assert made.at_rest_n / POUND == pytest.approx(519.06, abs=0.02)
    assert made.running_n / POUND == pytest.approx(201.91, abs=0.02)
    assert made.power_w / 745.6999 == pytest.approx(5.77, abs=0.02)


# R.S. Khurmi, Machine Design, ch. 28: y = 0.154 − 0.912 / z.
@pytest.mark.parametrize(
    ("teeth", "factor"),
    [
        (12, 0.245),
        (16, 0.3047),
        (18, 0.3246),
        (20, 0.3405),
        (24, 0.3644),
        (30, 0.3883),
        (60, 0.4361),
    ],
)
def test_lewis_form_factor_by_formula(teeth: int, factor: float) -> None:
    assert form_factor(teeth, A) == pytest.approx(factor, abs=5e-4)


# Table of Lewis form factors, 20° full depth (Shigley, table 14-2), from memory.
@pytest.mark.parametrize(
    ("teeth", "factor"),
    [
        (12, 0.245),
        (16, 0.296),
        (17, 0.303),
        (18, 0.309),
        (20, 0.322),
        (24, 0.337),
        (30, 0.359),
        (60, 0.422),
    ],
)
def test_lewis_form_factor_by_table(teeth: int, factor: float) -> None:
    assert tabulated_factor(teeth) == pytest.approx(factor, abs=1e-3)


# BS 978-2 as printed on a published page on clock gears: leaves to addendum, arc and width.
@pytest.mark.parametrize(
    ("leaves", "addendum", "arc", "width"),
    [
        (6, 0.855, 1.05, 1.05),
        (8, 0.67, 0.7, 1.05),
        (10, 0.525, 0.525, 1.05),
        (12, 0.625, 0.625, 1.25),
    ],
)
def test_pinions_of_a_clock(leaves: int, addendum: float, arc: float, width: float) -> None:
    pinion = clock_pair(60, leaves, 1).pinion
    assert (pinion.addendum_mm, pinion.arc_mm, pinion.thickness_mm) == (addendum, arc, width)
