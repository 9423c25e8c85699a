"""Sums, products and brackets against fractions, and inch against metric spelling."""

from __future__ import annotations

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from binder.parameters import Environment, parse
from binder.units import AREA, INCH, LENGTH, NUMBER

SUMS = {
    "0.8 * bar": "16",
    "bar * 0.8": "16",
    "bar/4": "5",
    "bar / 4": "5",
    "10 mm/2": "5",
    "10 mm / 2 + 1 mm": "6",
    "1 mm + 2 mm * 3": "7",
    "(1 mm + 2 mm) * 3": "9",
    "10 mm - 3 mm - 2 mm": "5",
    "24 mm / 4 / 2": "3",
    "24 mm / (4 / 2)": "12",
    "-bar + 25 mm": "5",
    "bar * -0.5": "-10",
    "-(bar - 5 mm)": "-15",
    "2 \u00d7 bar \u00f7 8 \u2212 1 mm": "4",
    "3 * 1/4 in": "19.05",
    "1/4 in * 2": "12.7",
    "1/4 * bar": "5",
    "bar-1/2 in": "7.3",
    "bar - 5mm": "15",
    "7 1/2 * bar": "150",
    "10-1/2": "9.5",
    "bar * bar / 4 mm": "100",
    "12 swg + 0.3584 mm": "3",
}


@pytest.mark.parametrize("text", SUMS)
def test_sums(text: str, bench: Environment) -> None:
    assert parse(text).evaluate(bench).amount == Fraction(SUMS[text])


def test_dimensions_follow(bench: Environment) -> None:
    assert parse("bar * 2 mm").evaluate(bench).dimension == AREA
    assert parse("bar / 2 mm").evaluate(bench).dimension == NUMBER
    assert parse("bar / 2").evaluate(bench).dimension == LENGTH


def test_names_are_the_sizes_and_nothing_else() -> None:
    found = parse("nearest(0.3 * bar, rod) + min(axle, 3 mm) - picture(4 px) + 12 swg")
    assert found.names == {"bar", "axle"}


@st.composite
def sums(draw: st.DrawFn, depth: int = 0) -> tuple[str, Fraction]:
    """A sum of plain numbers in our grammar and what it comes to."""
    if depth == 3 or draw(st.booleans()):
        number = draw(st.fractions(0, 100, max_denominator=1).map(abs))
        places = draw(st.integers(0, 99))
        text = f"{number}.{places:02d}"
        return text, Fraction(text)
    left, one = draw(sums(depth + 1))
    right, two = draw(sums(depth + 1))
    sign = draw(st.sampled_from("+-*/" if two else "+-*"))
    value = {"+": one + two, "-": one - two, "*": one * two}.get(sign)
    return f"({left} {sign} {right})", one / two if value is None else value


@given(sums())
def test_bracketed_sums_are_those_of_fractions(case: tuple[str, Fraction]) -> None:
    text, value = case
    assert parse(text).evaluate(Environment()).amount == value


@given(st.lists(st.tuples(st.sampled_from("+-*/"), st.integers(1, 50)), min_size=1, max_size=12))
def test_precedence_is_that_of_arithmetic(steps: list[tuple[str, int]]) -> None:
    text = "7" + "".join(f" {sign} {number}" for sign, number in steps)
    terms = [Fraction(7)]
    for sign, number in steps:
        if sign == "*":
            terms[-1] *= number
        elif sign == "/":
            terms[-1] /= number
        else:
            terms.append(Fraction(number if sign == "+" else -number))
    assert parse(text).evaluate(Environment()).amount == sum(terms)


FORMS = [
    "0.8 * {0}",
    "{0} + {1}",
    "{0} - 2 * {1}",
    "{0} * {1} / {0}",
    "min({0}, {1})",
    "max({0}, {1})",
    "round({0}, {1})",
    "nearest({0}, [{1}, 2 * {1}, 3 * {1}])",
    "({0} + {1}) / 2",
]


@given(st.sampled_from(FORMS), st.integers(1, 640), st.integers(1, 640))
def test_inch_and_metric_spelling_give_the_same(form: str, one: int, two: int) -> None:
    inch = form.format(f"{one}/64 in", f"{two}/64 in")
    thou = form.format(f"{Fraction(one * 1000, 64)} thou", f"{Fraction(two * 1000, 64)} thou")
    metric = form.format(*(_exact(Fraction(size, 64) * INCH) for size in (one, two)))
    values = {parse(text).evaluate(Environment()) for text in (inch, thou, metric)}
    assert len(values) == 1


def _exact(amount: Fraction) -> str:
    """Millimetres to all of their decimals: 25.4/64 has seven."""
    return f"{amount.numerator * 10**7 // amount.denominator}e-7 mm"
