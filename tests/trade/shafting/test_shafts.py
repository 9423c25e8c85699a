"""Thin shafts against textbooks and closed forms."""

import math

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from binder_trade.explained import NotDefined
from binder_trade.fits.bearings import length_for_pv_mm, wear
from binder_trade.shafting.beam import Load, bend, bend_overhung, both_planes, spread
from binder_trade.shafting.critical import Mass, critical_speeds, shaft_masses, single_disc
from binder_trade.shafting.eigen import eigenvalues
from binder_trade.shafting.influence import Push, borne
from binder_trade.shafting.line import Piece, round_piece
from binder_trade.shafting.twist import (
    belt_load,
    least_diameter,
    power_w,
    shaft_stress,
    torque_nmm,
    twist,
)

INCH, PSI, LBF = 25.4, 0.006894757293168, 4.4482216152605


# Jindal, Machine Design, Ex 15-3: 11 936 W at 3000 r/min, 100 N/mm²: 12.46 mm.
def test_a_shaft_by_torsion() -> None:
    size, step = least_diameter(torque_nmm(11936, 3000), allowed_mpa=100)
    assert size == pytest.approx(12.46, abs=0.02)
    assert step.value == f"{size:.3f} mm"
    assert power_w(torque_nmm(11936, 3000), 3000) == pytest.approx(11936)


# Wentzell, Machine Design, Ex 17.1: 5 hp at 1750 r/min on 3/4 in: 2173 psi (with 63 000 hp / n).
def test_torsion_in_inches() -> None:
    torque = 63_000 * 5 / 1750 * LBF * INCH
    assert shaft_stress(torque, 0.75 * INCH).shear_mpa / PSI == pytest.approx(2173, abs=1)


# Wentzell, Machine Design, Ex 3.2: 2 × 2 in, 36 in long, 3000 lbf in the middle.
def test_a_beam_in_inches() -> None:
    inertia = 2**4 / 12 * INCH**4
    made = bend(
        [Piece(36 * INCH, inertia)],
        (0, 36 * INCH),
        [Load(18 * INCH, 3000 * LBF)],
        30e6 * PSI,
    )
    assert made.deflection_mm / INCH == pytest.approx(0.0729, abs=1e-4)
    assert made.moment_nmm * INCH / inertia / PSI == pytest.approx(20250, abs=1)
    assert made.bearings_n == pytest.approx((1500 * LBF, 1500 * LBF))


# Closed form of a load between bearings: y = F a² b² / 3 E I l.
@settings(deadline=None)
@given(span=st.floats(20, 400), part=st.floats(0.05, 0.95), force=st.floats(1, 200))
def test_a_load_anywhere(span: float, part: float, force: float) -> None:
    at = span * part
    piece = round_piece(span, 6)
    made = bend([piece], (0, span), [Load(at, force)])
    closed = force * at**2 * (span - at) ** 2 / (3 * 206_000 * piece.inertia_mm4 * span)
    assert made.at_loads_mm[0] == pytest.approx(closed, rel=1e-9)
    assert made.deflection_mm >= closed * (1 - 1e-9)
    assert sum(made.bearings_n) == pytest.approx(force)


# Closed form of an overhung load beyond the second bearing: y = F c² (l + c) / 3 E I.
@given(span=st.floats(20, 400), arm=st.floats(5, 200), force=st.floats(1, 200))
def test_a_load_beyond_the_bearing(span: float, arm: float, force: float) -> None:
    piece = round_piece(span + arm, 6)
    made = bend([piece], (0, span), [Load(span + arm, force)])
    stiff = 206_000 * piece.inertia_mm4
    assert made.at_loads_mm[0] == pytest.approx(force * arm**2 * (span + arm) / (3 * stiff))
    assert made.bearings_n[0] == pytest.approx(-force * arm / span)
    assert made.moment_nmm == pytest.approx(force * arm)
    assert made.slopes_rad[0] == pytest.approx(-force * arm * span / (6 * stiff))
    held = bend_overhung([round_piece(arm, 6)], [Load(arm, force)])
    assert held.at_loads_mm[0] == pytest.approx(force * arm**3 / (3 * stiff))


# Closed form of a load spread over all: y = 5 F l³ / 384 E I.
def test_a_load_spread_over_the_shaft() -> None:
    piece = round_piece(300, 6)
    made = bend([piece], (0, 300), spread(20, 0, 300))
    closed = 5 * 20 * 300**3 / (384 * 206_000 * piece.inertia_mm4)
    assert made.deflection_mm == pytest.approx(closed, rel=1e-3)
    with pytest.raises(NotDefined, match="over no length"):
        spread(20, 50, 50)


# Reciprocity (Maxwell): what A does at B, B does at A; also on a stepped shaft.
@settings(deadline=None)
@given(one=st.floats(1, 149), two=st.floats(1, 149))
def test_reciprocity_on_a_stepped_shaft(one: float, two: float) -> None:
    pieces = [round_piece(40, 6), round_piece(60, 10), round_piece(50, 5)]
    there = bend(pieces, (10, 120), [Load(one, 1), Load(two, 0)]).at_loads_mm[1]
    back = bend(pieces, (10, 120), [Load(two, 1), Load(one, 0)]).at_loads_mm[1]
    assert there == pytest.approx(back, rel=1e-9, abs=1e-15)


