"""Dividing by the dial of a rotary table: each place as turns and marks, and how far it is off."""

from __future__ import annotations

import math
from dataclasses import dataclass
from fractions import Fraction
from typing import Final

from binder_trade.explained import NotDefined, Step, within
from binder_trade.gears.trains.ratio import exact

RULE: Final = "each place from zero, to the nearest mark, so that errors do not add up"
_MOST: Final = 1000


@dataclass(frozen=True, slots=True)
class Setting:
    """One place: its angle, whole turns of the handwheel, marks on its dial, and what it is off."""

    number: int
    angle_deg: float
    turns: int
    marks: int
    off_deg: float


@dataclass(frozen=True, slots=True)
class Dial:
    """All places of a division by the dial; degrees."""

    divisions: int
    turn_deg: float
    mark_deg: float
    settings: tuple[Setting, ...]
    worst_deg: float
    steps: tuple[Step, ...]

    def worst_mm(self, diameter_mm: float) -> float:
        """How far from its place the worst one is on a diameter; mm."""
        return math.radians(self.worst_deg) * diameter_mm / 2


def dial(divisions: int, ratio: int, mark_deg: Fraction) -> Dial:
    """The settings for so many places on a table of a ratio, whose dial has marks in degrees.

    Each is reckoned from the first place. Raises NotDefined for a dial that does not close.
    Source: exact fractions.
    """
    within(divisions, 1, _MOST, "a number of divisions")
    within(ratio, 1, 1000, "the ratio of the table")
    mark = exact(mark_deg, "a mark of the dial")
    within(float(mark), 1e-4, 30, "a mark of the dial", "°")
    turn = Fraction(360, ratio)
    round_of = turn / mark
    if round_of.denominator != 1:
        raise NotDefined(
            f"a turn of {float(turn):g}° is no whole number of marks of {float(mark):g}°",
            "read what one mark is from the dial and its turn",
        )
    settings = tuple(_setting(at, divisions, mark, int(round_of)) for at in range(divisions))
    worst = max(abs(each.off_deg) for each in settings)
    steps = (
        Step("a turn", "360° / ratio", f"{float(turn):g}°", RULE),
        Step("marks to the turn", "turn / mark", f"{round_of}", RULE),
        Step("worst place", "mark − angle", f"{worst * 60:.2f}′", RULE),
    )
    return Dial(divisions, float(turn), float(mark), settings, worst, steps)


def _setting(at: int, divisions: int, mark: Fraction, round_of: int) -> Setting:
    angle = Fraction(360 * at, divisions)
    marks = math.floor(angle / mark + Fraction(1, 2))
    turns, rest = divmod(marks, round_of)
    return Setting(at + 1, float(angle), turns, rest, float(marks * mark - angle))
