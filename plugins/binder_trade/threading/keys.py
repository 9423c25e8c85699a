"""A thread to the keys under which the tables list it."""

from __future__ import annotations

import math
from fractions import Fraction

from binder_trade.threads import Thread

INCH = 25.4
UNIFIED = ("UNC", "UNF", "UNEF", "UNS")
_NUMBERED_BASE, _NUMBERED_STEP = 0.060, 0.013
_LARGEST_NUMBERED = 12
_SAME = 1e-4


def size_key(thread: Thread) -> str:
    """The size alone: `3`, `1/4`, `no. 4` of 4-40, `2` of 2 BA, pipe by its major mm."""
    if thread.family == "BA":
        # BS 93: the pitch is 0.9 to the power of the number, rounded to a hundredth.
        return str(round(math.log(thread.pitch_mm) / math.log(0.9)))
    if thread.family in ("metric", "BSP"):
        return f"{thread.major_mm:g}"
    inches = thread.major_mm / INCH
    number = (inches - _NUMBERED_BASE) / _NUMBERED_STEP
    if thread.family in UNIFIED and number < _LARGEST_NUMBERED + 0.5 and _is_whole(number):
        return f"no. {round(number)}"
    return _fraction(inches)


def thread_key(thread: Thread) -> str:
    """The size with its pitch in mm or its threads to the inch; a BA number needs neither."""
    if thread.family == "BA":
        return size_key(thread)
    pitch = f"{thread.pitch_mm:g}" if thread.tpi is None else str(thread.tpi)
    return f"{size_key(thread).removeprefix('no. ')}-{pitch}"


def _is_whole(number: float) -> bool:
    return number > -0.5 and abs(number - round(number)) < _SAME / _NUMBERED_STEP


def _fraction(inches: float) -> str:
    exact = Fraction(inches).limit_denominator(64)
    whole, rest = divmod(exact, 1)
    return f"{whole} {rest}" if whole and rest else str(rest or whole)
