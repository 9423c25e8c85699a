"""A pin in a straight slot, or an eccentric in its strap, to the motion of what it drives."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Final

from binder_trade.explained import NotDefined, Step, mm, positive
from binder_trade.mechanisms.crank_slider import CrankSlider, crank_slider

HARMONIC: Final = "x = r cos θ, harmonic motion"


@dataclass(frozen=True, slots=True)
class Yoke:
    """A scotch yoke: position in mm, speed in mm for a radian, acceleration in mm for a radian²."""

    crank_mm: float
    stroke_mm: float
    slot_mm: float
    steps: tuple[Step, ...]

    def at(self, angle_rad: float) -> tuple[float, float, float]:
        """Position from the middle, speed and acceleration at an angle of the crank in rad."""
        sine, cosine = math.sin(angle_rad), math.cos(angle_rad)
        return self.crank_mm * cosine, -self.crank_mm * sine, -self.crank_mm * cosine


@dataclass(frozen=True, slots=True)
class Eccentric:
    """An eccentric and strap, which move as a crank of its throw; mm."""

    throw_mm: float
    sheave_mm: float
    motion: CrankSlider
    steps: tuple[Step, ...]


def scotch_yoke(crank_mm: float, pin_mm: float) -> Yoke:
    """A pin on a crank in a slot square to the motion; mm. Source: `HARMONIC`."""
    radius, pin = positive(crank_mm, "the throw of the crank"), positive(pin_mm, "the pin")
    steps = (
        Step("stroke", "2 r", mm(2 * radius), HARMONIC),
        Step("slot at least", "2 r + pin", mm(2 * radius + pin), HARMONIC),
    )
    return Yoke(radius, 2 * radius, 2 * radius + pin, steps)


def eccentric(throw_mm: float, shaft_mm: float, rod_mm: float, rim_mm: float = 1.0) -> Eccentric:
    """The least sheave that holds its shaft with a rim left, and its motion; mm.

    The throw is the offset of the sheave from the shaft; the stroke is twice as much.
    """
    throw, shaft = positive(throw_mm, "the throw"), positive(shaft_mm, "the shaft")
    rim = positive(rim_mm, "the rim left beside the shaft")
    least = 2 * throw + shaft + 2 * rim
    if positive(rod_mm, "the rod") <= least / 2:
        raise NotDefined(
            "the rod ends inside its own strap", f"take one longer than {least / 2:g} mm"
        )
    step = Step("sheave at least", "2 throw + shaft + 2 rim", mm(least), "geometry of circles")
    motion = crank_slider(throw, rod_mm)
    return Eccentric(throw, least, motion, (step, *motion.steps))
