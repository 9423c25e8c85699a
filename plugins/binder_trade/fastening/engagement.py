"""Two materials turned into the least length of thread that must hold between them.

The rule of thumb of the design press is used: 1 d in steel, 1.5 d in cast iron and brass, 2 d in
aluminium and plastics. Sources differ (one asks 1.5 d for steel too), so it is named with each
result. The softer of screw and tapped part decides.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Final

from binder_trade.explained import NotDefined, Step, positive
from binder_trade.fastening.steps import COMMON_PRACTICE, mm, step

CONVENTION: Final = "rule of thumb 1 d, 1.5 d, 2 d by the softer part; published rules differ"
LEAST_THREADS: Final = 3
LEAST_THREADS_UNDONE_OFTEN: Final = 5
_TIMES_D: Final[Mapping[str, float]] = {
    "carbon steel": 1.0,
    "alloy steel": 1.0,
    "tool steel": 1.0,
    "spring steel": 1.0,
    "stainless steel": 1.0,
    "titanium": 1.0,
    "cast iron": 1.5,
    "brass": 1.5,
    "bronze": 1.5,
    "copper": 1.5,
    "aluminium": 2.0,
    "magnesium": 2.0,
    "zinc alloy": 2.0,
    "plastic": 2.0,
    "laminate": 2.0,
}


@dataclass(frozen=True, slots=True)
class Engagement:
    """The least length of thread in mm, how many diameters that is, and which half decides."""

    least_mm: float
    times_d: float
    softer: str
    steps: tuple[Step, ...]
    convention: str = CONVENTION


def times_d(group: str) -> float:
    """Diameters of engagement that a group of materials asks for; raises NotDefined."""
    if group not in _TIMES_D:
        raise NotDefined(
            f"no machine thread holds in {group or 'an unknown material'}",
            "use a nut, an insert, or a wood screw",
        )
    return _TIMES_D[group]


def least_engagement(
    tapped_group: str,
    screw_group: str,
    major_mm: float,
    pitch_mm: float,
    *,
    is_undone_often: bool = False,
) -> Engagement:
    """The least engagement of a screw of this diameter and pitch in mm; raises NotDefined."""
    positive(major_mm, "a diameter")
    positive(pitch_mm, "a pitch")
    softer = max((tapped_group, screw_group), key=times_d)
    factor = times_d(softer)
    threads = LEAST_THREADS_UNDONE_OFTEN if is_undone_often else LEAST_THREADS
    by_rule, by_threads = factor * major_mm, threads * pitch_mm
    least = max(by_rule, by_threads)
    return Engagement(
        least,
        factor,
        softer,
        (
            step("by the softer half", f"{factor:g} d in {softer}", mm(by_rule), CONVENTION),
            step("never under", f"{threads} threads of {mm(pitch_mm)}", mm(by_threads)),
            step("least engagement", "the larger of both", mm(least), COMMON_PRACTICE),
        ),
    )
