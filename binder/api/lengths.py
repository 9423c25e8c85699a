"""Exact lengths to print."""

from __future__ import annotations

import re
from fractions import Fraction

from binder.parameters import Environment, parse
from binder.spec.values import Size
from binder.units import LENGTH, Quantity, shown


def shown_length(mm: Fraction, units: str | None = None) -> str:
    """A length given in mm, as it is printed: in mm, or in the units that are named."""
    return shown(Quantity(mm, LENGTH), units)


def size_text(size: Size, units: str) -> str:
    """A size for the page: in the model's units, and as written where that was the other system.

    The tool of a size in inches is an inch tool, whatever the drawing is in.
    """
    printed = shown(size.quantity, units)
    written = " ".join(str(size.text).split())
    other = _INCH if units == "mm" else _METRIC
    return f"{written} ({printed})" if other.fullmatch(written) else printed


_INCH = re.compile(r"[0-9][0-9 ./½¼¾⅛]*(?:in|inch|inches|thou|swg|\"|″)")
_METRIC = re.compile(r"[0-9][0-9.]* ?(?:mm|cm|m)")


# Not the sizes in a name, as `9 mm x 1.8 mm`.
_PRINTED = re.compile(
    r"(?<![0-9.x×])(?<![x×] )([0-9]{1,9}(?:\.[0-9]{1,9})?) mm(?! ?[x×²³/]|[0-9A-Za-z])"
)


def lengths_in(text: str, units: str) -> str:
    """A sentence of the trade, whose lengths are in mm, in the model's units."""
    if units == "mm":
        return text
    return _PRINTED.sub(lambda found: shown_length(Fraction(found[1]), units), text)


def parse_size(text: str) -> Quantity:
    """The exact quantity of a plain size, as `1/4 in`, in a plugin's own data."""
    return parse(text).evaluate(_NOTHING)


_NOTHING = Environment({}, {}, {}, None)
