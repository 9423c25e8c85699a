"""Turns the sizes that inch threads are called by into millimetres, and back."""

from __future__ import annotations

import re
from fractions import Fraction
from typing import Final

from binder_trade.threads.basic import INCH

_CLOSE_MM: Final = 1e-4
_NUMBERED: Final = re.compile(r"no\. ([0-9]{1,2})")
_PIECE: Final = re.compile(r"[0-9]{1,2}(/[1-9][0-9]?)?")
_LARGEST_NUMBER: Final = 12


def size_mm(text: str) -> float | None:
    """The diameter in mm of `1 1/8` in or `no. 4` (0.060 + 0.013 N in, ASME B1.1)."""
    numbered = _NUMBERED.fullmatch(text)
    if numbered:
        return number_mm(int(numbered[1]))
    pieces = text.split()
    if not pieces or not all(_PIECE.fullmatch(piece) for piece in pieces):
        return None
    return float(sum((Fraction(piece) for piece in pieces), Fraction(0)) * Fraction("25.4"))


def number_mm(number: int) -> float | None:
    """The diameter in mm of a numbered size, 0 to 12 (ASME B1.1)."""
    if not 0 <= number <= _LARGEST_NUMBER:
        return None
    return float(Fraction(60 + 13 * number, 1000) * Fraction("25.4"))


def spoken(diameter_mm: float, finest: int = 64) -> str | None:
    """A diameter in mm as an inch size, `1 1/8`; None where it is no whole part of an inch."""
    parts = round(diameter_mm / INCH * finest)
    if not is_close(parts * INCH / finest, diameter_mm):
        return None
    whole, part = divmod(Fraction(parts, finest), 1)
    return " ".join(str(piece) for piece in (whole, part) if piece) or None


def spoken_number(diameter_mm: float) -> str | None:
    """A diameter in mm as the number of a numbered size, `4`; None where it is none."""
    number = round((diameter_mm / INCH * 1000 - 60) / 13)
    size = number_mm(number)
    return str(number) if size is not None and is_close(size, diameter_mm) else None


def is_close(one_mm: float, other_mm: float) -> bool:
    """Whether two sizes in mm are the same but for rounding."""
    return abs(one_mm - other_mm) < _CLOSE_MM
