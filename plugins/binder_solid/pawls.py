"""A straight pawl as it stands to its ratchet wheel, and how its nose is filed to it."""

from __future__ import annotations

from dataclasses import dataclass

from binder.api import Fact
from binder_trade.gears.stopping.noses import PawlNose, RatchetSpace


@dataclass(frozen=True, slots=True)
class PawlFact(Fact):
    """A straight pawl beside its wheel, in mm; the subject is the pawl.

    `reach` is from its pin to the end of the nose, which is the `end` left or right, and `half`
    from the pin across to the `side` towards the wheel, front or back; the bar is `across` wide
    there. `root` and `outside` are radii of the wheel; `nose` says how the end is filed.
    """

    joint: str
    wheel: str
    teeth: int
    outside: float
    root: float
    reach: float
    half: float
    across: float
    end: str
    side: str
    space: RatchetSpace
    nose: PawlNose
