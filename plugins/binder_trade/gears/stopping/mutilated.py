"""A gear with teeth left out: how far it moves its mate in a turn, and how long that rests."""

from __future__ import annotations

from dataclasses import dataclass
from math import gcd

from binder_trade.explained import NotDefined, Step, within


@dataclass(frozen=True, slots=True)
class Mutilated:
    """A driver that has `kept` of `full` teeth and its mate; degrees.

    `stations` is where the mate can stop in a turn; `repeats` after how many turns of the
    driver it is back where it was; it must be held while it rests.
    """

    full: int
    kept: int
    mate: int
    step_deg: float
    moving_deg: float
    resting_deg: float
    stations: int
    repeats: int
    steps: tuple[Step, ...]


def mutilated(full: int, kept: int, mate: int) -> Mutilated:
    """A gear of which `kept` neighbouring teeth are left; the mate moves so many teeth a turn.

    Raises NotDefined where no tooth, or no gap, is left. Source: counting of teeth.
    """
    for teeth in (full, mate):
        within(teeth, 6, 1000, "a number of teeth")
    if not 1 <= kept <= full - 2:
        raise NotDefined(
            f"{kept} of {full} teeth leave nothing to move or no rest", f"keep 1 to {full - 2}"
        )
    stations = mate // gcd(mate, kept)
    step, moving = 360 * kept / mate, 360 * kept / full
    return Mutilated(
        full,
        kept,
        mate,
        step,
        moving,
        360 - moving,
        stations,
        stations,
        (
            Step("mate's step", "360° × teeth kept / mate's teeth", f"{step:.3f}°", "counting"),
            Step("moves for", "360° × kept / full", f"{moving:.2f}° of the driver", "counting"),
            Step("stations", "z / gcd (z, kept)", f"{stations}", "counting"),
        ),
    )
