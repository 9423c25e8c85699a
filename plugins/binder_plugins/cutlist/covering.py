"""Turns a need and the bars in stock into the least number and length of bars that cover it."""

from __future__ import annotations

from collections.abc import Sequence
from math import gcd

from binder_plugins.cutlist.problem import Kind

Stock = tuple[int | None, ...]


def bars_to_cover(kinds: Sequence[Kind], stock: Stock, need: int) -> int:
    """The fewest bars with so much capacity together: the largest first, while there are any."""
    bars = 0
    for capacity, count in sorted(
        ((kind.capacity, count) for kind, count in zip(kinds, stock, strict=True)),
        key=lambda pair: -pair[0],
    ):
        if need <= 0 or capacity == 0:
            break
        wanted = -(-need // capacity)
        taken = wanted if count is None else min(count, wanted)
        bars, need = bars + taken, need - taken * capacity
    return bars


def length_to_buy(kinds: Sequence[Kind], stock: Stock, need: int) -> int:
    """No less has to be bought: what owned bars leave, at the best rate, in whole steps.

    A step is the greatest common divisor of the lengths on offer.
    """
    for kind, count in zip(kinds, stock, strict=True):
        need -= kind.capacity * (count or 0)
    buyable = [kind for kind in kinds if kind.count is None and kind.capacity]
    if need <= 0 or not buyable:
        return 0
    length = min(-(-need * kind.price // kind.capacity) for kind in buyable)
    step = gcd(*(kind.price for kind in buyable))
    return -(-length // step) * step


def dropped(weights: Sequence[int], missing: int) -> int:
    """How many of the weights, heaviest first, must go for the missing room to be made up."""
    count = 0
    while missing > 0 and count < len(weights):
        missing -= weights[count]
        count += 1
    return count
