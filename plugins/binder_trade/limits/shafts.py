"""A shaft's letter and grade to the limit that the letter fixes."""

from __future__ import annotations

from binder_trade.explained import NotDefined
from binder_trade.limits.deviation import BELOW_NOMINAL, Deviation, halves, published, source_of
from binder_trade.limits.figures import signed
from binder_trade.limits.tables import table

_K_GRADES = ("4", "5", "6", "7")


def shaft_deviation(nominal_mm: float, letter: str, grade: str) -> Deviation:
    """The fundamental deviation of a shaft a to zc, in µm, for a size in mm.

    Raises:
        NotDefined: the standard has no such class at that size.

    Source: ISO 286-1:2010 tables 4 and 5.
    """
    if letter == "js":
        return halves(nominal_mm, letter, grade)
    if letter == "j":
        return _j(nominal_mm, grade)
    value, band = published(nominal_mm, letter)
    source = source_of(letter)
    if letter in BELOW_NOMINAL:
        return Deviation("upper", 0 - value, band, f"es = {signed(-value)}", source)
    if letter == "k" and grade not in _K_GRADES:
        return Deviation("lower", 0, band, "ei = 0: k lies off zero in grades 4 to 7 alone", source)
    return Deviation("lower", value, band, f"ei = {signed(value)}", source)


def _j(nominal_mm: float, grade: str) -> Deviation:
    rows = table("j_shafts")
    if grade not in rows.rows:
        raise NotDefined(f"there is no j{grade}: j has the grades 5 to 8", f"use js{grade}")
    value, band = rows.read(grade, nominal_mm)
    if value is None:
        end = rows.ends_at_mm(grade)
        raise NotDefined(f"j{grade} is defined only up to {end:g} mm", f"use js{grade}")
    return Deviation("lower", -value, band, f"ei = {signed(-value)}", source_of("j"))
