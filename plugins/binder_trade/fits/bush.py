"""A bush that is pressed into its housing to the bore that is left, and what to do about it."""

from __future__ import annotations

from dataclasses import dataclass

from binder_trade.explained import NotDefined, Step, positive
from binder_trade.fits.cylinders import LAME, Joint
from binder_trade.fits.press import Grip, grip
from binder_trade.fits.printed import SUM, micrometres, millimetres

SINTERED_NIP_UM = (25.0, 50.0)
SINTERED_SOURCE = "workshop practice, 1 to 2 thou on 10 to 20 mm, as read in a public thread"
_LEAST_WALL_MM = 0.8
_LEAST_WALL_PART = 0.1
# Below this the closing is lost in the roundness of the bore: common practice, no source.
_FELT_MM = 0.002


@dataclass(frozen=True, slots=True)
class PressedBush:
    """A bush after pressing: its bore in mm, how much it closed in mm, and the advice."""

    grip: Grip
    bore_mm: float
    closes_mm: float
    advice: str
    steps: tuple[Step, ...]


def press_bush(made: Joint, interference_mm: float) -> PressedBush:
    """What a bush (the shaft of the joint, with its bore) becomes when it is pressed in.

    `interference_mm` on diameter. Raises NotDefined for a bush without a bore. Source: Lamé for
    the closing of the bore; advice is common practice.
    """
    if not made.bore_mm:
        raise NotDefined("a bush has a bore", "give the bore of the bush")
    pressed = grip(made, interference_mm)
    closes = pressed.bore_closes_mm
    left = made.bore_mm - closes
    formula = "2 × p × b ÷ (E × (1 − b²/d²))"
    steps = (
        *pressed.steps,
        Step("bore closes", formula, micrometres(closes * 1000), LAME),
        Step("bore left", "bore − closing", millimetres(left), SUM),
    )
    advice = bush_advice(closes, porous=made.shaft.porous)
    return PressedBush(pressed, left, closes, advice, steps)


def bush_advice(closes_mm: float, *, porous: bool, bored: bool = False) -> str:
    """What to do with a pressed bush whose bore closed by so many mm; common practice.

    A bush that is `bored` is bored again, since no reamer of its size is there.
    """
    if porous:
        return "never ream it: press it in on a mandrel, or size it with a ball"
    if closes_mm < _FELT_MM:
        return "press it in, then try the shaft"
    return f"press it in, then {'bore it to size there' if bored else 'ream it in line'}"


def is_sized_in_place(closes_mm: float, *, porous: bool) -> bool:
    """Whether a bush's bore gets its size after pressing, since it closes by so many mm."""
    return not porous and closes_mm >= _FELT_MM


def bush_wall_is_thin(bore_mm: float, outside_mm: float) -> bool:
    """Whether a bush would crush in pressing: its wall under a tenth of its bore, or 0.8 mm.

    Sizes in mm; raises NotDefined. Source: common practice, no source.
    """
    bore = positive(bore_mm, "the bore of the bush")
    wall = (positive(outside_mm, "the outside of the bush") - bore) / 2
    return wall < max(_LEAST_WALL_MM, _LEAST_WALL_PART * bore)
