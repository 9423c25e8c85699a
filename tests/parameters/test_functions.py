"""Choosing among sizes, and rounding."""

from __future__ import annotations

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from binder.parameters import Environment, Series, parse, series_of
from binder.units import LENGTH, Quantity

CHOICES = {
    "nearest(8.9 mm, rod)": "8",
    "nearest(9.1 mm, rod)": "10",
    "nearest(9 mm, rod)": "8",  # a tie takes the smaller
    "nearest(0.3 * bar, rod)": "6",
    "nearest(3 mm, rod)": "6",
    "nearest(25.4 mm, rod)": "12.7",
    "nearest(7 mm, [9 mm, 6 mm, 1/4 in])": "6.35",
    "nearest(70 mm, [6 mm])": "6",
    "next_up(8 mm, rod)": "8",
    "next_up(8.001 mm, rod)": "10",
    "next_up(1 mm, rod)": "6",
    "next_down(8 mm, rod)": "8",
    "next_down(7.999 mm, rod)": "6",
    "next_down(90 mm, rod)": "12.7",
    "min(bar, 3 mm, 1 in)": "3",
    "max(bar, 3 mm, 1 in)": "25.4",
    "round(7.24 mm, 0.5 mm)": "7",
    "round(7.25 mm, 0.5 mm)": "7.5",
    "round(-7.25 mm, 0.5 mm)": "-7.5",
    "round(1.3 in, 1/16 in)": "33.3375",
    "2 * nearest(7.2 mm, rod) + 1 mm": "17",
}


@pytest.mark.parametrize("text", CHOICES)
def test_choices(text: str, bench: Environment) -> None:
    assert parse(text).evaluate(bench).amount == Fraction(CHOICES[text])


# A7-016: the R20 series (ISO 3:1973, from memory), here in mm over two decades.
R20 = """
    1 1.12 1.25 1.4 1.6 1.8 2 2.24 2.5 2.8 3.15 3.55 4 4.5 5 5.6 6.3 7.1 8 9
"""


@pytest.fixture(scope="module")
def preferred() -> Environment:
    labels = [f"{number}e{power} mm" for power in (0, 1) for number in R20.split()]
    return Environment(series={"R20": series_of("R20", "R20", labels, "ISO 3:1973")})


@pytest.mark.parametrize(
    ("size", "taken"), [("83.333", "80"), ("41.667", "40"), ("31.25", "31.5"), ("7.29", "7.1")]
)
def test_preferred_numbers(size: str, taken: str, preferred: Environment) -> None:
    # A7-017: the choice nearest in ratio; nearest in difference is the same for these four.
    found = parse(f"nearest({size} mm, R20)").evaluate(preferred)
    assert found.amount == Fraction(taken)


@given(
    st.fractions(1, 50, max_denominator=100),
    st.sets(st.integers(1, 50), min_size=1, max_size=8),
)
def test_choices_are_what_their_names_say(wanted: Fraction, sizes: set[int]) -> None:
    listed = ", ".join(f"{size} mm" for size in sizes)
    size = f"({wanted.numerator} mm / {wanted.denominator})"

    def chosen(function: str) -> Fraction:
        return parse(f"{function}({size}, [{listed}])").evaluate(Environment()).amount

    near = chosen("nearest")
    assert near in sizes
    assert abs(near - wanted) == min(abs(one - wanted) for one in sizes)
    if up := [one for one in sizes if one >= wanted]:
        assert chosen("next_up") == min(up)
    if down := [one for one in sizes if one <= wanted]:
        assert chosen("next_down") == max(down)


def test_a_chosen_or_rounded_size_is_decided_and_has_no_error(bench: Environment) -> None:
    assert parse("picture(120 px)").evaluate(bench).errors
    assert parse("nearest(picture(120 px), rod)").evaluate(bench).errors == ()
    assert parse("round(picture(120 px), 1 mm)").evaluate(bench).errors == ()
    assert parse("max(picture(120 px), 1 mm)").evaluate(bench).errors


def test_a_series_rises_and_is_of_one_kind() -> None:
    one, two = (Quantity(Fraction(size), LENGTH) for size in (1, 2))
    for members in ((), (("2", two), ("1", one)), (("1", one), ("1 again", one))):
        with pytest.raises(ValueError, match="does not rise"):
            Series("rod", "rod", members, "")
    with pytest.raises(ValueError, match="does not rise"):
        series_of("rod", "rod", ["1 mm", "2 deg"], "")
    with pytest.raises(ValueError, match="no plain size"):
        series_of("rod", "rod", ["bar"], "")
