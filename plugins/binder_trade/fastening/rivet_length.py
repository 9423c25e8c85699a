"""Grip and rivet turned into the length to buy, and what to cut it to."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from typing import Final

from binder_trade.explained import NotDefined, positive
from binder_trade.fastening.reach import NEAR_ENOUGH, Length, NoLength, sold
from binder_trade.fastening.steps import COMMON_PRACTICE, mm, step

# Diameters of shank that each kind of closed head takes.
_ALLOWANCE: Final[Mapping[str, float]] = {"snap": 1.5, "countersunk": 1.0}
_SOURCES: Final[Mapping[str, str]] = {
    "snap": "1.5 d, as read in a rivet maker's public notes",
    "countersunk": COMMON_PRACTICE,
}
LEAST_COUNTERSUNK: Final = 0.8


def rivet_allowance(closed_head: str) -> float:
    """Diameters of shank that form a head: snap 1.5, countersunk 0.8 to 1 (1 is taken)."""
    if closed_head not in _ALLOWANCE:
        known = " or ".join(_ALLOWANCE)
        raise NotDefined(f"no allowance is known for a {closed_head} head", f"say {known}")
    return _ALLOWANCE[closed_head]


def choose_rivet(
    lengths: Iterable[float], grip_mm: float, diameter_mm: float, closed_head: str = "snap"
) -> Length | NoLength:
    """The rivet sold that reaches, and the length to cut it to before closing; in mm.

    Raises NotDefined. A surplus of a tenth of the shank is left as it is (common practice,
    no source).
    """
    known, allowance = sold(lengths), rivet_allowance(closed_head)
    tail = allowance * positive(diameter_mm, "a rivet")
    wanted = positive(grip_mm, "a grip") + tail
    steps = (
        step("to form the head", f"{allowance:g} d", mm(tail), _SOURCES[closed_head]),
        step("rivet before closing", "grip + allowance", mm(wanted)),
    )
    good = [length for length in known if length >= wanted - NEAR_ENOUGH]
    if not good:
        return NoLength(
            f"the longest sold, {mm(known[-1])}, forms no full {closed_head} head",
            (f"cut {mm(wanted)} of wire of the same metal and close both ends",),
            (known[-1],),
            steps,
        )
    surplus = good[0] - wanted
    cut_to = wanted if surplus > diameter_mm / 10 + NEAR_ENOUGH else None
    why = f"{allowance:g} d left to form the {closed_head} head"
    return Length(good[0], grip_mm, -tail, why, steps, cut_to)
