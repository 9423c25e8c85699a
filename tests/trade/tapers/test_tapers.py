"""Tapers against handbooks, the standards of taper pins and of Morse tapers."""

import math
from collections.abc import Callable

import pytest
from hypothesis import given
from hypothesis import strategies as st

from binder_trade.tapers import (
    NotDefined,
    Taper,
    drill_for,
    from_angle,
    from_diameters,
    from_ratio,
    holding,
    inch_pin,
    interference_at,
    largest_for_shaft,
    metric_pin,
    mixed,
    morse,
    press_on,
    set_over,
    sine_packing,
)

INCH = 25.4
ANYTHING = st.floats(allow_nan=True) | st.floats(0, 100)


# A navy training manual on lathe work: ends 1 and 2 in; 2 in long is 6 in per foot, 6 in long 2.
@pytest.mark.parametrize(("length", "per_foot"), [(2, 6), (6, 2)])
def test_taper_per_foot(length: float, per_foot: float) -> None:
    cone = from_diameters(2 * INCH, 1 * INCH, length * INCH)
    assert cone.per_foot_in == pytest.approx(per_foot)


# The same series: 12 in long, ends 3 and 2 in: the tailstock goes over half an inch; 6 in of
# that taper, a quarter.
def test_set_over_of_the_tailstock() -> None:
    cone = from_diameters(3 * INCH, 2 * INCH, 12 * INCH)
    assert set_over(cone, 12 * INCH) / INCH == pytest.approx(0.5)
    assert set_over(cone, 6 * INCH) / INCH == pytest.approx(0.25)


# Plane geometry, S = (D - d) / 2 · L / l: 20 to 18 over 50 on work of 200 mm.
def test_set_over_of_longer_work() -> None:
    assert set_over(from_diameters(20, 18, 50), 200) == pytest.approx(4.0, abs=1e-9)


# Plane geometry, H = L sin α: 31.5° on a bar of 5 in.
def test_packing_under_a_sine_bar() -> None:
    assert sine_packing(31.5, 5 * INCH) / INCH == pytest.approx(2.61249, abs=2e-5)


@pytest.mark.parametrize("angle", [0, -5, 61, 90, float("nan")])
def test_angles_to_which_no_sine_bar_is_set(angle: float) -> None:
    with pytest.raises(NotDefined):
        sine_packing(angle, 100)


# "Turning and boring tapers" (1902): whole angle in degrees to taper per foot in inches; the rows
# of its table that agree with trigonometry (4°, 7½° and 15° are misprinted).
@pytest.mark.parametrize(
    ("whole", "per_foot"), [(1, 0.20952), (2, 0.41880), (3, 0.62832), (5, 1.0480)]
)
def test_angle_to_taper_per_foot(whole: float, per_foot: float) -> None:
    cone = from_angle(whole / 2, 10, large_mm=20)
    assert cone.per_foot_in == pytest.approx(per_foot, abs=3e-4)


# A lathe centre of 60° is turned with the slide at 30° (army ordnance course on lathe work).
def test_a_lathe_centre() -> None:
    cone = from_diameters(20, 0, 10 / math.tan(math.radians(30)))
    assert cone.half_angle_deg == pytest.approx(30)


@given(ratio=st.floats(1, 100), length=st.floats(1, 100), small=st.floats(1, 50))
def test_the_three_ways_agree(ratio: float, length: float, small: float) -> None:
    first = from_ratio(ratio, length, small_mm=small)
    second = from_diameters(first.large_mm, small, length)
    third = from_angle(first.half_angle_deg, length, large_mm=first.large_mm)
    assert second.half_angle_deg == pytest.approx(first.half_angle_deg, rel=1e-6)
    assert third.small_mm == pytest.approx(small)


# Morse tapers: inch tables of standard tapers; half angle = atan(taper per foot / 24).
@pytest.mark.parametrize(
    ("number", "large", "small", "per_foot", "half"),
    [
        (0, 0.3561, 0.252, 0.6246, 1.4908),
        (1, 0.475, 0.369, 0.5986, 1.4287),
        (3, 0.938, 0.778, 0.6024, 1.4377),
    ],
)
def test_morse_tapers_in_inches(
    number: int, large: float, small: float, per_foot: float, half: float
) -> None:
    made = morse(number)
    assert made.gauge_mm / INCH == pytest.approx(large, abs=1e-4)
    assert made.small_mm / INCH == pytest.approx(small)
    assert made.per_foot_in == pytest.approx(per_foot, abs=1e-4)
    assert made.cone.half_angle_deg == pytest.approx(half, abs=2e-4)


