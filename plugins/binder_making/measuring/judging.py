"""A size with limits to the owned instrument that can judge it, or to what to do instead.

Source: uncertainty at most a tenth of the tolerance, a fifth acceptable (the rule of ten,
common practice); limits drawn in by the uncertainty after ISO 14253-1 (from memory).
"""

from __future__ import annotations

import math
from collections.abc import Iterable
from dataclasses import dataclass
from enum import StrEnum
from typing import Final

from binder_trade.explained import NotDefined

GOOD: Final = 10
FAIR: Final = 5
_SAME: Final = 1e-9


class Grade(StrEnum):
    """How well an instrument judges a size."""

    GOOD = "good"
    FAIR = "fair"
    NONE = "none"


@dataclass(frozen=True, slots=True)
class Instrument:
    """What an instrument measures (`outside`, `inside`, `depth`, …), from where to where.

    In mm. `uncertainty_mm` is how far a reading may be off; left out, the step that it reads.
    """

    name: str
    measures: tuple[str, ...]
    low_mm: float
    high_mm: float
    resolution_mm: float
    uncertainty_mm: float | None = None

    @property
    def doubt_mm(self) -> float:
        """What is held against the tolerance; mm."""
        return self.resolution_mm if self.uncertainty_mm is None else self.uncertainty_mm


@dataclass(frozen=True, slots=True)
class Verdict:
    """The instrument to take and how well it judges; None where none can.

    A reading between `accept_least_mm` and `accept_most_mm` is within the limits for certain.
    `ratio` is the tolerance over the doubt.
    """

    instrument: Instrument | None
    grade: Grade
    ratio: float
    accept_least_mm: float
    accept_most_mm: float
    why: str


def judge(lower_mm: float, upper_mm: float, way: str, owned: Iterable[Instrument]) -> Verdict:
    """The instrument for a size with limits, measured `way`.

    Of those that are good the coarsest is taken, which is the quickest; else the finest where
    it is fair. Raises `NotDefined` where the limits cross.
    """
    if not (math.isfinite(lower_mm) and math.isfinite(upper_mm)) or lower_mm > upper_mm:
        raise NotDefined("the limits cross", "give the lower limit first")
    width = upper_mm - lower_mm
    reaching = sorted(
        (one for one in owned if way in one.measures and _reaches(one, lower_mm, upper_mm)),
        key=lambda one: (one.doubt_mm, one.resolution_mm, one.high_mm, one.name),
    )
    good = [one for one in reaching if one.doubt_mm * GOOD <= width + _SAME]
    if good:
        # Of steps alike the shorter range is the surer: a micrometer before a caliper.
        quick = next(one for one in good if one.doubt_mm == good[-1].doubt_mm)
        return _verdict(quick, Grade.GOOD, lower_mm, upper_mm)
    if reaching and reaching[0].doubt_mm * FAIR <= width + _SAME:
        return _verdict(reaching[0], Grade.FAIR, lower_mm, upper_mm)
    why = f"no instrument that measures {way} reaches this size"
    if reaching:
        why = f"the finest, {reaching[0].name}, is off by up to {reaching[0].doubt_mm:g} mm"
    instead = "make a plug to size" if way == "inside" else "try it with its mate"
    ratio = width / reaching[0].doubt_mm if reaching and reaching[0].doubt_mm else 0.0
    return Verdict(None, Grade.NONE, ratio, lower_mm, upper_mm, f"{why}: {instead}")


def _reaches(one: Instrument, lower_mm: float, upper_mm: float) -> bool:
    return one.low_mm <= lower_mm + _SAME and upper_mm <= one.high_mm + _SAME


def _verdict(one: Instrument, grade: Grade, lower_mm: float, upper_mm: float) -> Verdict:
    width, doubt = upper_mm - lower_mm, one.doubt_mm
    ratio = width / doubt if doubt else math.inf
    words = "" if grade is Grade.GOOD else ", read it twice"
    why = f"{one.name} may be off by {doubt:g} mm of a tolerance of {width:.3g} mm{words}"
    drawn_in = min(doubt, width / 2)
    return Verdict(one, grade, ratio, lower_mm + drawn_in, upper_mm - drawn_in, why)
