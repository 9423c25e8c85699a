"""Values inside a spec that remember how and where they were written."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from binder.diagnostics import Span
from binder.source.tree import Written
from binder.units import Quantity

SUIT = "to suit"


@dataclass(frozen=True, slots=True)
class Size:
    """A quantity with the author's own text and its place.

    One that `is_to_suit` is nothing until a drive settles it, before any step reads a shape.
    """

    quantity: Quantity
    text: Written

    @property
    def exact(self) -> Fraction:
        """The amount in the base unit of its dimension: mm, degrees, or a plain number."""
        return self.quantity.amount

    @property
    def mm(self) -> float:
        """A length in millimetres."""
        return float(self.quantity.amount)

    @property
    def is_to_suit(self) -> bool:
        """Whether the maker left it for a drive to say."""
        return self.text == SUIT

    @property
    def span(self) -> Span:
        """Where it was written."""
        return self.text.span


@dataclass(frozen=True, slots=True)
class Taper:
    """A change of diameter along a length, from one end to the other."""

    start: Size
    end: Size
    span: Span


@dataclass(frozen=True, slots=True)
class Position:
    """Where along a part: so far from something, or plain words such as `middle`.

    `more` are further places in the same text: `6 mm from left, 4 mm from front`.
    """

    text: Written
    distance: Size | None = None
    rest: str = ""
    more: tuple[Position, ...] = ()

    @property
    def all(self) -> tuple[Position, ...]:
        """This place and the further ones."""
        return (self, *self.more)


@dataclass(frozen=True, slots=True)
class Reference:
    """`item` or `item.place`: a part, bought item or assembly, and a feature or step of it."""

    item: str
    place: str
    text: Written

    @property
    def span(self) -> Span:
        """Where it was written."""
        return self.text.span


@dataclass(frozen=True, slots=True)
class Member:
    """So many off of an item, as `2 off knob`."""

    item: str
    count: int
    span: Span


@dataclass(frozen=True, slots=True)
class Stock:
    """What a part is cut from: a form as sold and the sizes of its section, where given.

    `sizes` is empty where the part itself decides ("round bar").
    """

    form: str
    sizes: tuple[Size, ...]
    text: Written

    @property
    def span(self) -> Span:
        """Where it was written."""
        return self.text.span
