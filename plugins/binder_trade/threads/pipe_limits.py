"""Turns a parallel pipe thread into its limits of size."""

from __future__ import annotations

from dataclasses import replace
from typing import Any, Final

from binder.api import load_data
from binder_trade.explained import NotDefined
from binder_trade.threads.inches import size_mm
from binder_trade.threads.limit_sizes import (
    ThreadLimits,
    Tolerances,
    no_class,
    nut_limits,
    screw_limits,
)
from binder_trade.threads.thread import Thread

_SOURCE: Final = "ISO 228-1"
_CONVENTION: Final = "the core of a screw is left to the tool; table from memory"


def pipe_limits(thread: Thread, cls: str | None, *, is_internal: bool) -> ThreadLimits:
    """The limits in mm of a pipe thread G, class A or B (ISO 228-1; nuts have one class).

    Raises NotDefined for a class that is none.
    """
    effective, major, minor = (figure / 1000 for figure in _row(thread))
    cls = cls or "A"
    if cls not in {"A", "B"} or (is_internal and cls == "B"):
        raise no_class(thread, cls, ("A",) if is_internal else ("A", "B"))
    if is_internal:
        return nut_limits(thread, cls, Tolerances(0.0, effective, minor=minor), _SOURCE)
    times = 2 if cls == "B" else 1
    given = Tolerances(0.0, times * effective, major=major)
    return replace(screw_limits(thread, cls, given, _SOURCE, _CONVENTION), minor_min=None)


def _row(thread: Thread) -> Any:  # noqa: ANN401 - the shape is the table's own
    size = thread.designation.removeprefix("G ").removesuffix(" LH")
    asked = size_mm(size) or 0.0
    for up_to, *figures in load_data("binder_trade.threads", "iso228.yaml")["rows"]:
        if asked <= (size_mm(up_to) or 0.0):
            return figures
    raise NotDefined(f"no tolerance is tabled for {thread.designation}", "use G 1/16 to G 6")
