"""The parts that an expression is made of; each knows its characters in the text."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from binder.units import GaugeName, Quantity


@dataclass(frozen=True, slots=True)
class Literal:
    """A number with its unit, or a plain number."""

    quantity: Quantity
    start: int
    end: int


@dataclass(frozen=True, slots=True)
class Pixels:
    """So many pixels of the picture."""

    amount: Fraction
    start: int
    end: int


@dataclass(frozen=True, slots=True)
class GaugeSize:
    """A member of a gauge, as 12 swg."""

    gauge: GaugeName
    start: int
    end: int


@dataclass(frozen=True, slots=True)
class SizeName:
    """A size by its name."""

    name: str
    start: int
    end: int


@dataclass(frozen=True, slots=True)
class SeriesName:
    """A series of sizes by its name."""

    name: str
    start: int
    end: int


@dataclass(frozen=True, slots=True)
class Listed:
    """A list in square brackets."""

    items: tuple[Node, ...]
    start: int
    end: int


@dataclass(frozen=True, slots=True)
class Negated:
    """Minus something."""

    of: Node
    start: int
    end: int


@dataclass(frozen=True, slots=True)
class Joined:
    """Two things with one of + - * / between them."""

    sign: str
    left: Node
    right: Node
    start: int
    end: int


@dataclass(frozen=True, slots=True)
class Call:
    """A function of the fixed table with its arguments."""

    function: str
    arguments: tuple[Node, ...]
    start: int
    end: int


Node = Literal | Pixels | GaugeSize | SizeName | SeriesName | Listed | Negated | Joined | Call
