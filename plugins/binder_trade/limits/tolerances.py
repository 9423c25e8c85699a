"""A size and a grade to the standard tolerance IT of ISO 286-1."""

from __future__ import annotations

from math import cbrt, sqrt

from binder_trade.explained import NotDefined
from binder_trade.limits.bands import Band, band_of, is_up_to, require_size
from binder_trade.limits.quoted import shown
from binder_trade.limits.tables import table

GRADES = ("01", "0", *(str(number) for number in range(1, 19)))
_FIRST_COARSE = GRADES.index("14")


def require_grade(grade: str) -> None:
    """Refuses what is no grade of the standard.

    Raises:
        NotDefined: the grade is none of 01, 0, 1 to 18.
    """
    if grade not in GRADES:
        raise NotDefined(f"there is no grade {shown(grade)}", "the grades are 01, 0 and 1 to 18")


def is_finer_or(grade: str, than: str) -> bool:
    """Whether a grade is the other one or finer."""
    return GRADES.index(grade) <= GRADES.index(than)


def tolerance_and_band(nominal_mm: float, grade: str) -> tuple[float, Band]:
    """The tolerance in µm of a size in mm and a grade, and the band it stands in.

    Raises:
        NotDefined: no such size or grade, or a grade of 14 to 18 up to 1 mm.
    """
    require_grade(grade)
    require_size(nominal_mm)
    if GRADES.index(grade) >= _FIRST_COARSE and is_up_to(nominal_mm, 1):
        raise NotDefined(
            f"grade {grade} is not used up to 1 mm", "use grade 13 or finer, or write the limits"
        )
    value, band = table("tolerances").read(grade, nominal_mm)
    return float(value or 0), band


def tolerance_um(nominal_mm: float, grade: str) -> float:
    """The standard tolerance IT in µm of a nominal size in mm, over 0 to 500.

    Grades are "01", "0", "1" to "18". A size is taken to the millionth of a millimetre.

    Raises:
        NotDefined: no such size or grade, or a grade of 14 to 18 up to 1 mm.

    Source: ISO 286-1:2010 table 1; IT01 and IT0 ISO 286-1:1988 annex A table 5.
    """
    return tolerance_and_band(nominal_mm, grade)[0]


def tolerance_factor_um(nominal_mm: float) -> float:
    """The factor i in µm from which the standard's authors rounded the table, for a size in mm.

    It is the same for all sizes of a band; IT6 is about 10 i. The table outweighs it.

    Raises:
        NotDefined: no such size.

    Source: ISO 286-1:1988 annex A: i = 0.45 D^(1/3) + 0.001 D, D the geometric mean of the band
    in mm, for the first band of 1 and 3.
    """
    band = band_of(nominal_mm, table("tolerances").ends_mm)
    mean_mm = sqrt((band.over_mm or 1) * band.up_to_mm)
    return 0.45 * cbrt(mean_mm) + 0.001 * mean_mm
