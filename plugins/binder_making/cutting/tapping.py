"""A thread to whether it is tapped by hand or under power."""

from __future__ import annotations

from dataclasses import dataclass

from binder_making.cutting.group import Group
from binder_making.cutting.speed import cutting_speed, rpm
from binder_making.cutting.spindle import Speeds

_SMALL_MM = 3.0
_LARGE_MM = 10.0
_FASTEST = 1.1
_TOUGH = frozenset({"stainless steel", "tool steel", "titanium"})


@dataclass(frozen=True, slots=True)
class Tapping:
    """By hand, or under power at r/min; `why` says what decides."""

    by_hand: bool
    rpm: float
    why: str


def tapping(
    material: Group,
    diameter_mm: float,
    *,
    is_blind: bool,
    speeds: Speeds | None = None,
    reverses: bool = False,
) -> Tapping:
    """By hand, unless all speaks for power.

    That is a through hole, a machine that reverses and turns slowly enough, a size that
    neither breaks nor stalls, and a metal that cuts freely. Source: common practice, no source.
    """
    wanted = rpm(cutting_speed(material, "tap").mpm, diameter_mm)
    lowest = min(speeds.steps) if speeds and speeds.steps else 0.0
    reasons = (
        (is_blind, "a blind hole: the tap must be felt at the bottom"),
        (diameter_mm < _SMALL_MM, "so small a tap breaks before it is felt"),
        (diameter_mm > _LARGE_MM, "so large a tap stalls a small machine"),
        (material.name in _TOUGH, f"{material.name} grips the tap"),
        (not lowest or not reverses, "the machine does not reverse"),
        (lowest > _FASTEST * wanted, f"the machine's lowest, {lowest:g} r/min, is too fast"),
    )
    against = next((why for holds, why in reasons if holds), "")
    if against:
        return Tapping(by_hand=True, rpm=0.0, why=against)
    return Tapping(by_hand=False, rpm=lowest, why="a through hole at the lowest speed, with oil")
