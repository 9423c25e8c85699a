"""Sizes as makers write them, exactly."""

from __future__ import annotations

import unicodedata
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from binder.parameters import Environment, ExpressionFault, parse
from binder.parameters.expression import parsed_expression
from binder.units import INCH, LENGTH, UNIT_WORDS

# The amount in base units: mm, g, s, degrees.
LITERALS = {
    "6 mm": "6",
    "6mm": "6",
    "6\u00a0mm": "6",
    "  6 mm ": "6",
    "6.50 mm": "6.5",
    ".5 mm": "0.5",
    "1e-3 mm": "0.001",
    "1.5e2mm": "150",
    "-3 mm": "-3",
    "\u22123 mm": "-3",
    "--3 mm": "3",
    "7 1/2 in": "190.5",
    "7  1/2in": "190.5",
    '7 1/2"': "190.5",
    "7.5 in": "190.5",
    '1/4"': "6.35",
    "1/4 in": "6.35",
    "1/4in": "6.35",
    "1\u20444 in": "6.35",
    "1/4 inch": "6.35",
    "1/4\u2033": "6.35",
    "1\u00bd in": "38.1",
    "1 \u00bd in": "38.1",
    "\u00bd in": "12.7",
    "\u215c in": "9.525",
    "10/4 in": "63.5",
    "0.5 thou": "0.0127",
    "25 \u00b5m": "0.025",
    "25 um": "0.025",
    "1 ft": "304.8",
    "1' 6\"": "457.2",
    "1'6\"": "457.2",
    "6 ft 3 in": "1905",
    "5' 10 1/2\"": "1790.7",
    "2 yd": "1828.8",
    "30 deg": "30",
    "30\u00b0": "30",
    "1/2 turn": "180",
    "300 r/min": "1800",
    "300 rpm": "1800",
    "2 kg": "2000",
    "1 lb": "453.59237",
    "5 min": "300",
    "12 swg": "2.6416",
    "3/0 swg": "9.4488",
    "no. 34 drill": "2.8194",
    "no 34 drill": "2.8194",
    "#34 drill": "2.8194",
    "letter F drill": "6.5278",
    "7 1/2": "7.5",
    "3": "3",
    "3/4": "0.75",
}


@pytest.mark.parametrize("text", LITERALS)
def test_literals_are_exact(text: str, bench: Environment) -> None:
    assert parse(text).evaluate(bench).amount == Fraction(LITERALS[text])


# A7-002: fractions of an inch times 25.4, as printed in any table of equivalents.
EQUIVALENTS = {
    "1/64": "0.396875",
    "1/16": "1.5875",
    "3/32": "2.38125",
    "1/8": "3.175",
    "5/32": "3.96875",
    "3/16": "4.7625",
    "1/4": "6.35",
    "5/16": "7.9375",
    "3/8": "9.525",
    "1/2": "12.7",
}


@pytest.mark.parametrize("text", EQUIVALENTS)
@pytest.mark.parametrize("mark", [" in", '"', "in", " inch"])
def test_fractions_of_an_inch(text: str, mark: str, bench: Environment) -> None:
    found = parse(text + mark).evaluate(bench)
    assert (found.amount, found.dimension) == (Fraction(EQUIVALENTS[text]), LENGTH)


VULGAR = {
    "\u00bc": "1/4",
    "\u00bd": "1/2",
    "\u00be": "3/4",
    "\u2153": "1/3",
    "\u2154": "2/3",
    "\u215b": "1/8",
    "\u215c": "3/8",
    "\u215d": "5/8",
    "\u215e": "7/8",
}


@pytest.mark.parametrize("sign", VULGAR)
def test_vulgar_fractions_are_those_of_unicode(sign: str) -> None:
    assert unicodedata.numeric(sign) == pytest.approx(float(Fraction(VULGAR[sign])))
    assert parse(f"2{sign} in").evaluate(Environment()).amount == INCH * (
        2 + Fraction(VULGAR[sign])
    )


@given(
    st.integers(0, 10**6),
    st.integers(0, 10**6),
    st.integers(1, 6),
    st.sampled_from(sorted(UNIT_WORDS)),
    st.sampled_from(["", " "]),
)
def test_decimals_read_back(whole: int, rest: int, places: int, word: str, gap: str) -> None:
    number = f"{whole}.{rest % 10**places:0{places}d}"
    found = parse(f"{number}{gap}{word}").evaluate(Environment())
    unit = UNIT_WORDS[word]
    assert (found.amount, found.dimension) == (Fraction(number) * unit.factor, unit.dimension)


@given(st.integers(0, 999), st.integers(1, 63), st.integers(2, 64))
def test_mixed_numbers_read_back(whole: int, over: int, under: int) -> None:
    if over < under:
        found = parse(f"{whole} {over}/{under} in").evaluate(Environment())
        assert found.amount == (whole + Fraction(over, under)) * INCH


plain = st.from_regex(r"[0-9]{1,10}(\.[0-9]{1,10})? ?(mm|in|thou|deg|m|kg|mmm|x)?", fullmatch=True)


@given(plain)
def test_the_short_way_gives_what_the_grammar_gives(text: str) -> None:
    outcomes: list[object] = []
    for read in (parse, parsed_expression):
        try:
            outcomes.append(read(text))
        except ExpressionFault as fault:
            outcomes.append((fault.code, fault.message, fault.start, fault.length, fault.help))
    assert outcomes[0] == outcomes[1]
