"""A thread and its metal to the length that must be engaged."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Final

from binder_trade.explained import NotDefined, Step, positive
from binder_trade.threading.fittings import FITTING_THREADS, is_fitting
from binder_trade.threading.metals import Metal, metal
from binder_trade.threads import Thread

LEAST_THREADS: Final = 3
LEAST_THREADS_SERVICED: Final = 5
_H28: Final = "FED-STD-H28 / handbook, basic sizes"
_COMMON_PRACTICE: Final = "common practice, no source"


@dataclass(frozen=True, slots=True)
class Engagement:
    """How much full thread must be engaged, in mm, and the sums behind it.

    `wanted_mm` follows the rule of thumb, never below the least threads. `formula_mm` is the
    length at which the screw breaks before its thread strips, for metals of the strength ratio.
    """

    wanted_mm: float
    times_d: float
    formula_mm: float
    least_threads: int
    threads: float
    convention: str
    why: str
    steps: tuple[Step, ...]


def length_of_engagement(thread: Thread, strength_ratio: float = 1.0) -> float:
    """The length in mm at which the screw breaks before it strips, Le = 2 As ÷ (½ π d2).

    `strength_ratio` is the screw's tensile strength over the hole's: where the hole's metal is
    so much weaker that J is above 1, Le is multiplied by it. Raises `NotDefined` for a ratio
    that is not above nothing. Source: FED-STD-H28, handbook.
    """
    equal = 2 * thread.stress_area_mm2 / (0.5 * math.pi * thread.effective_mm)
    return equal * max(1.0, strip_ratio(thread, strength_ratio))


def strip_ratio(thread: Thread, strength_ratio: float = 1.0) -> float:
    """J: strength of the screw's thread in shear over that of the hole's, at basic sizes.

    Above 1 the hole strips first. Source: FED-STD-H28.
    """
    ratio = positive(strength_ratio, "a ratio of strengths")
    return ratio * _external_shear(thread, thread.minor_internal_mm) / _internal_shear(thread)


def strength_left(thread: Thread, drill_mm: float) -> float:
    """What part of the screw's strength in stripping is left over a hole of this diameter in mm.

    1 at the basic minor diameter of the nut. Raises `NotDefined` for a hole outside minor and
    effective diameter. Source: shear areas of FED-STD-H28.
    """
    hole = positive(drill_mm, "a hole")
    if not thread.minor_internal_mm - 1e-6 <= hole < thread.effective_mm:
        raise NotDefined(
            f"a hole of {hole:g} mm gives no thread to reckon {thread.designation} by",
            f"drill from {thread.minor_internal_mm:.3f} to below {thread.effective_mm:.3f} mm",
        )
    return _external_shear(thread, hole) / _external_shear(thread, thread.minor_internal_mm)


def engagement(
    thread: Thread,
    material: str,
    *,
    is_often_undone: bool = False,
    strength_ratio: float = 1.0,
) -> Engagement:
    """The length in mm to engage in a hole in this material.

    Rule of thumb: 1 D in steel, 1.5 D in cast iron and brass, 2 D in aluminium and plastic
    (taken for an unknown material too), never below 3 full threads, 5 where often undone; a
    fitting asks no more than 7 full threads. Le by formula stands beside it. Raises
    `NotDefined` as `length_of_engagement`.
    """
    kind = metal(material)
    times = kind.times_d if kind is not None else 2.0
    fewest = LEAST_THREADS_SERVICED if is_often_undone else LEAST_THREADS
    by_rule, by_count = times * thread.major_mm, fewest * thread.pitch_mm
    wanted = max(by_rule, by_count)
    formula = length_of_engagement(thread, strength_ratio)
    name = kind.name if kind is not None else "a material that is not known"
    why = f"{times:g} D in {name}" if by_rule >= by_count else f"{fewest} full threads"
    enough = FITTING_THREADS * thread.pitch_mm
    if is_fitting(thread) and enough < wanted:
        wanted, why = enough, f"{FITTING_THREADS} full threads hold a fitting"
    return Engagement(
        wanted_mm=wanted,
        times_d=times,
        formula_mm=formula,
        least_threads=fewest,
        threads=wanted / thread.pitch_mm,
        convention="rule of thumb by material; Le by formula beside it",
        why=why,
        steps=_steps(thread, kind, (by_rule, by_count, formula), fewest),
    )


def _steps(
    thread: Thread, kind: Metal | None, lengths: tuple[float, float, float], fewest: int
) -> tuple[Step, ...]:
    by_rule, by_count, formula = lengths
    source = kind.length_source if kind is not None else _COMMON_PRACTICE
    times = by_rule / thread.major_mm
    return (
        Step("by the material", f"{times:g} D", f"{by_rule:.2f} mm", source),
        Step("least threads", f"{fewest} P", f"{by_count:.2f} mm", _COMMON_PRACTICE),
        Step("screw breaks first at", "2 As ÷ (½ π d2), × J above 1", f"{formula:.2f} mm", _H28),
    )


def _external_shear(thread: Thread, hole_mm: float) -> float:
    """Area in mm² that a millimetre of the screw's thread shears over, where the nut begins."""
    slope = math.tan(math.radians(thread.form.angle_deg / 2))
    ridge = 0.5 + slope * (thread.effective_mm - hole_mm) / thread.pitch_mm
    return math.pi * hole_mm * ridge


def _internal_shear(thread: Thread) -> float:
    """Area in mm² that a millimetre of the nut's thread shears over, at the screw's crests."""
    slope = math.tan(math.radians(thread.form.angle_deg / 2))
    ridge = 0.5 + slope * (thread.major_mm - thread.effective_mm) / thread.pitch_mm
    return math.pi * thread.major_mm * ridge
