"""A function and two ends that its answer lies between to the answer."""

from __future__ import annotations

from collections.abc import Callable
from typing import Final

_HALVINGS: Final = 200


def root_between(sought: Callable[[float], float], low: float, high: float) -> float:
    """Where `sought` is nothing between two ends, to the last figure of a float.

    By halving, so that no start can lead it astray. Raises ValueError where both ends lie on
    one side of nothing.
    """
    at_low, at_high = sought(low), sought(high)
    if at_low == 0:
        return low
    if at_high == 0:
        return high
    if (at_low > 0) == (at_high > 0):
        raise ValueError(f"no root between {low:g} and {high:g}")
    for _ in range(_HALVINGS):
        middle = (low + high) / 2
        if middle in {low, high}:
            break
        if (sought(middle) > 0) == (at_high > 0):
            high = middle
        else:
            low = middle
    return (low + high) / 2
