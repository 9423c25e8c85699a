"""A stranger's expressions: an answer for each, at once, and never another exception."""

from __future__ import annotations

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from binder.parameters import Environment, ExpressionFault, parse
from binder.parameters.lexer import MOST_CHARACTERS
from binder.units import TooManyDigitsError

HOSTILE = [
    "9**9**9",
    "10**10**10",
    "10^10^10",
    "4000000**3999999",
    "9" * 16_000 + " mm",
    "a" * 100_000,
    "1e999 mm",
    "1e1000000000",
    "1e-400 mm",
    "nan mm",
    "inf mm",
    "mm**1e9",
    "(-1 mm)**0.5",
    "7 % 4",
    "1 mm\n2 mm",
    "1 mm # x",
    "2 (3)",
    "()",
    "((((",
    "(" * 100_000,
    "-" * 100_000 + "1",
    "a" + ".b" * 1_000,
    "+".join(["1"] * 1_500),
    "[" * 290,
    "nearest(" * 30,
    "nearest(1," * 29,
    "min(" * 19 + "1",
    "x * " * 59 + "x",
    "__import__('os').system('id')",
    "open('/etc/passwd').read()",
    "bar.__class__",
    "lambda: 1",
    "{bar}",
    "bar; bar",
    "bar = 3",
    "bar @ bar",
    "\x00",
    "\ud800",
    "\u202e3 mm",
    "\u0663\u0664 mm",
    "\uff11\uff12 mm",
    "\u00b2 mm",
    "1" + "\u00a0" * 298 + "x",
    "1 " * 149,
    "1/" * 149 + "1",
    "0" * 299,
    "0." + "0" * 297,
    "1/" + "9" * 150 + " in",
    "1e99 * 1e99 * 1e99",
    "1e-99 / 1e99",
]


def fault_of(text: str, bench: Environment) -> ExpressionFault | None:
    """What is wrong with a text, or None where it has a value."""
    try:
        parse(text).evaluate(bench)
    except ExpressionFault as fault:
        return fault
    return None


@pytest.mark.parametrize("text", HOSTILE, ids=lambda text: ascii(str(text)[:24]))
def test_answered_with_a_value_or_a_fault(text: str, bench: Environment) -> None:
    """Answered at all: what grew with the powers in these would never end."""
    fault = fault_of(text, bench)
    if fault is not None:
        assert 0 <= fault.start <= fault.start + fault.length <= len(text) + 1
        assert len(fault.message) + len(fault.help) < 400
        assert (fault.message + fault.help).isprintable()


def test_doubling_digits_are_stopped(bench: Environment) -> None:
    value = parse("3.14159265358979 / 2.71828182845905").evaluate(bench)
    for _ in range(2):
        value = value * value
    with pytest.raises(TooManyDigitsError):
        value * value


pieces = st.sampled_from(
    [
        *"0123456789.,+-*/()[]^%#'\" \n\t",
        *("1/2", "7 1/2", "1e", "e99", "bar", "rod", "nearest(", "picture(", "min(", "px"),
        *("mm", "in", "\u00bd", "\u00d7", "12 swg", "no. 34 drill", "\u0663"),
    ]
)


@settings(max_examples=500)
@given(st.lists(pieces, max_size=40).map("".join) | st.text(max_size=MOST_CHARACTERS + 5))
def test_any_text_has_a_value_or_a_fault_with_its_place(bench: Environment, text: str) -> None:
    fault = fault_of(text, bench)
    if fault is not None:
        assert 0 <= fault.start <= fault.start + fault.length <= len(text) + 1
        assert (fault.message + fault.help).isprintable()
