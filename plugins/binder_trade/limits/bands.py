"""A nominal size to the band of sizes that the standard treats alike."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

from binder_trade.explained import NotDefined

LARGEST_MM = 500
_PLACES = 6  # a size reckoned to 3.0000000000000004 mm is 3 mm


@dataclass(frozen=True, slots=True)
class Band:
    """Sizes over one limit, up to and including the other, in mm; `column` is its place."""

    over_mm: float
    up_to_mm: float
    column: int

    def __str__(self) -> str:
        if not self.over_mm:
            return f"up to {self.up_to_mm:g} mm"
        return f"over {self.over_mm:g} up to {self.up_to_mm:g} mm"


def is_up_to(nominal_mm: float, bound_mm: float) -> bool:
    """Whether a size lies at or below a bound, to the millionth of a millimetre."""
    return round(nominal_mm, _PLACES) <= bound_mm


def require_size(nominal_mm: float) -> None:
    """Refuses a size in mm that no table of the standard up to 500 mm reaches.

    Raises:
        NotDefined: the size is no number, endless, nothing, negative or over 500 mm.
    """
    if nominal_mm <= 0:
        raise NotDefined("a size must be more than nothing", "give the nominal size in mm")
    if nominal_mm > LARGEST_MM and not is_up_to(nominal_mm, LARGEST_MM):
        raise NotDefined(
            f"these tables end at {LARGEST_MM} mm", "write the two limits of the size in figures"
        )
    if math.isnan(nominal_mm):
        raise NotDefined("the size is not a number", "give the nominal size in mm")


def band_of(nominal_mm: float, ends_mm: Sequence[float]) -> Band:
    """The band of a size in mm among bands named by their upper ends (ISO 286-1:2010, clause 4).

    Raises:
        NotDefined: the size is none that the tables reach.
    """
    require_size(nominal_mm)
    column = next(place for place, end in enumerate(ends_mm) if is_up_to(nominal_mm, end))
    return Band(ends_mm[column - 1] if column else 0, ends_mm[column], column)
