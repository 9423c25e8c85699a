"""Tokens to an expression, by precedence climbing (Pratt, 1973); no power, no attributes."""

from __future__ import annotations

import re
from functools import lru_cache

from binder.parameters import codes
from binder.parameters.expression import (
    Call,
    Expression,
    Literal,
    Measured,
    NameOf,
    Negative,
    Pair,
    Term,
)
from binder.parameters.faults import ExpressionFault
from binder.parameters.functions import FUNCTIONS, function_unknown
from binder.parameters.lexer import Token, TokenKind, tokens_of
from binder.units import LENGTH, UNIT_WORDS, Quantity, read_gauge

MOST_BRACKETS = 20
_BINDS = {"+": 1, "-": 1, "*": 2, "/": 2}
_UNARY = 3
_PLAIN = re.compile(r"([0-9]{1,7}(?:\.[0-9]{1,7})?) (mm|in)")
_CACHE = 20_000


@lru_cache(maxsize=_CACHE)
def parse(text: str) -> Expression:
    """The expression of a text; raises ExpressionFault with the place of what is wrong."""
    plain = _PLAIN.fullmatch(text)
    if plain:
        return Expression(text, _plain(text, plain), frozenset(), frozenset())
    parser = _Parser(tokens_of(text))
    root = parser.whole()
    return Expression(text, root, frozenset(parser.names), frozenset(parser.series))


def _plain(text: str, found: re.Match[str]) -> Literal:
    """The short way for the commonest size; the parser gives the same."""
    from fractions import Fraction

    amount = Fraction(found[1]) * UNIT_WORDS[found[2]].factor
    return Literal(Quantity(amount, LENGTH), text)


class _Parser:
    """The tokens of one text and how far they are read."""

    def __init__(self, tokens: list[Token]) -> None:
        self.tokens = tokens
        self.place = 0
        self.depth = 0
        self.names: set[str] = set()
        self.series: set[str] = set()

    def whole(self) -> Term:
        """The expression, up to the end of the text."""
        term = self.term(0)
        token = self.tokens[self.place]
        if token.kind is not TokenKind.END:
            raise _unexpected(token, "a sign between two sizes is missing")
        return term

    def term(self, binding: int) -> Term:
        """A term and all that binds closer than `binding`."""
        left = self._first()
        while True:
            token = self.tokens[self.place]
            binds = _BINDS.get(token.text, 0) if token.kind is TokenKind.SIGN else 0
            if binds <= binding:
                return left
            self.place += 1
            left = Pair(token.text, left, self.term(binds), token.start)

    def _first(self) -> Term:
        token = self._next()
        if token.kind is TokenKind.AMOUNT and token.value is not None:
            if token.text.endswith("px"):
                raise _unexpected(token, "pixels are measured with picture(412 px)")
            return Literal(token.value, token.text)
        if token.kind is TokenKind.GAUGE:
            return _gauge(token)
        if token.kind is TokenKind.NAME:
            return self._named(token)
        if token.text == "-":
            return Negative(self.term(_UNARY))
        if token.text == "+":
            return self.term(_UNARY)
        if token.text == "(":
            return self._bracket()
        raise _unexpected(token, "a size is wanted here")

    def _bracket(self) -> Term:
        self._deeper(self.tokens[self.place - 1])
        term = self.term(0)
        self._close(")")
        self.depth -= 1
        return term

    def _named(self, token: Token) -> Term:
        if self.tokens[self.place].text != "(":
            self.names.add(token.text)
            return NameOf(token.text, token.start)
        if token.text not in FUNCTIONS:
            raise function_unknown(token.text, token.start)
        self.place += 1
        return self._call(token)

    def _call(self, token: Token) -> Call:
        self._deeper(token)
        function = FUNCTIONS[token.text]
        terms: list[Term] = []
        listed: tuple[Term, ...] = ()
        series = ""
        while True:
            if self.tokens[self.place].text == "[":
                listed = self._list()
            elif function.takes_series and terms and self._is_series():
                series = self._next().text
                self.series.add(series)
            elif function.takes_pixels:
                terms.append(self._pixels())
            else:
                terms.append(self.term(0))
            if self.tokens[self.place].text != ",":
                break
            self.place += 1
        self._close(")")
        self.depth -= 1
        end = self.tokens[self.place - 1]
        length = end.start + end.length - token.start
        call = Call(token.text, tuple(terms), listed, series, token.start, length)
        function.check(call)
        return call

    def _is_series(self) -> bool:
        after = self.tokens[self.place + 1] if self.place + 1 < len(self.tokens) else None
        is_last = after is not None and after.text == ")"
        return self.tokens[self.place].kind is TokenKind.NAME and is_last

    def _pixels(self) -> Term:
        token = self._next()
        if token.kind is not TokenKind.AMOUNT or token.value is None or token.text[-2:] != "px":
            raise _unexpected(token, "write the pixels that were counted, as picture(412 px)")
        return Literal(token.value, token.text)

    def _list(self) -> tuple[Term, ...]:
        self._deeper(self._next())
        terms = [self.term(0)]
        while self.tokens[self.place].text == ",":
            self.place += 1
            terms.append(self.term(0))
        self._close("]")
        self.depth -= 1
        return tuple(terms)

    def _deeper(self, token: Token) -> None:
        self.depth += 1
        if self.depth > MOST_BRACKETS:
            raise ExpressionFault(
                codes.EXPRESSION_TOO_LONG, "too many brackets in one another", "", token.start, 1
            )

    def _close(self, bracket: str) -> None:
        token = self._next()
        if token.text != bracket or token.kind is not TokenKind.SIGN:
            raise _unexpected(token, f"'{bracket}' is missing")

    def _next(self) -> Token:
        token = self.tokens[self.place]
        if token.kind is not TokenKind.END:
            self.place += 1
        return token


def _gauge(token: Token) -> Measured:
    name = read_gauge(token.text)
    if name is None:
        raise _unexpected(token, "a gauge size is wanted here")
    return Measured(name, token.start, token.length)


def _unexpected(token: Token, help: str) -> ExpressionFault:
    found = f"'{token.text}'" if token.text else "the end of the size"
    return ExpressionFault(
        codes.EXPRESSION_BROKEN, f"{found} is not expected here", help, token.start, token.length
    )
