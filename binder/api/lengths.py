"""Exact lengths to print."""

from __future__ import annotations

import re
from fractions import Fraction

from binder.design import WorkedOut
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
    if isinstance(size.text, WorkedOut):
        return printed
    written = " ".join(str(size.text).split())
    other = _INCH if units == "mm" else _METRIC
    return f"{written} ({printed})" if other.fullmatch(written) else printed


_INCH = re.compile(r"[0-9][0-9 ./½¼¾⅛]*(?:in|inch|inches|thou|swg|\"|″)")
_METRIC = re.compile(r"[0-9][0-9.]* ?(?:mm|cm|m)")


_NUMBER = r"[0-9]{1,9}(?:\.[0-9]{1,9})?"
# What is quoted, and the sizes in a name: `drill 2.5 mm`, `2.5 mm hexagon key`, `M3 × 12 mm`.
_NAMES = (
    r"(?<!\w)'[^']{0,200}'(?!\w)|`[^`]{0,200}`"
    rf"|\b(?:drill|ream) {_NUMBER} mm|{_NUMBER} mm [x×] {_NUMBER} mm|[x×] {_NUMBER} mm"
    rf"|{_NUMBER} mm (?:reamer|drill|cutter|slot drill|end mill|mill|hexagon key|key|spanner|wire"
    r"|dowel|taper|roll|pin|cap|cheese|countersunk|grub|screw|bolt|rivet|e-clip|circlip"
    r"|external|internal|socket|[x×])\b"
    rf"|{_NUMBER} mm ?[²³/]|{_NUMBER} mm \(|\({_NUMBER} mm\)"
)
_PAIR = rf"(?<![A-Za-z0-9.]){_NUMBER} (?:to|×) {_NUMBER} mm\b"
_ONE = rf"(?<![A-Za-z0-9.]){_NUMBER} mm\b"
_DIAMETER = rf"(?<=⌀){_NUMBER}(?! ?(?:mm|in)\b|[.0-9])(?! × {_NUMBER} mm)"
_PRINTED = re.compile(rf"({_NAMES})|({_PAIR}|{_ONE}|{_DIAMETER})")


def lengths_in(text: str, units: str) -> str:
    """A sentence of the trade, whose lengths are in mm, in the model's units.

    What stands in quotes, and the sizes by which tools and hardware are named, stay as they are.
    """
    return text if units == "mm" else _PRINTED.sub(lambda found: _turned(found, units), text)


def _turned(found: re.Match[str], units: str) -> str:
    words: str = found[0]
    if found[1]:
        return words
    numbers = re.findall(_NUMBER, words)
    between = " × " if "×" in words else " to "
    shown_ones = [shown_length(Fraction(one), units) for one in numbers]
    return between.join((*(one.removesuffix(" in") for one in shown_ones[:-1]), shown_ones[-1]))


def parse_size(text: str) -> Quantity:
    """The exact quantity of a plain size, as `1/4 in`, in a plugin's own data."""
    return parse(text).evaluate(_NOTHING)


_NOTHING = Environment({}, {}, {}, None)
