"""Dividing plates: names of plates to their circles of holes."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from functools import cache
from typing import Any

from binder.api import load_data
from binder_trade.explained import NotDefined, within

Plates = Mapping[str, Sequence[int]]


@cache
def plates_sold(as_set: str) -> dict[str, tuple[int, ...]]:
    """The plates of a set as sold, each with its circles. Raises NotDefined for another."""
    sold: dict[str, Any] = load_data("binder_trade.gears", "plates.yaml")["plates"]
    if as_set not in sold:
        raise NotDefined(f"no plates '{as_set}' are kept here", f"these are: {', '.join(sold)}")
    return {name: tuple(circles) for name, circles in sold[as_set].items()}


def circles(plates: Plates) -> tuple[int, ...]:
    """All circles of the plates, fewest holes first, each once."""
    for holes in (each for row in plates.values() for each in row):
        within(holes, 1, 2000, "a circle of holes")
    return tuple(sorted({holes for row in plates.values() for holes in row}))
