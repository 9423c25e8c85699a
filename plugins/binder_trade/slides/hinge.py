"""Turns a pin into the proportions of a knuckle, and a width into the knuckles of a hinge."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

from binder_trade.explained import NotDefined, Step, mm, not_negative, positive, within

KNUCKLE: Final = "textbook proportions of a knuckle joint (from memory)"
PRACTICE: Final = "common practice, no source"


@dataclass(frozen=True, slots=True)
class Knuckle:
    """An eye in a fork on a pin; mm, diametral clearance on the pin."""

    pin_mm: float
    bore_mm: float
    eye_outside_mm: float
    eye_thick_mm: float
    fork_cheek_mm: float
    fork_gap_mm: float
    steps: tuple[Step, ...]


def knuckle(pin_mm: float, clearance_mm: float = 0.05, side_float_mm: float = 0.1) -> Knuckle:
    """The proportions from the pin: eye 2 d across, 1.25 d thick, cheeks 0.75 d; mm.

    Source: textbook proportions (from memory); the clearances are common practice.
    """
    pin = positive(pin_mm, "the pin")
    bore = pin + not_negative(clearance_mm, "the clearance on the pin")
    gap = 1.25 * pin + not_negative(side_float_mm, "the side float")
    return Knuckle(
        pin,
        bore,
        2 * pin,
        1.25 * pin,
        0.75 * pin,
        gap,
        (
            Step("eye across", "2 d", mm(2 * pin), KNUCKLE),
            Step("eye thick", "1.25 d", mm(1.25 * pin), KNUCKLE),
            Step("each cheek of the fork", "0.75 d", mm(0.75 * pin), KNUCKLE),
            Step("gap of the fork", "eye + side float", mm(gap), PRACTICE),
        ),
    )


@dataclass(frozen=True, slots=True)
class Hinge:
    """The knuckles of a hinge; mm: each one's width and the gaps of both leaves."""

    knuckles: int
    knuckle_mm: float
    gap_mm: float
    barrel_mm: float
    corner_gap_mm: float
    steps: tuple[Step, ...]


def hinge(width_mm: float, pin_mm: float, knuckles: int = 3, play_mm: float = 0.1) -> Hinge:
    """Knuckles of one width across a hinge, `play_mm` between neighbours; mm.

    `corner_gap_mm` is what a leaf's edge keeps from the middle of the pin so that the
    neighbour's barrel (twice the pin) turns past it. Raises NotDefined for an even number
    under two, or where the play eats the width. Source: common practice.
    """
    width, pin = positive(width_mm, "the width of the hinge"), positive(pin_mm, "the pin")
    count = int(within(knuckles, 2, 99, "the number of knuckles"))
    play = not_negative(play_mm, "the play between knuckles")
    each = (width - (count - 1) * play) / count
    if each <= 0:
        raise NotDefined(
            f"{count} knuckles do not go into {width:g} mm", "take fewer knuckles or less play"
        )
    gap, corner = each + 2 * play, pin + play
    return Hinge(
        count,
        each,
        gap,
        2 * pin,
        corner,
        (
            Step("each knuckle", "(width − (n − 1) play) / n", mm(each), PRACTICE),
            Step("gap for a knuckle", "knuckle + 2 play", mm(gap), PRACTICE),
            Step("leaf's edge from the pin's middle", "barrel / 2 + play", mm(corner), PRACTICE),
        ),
    )
