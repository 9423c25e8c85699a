"""Turns a metric thread and a class such as 6g or 5H into its limits of size."""

from __future__ import annotations

import re
from dataclasses import replace
from typing import Final

from binder_trade.threads.iso965 import (
    SOURCE,
    crest_tolerance_um,
    deviation_um,
    effective_tolerance_um,
)
from binder_trade.threads.limit_sizes import (
    ThreadLimits,
    Tolerances,
    no_class,
    nut_limits,
    screw_limits,
)
from binder_trade.threads.thread import Thread

_CLASS: Final = re.compile(r"([3-9])([efghGH])(?:([3-9])([efghGH]))?")
_KNOWN: Final = ("6g", "6h", "4g6g", "6H", "5H", "6G")
_THIN_MM: Final = 1.4
_FINEST_PITCH_MM: Final = 0.2
# The least root of a screw lies this much below the least effective diameter.
_LEAST_ROOT: Final = 0.616025


def metric_limits(thread: Thread, cls: str | None, *, is_internal: bool) -> ThreadLimits:
    """The limits in mm of a metric thread (ISO 965-1; least root of a screw ASME B1.13M).

    Raises NotDefined for a class or grade that the tables have not.
    """
    cls = cls or _usual(thread, is_internal=is_internal)
    found = _CLASS.fullmatch(cls)
    if not found:
        raise no_class(thread, cls, _KNOWN)
    grade, position, crest_grade, crest_position = found.groups()
    crest_grade, crest_position = crest_grade or grade, crest_position or position
    if crest_position != position:
        raise no_class(thread, cls, _KNOWN)
    return _of_class(thread, cls, (int(grade), int(crest_grade)), position)


def _usual(thread: Thread, *, is_internal: bool) -> str:
    """6g and 6H; to M1.4 6h and 5H; 4H and 5H where the finest pitches have no more."""
    is_thin = thread.major_mm <= _THIN_MM
    if not is_internal:
        return "6h" if is_thin else "6g"
    if thread.pitch_mm <= _FINEST_PITCH_MM:
        return "4H"
    return "5H" if is_thin or thread.pitch_mm <= 0.25 else "6H"


def _of_class(thread: Thread, cls: str, grades: tuple[int, int], position: str) -> ThreadLimits:
    is_internal = position.isupper()
    effective = effective_tolerance_um(thread, grades[0], is_internal=is_internal) / 1000
    crest = crest_tolerance_um(thread.pitch_mm, grades[1], is_internal=is_internal) / 1000
    allowance = abs(deviation_um(thread.pitch_mm, position)) / 1000
    given = Tolerances(allowance, effective, major=crest, minor=crest)
    if is_internal:
        return nut_limits(thread, cls, given, SOURCE)
    screw = screw_limits(thread, cls, given, SOURCE, "least root as ASME B1.13M has it")
    return replace(screw, minor_min=screw.effective_min - _LEAST_ROOT * thread.pitch_mm)