def test_two_planes_and_a_belt() -> None:
    down = bend([round_piece(100, 6)], (0, 100), [Load(50, 30)])
    aside = bend([round_piece(100, 6)], (0, 100), [Load(50, 40)])
    assert both_planes(down, aside) == pytest.approx((25, 25))
    assert belt_load(30, 10, math.pi) == pytest.approx(40)
    assert belt_load(30, 10, 2 * math.pi / 3) < 40


# Closed forms of one load, added by hand: two pushes square to one another, and one of which
# only the size is known, which is added to their sum.
@settings(deadline=None)
@given(one=st.floats(-50, 50), two=st.floats(-50, 50), loose=st.floats(0, 50))
def test_pushes_from_all_sides(one: float, two: float, loose: float) -> None:
    piece = round_piece(120, 6)
    pushes = [Push(50, (one, 0.0)), Push(50, (0.0, two)), Push(120, loose)]
    made = borne([piece], (0, 100), pushes, [50, 120])
    both, stiff = math.hypot(one, two), 206_000 * piece.inertia_mm4
    assert made.bearings_n[0] == pytest.approx(both / 2 + loose * 20 / 100, abs=1e-9)
    assert made.bearings_n[1] == pytest.approx(both / 2 + loose * 120 / 100, abs=1e-9)
    # y = F l³ / 48 E I in the middle; of the overhang there: F c x (l² − x²) / 6 E I l.
    bow = both * 100**3 / (48 * stiff) + loose * 20 * 50 * (100**2 - 50**2) / (6 * stiff * 100)
    assert made.sags_mm[0] == pytest.approx(bow, abs=1e-9)
    # F l² / 16 E I at the bearings; F c l / 6 E I and F c l / 3 E I of the overhang.
    assert made.leans_rad[0] == pytest.approx(
        both * 100**2 / (16 * stiff) + loose * 20 * 100 / (6 * stiff), abs=1e-9
    )
    assert made.leans_rad[1] == pytest.approx(
        both * 100**2 / (16 * stiff) + loose * 20 * 100 / (3 * stiff), abs=1e-9
    )
    assert made.moment_nmm == pytest.approx(
        max(both * 25 + loose * 10, loose * 20), rel=1e-9, abs=1e-9
    )


# Sarkar, Theory of Machines, Ch 11, Illustration 13: 15 mm, 1 m, fixed ends, 15 kg in the middle.
def test_a_shaft_held_at_both_ends() -> None:
    inertia = math.pi / 64 * 15**4
    speed, steps = single_disc(15, inertia, 1000, 500, "held", 200_000)
    assert speed == pytest.approx(762.3, abs=2)
    assert steps


# Groover, Mechanical Vibrations, Ex 8.4.1: held at one end, 100 kg at 0.18 m and 50 kg at 0.3 m.
def test_two_whirling_speeds_of_an_overhung_shaft() -> None:
    piece = Piece(300, 4e-7 * 1e12)
    made = critical_speeds([piece], None, [Mass(180, 100), Mass(300, 50)], 196_000)
    assert made.speeds_rpm == pytest.approx([3381.1, 19385.5], abs=1)
    assert made.dunkerley_rpm < made.first_rpm < made.rayleigh_rpm


@settings(deadline=None)
@given(span=st.floats(50, 400), part=st.floats(0.1, 0.9), mass=st.floats(0.01, 5))
def test_one_disc_both_ways(span: float, part: float, mass: float) -> None:
    piece = round_piece(span, 6)
    made = critical_speeds([piece], (0, span), [Mass(span * part, mass)])
    speed, _ = single_disc(mass, piece.inertia_mm4, span, span * part)
    assert made.first_rpm == pytest.approx(speed)
    assert made.dunkerley_rpm == pytest.approx(speed)
    assert made.rayleigh_rpm == pytest.approx(speed)
    arm, _ = single_disc(mass, piece.inertia_mm4, span, span, "overhung")
    held, _ = single_disc(mass, piece.inertia_mm4, span, span * part, "held")
    assert arm < speed < held
    rate = 3 * 206_000 * piece.inertia_mm4 / span**3
    assert arm == pytest.approx(math.sqrt(rate * 1000 / mass) * 30 / math.pi)


# Closed form of a uniform shaft: ω = π² √(E I / m' l⁴).
def test_the_shaft_itself_whirls() -> None:
    piece = round_piece(300, 6)
    made = critical_speeds([piece], (0, 300), shaft_masses([(300, 6)], parts=12))
    per_mm = 7850e-9 * math.pi / 4 * 36
    omega = math.pi**2 * math.sqrt(206_000 * piece.inertia_mm4 * 1000 / (per_mm * 300**4))
    assert made.first_rpm == pytest.approx(omega * 30 / math.pi, rel=2e-3)
    assert made.speeds_rpm[1] / made.first_rpm == pytest.approx(4, rel=0.02)


