"""Turns a unified thread of class 2A or 2B into its limits of size."""

from __future__ import annotations

from dataclasses import replace
from math import cbrt, sqrt
from typing import Final

from binder_trade.threads.basic import INCH
from binder_trade.threads.limit_sizes import (
    ThreadLimits,
    Tolerances,
    no_class,
    nut_limits,
    screw_limits,
)
from binder_trade.threads.thread import Thread

_SOURCE: Final = "ASME B1.1"
_NINE_PITCHES: Final = ("UNEF", "UNS")
_QUARTER: Final = 0.25
# The least root of a screw lies this much below the least effective diameter.
_LEAST_ROOT: Final = 0.649519


def unified_limits(thread: Thread, cls: str | None, *, is_internal: bool) -> ThreadLimits:
    """The limits in mm of a unified thread, from the formulas of ASME B1.1.

    Raises NotDefined for other classes than 2A and 2B.
    """
    cls = cls or ("2B" if is_internal else "2A")
    effective = effective_tolerance_in(thread) * INCH
    if cls == "2B":
        given = Tolerances(0.0, 1.3 * effective, minor=_minor_tolerance_in(thread) * INCH)
        return nut_limits(thread, cls, given, _SOURCE, _convention(thread))
    if cls != "2A":
        raise no_class(thread, cls, ("2A", "2B"))
    major = 0.060 * cbrt(thread.pitch_mm / INCH) ** 2 * INCH
    given = Tolerances(0.3 * effective, effective, major=major)
    screw = screw_limits(thread, cls, given, _SOURCE, _convention(thread))
    return replace(screw, minor_min=screw.effective_min - _LEAST_ROOT * thread.pitch_mm)


def effective_tolerance_in(thread: Thread) -> float:
    """The class 2A tolerance of the effective diameter, in inches (ASME B1.1).

    Engagement is one diameter for the coarse and fine series and nine pitches for the others.
    """
    major, pitch = thread.major_mm / INCH, thread.pitch_mm / INCH
    engaged = 9 * pitch if thread.family in _NINE_PITCHES else major
    return 0.0015 * cbrt(major) + 0.0015 * sqrt(engaged) + 0.015 * cbrt(pitch) ** 2


def _minor_tolerance_in(thread: Thread) -> float:
    """The class 2B tolerance of the nut's bore in inches; below 1/4 in the form is from memory."""
    major, pitch = thread.major_mm / INCH, thread.pitch_mm / INCH
    least = 0.25 * pitch - 0.4 * pitch**2
    if major >= _QUARTER:
        return least
    small = 0.05 * cbrt(pitch) ** 2 + 0.03 * pitch / major - 0.002
    return min(max(small, least), 0.394 * pitch)


def _convention(thread: Thread) -> str:
    engaged = "nine pitches" if thread.family in _NINE_PITCHES else "one diameter"
    return f"engagement of {engaged}; sizes are not rounded to 0.0001 in"
