"""The text of an expression to tokens: amounts with their units, names, signs, brackets."""

from __future__ import annotations

import re
from dataclasses import dataclass
from enum import StrEnum

from binder.parameters import codes
from binder.parameters.amounts import amount_at
from binder.parameters.faults import ExpressionFault
from binder.units import Quantity

MOST_LETTERS = 300
MOST_TOKENS = 60
_NAME = re.compile(r"[A-Za-z][A-Za-z0-9_]*")
_SIGNS = {"+": "+", "-": "-", "−": "-", "*": "*", "×": "*", "/": "/", "÷": "/", "∕": "/"}
_BRACKETS = "()[],"


class TokenKind(StrEnum):
    """What a token is."""

    AMOUNT = "amount"
    GAUGE = "gauge"
    NAME = "name"
    SIGN = "sign"
    END = "end"


@dataclass(frozen=True, slots=True)
class Token:
    """A token with its place in the text; `value` is set for amounts, `text` for the rest."""

    kind: TokenKind
    text: str
    start: int
    length: int
    value: Quantity | None = None


def tokens_of(text: str) -> list[Token]:
    """All tokens and an end mark; raises ExpressionFault at what cannot be read."""
    if len(text) > MOST_LETTERS:
        raise ExpressionFault(
            codes.EXPRESSION_TOO_LONG,
            f"{len(text)} characters are too long for one size",
            "give parts of it names of their own under sizes",
        )
    found: list[Token] = []
    place = 0
    while place < len(text):
        if text[place] in " \t":
            place += 1
            continue
        token = _token_at(text, place)
        found.append(token)
        place = token.start + token.length
        if len(found) > MOST_TOKENS:
            raise ExpressionFault(
                codes.EXPRESSION_TOO_LONG,
                "too many terms for one size",
                "give parts of it names of their own under sizes",
            )
    return [*found, Token(TokenKind.END, "", len(text), 1)]


def _token_at(text: str, place: int) -> Token:
    gauge = _gauge_at(text, place)
    if gauge is not None:
        return gauge
    amount = amount_at(text, place)
    if amount is not None:
        return Token(TokenKind.AMOUNT, amount.text, place, amount.length, amount.quantity)
    letter = text[place]
    name = _NAME.match(text, place)
    if name:
        return Token(TokenKind.NAME, name[0], place, len(name[0]))
    if letter in _SIGNS:
        if letter == "*" and text[place : place + 2] == "**":
            raise _refused_sign("**", place)
        return Token(TokenKind.SIGN, _SIGNS[letter], place, 1)
    if letter in _BRACKETS:
        return Token(TokenKind.SIGN, letter, place, 1)
    raise _refused_sign(letter, place)


def _refused_sign(sign: str, place: int) -> ExpressionFault:
    help = {
        "**": "write the product out: a * a",
        "^": "write the product out: a * a",
        "%": "write 0.8 * bar for 80 per cent of it",
        ".": "names stand alone here; a part's size is reached through a name under sizes",
    }.get(sign, "sizes are made of numbers with units, names, + - * / and brackets")
    return ExpressionFault(
        codes.SIGN_UNKNOWN, f"'{sign}' has no meaning in a size", help, place, len(sign)
    )


_GAUGE_AT = re.compile(
    r"(?:[0-9]{1,2}|[1-7]/0)\s?(?:swg|SWG)(?![A-Za-z0-9_])"
    r"|(?:no\.?\s?|#)[0-9]{1,2}\s?drill(?![A-Za-z0-9_])"
    r"|letter\s[A-Z]\s?drill(?![A-Za-z0-9_])"
)


def _gauge_at(text: str, place: int) -> Token | None:
    found = _GAUGE_AT.match(text, place)
    return Token(TokenKind.GAUGE, found[0], place, len(found[0])) if found else None
