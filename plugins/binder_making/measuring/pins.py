"""Holes to what is read over pins in them, and between the points of dividers.

Source: geometry; chord of a circle D sin(π k/n). Wires in threads and pins in dovetails stand
in `binder_trade`.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from binder_trade.explained import NotDefined, positive

_MOST_HOLES = 1000


@dataclass(frozen=True, slots=True)
class Plugs:
    """A plug that must go in and one that must not; mm."""

    go_mm: float
    no_go_mm: float


def plugs(lower_mm: float, upper_mm: float) -> Plugs:
    """The two ends of a plug for a hole between two limits; mm.

    The gauge's own tolerance is left out: turn the go end a hair above the lower limit.
    """
    if positive(lower_mm, "the lower limit") > positive(upper_mm, "the upper limit"):
        raise NotDefined("the limits cross", "give the lower limit first")
    return Plugs(lower_mm, upper_mm)


def chord(pitch_circle_mm: float, holes: int, apart: int = 1) -> float:
    """The straight distance between hole centres of an equally spaced circle; mm."""
    positive(pitch_circle_mm, "the pitch circle")
    if not 2 <= holes <= _MOST_HOLES or not 1 <= apart < holes:
        raise NotDefined(f"{holes} holes have no chord {apart} apart", "two holes or more")
    return pitch_circle_mm * math.sin(math.pi * apart / holes)


def over_pins(pitch_circle_mm: float, holes: int, pin_mm: float) -> float:
    """The size over pins in the two holes that lie farthest apart; mm."""
    return chord(pitch_circle_mm, holes, holes // 2) + positive(pin_mm, "the pin")


def pitch_circle(over_mm: float, holes: int, pin_mm: float) -> float:
    """The pitch circle that a reading over two pins means; mm."""
    between = positive(over_mm - positive(pin_mm, "the pin"), "what is left between the pins")
    return between / chord(1.0, holes, holes // 2)


def over_two(centres_mm: float, pin_mm: float, other_mm: float) -> float:
    """The size over pins in two holes at this centre distance; mm."""
    pins = positive(pin_mm, "the pin") + positive(other_mm, "the other pin")
    return positive(centres_mm, "the centre distance") + pins / 2


def centres(over_mm: float, pin_mm: float, other_mm: float) -> float:
    """The centre distance that a reading over two pins means; mm."""
    pins = positive(pin_mm, "the pin") + positive(other_mm, "the other pin")
    return positive(over_mm - pins / 2, "what is left between the pins")