# ISO 296, gauge diameters in mm as a public table has them, and taper per foot to five figures.
@pytest.mark.parametrize(
    ("number", "gauge", "per_foot"),
    [(1, 12.065, 0.59858), (2, 17.780, 0.59941), (3, 23.825, 0.60235)],
)
def test_morse_tapers_of_iso_296(number: int, gauge: float, per_foot: float) -> None:
    assert morse(number).gauge_mm == pytest.approx(gauge, abs=1e-3)
    assert morse(number).per_foot_in == pytest.approx(per_foot, abs=2e-5)


# The length between the two diameters is the plug depth of the inch table: 2, 2 1/8, 2 9/16,
# 3 3/16, 4 1/16, 5 3/16 in.
@pytest.mark.parametrize(
    ("number", "depth"), [(0, 2), (1, 2.125), (2, 2.5625), (3, 3.1875), (4, 4.0625), (5, 5.1875)]
)
def test_morse_plug_depth(number: int, depth: float) -> None:
    assert morse(number).cone.length_mm / INCH == pytest.approx(depth, abs=2e-3)


# Common practice: Morse holds, 7 : 24 needs a drawbar.
def test_which_tapers_hold() -> None:
    assert morse(2).cone.holding == "holds"
    assert from_ratio(24 / 7, 10, large_mm=20).holding == "lets go"
    assert from_ratio(5, 10, large_mm=20).holding == "may hold"
    assert holding(0) == "holds"


# Geometry: a cone of 1 : 20 goes on 1 mm for 0.05 mm of interference.
def test_pressing_on() -> None:
    cone = from_ratio(20, 30, large_mm=12)
    assert press_on(cone, 0.05) == pytest.approx(1.0)
    assert interference_at(cone, 1.0) == pytest.approx(0.05)


# ISO 2339: 1 : 50, named by the small end: 5 × 40 is 5.8 at its large end.
def test_a_metric_taper_pin() -> None:
    assert metric_pin(5, 40).cone.large_mm == pytest.approx(5.8)


# TM 9-254, table 3-1: letter drills for a No. 5 pin (0.289 in) by its length in inches.
LETTERS = {
    "A": 0.234, "B": 0.238, "C": 0.242, "D": 0.246, "E": 0.250, "F": 0.257,
    "G": 0.261, "H": 0.266, "I": 0.272, "J": 0.277, "K": 0.281,
}  # fmt: skip


@pytest.mark.parametrize(
    ("length", "letter"),
    [(1.0, "H"), (1.25, "G"), (1.5, "F"), (1.75, "E"), (2.0, "D"), (2.25, "C")],
)
def test_drills_of_an_inch_taper_pin(length: float, letter: str) -> None:
    pin = inch_pin(0.289 * INCH, length * INCH)
    drill = drill_for(pin, (each * INCH for each in LETTERS.values()))
    assert drill / INCH == pytest.approx(LETTERS[letter])


# The same table takes B for 2 1/2 in, a thousandth over the small end; here one under it is kept.
def test_a_drill_never_passes_the_small_end() -> None:
    pin = inch_pin(0.289 * INCH, 2.5 * INCH)
    assert drill_for(pin, (each * INCH for each in LETTERS.values())) / INCH == pytest.approx(0.234)


def test_no_drill_near_the_small_end() -> None:
    with pytest.raises(NotDefined) as caught:
        drill_for(metric_pin(3, 20), (2.0, 3.3))
    assert caught.value.way_out == "a drill of 2.70 to 3.00 mm serves"


def test_the_two_systems_do_not_mix() -> None:
    assert mixed(metric_pin(4, 20), inch_pin(4.4, 20))
    assert not mixed(metric_pin(4, 20), metric_pin(3, 20))
    assert largest_for_shaft(12) == 4


def test_what_is_no_taper_is_refused() -> None:
    with pytest.raises(NotDefined, match="exchange"):
        from_diameters(5, 6, 10)
    with pytest.raises(NotDefined, match="one of its ends"):
        from_ratio(10, 10)
    with pytest.raises(NotDefined, match=r"takes 10\.00 mm off"):
        from_ratio(1, 10, large_mm=5)
    with pytest.raises(NotDefined, match="Morse taper 9"):
        morse(9)


@given(
    large=ANYTHING,
    small=ANYTHING,
    length=ANYTHING,
)
def test_any_number_gives_a_taper_or_a_reason(large: float, small: float, length: float) -> None:
    makes: tuple[Callable[[], Taper], ...] = (
        lambda: from_diameters(large, small, length),
        lambda: from_ratio(large, length, small_mm=small),
        lambda: from_angle(small, length, large_mm=large),
        lambda: metric_pin(small, length).cone,
        lambda: inch_pin(large, length).cone,
    )
    for make in makes:
        try:
            angle = make().half_angle_deg
        except NotDefined:
            continue
        assert 0 < angle < 90
