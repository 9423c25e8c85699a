"""How a kind of joint reads and is done, apart from any one joint."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Meeting:
    """A kind of joint: `says` completes "A ... B", `step` says what is done with {a} and {b}.

    `group` is fit, fixing or drive. `first` is the position of the half that is made first
    (1 or 2, 0 where neither is), `why` the reason in ten words at most, `why_bought` that where
    this half is bought or salvaged, so that nobody cuts it; where it is `through`, the order
    holds only for halves that are made through one another. A lasting joint cannot be taken
    apart; one with heat brings a flame to its parts; one that `shares` leaves its surface to a
    fit as well, as a seal does. Where the step is done otherwise with a hole named first, or with
    a turned end first, `step_of_hole` and `step_of_end` say it, `step_of_ends` where both ends go
    into parts alike, `step_of_drilled` where both were drilled together before, and
    `step_of_wood` where wood glue alone holds them.
    """

    says: str
    group: str
    step: str
    step_of_hole: str = ""
    step_of_end: str = ""
    step_of_ends: str = ""
    step_of_drilled: str = ""
    step_of_wood: str = ""
    first: int = 0
    why: str = ""
    why_bought: str = ""
    through: bool = False
    lasting: bool = False
    shares: bool = False
    heat: bool = False
