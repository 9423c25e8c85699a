"""Leadscrews against ISO 2904, ASME B1.5 and the worked examples of a textbook."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from binder_trade.slides import (
    Leadscrew,
    NotDefined,
    acme,
    axial_backlash,
    backlash,
    collar_torque,
    handle_force,
    least_gap,
    lift,
    nut_pressure,
    square,
    trapezoidal,
    turns_for,
    vee,
)

# ISO 2904:1977, table, as printed in a public copy: d, P, d2, D4, d3, D1. (Its rows of
# Tr 9 × 2 and Tr 10 × 1.5 are misprinted there and left out.)
ISO_2904 = (
    (8, 1.5, 7.25, 8.3, 6.2, 6.5),
    (9, 1.5, 8.25, 9.3, 7.2, 7.5),
    (10, 2, 9.0, 10.5, 7.5, 8.0),
    (11, 2, 10.0, 11.5, 8.5, 9.0),
    (11, 3, 9.5, 11.5, 7.5, 8.0),
    (12, 2, 11.0, 12.5, 9.5, 10.0),
    (12, 3, 10.5, 12.5, 8.5, 9.0),
    (14, 2, 13.0, 14.5, 11.5, 12.0),
    (14, 3, 12.5, 14.5, 10.5, 11.0),
    (16, 2, 15.0, 16.5, 13.5, 14.0),
    (42, 7, 38.5, 43.0, 34.0, 35.0),
    (44, 3, 42.5, 44.5, 40.5, 41.0),
    (44, 12, 38.0, 45.0, 31.0, 32.0),
)


@pytest.mark.parametrize("row", ISO_2904)
def test_trapezoidal_sizes_of_iso_2904(row: tuple[float, ...]) -> None:
    d, pitch, *sizes = row
    screw = trapezoidal(d, pitch)
    assert (
        screw.pitch_diameter_mm,
        screw.nut_major_mm,
        screw.minor_mm,
        screw.nut_minor_mm,
    ) == pytest.approx(sizes)


# A public table of screws of tolerance 7e: the largest pitch diameter is d2 less the deviation e.
@pytest.mark.parametrize(
    ("d", "pitch", "largest"),
    [(8, 1.5, 7.183), (10, 2, 8.929), (11, 3, 9.415), (16, 4, 13.905), (12, 2, 10.929)],
)
def test_least_gap_of_a_screw_7e(d: float, pitch: float, largest: float) -> None:
    assert trapezoidal(d, pitch).pitch_diameter_mm - least_gap(pitch) == pytest.approx(largest)


# ASME B1.5 class 2G as a maker of Acme screws prints it, in inches: size, threads per inch, minor.
@pytest.mark.parametrize(
    ("size", "tpi", "minor"),
    [
        (0.375, 12, 0.2817),
        (0.5, 10, 0.380),
        (0.625, 8, 0.480),
        (0.75, 6, 0.5633),
        (0.75, 5, 0.530),
        (1.0, 5, 0.780),
    ],
)
def test_acme_core(size: float, tpi: float, minor: float) -> None:
    assert acme(size, tpi).minor_mm / 25.4 == pytest.approx(minor, abs=5e-5)


# The same table: the largest pitch diameter is the basic one less 0.008 √D, the allowance of 2G.
@pytest.mark.parametrize(
    ("size", "tpi", "largest"), [(0.5, 10, 0.4443), (0.75, 6, 0.6598), (1.0, 5, 0.892)]
)
def test_acme_pitch_diameter(size: float, tpi: float, largest: float) -> None:
    basic = acme(size, tpi).pitch_diameter_mm / 25.4
    assert basic - 0.008 * math.sqrt(size) == pytest.approx(largest, abs=1e-4)


# Bhandari, Design of Machine Elements, example 6.1: square, 50 × 8, three starts, collar
# 100 / 65, friction 0.15 for both, 15 kN; 204 644 and 87 402 N mm, 409 N at 500 mm.
def test_bhandari_6_1() -> None:
    screw = square(50, 8, 3)
    collar = collar_torque(15_000, 0.15, 100, 65)
    worked = lift(screw, 15_000, 0.15, collar)
    assert worked.raise_nmm == pytest.approx(204_644.140833, rel=1e-6)
    assert worked.lower_nmm == pytest.approx(87_401.514671, rel=1e-6)
    assert handle_force(worked.raise_nmm, 500) == pytest.approx(409.288, abs=1e-3)


# Bhandari, example 6.2: Tr 100 × 24 (P12), friction 0.15, 300 kN, no collar.
def test_bhandari_6_2() -> None:
    worked = lift(trapezoidal(100, 12, 2), 300_000, 0.15)
    assert worked.raise_nmm == pytest.approx(3_378_159.205, rel=1e-6)
    assert worked.lower_nmm == pytest.approx(1_030_685.630, rel=1e-6)
    assert worked.efficiency == pytest.approx(0.33921302, rel=1e-6)
    assert worked.holds


# Bhandari, example 6.5: square, 80 × 10, collar at 30 mm mean radius, friction 0.12, 10 kN, nut
# of 40 mm, rim of 500 mm: 388.9 N on one hand of two, 16.37 %, 2.122 N/mm².
def test_bhandari_6_5() -> None:
    screw = square(80, 10)
    worked = lift(screw, 10_000, 0.12, 0.12 * 10_000 * 30)
    assert worked.efficiency == pytest.approx(0.16369364, rel=1e-6)
    assert handle_force(worked.raise_nmm, 250) == pytest.approx(388.909290, rel=1e-6)
    assert nut_pressure(screw, 10_000, 40) == pytest.approx(2.122066, rel=1e-6)


# Bhandari, example 6.6: Tr 52 × 8, collar 100 / 60 at 0.12, thread 0.15, 2 kN: 12.94 %.
def test_bhandari_6_6() -> None:
    worked = lift(trapezoidal(52, 8), 2000, 0.15, collar_torque(2000, 0.12, 100, 60))
    assert worked.efficiency == pytest.approx(0.12937099, rel=1e-6)
    watts = worked.raise_nmm * 2 * math.pi * 30 / 60 / 1000
    assert watts == pytest.approx(61.838, abs=1e-3)


# A statics text: 10 000 lb, two threads per inch, mean diameter 2 in, friction 0.2; 2840 in lb.
def test_a_published_problem_in_inches() -> None:
    screw = square(2.25 * 25.4, 25.4 / 2)
    assert screw.pitch_diameter_mm == pytest.approx(2 * 25.4)
    torque = lift(screw, 10_000 * 4.4482216, 0.2).raise_nmm
    assert torque / (4.4482216 * 25.4) == pytest.approx(2840, rel=2e-3)


@given(friction=st.floats(0.02, 0.4), starts=st.integers(1, 4))
def test_a_screw_that_holds_is_never_better_than_half(friction: float, starts: int) -> None:
    worked = lift(square(20, 4, starts), 1000, friction)
    assert worked.holds == (worked.lower_nmm >= 0)
    if worked.holds:
        assert worked.efficiency <= 0.5


def test_a_steep_screw_runs_down_by_itself() -> None:
    worked = lift(trapezoidal(8, 2, 4), 100, 0.15)
    assert not worked.holds
    assert worked.lower_nmm < 0
    # One start of the same screw holds, and does so with much to spare.
    assert lift(trapezoidal(8, 2), 100, 0.15).holds_when_shaken


def test_travel_and_play() -> None:
    screw = trapezoidal(10, 2, 2, "left")
    assert screw.lead_mm == 4
    assert turns_for(screw, 30) == 7.5
    assert screw.hand == "left"
    # Geometry: 0.2 mm on the pitch diameter is 0.2 tan 15° along the axis.
    assert backlash(screw, 0.2).axial_mm == pytest.approx(0.0535898)
    assert axial_backlash(screw, 0.1).wheel_deg == pytest.approx(9)


def test_which_sizes_are_listed() -> None:
    assert trapezoidal(10, 2).is_listed
    assert not trapezoidal(8, 2).is_listed


# ISO 68-1 and ISO 724: M8 × 1.25 has d2 7.188, D1 6.647, d3 6.466.
def test_a_vee_screw_that_moves() -> None:
    screw = vee(8, 1.25)
    assert screw.pitch_diameter_mm == pytest.approx(7.188, abs=5e-4)
    assert screw.nut_minor_mm == pytest.approx(6.647, abs=5e-4)
    assert screw.minor_mm == pytest.approx(6.466, abs=5e-4)


def test_what_is_not_defined_says_so() -> None:
    with pytest.raises(NotDefined, match="1 mm pitch"):
        trapezoidal(8, 1)
    with pytest.raises(NotDefined, match="deeper than the screw"):
        trapezoidal(8, 12)
    with pytest.raises(NotDefined, match="do not slope"):
        backlash(square(20, 4), 0.1)
    with pytest.raises(NotDefined, match="jams"):
        lift(square(5.2, 5, 8), 10, 0.9)
    with pytest.raises(NotDefined, match="7 mm"):
        least_gap(7)
    with pytest.raises(NotDefined, match="smaller outside"):
        collar_torque(10, 0.1, 20, 30)


ANYTHING = st.floats(allow_nan=True) | st.floats(0.1, 100)


@given(
    d=ANYTHING,
    pitch=ANYTHING,
    load=ANYTHING,
    friction=st.floats(allow_nan=True) | st.floats(0, 1),
)
def test_any_number_gives_a_screw_or_a_reason(
    d: float, pitch: float, load: float, friction: float
) -> None:
    for make in (trapezoidal, square, vee, acme):
        try:
            screw: Leadscrew = make(d, pitch)
            worked = lift(screw, load, friction)
        except NotDefined:
            continue
        assert math.isfinite(worked.raise_nmm)
