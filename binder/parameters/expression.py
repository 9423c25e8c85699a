"""The text of an expression to what can be evaluated in any environment."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass
from fractions import Fraction
from functools import lru_cache

from binder.parameters.environment import Environment
from binder.parameters.evaluate import Work
from binder.parameters.functions import PICTURE
from binder.parameters.nodes import (
    Choice,
    GaugeSize,
    Literal,
    Measure,
    Node,
    SeriesName,
    SizeName,
    walked,
)
from binder.parameters.parser import parsed
from binder.units import NUMBER, UNIT_WORDS, Dimension, Quantity

MOST_KEPT = 16_384
_NOWHERE = Environment()
_NO_NAMES: frozenset[str] = frozenset()

_PLAIN = re.compile(
    r"([0-9]{1,9})(?:\.([0-9]{1,9}))?(?: ?("
    + "|".join(sorted((word for word in UNIT_WORDS if word.isalpha()), key=len, reverse=True))
    + "))?"
)
_FACTORS: dict[str | None, tuple[int, int, Dimension]] = {
    None: (1, 1, NUMBER),
    **{
        word: (unit.factor.numerator, unit.factor.denominator, unit.dimension)
        for word, unit in UNIT_WORDS.items()
    },
}
_TENS = tuple(10**figures for figures in range(10))


@dataclass(frozen=True, slots=True)
class Expression:
    """An expression: its text and tree, the sizes that it names, and its value if it needs none."""

    text: str
    root: Node
    names: frozenset[str]
    value: Quantity | None

    def evaluate(self, environment: Environment, place: str = "") -> Quantity:
        """What it comes to there; ExpressionFault.

        `place` tells this expression's own measures on the picture from those of others.
        """
        if self.value is not None:
            return self.value
        return Work(environment, place or self.text).value(self.root)

    def follows(self) -> tuple[str, ...]:
        """The sizes that it names, in order, and `picture` where it measures on it."""
        names = tuple(sorted(self.names))
        return (*names, PICTURE) if any(True for _ in self.measures()) else names

    def choices(self) -> Iterator[Choice]:
        """Its calls of nearest, next_up and next_down."""
        return (node for node in walked(self.root) if isinstance(node, Choice))

    def measures(self) -> Iterator[Measure]:
        """Its calls of picture."""
        return (node for node in walked(self.root) if isinstance(node, Measure))


def parse(text: str) -> Expression:
    """The expression in a text, kept for the next time; ExpressionFault."""
    return _kept(str(text))


@lru_cache(maxsize=MOST_KEPT)
def _kept(text: str) -> Expression:
    plain = _PLAIN.fullmatch(text)
    return _literal(text, plain) if plain else parsed_expression(text)


def _literal(text: str, plain: re.Match[str]) -> Expression:
    """The short way for `12.5 mm`; it gives what parsed_expression gives."""
    whole, decimals, word = plain.groups()
    over, under, dimension = _FACTORS[word]
    if decimals:
        amount = Fraction(int(whole + decimals) * over, _TENS[len(decimals)] * under)
    else:
        amount = Fraction(int(whole) * over, under)
    quantity = Quantity(amount, dimension)
    return Expression(text, Literal(quantity, 0, len(text)), _NO_NAMES, quantity)


def parsed_expression(text: str) -> Expression:
    """The expression in a text by the whole grammar; ExpressionFault."""
    root = parsed(text)
    nodes = tuple(walked(root))
    names = frozenset(node.name for node in nodes if isinstance(node, SizeName))
    value = None if any(map(_looks_up, nodes)) else Work(_NOWHERE).value(root)
    return Expression(text, root, names, value)


def _looks_up(node: Node) -> bool:
    """Whether a node's value hangs on the environment."""
    if isinstance(node, Choice):
        return isinstance(node.among, SeriesName)
    return isinstance(node, SizeName | GaugeSize | Measure)
