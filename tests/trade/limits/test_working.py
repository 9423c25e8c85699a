"""The steps by which limits and fits are found."""

from __future__ import annotations

import pytest
from hypothesis import given, reject
from hypothesis import strategies as st

from binder_trade.limits import GRADES, NotDefined, fit, limits, shaft_letters, working

LETTERS = sorted(shaft_letters() | {letter.upper() for letter in shaft_letters()})


def lines(nominal_mm: float, cls: str) -> list[tuple[str, str, str]]:
    return [(step.name, step.formula, step.value) for step in working(limits(nominal_mm, cls))]


# ISO 286-1:1988 table 3, worked example: K7 over 18 to 30 mm, delta 8, ES = -2 + 8 = +6.
def test_a_hole_with_delta() -> None:
    assert lines(25, "K7") == [
        ("K7: band of sizes", "25 mm lies in", "over 18 up to 30 mm"),
        ("K7: tolerance", "IT7, over 18 up to 30 mm", "21 µm"),
        ("K7: delta", "Δ = IT7 − IT6", "8 µm"),
        ("K7: deviation of K", "ES = −ei of k + Δ = −2 + 8, over 18 up to 30 mm", "+6 µm"),
        ("K7: lower deviation", "EI = ES − IT7 = 6 − 21", "−15 µm"),
        ("K7: largest size", "25 + 0.006", "25.006 mm"),
        ("K7: smallest size", "25 − 0.015", "24.985 mm"),
    ]


def test_a_shaft_shows_its_own_step_of_sizes() -> None:
    assert lines(70, "r6") == [
        ("r6: band of sizes", "70 mm lies in", "over 50 up to 80 mm"),
        ("r6: tolerance", "IT6, over 50 up to 80 mm", "19 µm"),
        ("r6: deviation of r", "ei = +43, over 65 up to 80 mm", "+43 µm"),
        ("r6: upper deviation", "es = ei + IT6 = 43 + 19", "+62 µm"),
        ("r6: largest size", "70 + 0.062", "70.062 mm"),
        ("r6: smallest size", "70 + 0.043", "70.043 mm"),
    ]


def test_an_odd_tolerance_of_js_is_halved_and_the_convention_said() -> None:
    half = limits(8, "JS7")
    assert (half.upper_um, half.lower_um) == (7.5, -7.5)
    assert "2010 edition" in half.standard
    assert "1988" in half.standard
    assert "2010 edition" not in limits(8, "H7").standard
    (shared,) = [step for step in working(half) if "deviation" in step.name]
    assert (shared.value, "halved exactly" in shared.source) == ("±7.5 µm", True)
    assert working(half)[-2].value == "8.0075 mm"


@pytest.mark.parametrize(
    ("nominal_mm", "cls", "words"),
    [
        (280, "M6", "the standard's exception"),
        (12, "k8", "k lies off zero in grades 4 to 7 alone"),
        (2, "N9", "coarser than grade 8"),
        (10, "P9", "ES = −ei of p = −15"),
        (3, "P7", "ES = −ei of p = −6"),
        (8, "EF7", "EI = −es of ef = +18"),
    ],
)
def test_the_formula_says_which_rule_was_used(nominal_mm: float, cls: str, words: str) -> None:
    assert any(words in step.formula for step in working(limits(nominal_mm, cls)))


@pytest.mark.parametrize(
    ("cls", "source"),
    [
        ("h01", "ISO 286-1:1988 annex A table 5"),
        ("cd8", "ISO 286-1:1988 table 2"),
        ("FG8", "ISO 286-1:1988 table 3"),
        ("j6", "ISO 286-1:2010 table 4"),
        ("k6", "ISO 286-1:2010 table 5"),
        ("M7", "ISO 286-1:2010 table 2"),
        ("N7", "ISO 286-1:2010 table 3"),
    ],
)
def test_each_step_names_its_table(cls: str, source: str) -> None:
    assert source in [step.source for step in working(limits(10, cls))]


def test_a_fit_shows_both_halves_and_the_clearances() -> None:
    steps = working(fit(20, "H7", "p6"))
    assert [step.name.split(":")[0] for step in steps] == ["H7"] * 6 + ["p6"] * 6 + ["H7/p6"] * 3
    assert [(step.formula, step.value) for step in steps[-3:]] == [
        ("ES − ei = 21 − 22", "−1 µm"),
        ("EI − es = 0 − 35", "−35 µm"),
        ("greatest clearance is not above 0", "interference"),
    ]


@given(st.floats(min_value=0.001, max_value=500), st.sampled_from(LETTERS), st.sampled_from(GRADES))
def test_the_last_two_steps_are_the_limits(nominal_mm: float, letter: str, grade: str) -> None:
    try:
        found = limits(nominal_mm, letter + grade)
    except NotDefined:
        reject()
    steps = working(found)
    for step, size_mm in zip(steps[-2:], (found.upper_mm, found.lower_mm), strict=True):
        assert float(step.value.removesuffix(" mm")) == pytest.approx(size_mm, abs=6e-5)
    assert all(step.name and step.formula and step.value and step.source for step in steps)
