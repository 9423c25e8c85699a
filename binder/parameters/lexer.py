"""The text of an expression to its tokens, each with its place, within fixed limits."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass, replace
from enum import Enum, auto

from binder.parameters import codes
from binder.parameters.faults import ExpressionFault, quoted
from binder.parameters.numbers import SPACE, Number, read_number, refuse_dashed
from binder.units import INCH, GaugeName, Misread
from binder.units.gauges import GAUGE_PATTERN, gauge_of
from binder.units.words import FOOT

MOST_CHARACTERS = 300
MOST_TOKENS = 60
MOST_BRACKETS = 20

_SPACES = re.compile(f"{SPACE}+")
_NAME = re.compile(r"[A-Za-z][A-Za-z0-9_]*")
_GAUGE = re.compile(GAUGE_PATTERN, re.IGNORECASE | re.ASCII)
_FIGURES = re.compile(r"[0-9]+")
_UNIT_AFTER = re.compile(r" ?[A-Za-z\u00b0'\"]+")
_SIGNS = {
    "+": "+",
    "-": "-",
    "*": "*",
    "/": "/",
    "\u00d7": "*",
    "\u00f7": "/",
    "\u2212": "-",
    "(": "(",
    ")": ")",
    "[": "[",
    "]": "]",
    ",": ",",
}
_CLOSES = {")": "(", "]": "["}
_THOUSAND_FIGURES = 3


class Kind(Enum):
    """What a token is."""

    NUMBER = auto()
    GAUGE = auto()
    NAME = auto()
    SIGN = auto()
    END = auto()


@dataclass(frozen=True, slots=True)
class Token:
    """A number, gauge, name or sign, from `start` to `end` of the text."""

    kind: Kind
    text: str
    start: int
    end: int
    number: Number | None = None
    gauge: GaugeName | None = None


def tokens_of(text: str) -> tuple[Token, ...]:
    """The tokens with an END behind them; ExpressionFault for what is no token or too much."""
    if len(text) > MOST_CHARACTERS:
        message = f"{len(text)} characters are too many for one expression"
        raise ExpressionFault(codes.EXPRESSION_TOO_LONG, message, 0, len(text))
    found: list[Token] = []
    for token in _scan(text):
        if found and _are_feet_and_inches(found[-1], token):
            found.append(_feet_and_inches(found.pop(), token))
        else:
            found.append(token)
        if len(found) > MOST_TOKENS:
            message = f"more than {MOST_TOKENS} numbers, names and signs"
            raise ExpressionFault(codes.EXPRESSION_TOO_LONG, message, token.start, 1)
    return (*found, Token(Kind.END, "", len(text), len(text)))


def _scan(text: str) -> Iterator[Token]:
    brackets = _Brackets()
    has_gauge = _GAUGE.search(text) is not None
    last: Token | None = None
    at = _past_spaces(text, 0)
    while at < len(text):
        token = _token(text, at, last, may_be_gauge=has_gauge)
        if token.text == "," and not brackets.may_list:
            raise _stray_comma(text, token, last)
        brackets.pass_by(token, last)
        yield token
        last, at = token, _past_spaces(text, token.end)
    brackets.must_be_closed()


class _Brackets:
    """The brackets that are open, and whether each may hold a list."""

    def __init__(self) -> None:
        self._open: list[tuple[Token, bool]] = []

    @property
    def may_list(self) -> bool:
        """Whether a comma has a meaning here."""
        return bool(self._open) and self._open[-1][1]

    def pass_by(self, token: Token, last: Token | None) -> None:
        """Opens or closes; ExpressionFault where there is nothing to close or too much open."""
        if token.text in ("(", "["):
            is_call = last is not None and last.kind is Kind.NAME
            self._open.append((token, token.text == "[" or is_call))
            if len(self._open) > MOST_BRACKETS:
                message = f"more than {MOST_BRACKETS} brackets inside one another"
                raise ExpressionFault(codes.BRACKETS_TOO_DEEP, message, token.start, 1)
        elif token.text in _CLOSES and not self._closes(_CLOSES[token.text]):
            message = f"'{token.text}' closes nothing"
            raise ExpressionFault(codes.BRACKET_UNMATCHED, message, token.start, 1)

    def _closes(self, opening: str) -> bool:
        return bool(self._open) and self._open.pop()[0].text == opening

    def must_be_closed(self) -> None:
        """ExpressionFault where a bracket is still open."""
        if self._open:
            token = self._open[-1][0]
            message = f"'{token.text}' is never closed"
            raise ExpressionFault(codes.BRACKET_UNMATCHED, message, token.start, 1)


def _past_spaces(text: str, at: int) -> int:
    spaces = _SPACES.match(text, at)
    return spaces.end() if spaces else at


def _token(text: str, at: int, last: Token | None, *, may_be_gauge: bool) -> Token:
    gauge = _GAUGE.match(text, at) if may_be_gauge else None
    if gauge:
        return _gauge_token(gauge)
    if last is None or last.text in ("(", "[", ","):
        refuse_dashed(text, at)
    number = read_number(text, at)
    if number:
        return Token(Kind.NUMBER, text[at : number.end], at, number.end, number)
    name = _NAME.match(text, at)
    if name:
        return Token(Kind.NAME, name[0], at, name.end())
    if text[at] in _SIGNS and not text.startswith("**", at):
        return Token(Kind.SIGN, _SIGNS[text[at]], at, at + 1)
    raise _strange(text, at)


def _gauge_token(found: re.Match[str]) -> Token:
    gauge = gauge_of(found)
    if isinstance(gauge, Misread):
        message = f"{quoted(found[0])}: {gauge.reason}"
        raise ExpressionFault(codes.GAUGE_UNKNOWN, message, found.start(), len(found[0]))
    return Token(Kind.GAUGE, found[0], found.start(), found.end(), gauge=gauge)


def _strange(text: str, at: int) -> ExpressionFault:
    char = text[at]
    if char in ("*", "^"):
        length = 2 if char == "*" else 1
        help = "multiply it out, as bar * bar"
        return ExpressionFault(codes.NO_POWERS, "powers are not known here", at, length, help)
    help = _HINTS.get(char, "use 0 to 9, letters, + - * / and brackets")
    if char.isdecimal():
        help = "write figures as 0 to 9"
    message = f"'{quoted(char)}' has no meaning here"
    return ExpressionFault(codes.SIGN_UNKNOWN, message, at, 1, help)


_HINTS = {
    "%": "write a part of a size as a product: 0.8 * bar for 80 %",
    "#": "write no. 34 drill for a numbered drill",
    "\u2013": "write - for minus",
    "\u2014": "write - for minus",
    ".": "write at least one figure, as 0.5",
    "=": "give a size its own line under `sizes`",
}


def _stray_comma(text: str, comma: Token, last: Token | None) -> ExpressionFault:
    """What a comma outside a list was most likely meant for."""
    if last is None or last.kind is not Kind.NUMBER:
        message = "a comma has a meaning in lists and functions only"
        return ExpressionFault(codes.EXPRESSION_GARBLED, message, comma.start, 1)
    after = _FIGURES.match(text, comma.end)
    if after is None or last.end != comma.start or not last.text.isdecimal():
        message = "a comma has a meaning in lists and functions only"
        return ExpressionFault(codes.EXPRESSION_GARBLED, message, comma.start, 1)
    whole = text[last.start : after.end()]
    rest = _UNIT_AFTER.match(text, after.end())
    unit = rest[0] if rest else ""
    better = f"{last.text}.{after[0]}{unit}"
    if len(after[0]) == _THOUSAND_FIGURES:
        better += f", or {last.text}{after[0]}{unit} for thousands"
    message = f"{quoted(whole)} has a comma"
    return ExpressionFault(codes.DECIMAL_COMMA, message, last.start, len(whole), f"write {better}")


def _are_feet_and_inches(feet: Token, inches: Token) -> bool:
    """Whether two tokens are one length, as 6 ft 3 in: whole feet, and inches under a foot."""
    if feet.number is None or inches.number is None:
        return False
    one, two = feet.number, inches.number
    if one.unit is None or two.unit is None:
        return False
    are_units = one.unit.factor == FOOT and two.unit.factor == INCH
    return are_units and one.amount.denominator == 1 and two.quantity.amount < FOOT


def _feet_and_inches(feet: Token, inches: Token) -> Token:
    if feet.number is None or inches.number is None:
        raise ValueError("only numbers make a length")
    whole = (feet.number.quantity.amount + inches.number.quantity.amount) / INCH
    number = replace(inches.number, amount=whole, start=feet.start)
    return replace(inches, text=feet.text + " " + inches.text, start=feet.start, number=number)
