"""What a length is chosen for: what it passes through, what it goes into, and what came of it."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from typing import Final

from binder_trade.explained import NotDefined, Step, not_negative, positive

NEAR_ENOUGH: Final = 1e-6  # mm; an inch length is no whole number of a binary fraction


@dataclass(frozen=True, slots=True)
class Grip:
    """What a screw passes before its thread takes hold, in mm.

    `plate_mm` is the thickness of all that is held, `sunk_mm` how far the seat of the head lies
    below the plate's face, `washer_mm` the washers under the head, `point_mm` the end that
    carries no full thread. The length of a countersunk screw is counted over its head, so its
    `sunk_mm` is nothing when the head lies flush.
    """

    plate_mm: float
    sunk_mm: float = 0.0
    washer_mm: float = 0.0
    point_mm: float = 0.0

    @property
    def length_mm(self) -> float:
        """From the seat of the head to the joint face."""
        return self.plate_mm - self.sunk_mm + self.washer_mm


@dataclass(frozen=True, slots=True)
class TappedHole:
    """Full thread that is there, in mm; in a through hole the screw may reach the far face.

    `may_stand_out_mm` is how far the screw's end may show beyond a through hole.
    """

    full_thread_mm: float
    pitch_mm: float
    is_through: bool = False
    may_stand_out_mm: float = 0.0


@dataclass(frozen=True, slots=True)
class Length:
    """A length that serves, in mm: chosen, what it holds by, and what is left beyond it.

    `spare_mm` is what is left of the hole, or what stands out where below nothing; `cut_to_mm`
    the length that it is cut down to, None for one used as sold.
    """

    chosen_mm: float
    engagement_mm: float
    spare_mm: float
    why: str
    steps: tuple[Step, ...]
    cut_to_mm: float | None = None


@dataclass(frozen=True, slots=True)
class NoLength:
    """No length sold serves: why not, what would, and the nearest that are sold, in mm."""

    reason: str
    ways_out: tuple[str, ...]
    nearest_mm: tuple[float, ...]
    steps: tuple[Step, ...]


def checked_grip(grip: Grip) -> Grip:
    """The grip, if its figures make sense; raises NotDefined."""
    positive(grip.plate_mm, "a grip")
    for value, what in (
        (grip.sunk_mm, "a counterbore"),
        (grip.washer_mm, "a washer"),
        (grip.point_mm, "a point"),
    ):
        not_negative(value, what)
    if grip.sunk_mm >= grip.plate_mm:
        raise NotDefined("the head is sunk through the plate", "sink it less, or thicken the plate")
    return grip


def sold(lengths: Iterable[float]) -> list[float]:
    """The lengths sold, shortest first; raises NotDefined where there is none."""
    found = sorted({positive(length, "a length") for length in lengths})
    if not found:
        raise NotDefined("no length is listed", "give a length, or cut one from a longer screw")
    return found


def neighbours(lengths: list[float], wanted_mm: float) -> tuple[float, ...]:
    """The nearest sold below and above a length."""
    below = [length for length in lengths if length <= wanted_mm + NEAR_ENOUGH]
    above = [length for length in lengths if length > wanted_mm + NEAR_ENOUGH]
    return (*below[-1:], *above[:1])
