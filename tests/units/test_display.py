"""What is printed for a quantity."""

from __future__ import annotations

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from binder.units import (
    ANGLE,
    DENSITY,
    INCH,
    LENGTH,
    MASS,
    NUMBER,
    PRESSURE,
    SPEED,
    TORQUE,
    UNIT_WORDS,
    Dimension,
    Quantity,
    shown,
)


def inches(amount: str) -> Quantity:
    return Quantity(Fraction(amount) * INCH, LENGTH)


def mm(amount: str, spread: float = 0.0) -> Quantity:
    return Quantity(Fraction(amount), LENGTH, (("a", spread),) if spread else ())


@pytest.mark.parametrize(
    ("amount", "text"),
    [
        ("6.35", "6.35 mm"),
        ("6", "6 mm"),
        ("1500", "1500 mm"),
        ("-3.5", "-3.5 mm"),
        ("0", "0 mm"),
        ("1/3", "0.333 mm"),
        ("2/3", "0.667 mm"),
        ("0.0004", "under 0.001 mm"),
        ("-0.0004", "over -0.001 mm"),
        # Ties to the even digit: ISO 80000-1:2009, Annex B, rule A.
        ("0.0125", "0.012 mm"),
        ("0.0135", "0.014 mm"),
    ],
)
def test_millimetres(amount: str, text: str) -> None:
    assert shown(mm(amount)) == shown(mm(amount), "mm") == text


@pytest.mark.parametrize(
    ("amount", "text"),
    [
        ("1/4", "1/4 in"),
        ("3/2", "1 1/2 in"),
        ("2", "2 in"),
        ("-3/8", "-3/8 in"),
        ("0", "0 in"),
        ("1/64", "1/64 in"),
        ("1/128", "0.0078 in"),
        ("0.104", "0.104 in"),
        ("0.0005", "0.0005 in"),
    ],
)
def test_inches(amount: str, text: str) -> None:
    assert shown(inches(amount), "inch") == text


@pytest.mark.parametrize(
    ("size", "text"),
    [
        (mm("158.4615", 0.8123), "158.46 mm ± 0.81 mm"),
        (mm("158.4615", 0.3), "158.46 mm ± 0.3 mm"),
        (mm("158.4615", 25.4), "158 mm ± 25 mm"),
        (mm("158.4615", 0.00001), "158.462 mm ± under 0.001 mm"),
    ],
)
def test_the_standard_uncertainty_to_two_figures(size: Quantity, text: str) -> None:
    # JCGM 100:2008 (GUM), 7.2.6: at most two figures, and the estimate to the same place.
    assert shown(size) == text


@pytest.mark.parametrize(
    ("word", "dimension", "text"),
    [
        ("deg", ANGLE, "30°"),
        ("r/min", SPEED, "30 r/min"),
        ("kg", MASS, "30000 g"),
        ("Nm", TORQUE, "30 N·m"),
        ("MPa", PRESSURE, "30 MPa"),
        ("g/cm3", DENSITY, "30 g/cm³"),
    ],
)
def test_other_kinds(word: str, dimension: Dimension, text: str) -> None:
    assert shown(Quantity(30 * UNIT_WORDS[word].factor, dimension)) == text


def test_plain_numbers_and_kinds_without_a_unit() -> None:
    assert shown(Quantity(Fraction(1, 3), NUMBER)) == "0.3333"
    assert shown(Quantity(Fraction(2), Dimension(length=1, mass=2, time=-3))) == "2 mm·g²/s³"
    assert shown(Quantity(Fraction(2), Dimension(length=-1))) == "2 1/mm"


@given(st.integers(0, 40), st.integers(0, 63))
def test_binary_fractions_read_back(whole: int, parts: int) -> None:
    amount = whole + Fraction(parts, 64)
    text = shown(Quantity(amount * INCH, LENGTH), "inch").removesuffix(" in")
    assert sum(map(Fraction, text.split())) == amount


@given(st.fractions(-10_000, 10_000))
def test_millimetres_are_off_by_half_a_thousandth_at_most(amount: Fraction) -> None:
    text = shown(Quantity(amount, LENGTH))
    if not text.startswith(("under", "over")):
        assert abs(Fraction(text.removesuffix(" mm")) - amount) <= Fraction(1, 2000)
