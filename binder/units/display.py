"""Exact quantities to the text that is printed; nothing is rounded before."""

from __future__ import annotations

import math
from collections.abc import Callable
from fractions import Fraction
from typing import Literal

from binder.units import dimension as kind
from binder.units.dimension import Dimension
from binder.units.quantity import Quantity
from binder.units.words import INCH, UNIT_WORDS

PrintUnit = Literal["mm", "inch"]
_METRIC_PLACES = 3
_INCH_PLACES = 4
_FINEST_FRACTION = 64

_METRIC = {
    kind.LENGTH: "mm",
    kind.AREA: "mm²",
    kind.VOLUME: "mm³",
    kind.ANGLE: "°",
    kind.MASS: "g",
    kind.TIME: "s",
    kind.TEMPERATURE: "K",
    kind.SPEED: "r/min",
    kind.VELOCITY: "mm/s",
    kind.FORCE: "N",
    kind.TORQUE: "N·m",
    kind.PRESSURE: "MPa",
    kind.POWER: "W",
    kind.STIFFNESS: "N/mm",
    kind.DENSITY: "g/cm³",
}
_INCH = {kind.LENGTH: "in", kind.AREA: "in²", kind.VOLUME: "in³"}


def shown(quantity: Quantity, unit: str | None = None) -> str:
    """`6.35 mm`, or with `unit` "inch" `1/4 in`; with its standard uncertainty where it has one.

    Metric amounts have 3 decimals at most, inches 4 or an exact binary fraction down to
    1/64. After `±` stands one standard deviation to two figures, and the amount is cut
    to the same place (JCGM 100:2008, 7.2.6). Ties go to the even digit (ISO 80000-1, B.3).
    """
    word, factor, places = _print_unit(quantity.dimension, unit)
    amount = quantity.amount / factor
    if quantity.spread:
        return _with_spread(amount, quantity.spread / float(factor), places, word)
    if word == "in" and (64 * amount).denominator == 1:
        return f"{_binary_fraction(amount)} in"
    return f"{decimal(amount, places)}{_joined(word)}"


def decimal(amount: Fraction, places: int) -> str:
    """An amount to so many decimals at most, without trailing zeros.

    What is not nothing but would print as nothing is said to be under the last place.
    """
    scaled = round(amount * 10**places)
    if not scaled and amount:
        return f"under {_point(1, places)}" if amount > 0 else f"over -{_point(1, places)}"
    return _point(scaled, places)


def _point(scaled: int, places: int) -> str:
    """An amount given in units of its last decimal."""
    sign = "-" if scaled < 0 else ""
    whole, rest = divmod(abs(scaled), 10**places)
    digits = f"{rest:0{places}d}".rstrip("0") if places else ""
    return f"{sign}{whole}.{digits}" if digits else f"{sign}{whole}"


def _binary_fraction(amount: Fraction) -> str:
    """`1 1/2`, `-3/8`, `2`: an amount with a denominator of 64 at most."""
    sign = "-" if amount < 0 else ""
    whole, rest = divmod(abs(amount), 1)
    pieces = [str(whole)] if whole or not rest else []
    return sign + " ".join([*pieces, *([str(rest)] if rest else [])])


def _with_spread(amount: Fraction, spread: float, places: int, word: str) -> str:
    first = math.floor(math.log10(spread))
    places = min(places, max(0, 1 - first))
    unit = _joined(word)
    return f"{_kept(amount, places)}{unit} ± {decimal(Fraction(spread), places)}{unit}"


def _kept(amount: Fraction, places: int) -> str:
    return _point(round(amount * 10**places), places)


def _joined(word: str) -> str:
    return word if word in ("°", "") else f" {word}"


def _print_unit(dimension: Dimension, unit: str | None) -> tuple[str, Fraction, int]:
    """The word, its factor to base units, and how many decimals it is worth."""
    if unit == "inch" and dimension in _INCH:
        return _INCH[dimension], INCH**dimension.length, _INCH_PLACES
    word = _METRIC.get(dimension)
    if word:
        return word, UNIT_WORDS[word].factor, _METRIC_PLACES
    return _base_unit(dimension), Fraction(1), _INCH_PLACES


def _base_unit(dimension: Dimension) -> str:
    """`mm²·g/s³`-like text in base units; '' for a plain number."""
    pairs = tuple(zip(("mm", "g", "s", "K", "deg"), dimension, strict=True))
    over = "·".join(f"{name}{_raised(power)}" for name, power in pairs if power > 0)
    under = "·".join(f"{name}{_raised(-power)}" for name, power in pairs if power < 0)
    return f"{over or '1'}/{under}" if under else over


_raised: Callable[[int], str] = {1: "", 2: "²", 3: "³"}.__getitem__
