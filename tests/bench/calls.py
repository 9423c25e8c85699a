"""A piece of work to the number of functions that it calls: the same on every machine."""

from __future__ import annotations

import sys
from collections.abc import Callable
from types import FrameType


def calls_of(work: Callable[[], object]) -> int:
    """How many functions are called, those written in C among them."""
    count = 0

    def seen(_frame: FrameType, event: str, _value: object) -> None:
        nonlocal count
        count += event in {"call", "c_call"}

    sys.setprofile(seen)
    try:
        work()
    finally:
        sys.setprofile(None)
    return count
