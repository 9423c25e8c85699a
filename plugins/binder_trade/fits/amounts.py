"""Checks that an amount is one that the bench can mean, before any sum is made with it."""

from __future__ import annotations

import math

from binder_trade.limits import NotDefined

# A kilometre, a thousand tonnes, a million turns a minute: past that somebody slipped a unit.
_MOST = 1e6
_LEAST = 1e-6


def positive(value: float, says: str, most: float = _MOST) -> float:
    """The amount, more than nothing and at most `most`; raises NotDefined, which names it."""
    number = finite(value, says)
    if number <= 0:
        raise NotDefined(f"{says} must be more than nothing", f"give {says} as measured")
    if not _LEAST <= number <= most:
        raise NotDefined(
            f"{says} of {number:g} is outside {_LEAST:g} to {most:g}", "look at the unit"
        )
    return number


def not_negative(value: float, says: str, most: float = _MOST) -> float:
    """The amount, nothing or more and at most `most`; raises NotDefined, which names it."""
    number = finite(value, says)
    if number < 0:
        raise NotDefined(f"{says} cannot be less than nothing", f"give {says} without a sign")
    return 0.0 if number == 0 else positive(number, says, most)


def finite(value: float, says: str, most: float = _MOST) -> float:
    """The amount with either sign, within plus or minus `most`; raises NotDefined."""
    number = float(value)
    if not math.isfinite(number) or abs(number) > most:
        raise NotDefined(f"{says} is not a number that can be made", f"give {says} as measured")
    return number
