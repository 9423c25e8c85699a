"""Turns a thread and a tolerance class into its limits of size."""

from __future__ import annotations

from typing import Final

from binder_trade.threads.ba_limits import ba_limits
from binder_trade.threads.limit_sizes import ThreadLimits
from binder_trade.threads.metric_limits import metric_limits
from binder_trade.threads.pipe_limits import pipe_limits
from binder_trade.threads.thread import Thread
from binder_trade.threads.unified_limits import unified_limits
from binder_trade.threads.whitworth_limits import whitworth_limits

_BY_FAMILY: Final = {"metric": metric_limits, "BA": ba_limits, "BSP": pipe_limits}
_BY_ANGLE: Final = {60.0: unified_limits, 55.0: whitworth_limits}


def limits(thread: Thread, cls: str | None = None, *, is_internal: bool = False) -> ThreadLimits:
    """The limits of a thread in mm, of the usual class where none is stated.

    Usual are 6g and 6H (6h and 5H to M1.4), 2A and 2B, medium, normal for BA, A for pipe. A
    metric or unified class says itself whether the thread is internal. Raises NotDefined for
    a class that the thread's standard has not. Sources: ISO 965-1, ASME B1.1, BS 84, BS 93,
    ISO 228-1.
    """
    reckon = _BY_FAMILY.get(thread.family) or _BY_ANGLE[thread.form.angle_deg]
    return reckon(thread, cls, is_internal=is_internal)
