"""The cup that forms, or carries, the round head of a rivet: the ball that the head is cut from."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

from binder_trade.explained import positive

# A snap head in diameters of the shank: BS 641, from memory; DIN 660:2012 rounds such figures.
_ACROSS: Final = 1.75
_HIGH: Final = 0.6
# The cup is so much shallower than the head, so that its rim does not mark the plate;
# common practice, no source.
_SHALLOWER: Final = 0.9


@dataclass(frozen=True, slots=True)
class Cup:
    """The diameter of the round-ended drill or ball that sinks it, and how deep it goes, in mm."""

    across: float
    deep: float


def rivet_cup(diameter_mm: float) -> Cup:
    """The cup for the snap head of a shank, in mm. Raises NotDefined where that is not positive."""
    shank = positive(diameter_mm, "a rivet")
    high, half = _HIGH * shank, _ACROSS * shank / 2
    return Cup(across=(half**2 + high**2) / high, deep=_SHALLOWER * high)
