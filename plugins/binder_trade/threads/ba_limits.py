"""Turns a BA thread and a class into its limits of size."""

from __future__ import annotations

from typing import Final

from binder_trade.threads.limit_sizes import (
    ThreadLimits,
    Tolerances,
    no_class,
    nut_limits,
    screw_limits,
)
from binder_trade.threads.thread import Thread

_SOURCE: Final = "BS 93"
_SCREWS: Final = ("normal", "close")
# 10 BA, the smallest with an allowance and a close class, is 0.35 mm.
_SMALLEST_USUAL_PITCH_MM: Final = 0.345


def ba_limits(thread: Thread, cls: str | None, *, is_internal: bool) -> ThreadLimits:
    """The limits in mm of a BA thread (BS 93). Raises NotDefined for a class that is none."""
    cls = cls or "normal"
    pitch = thread.pitch_mm
    if is_internal:
        if cls != "normal":
            raise no_class(thread, cls, ("normal",))
        given = Tolerances(0.0, 0.12 * pitch + 0.03, minor=0.375 * pitch)
        return nut_limits(thread, cls, given, _SOURCE, "all nuts are of one class")
    return screw_limits(thread, cls, _of_screw(thread, cls), _SOURCE)


def _of_screw(thread: Thread, cls: str) -> Tolerances:
    pitch = thread.pitch_mm
    is_usual = pitch > _SMALLEST_USUAL_PITCH_MM
    if cls == "close" and is_usual:
        return Tolerances(0.0, 0.08 * pitch + 0.02, 0.15 * pitch, 0.16 * pitch + 0.04)
    if cls != "normal":
        raise no_class(thread, cls, _SCREWS if is_usual else ("normal",))
    return Tolerances(
        allowance=0.025 if is_usual else 0.0,
        effective=0.10 * pitch + 0.025,
        major=(0.20 if is_usual else 0.25) * pitch,
        minor=0.20 * pitch + 0.05,
    )
