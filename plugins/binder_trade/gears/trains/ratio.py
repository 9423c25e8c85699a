"""A ratio, pitch or gearing as asked for, to an exact fraction of a size that can be reckoned."""

from __future__ import annotations

import math
from fractions import Fraction
from typing import Final

from binder_trade.explained import NotDefined

_LEAST: Final = Fraction(1, 10**6)
_MOST: Final = Fraction(10**6)
_BITS: Final = 256


def exact(value: Fraction | float, what: str) -> Fraction:
    """The value as a fraction above nothing; NotDefined for any other, and for endless digits.

    A float stands for just what it is in binary: 0.1 is not a tenth, `Fraction("0.1")` is.
    """
    if isinstance(value, float) and not math.isfinite(value):
        raise NotDefined(f"{what} of no size", f"give {what} as a figure")
    found = Fraction(value)
    if not _LEAST <= found <= _MOST:
        raise NotDefined(
            f"{what} is not above nothing and within a millionth to a million",
            f"give {what} in that range; an idler reverses",
        )
    if found.denominator.bit_length() > _BITS:
        raise NotDefined(f"{what} has too many digits", "round it")
    return found
