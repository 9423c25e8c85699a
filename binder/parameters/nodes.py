"""The parts that an expression is made of; each knows its characters in the text."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from fractions import Fraction

from binder.units import GaugeName, Quantity


@dataclass(frozen=True, slots=True)
class Literal:
    """A number with its unit, or a bare number."""

    quantity: Quantity
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
class Bracketed:
    """Something in round brackets."""

    inside: Node
    start: int
    end: int


@dataclass(frozen=True, slots=True)
class Negated:
    """Minus something."""

    positive: Node
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
class Combined:
    """min, max or round of some sizes."""

    function: str
    sizes: tuple[Node, ...]
    start: int
    end: int


@dataclass(frozen=True, slots=True)
class SeriesName:
    """A series of sizes as sold, by its name."""

    name: str
    start: int
    end: int


@dataclass(frozen=True, slots=True)
class Listed:
    """Sizes in square brackets, each with its text."""

    sizes: tuple[Node, ...]
    labels: tuple[str, ...]
    start: int
    end: int


@dataclass(frozen=True, slots=True)
class Choice:
    """nearest, next_up or next_down of a size, among those of a series or list."""

    function: str
    wanted: Node
    among: SeriesName | Listed
    start: int
    end: int


@dataclass(frozen=True, slots=True)
class Measure:
    """So many pixels measured on the picture."""

    pixels: Fraction
    start: int
    end: int


Node = Literal | GaugeSize | SizeName | Bracketed | Negated | Joined | Combined | Choice | Measure


def walked(node: Node) -> Iterator[Node]:
    """A node and all below it, in the order of the text."""
    yield node
    for below in _below(node):
        yield from walked(below)


def _below(node: Node) -> tuple[Node, ...]:
    match node:
        case Bracketed():
            return (node.inside,)
        case Negated():
            return (node.positive,)
        case Joined():
            return (node.left, node.right)
        case Combined():
            return node.sizes
        case Choice():
            listed = node.among.sizes if isinstance(node.among, Listed) else ()
            return (node.wanted, *listed)
        case _:
            return ()
