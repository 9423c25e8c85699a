"""Exact arithmetic against fractions, and errors against the published propagation."""

from __future__ import annotations

import math
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from binder.units import (
    ANGLE,
    AREA,
    FORCE,
    LENGTH,
    NUMBER,
    PRESSURE,
    SPEED,
    TIME,
    TORQUE,
    Dimension,
    DimensionsDifferError,
    DimensionTooHighError,
    Quantity,
    TooManyDigitsError,
    TooManySourcesError,
)

amounts = st.fractions(min_value=-(10**6), max_value=10**6, max_denominator=10**6)


def length(amount: Fraction | int | str, *errors: tuple[str, float]) -> Quantity:
    return Quantity(Fraction(amount), LENGTH, tuple(sorted(errors)))


@given(amounts, amounts)
def test_sums_are_exact(one: Fraction, two: Fraction) -> None:
    assert (length(one) + length(two)).amount == one + two
    assert (length(one) - length(two)).amount == one - two
    assert (-length(one)).amount == -one


@given(amounts, amounts)
def test_products_are_exact(one: Fraction, two: Fraction) -> None:
    assert length(one) * length(two) == Quantity(one * two, AREA)
    if two:
        assert length(one) / length(two) == Quantity(one / two, NUMBER)


def test_dimensions_multiply_and_divide() -> None:
    assert FORCE.times(LENGTH) == TORQUE
    assert FORCE.over(AREA) == PRESSURE
    assert ANGLE.over(TIME) == SPEED
    assert LENGTH.over(LENGTH) is NUMBER


def test_titles_are_a_makers_words() -> None:
    assert LENGTH.title == "a length"
    assert NUMBER.title == "a plain number"
    assert Dimension(length=-1).title == "a number per length"
    assert Dimension(length=2, time=1).title == "a length squared by time"


def test_unlike_things_are_not_added() -> None:
    with pytest.raises(DimensionsDifferError, match="a length and a plain number"):
        length(3) + Quantity(Fraction(2), NUMBER)


def test_the_fourth_power_is_refused() -> None:
    cube = length(2) * length(2) * length(2)
    with pytest.raises(DimensionTooHighError):
        cube * length(2)
    with pytest.raises(DimensionTooHighError):
        Quantity(Fraction(1), NUMBER) / cube / length(1)


def test_512_bits_are_kept_and_513_refused() -> None:
    half = Quantity(Fraction(2**255), NUMBER)
    assert (half * Quantity(Fraction(2**255), NUMBER)).amount == 2**510
    with pytest.raises(TooManyDigitsError):
        half * Quantity(Fraction(2**256), NUMBER)


def test_division_by_nothing() -> None:
    with pytest.raises(ZeroDivisionError):
        length(1) / length(0)


def test_independent_errors_add_in_squares() -> None:
    # JCGM 100:2008 (GUM), 5.1.2, equation 10.
    assert (length(1, ("a", 3.0)) + length(1, ("b", 4.0))).spread == pytest.approx(5.0)


def test_the_end_gauge_budget() -> None:
    # JCGM 100:2008 (GUM), Annex H.1 (A7-014): the root of the squares of 25, 9.7, 0, 2.9
    # and 16.6 nm is printed there as 32 nm.
    shares = (25.0, 9.7, 0.0, 2.9, 16.6)
    total = length(50)
    for source, share in enumerate(shares):
        total = total.with_error(str(source), share)
    assert total.spread == pytest.approx(32, abs=0.5)


def test_an_error_in_common_cancels_in_a_difference_and_adds_in_a_sum() -> None:
    # JCGM 100:2008 (GUM), 5.2.2, note 1: fully correlated inputs add linearly.
    one, two = length(10, ("known", 0.5)), length(4, ("known", 0.2))
    assert (one - two).spread == pytest.approx(0.3)
    assert (one + two).spread == pytest.approx(0.7)
    assert (one - one).errors == ()


def test_relative_errors_in_common_cancel_in_a_ratio() -> None:
    ratio = length(10, ("known", 0.5)) / length(4, ("known", 0.2))
    assert ratio.spread == pytest.approx(0.0, abs=1e-15)


@given(st.floats(1, 1000), st.floats(1, 1000), st.floats(0.001, 0.01), st.floats(0.001, 0.01))
def test_products_and_quotients_follow_the_relative_formula(
    x: float, y: float, u: float, v: float
) -> None:
    # JCGM 100:2008 (GUM), 5.1.6, equation 12: relative variances add.
    one = length(Fraction(x), ("a", x * u))
    two = length(Fraction(y), ("b", y * v))
    product, quotient = one * two, one / two
    assert product.spread / float(product.amount) == pytest.approx(math.hypot(u, v))
    assert quotient.spread / float(quotient.amount) == pytest.approx(math.hypot(u, v))


def test_at_most_a_hundred_sources() -> None:
    total = length(0)
    for source in range(100):
        total = total.with_error(f"{source:03}", 1.0)
    assert total.spread == pytest.approx(10.0)
    with pytest.raises(TooManySourcesError):
        total.with_error("one more", 1.0)


def test_errors_past_all_floats_are_refused() -> None:
    large = Quantity(Fraction(2**500), NUMBER, (("a", 1e300),))
    with pytest.raises(TooManyDigitsError):
        large * Quantity(Fraction(2**11), NUMBER, (("b", 1e300),))
