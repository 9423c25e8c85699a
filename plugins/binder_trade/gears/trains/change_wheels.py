"""Change wheels: the train for a pitch from a leadscrew, and what its error comes to."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from fractions import Fraction
from typing import Final

from binder_trade.explained import Step, within
from binder_trade.gears.trains.clearing import Clearance
from binder_trade.gears.trains.ratio import exact
from binder_trade.gears.trains.search import Train, search

INCH_MM: Final = Fraction(127, 5)
RULE: Final = "drivers / driven = pitch / (leadscrew's pitch × fixed gearing)"


@dataclass(frozen=True, slots=True)
class Screw:
    """A screw cut by a train; mm, exact. `per_100_mm` is the error over 100 mm of thread."""

    train: Train
    pitch_mm: Fraction
    error_ppm: float
    per_100_mm: float
    steps: tuple[Step, ...]


@dataclass(frozen=True, slots=True)
class Transposing:
    """A pair of wheels that stands for 1.27, for inch screws on a metric lathe and back."""

    large: int
    small: int
    error_ppm: float
    per_100_mm: float


def pitch_of(tpi: Fraction | float) -> Fraction:
    """The exact pitch in mm of so many threads to the inch. Raises NotDefined for none."""
    return INCH_MM / exact(tpi, "a number of threads to the inch")


def screws(
    pitch_mm: Fraction,
    leadscrew_mm: Fraction,
    wheels: Iterable[int],
    *,
    fixed: Fraction | float = 1,
    sizes: Iterable[int] = (2, 4),
    keep: int = 5,
    clearance: Clearance | None = None,
) -> tuple[Screw, ...]:
    """The best trains for a pitch (of a start: its lead), best first; exact mm.

    `fixed` is the gearing that is always there, turns of the first driver for one of the
    spindle. Raises NotDefined for pitches of nothing. Source: drivers / driven.
    """
    pitch, leadscrew = exact(pitch_mm, "a pitch"), exact(leadscrew_mm, "a leadscrew's pitch")
    wanted = pitch / (leadscrew * exact(fixed, "the fixed gearing"))
    found = search(wanted, wheels, sizes=sizes, keep=keep, clearance=clearance)
    return tuple(_screw(each, pitch, wanted) for each in found.trains)


def _screw(train: Train, pitch: Fraction, wanted: Fraction) -> Screw:
    cut = pitch * train.ratio / wanted
    off = float(100 * train.error)
    return Screw(
        train,
        cut,
        train.error_ppm,
        off,
        (
            Step("gearing", "pitch / (leadscrew × fixed)", f"{wanted}", RULE),
            Step("train", "nearest of the wheels", train.name, "search of the wheels, exact"),
            Step("pitch cut", "leadscrew × fixed × train", f"{float(cut):.5f} mm", RULE),
            Step("error", "cut / wanted − 1", _signed(f"{train.error_ppm:+.0f} ppm"), RULE),
            Step("over 100 mm", "100 mm × error", _signed(f"{off:+.4f} mm"), RULE),
        ),
    )


def _signed(figure: str) -> str:
    return figure.replace("-", "−")


def transposing(most_teeth: int = 130, keep: int = 8) -> tuple[Transposing, ...]:
    """Pairs of wheels nearest to 1.27, each better than all of fewer teeth, best first.

    Source: 25.4 = 127 / 5; fractions in order of their denominators.
    """
    within(most_teeth, 20, 1000, "a number of teeth")
    found: list[Transposing] = []
    for small in range(15, int(most_teeth / 1.27) + 1):
        large = round(small * Fraction(127, 100))
        error = Fraction(large, small) / Fraction(127, 100) - 1
        if large <= most_teeth and (not found or abs(error) < abs(found[-1].error_ppm) / 1e6):
            found.append(Transposing(large, small, float(error * 1_000_000), float(100 * error)))
    return tuple(reversed(found))[:keep]
