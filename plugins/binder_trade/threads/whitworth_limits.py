"""Turns a thread of Whitworth form and a class such as medium into its limits of size."""

from __future__ import annotations

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

_SOURCE: Final = "BS 84"
_SCREWS: Final = {"close": (2 / 3, 0.013), "medium": (1.0, 0.02), "free": (1.5, 0.02)}
_NUTS: Final = {"medium": 1.0, "normal": 1.5}
_LARGEST_WITH_ALLOWANCE: Final = 0.75
_BORROWED: Final = ("ME", "brass")


def whitworth_limits(thread: Thread, cls: str | None, *, is_internal: bool) -> ThreadLimits:
    """The limits in mm of a thread of Whitworth form (BS 84, uncoated, engaged one diameter).

    The effective and major tolerances are the standard's; the tolerance of the cores and the
    allowance of 0.3 of the medium tolerance up to 3/4 in are from memory. ME and brass have
    no standard and borrow them. Raises NotDefined for a class that is none.
    """
    cls = cls or "medium"
    medium = effective_tolerance_in(thread)
    convention = _convention(thread)
    if is_internal:
        if cls not in _NUTS:
            raise no_class(thread, cls, tuple(_NUTS))
        given = Tolerances(0.0, _NUTS[cls] * medium * INCH, minor=_bore_in(thread) * INCH)
        return nut_limits(thread, cls, given, _SOURCE, convention)
    if cls not in _SCREWS:
        raise no_class(thread, cls, tuple(_SCREWS))
    return screw_limits(thread, cls, _of_screw(thread, cls, medium), _SOURCE, convention)


def effective_tolerance_in(thread: Thread) -> float:
    """The medium tolerance of the effective diameter, in inches, engaged one diameter (BS 84)."""
    major, pitch = thread.major_mm / INCH, thread.pitch_mm / INCH
    return 0.002 * cbrt(major) + 0.003 * sqrt(major) + 0.005 * sqrt(pitch)


def _of_screw(thread: Thread, cls: str, medium: float) -> Tolerances:
    times, of_core = _SCREWS[cls]
    root = sqrt(thread.pitch_mm / INCH)
    has_allowance = cls != "close" and thread.major_mm <= _LARGEST_WITH_ALLOWANCE * INCH
    return Tolerances(
        allowance=0.3 * medium * INCH if has_allowance else 0.0,
        effective=times * medium * INCH,
        major=(times * medium + 0.01 * root) * INCH,
        minor=(times * medium + of_core * root) * INCH,
    )


def _bore_in(thread: Thread) -> float:
    """The tolerance of the nut's bore in inches."""
    pitch = thread.pitch_mm / INCH
    count = round(1 / pitch)
    extra = 0.004 if count >= 26 else 0.005 if count >= 22 else 0.007
    return 0.2 * pitch + extra


def _convention(thread: Thread) -> str:
    if thread.family in _BORROWED:
        return f"no standard has limits for {thread.family}; those of BS 84 are borrowed"
    return "uncoated, engaged one diameter; allowance and cores from memory"
