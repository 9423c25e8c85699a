"""Exact lengths to print."""

from __future__ import annotations

from fractions import Fraction

from binder.parameters import Environment, parse
from binder.units import LENGTH, Quantity, shown


def shown_length(mm: Fraction, units: str | None = None) -> str:
    """A length given in mm, as it is printed: in mm, or in the units that are named."""
    return shown(Quantity(mm, LENGTH), units)


def parse_size(text: str) -> Quantity:
    """The exact quantity of a plain size, as `1/4 in`, in a plugin's own data."""
    return parse(text).evaluate(_NOTHING)


_NOTHING = Environment({}, {}, {}, None)