@given(a=st.floats(-5, 5), b=st.floats(-5, 5), c=st.floats(-5, 5))
def test_eigenvalues_keep_trace_and_determinant(a: float, b: float, c: float) -> None:
    found = eigenvalues([[a, b], [b, c]])
    assert sum(found) == pytest.approx(a + c, abs=1e-9)
    assert math.prod(found) == pytest.approx(a * c - b * b, abs=1e-9)


# Strength of materials: twist of 1 m of 10 mm at 1 N m in steel of 80 GPa, by T L / G J.
def test_twist() -> None:
    made = twist(1000, ((1000, 10),))
    assert made.degrees == pytest.approx(math.degrees(1000 * 1000 / (80_000 * math.pi / 32 * 1e4)))
    half = twist(1000, ((500, 10), (500, 20)))
    assert half.degrees == pytest.approx(made.degrees * (1 + 1 / 16) / 2)
    assert half.degrees_per_metre == pytest.approx(half.degrees)


# Both stresses together: pure bending gives half of its stress as shear.
def test_bending_and_torsion_together() -> None:
    made = shaft_stress(4000, 8, moment_nmm=3000)
    assert made.greatest_shear_mpa == pytest.approx(16 * 5000 / (math.pi * 8**3))
    assert shaft_stress(0, 8, 3000).greatest_shear_mpa == pytest.approx(made.bending_mpa / 2)
    assert shaft_stress(4000, 8, bore_mm=4).shear_mpa == pytest.approx(
        made.shear_mpa / (1 - 1 / 16)
    )
    plain, _ = least_diameter(4000)
    cut, _ = least_diameter(4000, weakened=True)
    assert (cut / plain) ** 3 == pytest.approx(1 / 0.75)


# A bearing maker's example: 35 lbf, 0.625 × 1.03125 in, 120 r/min: 54.3 psi, 1066 psi ft/min.
def test_pressure_times_speed() -> None:
    made = wear(35 * LBF, 0.625 * INCH, 1.03125 * INCH, 120, "leaded bronze")
    assert made.pressure_mpa / PSI == pytest.approx(54.3, abs=0.05)
    assert made.speed_ms / 0.3048 * 60 == pytest.approx(19.635, abs=0.001)
    assert made.pv / PSI / 0.3048 * 60 == pytest.approx(1066.2, abs=1)


# Wentzell, Machine Design, Ex 19.1: 20 lbf, 500 r/min, 3000 psi ft/min (nylon): 0.8727 in.
def test_length_by_pressure_times_speed() -> None:
    assert length_for_pv_mm(20 * LBF, 500, "nylon") / INCH == pytest.approx(0.8727, abs=0.003)


def test_shafts_that_cannot_be() -> None:
    piece = round_piece(100, 6)
    with pytest.raises(NotDefined, match="one place"):
        bend([piece], (50, 50), [Load(10, 1)])
    with pytest.raises(NotDefined, match="bearing stands beside"):
        bend([piece], (0, 150), [Load(10, 1)])
    with pytest.raises(NotDefined, match="beside the shaft"):
        bend([piece], (0, 100), [Load(101, 1)])
    with pytest.raises(NotDefined, match="a force"):
        bend_overhung([piece], [Load(50, math.inf)])
    with pytest.raises(NotDefined, match="as large as the shaft"):
        round_piece(10, 6, 6)
    with pytest.raises(NotDefined, match="as large as the shaft"):
        shaft_stress(10, 6, bore_mm=7)
    with pytest.raises(NotDefined, match="without a load"):
        least_diameter(0)
    with pytest.raises(NotDefined, match="without a length"):
        twist(10, ())
    with pytest.raises(NotDefined, match="without a mass"):
        critical_speeds([piece], (0, 100), [])
    with pytest.raises(NotDefined, match="in the bearings"):
        critical_speeds([piece], (0, 100), [Mass(0, 1)])
    with pytest.raises(NotDefined, match="in the bearing"):
        single_disc(1, 100, 100, 100)


# Roark, Formulas for Stress and Strain, table of beams: a couple M on the end of a beam of length
# L on two props makes M / L in each, and slopes of M L / 3 E I beside it and M L / 6 E I beyond.
@pytest.mark.parametrize("loose", [False, True])
def test_a_thrust_at_the_rim_tilts_the_shaft(loose: bool) -> None:
    thrust, radius, long, modulus = 10.0, 30.0, 100.0, 200_000.0
    across = thrust if loose else (0.0, thrust)
    piece = round_piece(long + 0.2, 6)
    made = borne([piece], (0.1, long + 0.1), [Push(0.1, across, radius)], [], modulus)
    couple, stiff = thrust * radius, modulus * math.pi / 64 * 6**4
    assert made.bearings_n == pytest.approx((couple / long, couple / long))
    assert made.leans_rad[0] == pytest.approx(couple * long / 3 / stiff, rel=2e-3)
    assert made.leans_rad[1] == pytest.approx(couple * long / 6 / stiff, rel=2e-3)
    assert made.moment_nmm == pytest.approx(couple, rel=2e-3)
