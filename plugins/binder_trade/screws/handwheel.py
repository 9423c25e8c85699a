"""A screw and its dial to travel for each turn and division; two screws to one slow travel."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Final, Literal

from binder_trade.explained import NotDefined, Step, amount, mm, positive, within
from binder_trade.fits.printed import figures

TRAVEL: Final = "travel = turns × lead"
DIFFERENTIAL: Final = "travel of a turn = difference of the leads (sum, with opposite hands)"
Hand = Literal["right", "left"]


@dataclass(frozen=True, slots=True)
class Handwheel:
    """Travel in mm for a turn and a division, and a travel as whole turns and divisions."""

    turn_mm: float
    division_mm: float
    divisions: int
    steps: tuple[Step, ...]

    def dialled(self, travel_mm: float) -> tuple[int, float]:
        """Whole turns, and divisions beyond them (not rounded), for a travel in mm."""
        turns, rest = divmod(positive(travel_mm, "the travel"), self.turn_mm)
        if math.isclose(rest, self.turn_mm):
            turns, rest = turns + 1, 0.0
        return int(turns), rest / self.division_mm


@dataclass(frozen=True, slots=True)
class DifferentialScrew:
    """Two threads on one spindle: travel of a turn in mm, and the force for a torque.

    A travel below nothing goes back: the finer thread is the driving one.
    """

    turn_mm: float
    steps: tuple[Step, ...]

    def force_n(self, torque_nmm: float, efficiency: float) -> float:
        """The force in N of a torque in N mm at an efficiency above nothing, up to one."""
        return screw_force(torque_nmm, abs(self.turn_mm), efficiency)


def handwheel(lead_mm: float, divisions: int, gear: float = 1.0) -> Handwheel:
    """Travel for a turn and a division; mm. `gear` is turns of the screw for one of the wheel.

    Raises NotDefined. Source: `TRAVEL`.
    """
    turn = positive(lead_mm, "the lead") * amount(gear, "the ratio of the wheel to the screw")
    count = int(within(divisions, 1, 1000, "the number of divisions"))
    steps = (
        Step("travel for a turn", f"lead × {gear:g}", mm(turn), TRAVEL),
        Step("travel for a division", f"turn / {count}", f"{turn / count:.4f} mm", TRAVEL),
    )
    return Handwheel(turn, turn / count, count, steps)


def best_dial(lead_mm: float, division_mm: float) -> tuple[int, float]:
    """Divisions of a dial for a wanted division, and what is over for each turn; mm."""
    lead, wanted = positive(lead_mm, "the lead"), positive(division_mm, "the division")
    count = max(1, round(lead / wanted))
    return count, lead - count * wanted


def moves_toward_hand(hand: Hand, *, screw_travels: bool) -> bool:
    """Whether a clockwise turn of the wheel draws the slide toward the hand that turns it.

    The screw has its collar at the wheel and its nut on the slide (`screw_travels` off), or
    its nut in the frame and goes along with the slide. Source: geometry of a helix.
    """
    # A right-hand screw that turns clockwise goes away from the hand; its nut comes nearer.
    return (hand == "right") != screw_travels


def screw_force(torque_nmm: float, lead_mm: float, efficiency: float) -> float:
    """The force in N of a torque on a screw: 2π T η / lead."""
    share = within(efficiency, 1e-3, 1, "the efficiency")
    torque = amount(torque_nmm, "the torque in N mm")
    return 2 * math.pi * torque * share / positive(lead_mm, "the lead")


def differential_screw(
    first_mm: float, second_mm: float, *, opposite_hands: bool = False
) -> DifferentialScrew:
    """Two leads on one spindle, the first in the frame, the second in what moves; mm a turn.

    Raises NotDefined where equal leads of one hand leave no travel. Source: `DIFFERENTIAL`.
    """
    one, two = positive(first_mm, "the first lead"), positive(second_mm, "the second lead")
    turn = one + two if opposite_hands else one - two
    if math.isclose(turn, 0.0, abs_tol=1e-9):
        raise NotDefined("two equal leads of one hand move nothing", "take two different pitches")
    sign = "+" if opposite_hands else "−"
    step = Step("travel for a turn", f"{one:g} {sign} {two:g}", figures(turn, "mm"), DIFFERENTIAL)
    return DifferentialScrew(turn, (step,))
