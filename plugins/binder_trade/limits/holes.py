"""A hole's letter and grade to the limit that the letter fixes."""

from __future__ import annotations

from binder_trade.explained import NotDefined
from binder_trade.limits.bands import Band, is_up_to
from binder_trade.limits.deviation import BELOW_NOMINAL, Deviation, halves, published, source_of
from binder_trade.limits.figures import plain, signed, term
from binder_trade.limits.tables import table
from binder_trade.limits.tolerances import is_finer_or

_FIRST_BAND_MM = 3
_TO_EIGHT = ("K", "M", "N")  # these take the delta to grade 8, P to ZC to grade 7


def hole_deviation(nominal_mm: float, letter: str, grade: str) -> Deviation:
    """The fundamental deviation of a hole A to ZC, in µm, for a size in mm.

    A to H mirror the shaft; K, M, N to grade 8 and P to ZC to grade 7 mirror it and add delta.

    Raises:
        NotDefined: the standard has no such class at that size.

    Source: ISO 286-1:2010 tables 2 and 3.
    """
    if letter == "JS":
        return halves(nominal_mm, letter, grade)
    if letter == "J":
        return _j(nominal_mm, grade)
    value, band = published(nominal_mm, letter)
    if letter.lower() in BELOW_NOMINAL:
        formula = f"EI = −es of {letter.lower()} = {signed(value)}"
        return Deviation("lower", value, band, formula, source_of(letter))
    return _above(nominal_mm, letter, grade, value, band)


def _above(nominal_mm: float, letter: str, grade: str, value: float, band: Band) -> Deviation:
    source = source_of(letter)
    if letter in ("K", "N") and not is_finer_or(grade, "8"):
        return _coarse(nominal_mm, letter, band, source)
    if (letter, grade) == ("M", "6") and (band.over_mm, band.up_to_mm) == (250, 315):
        formula = "ES = −9: the standard's exception, where mirror and Δ would give −11"
        return Deviation("upper", -9, band, formula, source)
    if is_up_to(nominal_mm, _FIRST_BAND_MM) or not is_finer_or(grade, _last_with_delta(letter)):
        formula = f"ES = −ei of {letter.lower()} = {signed(-value)}"
        return Deviation("upper", 0 - value, band, formula, source)
    delta = delta_um(nominal_mm, letter, grade)
    formula = f"ES = −ei of {letter.lower()} + Δ = {plain(0 - value)} {term(delta)}"
    return Deviation("upper", delta - value, band, formula, source, delta)


def _last_with_delta(letter: str) -> str:
    return "8" if letter in _TO_EIGHT else "7"


def delta_um(nominal_mm: float, letter: str, grade: str) -> float:
    """What is added to the mirrored shaft, in µm: IT of the grade less IT of the one below it.

    Raises:
        NotDefined: a grade finer than 3, for which the standard gives none.

    Source: ISO 286-1:2010 table 3.
    """
    rows = table("delta")
    if grade not in rows.rows:
        raise NotDefined(
            f"{letter}{grade} is not defined over {_FIRST_BAND_MM} mm: Δ begins with grade 3",
            f"use {letter}3 or coarser",
        )
    value, _ = rows.read(grade, nominal_mm)
    return float(value or 0)


def _coarse(nominal_mm: float, letter: str, band: Band, source: str) -> Deviation:
    """K and N coarser than grade 8, which no longer mirror the shaft."""
    if letter == "K" and not is_up_to(nominal_mm, _FIRST_BAND_MM):
        raise NotDefined(
            f"K coarser than grade 8 is defined only up to {_FIRST_BAND_MM} mm",
            "use K8 or finer, or JS",
        )
    if letter == "N" and is_up_to(nominal_mm, 1):
        raise NotDefined("N coarser than grade 8 is not used up to 1 mm", "use N8 or finer")
    value = -4 if letter == "N" and is_up_to(nominal_mm, _FIRST_BAND_MM) else 0
    return Deviation("upper", value, band, f"ES = {signed(value)} coarser than grade 8", source)


def _j(nominal_mm: float, grade: str) -> Deviation:
    rows = table("j_holes")
    if grade not in rows.rows:
        raise NotDefined(f"there is no J{grade}: J has the grades 6 to 8", f"use JS{grade}")
    value, band = rows.read(grade, nominal_mm)
    return Deviation("upper", float(value or 0), band, f"ES = {signed(value or 0)}", source_of("J"))
