"""The limit that a letter fixes, and what holes and shafts have in common in finding it."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from binder_trade.explained import NotDefined
from binder_trade.limits.bands import Band, is_up_to
from binder_trade.limits.tables import Table, shaft_table
from binder_trade.limits.tolerances import tolerance_and_band

End = Literal["upper", "lower", "both"]

BELOW_NOMINAL = ("a", "b", "c", "cd", "d", "e", "ef", "f", "fg", "g", "h")  # the shafts a to h
HALVED = "an odd tolerance is halved exactly (2010 edition; that of 1988 let IT7 to IT11 round it)"
_INSTEAD = {"t": "u", "v": "x", "y": "z", "cd": "c or d", "ef": "e or f", "fg": "f or g"}


@dataclass(frozen=True, slots=True)
class Deviation:
    """The limit that a letter fixes, in µm from the nominal size.

    `end` says which limit it is ("both": so far above as below), `formula` how it comes about,
    `delta_um` what is added to the mirrored shaft, if anything.
    """

    end: End
    value_um: float
    band: Band
    formula: str
    source: str
    delta_um: float | None = None


def halves(nominal_mm: float, letter: str, grade: str) -> Deviation:
    """The deviation of js and JS: half of the tolerance each way (ISO 286-1:2010 tables 2, 4).

    An odd tolerance is halved exactly, as the 2010 edition has it. In µm.
    """
    tolerance, band = tolerance_and_band(nominal_mm, grade)
    source = f"{source_of(letter)}; {HALVED}"
    return Deviation("both", tolerance / 2, band, f"± IT{grade} / 2", source)


def published(nominal_mm: float, letter: str) -> tuple[float, Band]:
    """How far a shaft's nearer limit lies from the nominal size, in µm, and the band of sizes.

    `letter` may be that of the hole which mirrors the shaft.

    Raises:
        NotDefined: the standard has no value for the size in mm.
    """
    rows = shaft_table(letter.lower())
    value, band = rows.read(letter.lower(), nominal_mm)
    if letter.lower() in ("a", "b") and is_up_to(nominal_mm, 1):
        raise NotDefined(f"{letter} is not used up to 1 mm", f"use {_cased('c', letter)}")
    if value is None:
        raise _empty(rows, letter, nominal_mm)
    return value, band


def source_of(letter: str) -> str:
    """The published table that has the fundamental deviation of a letter."""
    is_hole, low = letter.isupper(), letter.lower()
    if low in ("cd", "ef", "fg"):
        return f"ISO 286-1:1988 table {3 if is_hole else 2}"
    if is_hole:
        return f"ISO 286-1:2010 table {2 if low[0] <= 'm' else 3}"
    return f"ISO 286-1:2010 table {4 if low[0] <= 'j' else 5}"


def _empty(rows: Table, letter: str, nominal_mm: float) -> NotDefined:
    begins = rows.begins_mm(letter.lower())
    where = (
        f"not defined up to {begins:g} mm"
        if is_up_to(nominal_mm, begins)
        else f"given only up to {rows.ends_at_mm(letter.lower()):g} mm (edition of 1988)"
    )
    return NotDefined(f"{letter} is {where}", f"use {_cased(_INSTEAD[letter.lower()], letter)}")


def _cased(words: str, letter: str) -> str:
    if letter.islower():
        return words
    return " or ".join(word.upper() for word in words.split(" or "))
