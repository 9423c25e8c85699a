"""A nominal size and a tolerance class to the two limits of size."""

from __future__ import annotations

from dataclasses import dataclass

from binder_trade.limits.deviation import HALVED, Deviation
from binder_trade.limits.holes import hole_deviation
from binder_trade.limits.reading import read_class
from binder_trade.limits.shafts import shaft_deviation
from binder_trade.limits.tolerances import tolerance_um


@dataclass(frozen=True, slots=True)
class Limits:
    """The two limits of a hole or shaft: the size in mm, the deviations from it in µm."""

    nominal_mm: float
    cls: str
    is_hole: bool
    letter: str
    grade: str
    upper_um: float
    lower_um: float

    @property
    def upper_mm(self) -> float:
        """The largest size, in mm."""
        return self.nominal_mm + self.upper_um / 1000

    @property
    def lower_mm(self) -> float:
        """The smallest size, in mm."""
        return self.nominal_mm + self.lower_um / 1000

    @property
    def standard(self) -> str:
        """The standard behind the figures, and the convention where editions differ."""
        cited = "ISO 286-1:2010 and ISO 286-2:2010"
        return f"{cited}; {HALVED}" if self.letter in ("js", "JS") else cited


def deviation_of(nominal_mm: float, letter: str, grade: str) -> Deviation:
    """The limit that a letter fixes, in µm, for a hole (capitals) or a shaft.

    Raises:
        NotDefined: the standard has no such class at that size.
    """
    find = hole_deviation if letter.isupper() else shaft_deviation
    return find(nominal_mm, letter, grade)


def limits(nominal_mm: float, cls: str) -> Limits:
    """The limits of a class such as "H7" or "g6" for a size over 0 to 500 mm.

    Half of an odd tolerance of js and JS is kept exact, as the 2010 edition has it.

    Raises:
        NotDefined: the text is no class, or the standard does not have it at that size.

    Source: ISO 286-1:2010 tables 1 to 5; the results are those of ISO 286-2:2010.
    """
    letter, grade = read_class(cls)
    tolerance = tolerance_um(nominal_mm, grade)
    fixed = deviation_of(nominal_mm, letter, grade)
    upper, lower = _ends(fixed, tolerance)
    return Limits(float(nominal_mm), letter + grade, letter.isupper(), letter, grade, upper, lower)


def _ends(fixed: Deviation, tolerance: float) -> tuple[float, float]:
    if fixed.end == "both":
        return fixed.value_um, -fixed.value_um
    if fixed.end == "upper":
        return float(fixed.value_um), float(fixed.value_um - tolerance)
    return float(fixed.value_um + tolerance), float(fixed.value_um)
