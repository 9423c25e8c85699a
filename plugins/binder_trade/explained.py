"""A sum with its steps, and what is raised where there is no answer."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Final

_LEAST: Final = 1e-6
_MOST: Final = 1e6
_VAST: Final = 1e12


@dataclass(frozen=True, slots=True)
class Step:
    """One line of a sum: what is sought, its formula, its value with the unit, and its source."""

    name: str
    formula: str
    value: str
    source: str


class NotDefined(ValueError):
    """No answer: `reason` says why in the words of the bench, `way_out` what would serve."""

    def __init__(self, reason: str, way_out: str) -> None:
        super().__init__(f"{reason}; {way_out}")
        self.reason = reason
        self.way_out = way_out


def positive(value: float, what: str) -> float:
    """The value, where it is a size above nothing and below a kilometre; else NotDefined."""
    if math.isfinite(value) and _LEAST <= value <= _MOST:
        return value
    raise NotDefined(
        f"{what} of {value:g} is not a size that can be made", f"give {what} above nothing"
    )


def not_negative(value: float, what: str) -> float:
    """The value, where it is nothing or a size below a kilometre; else NotDefined."""
    if math.isfinite(value) and 0 <= value <= _MOST:
        return value
    raise NotDefined(
        f"{what} of {value:g} is not nothing or a size that can be made",
        f"give {what} of nothing or more",
    )


def amount(value: float, what: str) -> float:
    """The value, where it is above nothing and no giant, as a force or a mass; else NotDefined."""
    if math.isfinite(value) and 1 / _VAST <= value <= _VAST:
        return value
    raise NotDefined(f"{what} of {value:g} is out of reach", f"give {what} above nothing")


def amount_or_nothing(value: float, what: str) -> float:
    """The value, where it is nothing or above and no giant; else NotDefined."""
    if math.isfinite(value) and 0 <= value <= _VAST:
        return value
    raise NotDefined(f"{what} of {value:g} is out of reach", f"give {what} of nothing or more")


def within(value: float, low: float, high: float, what: str, sign: str = "") -> float:
    """The value, where it lies between the two ends; else NotDefined, which names them.

    `sign` stands behind each figure, as `°`.
    """
    if math.isfinite(value) and low <= value <= high:
        return value
    raise NotDefined(
        f"{what} of {value:g}{sign} is outside {low:g}{sign} to {high:g}{sign}",
        f"keep {what} in that range",
    )


def mm(value: float) -> str:
    """A length as a sum prints it, to a thousandth of a millimetre."""
    return f"{value:.3f} mm"
