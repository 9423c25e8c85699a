"""The text of an expression to its tree, by binding strength (Pratt's method)."""

from __future__ import annotations

from dataclasses import dataclass

from binder.parameters import codes
from binder.parameters.faults import ExpressionFault
from binder.parameters.functions import CHOICES, LEAST_SIZES, PICTURE, RECKONINGS, USES
from binder.parameters.lexer import Kind, Token, tokens_of
from binder.parameters.nodes import (
    Bracketed,
    Choice,
    Combined,
    GaugeSize,
    Joined,
    Listed,
    Literal,
    Measure,
    Negated,
    Node,
    SeriesName,
    SizeName,
)
from binder.parameters.numbers import Number
from binder.parameters.refusals import (
    misused,
    out_of_place,
    spaced_fraction,
    token_fault,
    unexpected,
    unknown_function,
)

_BINDS = {"+": 1, "-": 1, "*": 2, "/": 2}
_BINDS_MINUS = 3


def parsed(text: str) -> Node:
    """The tree of an expression; ExpressionFault with the place of what is wrong."""
    tokens = tokens_of(text)
    if len(tokens) == 1:
        raise ExpressionFault(codes.EXPRESSION_EMPTY, "there is no size here", 0, len(text))
    reader = _Reader(text, tokens)
    node = reader.joined(0)
    if reader.token.kind is not Kind.END:
        raise unexpected(reader.token)
    return node


@dataclass(slots=True)
class _Reader:
    """The tokens of a text and how far they have been read."""

    text: str
    tokens: tuple[Token, ...]
    at: int = 0

    @property
    def token(self) -> Token:
        """The one to come."""
        return self.tokens[self.at]

    def take(self) -> Token:
        """The one to come, which then is read."""
        token = self.tokens[self.at]
        self.at += 1
        return token

    def joined(self, least: int) -> Node:
        """What binds more strongly than `least`, from here on."""
        left = self.single()
        while _BINDS.get(self.token.text, 0) > least:
            sign = self.take()
            if sign.text == "/":
                self.refuse_spaced_fraction(left)
            right = self.joined(_BINDS[sign.text])
            left = Joined(sign.text, left, right, left.start, right.end)
        return left

    def single(self) -> Node:
        """A number, a gauge, a name, a call, a bracket, or minus one of them."""
        token = self.take()
        if token.number is not None:
            return _literal(token, token.number)
        if token.gauge is not None:
            return GaugeSize(token.gauge, token.start, token.end)
        if token.kind is Kind.NAME:
            return self.called(token) if self.token.text == "(" else _size_name(token)
        if token.text == "-":
            positive = self.joined(_BINDS_MINUS)
            return Negated(positive, token.start, positive.end)
        if token.text == "(":
            inside = self.joined(0)
            return Bracketed(inside, token.start, self.closing(")"))
        raise out_of_place(token)

    def called(self, name: Token) -> Node:
        """A function with what stands in its brackets, the first of which comes next."""
        if name.text not in USES:
            raise unknown_function(name)
        self.take()
        if name.text == PICTURE:
            return self.measure(name)
        if name.text in CHOICES:
            return self.choice(name)
        return self.combined(name)

    def measure(self, name: Token) -> Measure:
        """The pixels of picture(...)."""
        token = self.take()
        if token.number is None or not token.number.is_pixels or not token.number.amount:
            raise misused(name, token)
        return Measure(token.number.amount, name.start, self.closing(")", name))

    def choice(self, name: Token) -> Choice:
        """The size that is wanted and what to choose it from."""
        wanted = self.joined(0)
        if self.token.text != ",":
            raise misused(name, self.token)
        self.take()
        among = self.listed() if self.token.text == "[" else self.series(name)
        return Choice(name.text, wanted, among, name.start, self.closing(")", name))

    def combined(self, name: Token) -> Combined:
        """The sizes of min, max or round."""
        sizes = self.sizes()
        most = RECKONINGS[name.text].most_sizes
        if len(sizes) < LEAST_SIZES or (most is not None and len(sizes) > most):
            raise misused(name, self.token)
        return Combined(name.text, sizes, name.start, self.closing(")"))

    def series(self, name: Token) -> SeriesName:
        """The name of a series."""
        token = self.take()
        if token.kind is not Kind.NAME:
            raise misused(name, token)
        return SeriesName(token.text, token.start, token.end)

    def listed(self) -> Listed:
        """A list in square brackets, with at least one size."""
        start = self.take().start
        sizes = self.sizes()
        labels = tuple(self.text[size.start : size.end] for size in sizes)
        return Listed(sizes, labels, start, self.closing("]"))

    def sizes(self) -> tuple[Node, ...]:
        """Sizes with commas between, up to the closing bracket."""
        sizes = [self.joined(0)]
        while self.token.text == ",":
            self.take()
            sizes.append(self.joined(0))
        return tuple(sizes)

    def closing(self, close: str, name: Token | None = None) -> int:
        """Where the closing bracket ends, which must come next, after all of `name`'s parts."""
        token = self.token
        if token.text != close:
            raise misused(name, token) if name and token.text == "," else unexpected(token)
        return self.take().end

    def refuse_spaced_fraction(self, left: Node) -> None:
        """ExpressionFault for `1 / 4 in`, whose stroke has just been read."""
        after = self.token.number
        if not isinstance(left, Literal) or after is None or after.unit is None:
            return
        before = self.text[left.start : left.end]
        figures = self.text[after.start : after.end]
        if before.isdecimal() and after.amount.denominator == 1:
            raise spaced_fraction(self.text, left.start, before, figures, after.end)


def _literal(token: Token, number: Number) -> Literal:
    if number.is_pixels:
        help = f"write picture({token.text})"
        message = "pixels are no length by themselves"
        raise token_fault(codes.PIXELS_MISPLACED, message, token, help)
    return Literal(number.quantity, token.start, token.end)


def _size_name(token: Token) -> SizeName:
    if token.text in USES:
        raise misused(token, token)
    return SizeName(token.text, token.start, token.end)
