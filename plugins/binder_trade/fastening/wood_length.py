"""What is held and the wood behind it turned into the length of a wood screw."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Final

from binder_trade.explained import positive
from binder_trade.fastening.reach import (
    NEAR_ENOUGH,
    Grip,
    Length,
    NoLength,
    checked_grip,
    sold,
)
from binder_trade.fastening.screw_length import SHORT, STANDS_OUT, Judged
from binder_trade.fastening.steps import mm, step

WANTED_DIAMETERS: Final = 4.0
LEAST_DIAMETERS: Final = 3.0
LEFT_MM: Final = 1.0
_SHARE_SOURCE: Final = "two thirds rule, as read in public woodworking notes"


def choose_wood_screw(
    lengths: Iterable[float], grip: Grip, wood_mm: float, diameter_mm: float
) -> Length | NoLength:
    """The shortest wood screw with two thirds of it, and 4 d at least, in the wood; in mm.

    It stays 1 mm short of the wood's far face. Where the wood is too thin for that, the
    longest that stays inside is taken if it holds by 3 d. Raises NotDefined. The figures of
    4 d, 3 d and 1 mm are common practice, no source.
    """
    known, held = sold(lengths), checked_grip(grip).length_mm
    least = held + max(2 * held, WANTED_DIAMETERS * positive(diameter_mm, "a screw"))
    most = held + positive(wood_mm, "a thickness of wood") - LEFT_MM
    steps = (
        step("grip", "plate − sunk + washers", mm(held)),
        step("shortest", "two thirds in the wood, 4 d at least", mm(least), _SHARE_SOURCE),
        step("longest", "grip + wood − 1 mm", mm(most)),
    )
    inside = [length for length in known if length <= most + NEAR_ENOUGH]
    good = [length for length in inside if length >= least - NEAR_ENOUGH]
    holding = [one for one in inside if one - held >= LEAST_DIAMETERS * diameter_mm - NEAR_ENOUGH]
    if not good and not holding:
        return NoLength(
            f"no wood screw sold holds in {mm(wood_mm)} of wood behind {mm(held)}",
            ("use a bolt through the wood", "use a thinner screw", "sink the head"),
            (known[0],),
            steps,
        )
    chosen = good[0] if good else holding[-1]
    share = (chosen - held) / chosen
    why = f"{share:.0%} of it in the wood"
    if not good:
        why = f"only {why}: the wood is too thin for two thirds"
    return Length(chosen, chosen - held, held + wood_mm - chosen, why, steps)


def judge_wood_screw(length_mm: float, grip: Grip, wood_mm: float, diameter_mm: float) -> Judged:
    """What a wood screw of this length does in wood this thick; mm; raises NotDefined."""
    inside = positive(length_mm, "a length") - checked_grip(grip).length_mm
    left = positive(wood_mm, "a thickness of wood") - inside
    faults = []
    if left < LEFT_MM - NEAR_ENOUGH:
        faults.append(STANDS_OUT)
    if inside < LEAST_DIAMETERS * positive(diameter_mm, "a screw") - NEAR_ENOUGH:
        faults.append(SHORT)
    return Judged(length_mm, max(0.0, inside), left, tuple(faults))
