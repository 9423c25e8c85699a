"""Turns a size, a pitch and a number of starts into a screw that moves, and its nut."""

from __future__ import annotations

import math
from dataclasses import dataclass
from functools import cache
from typing import Any, Final, Literal

from binder.api import load_data
from binder_trade.explained import NotDefined, Step, mm, positive, within

Hand = Literal["right", "left"]
_INCH: Final = 25.4
TRAPEZOIDAL: Final = "ISO 2901, ISO 2904"
ACME: Final = "ASME B1.5, general purpose"
SQUARE: Final = "no standard in force; textbook proportions"
METRIC: Final = "ISO 68-1"


@dataclass(frozen=True, slots=True)
class Leadscrew:
    """A screw and its nut in mm, before any tolerance.

    `flank_deg` is the angle of the flank to a plane square to the axis, `pitch_diameter_mm`
    where the load is taken to bear. `is_listed` says that the standard lists the size, not
    only the form.
    """

    form: str
    major_mm: float
    pitch_mm: float
    starts: int
    hand: Hand
    flank_deg: float
    pitch_diameter_mm: float
    minor_mm: float
    nut_major_mm: float
    nut_minor_mm: float
    is_listed: bool
    source: str

    @property
    def lead_mm(self) -> float:
        """Travel of the nut for one turn; mm."""
        return self.pitch_mm * self.starts

    @property
    def lead_angle_deg(self) -> float:
        """Slope of the thread at the pitch diameter; degrees."""
        return math.degrees(math.atan(self.lead_mm / (math.pi * self.pitch_diameter_mm)))

    @property
    def steps(self) -> tuple[Step, ...]:
        """How the sizes follow from the form."""
        return (
            Step("lead", "starts × pitch", mm(self.lead_mm), self.source),
            Step("pitch diameter", "by the form", mm(self.pitch_diameter_mm), self.source),
            Step("screw, bottom of the thread", "by the form", mm(self.minor_mm), self.source),
            Step("bore of the nut", "by the form", mm(self.nut_minor_mm), self.source),
            Step("lead angle", "atan(lead / π d2)", f"{self.lead_angle_deg:.2f}°", self.source),
        )


def trapezoidal(
    major_mm: float, pitch_mm: float, starts: int = 1, hand: Hand = "right"
) -> Leadscrew:
    """A metric trapezoidal screw (30°); mm. Raises NotDefined below 1.5 mm of pitch.

    Source: ISO 2901 (d2 = d − 0.5 P, d3 = d − P − 2 ac, D4 = d + 2 ac, D1 = d − P); the list
    of sizes is that of ISO 2902.
    """
    d, p, n = _size(major_mm, pitch_mm, starts)
    crest = crest_clearance(p)
    return Leadscrew(
        form="trapezoidal",
        major_mm=d,
        pitch_mm=p,
        starts=n,
        hand=hand,
        flank_deg=15.0,
        pitch_diameter_mm=d - 0.5 * p,
        minor_mm=_left(d - p - 2 * crest),
        nut_major_mm=d + 2 * crest,
        nut_minor_mm=d - p,
        is_listed=p in _rows("sizes").get(d, ()),
        source=TRAPEZOIDAL,
    )


def crest_clearance(pitch_mm: float) -> float:
    """The clearance ac of a trapezoidal thread; mm. Source: ISO 2901."""
    if 1.5 <= pitch_mm <= 44:
        return next(float(ac) for top, ac in _rows("clearance").items() if pitch_mm <= top)
    raise NotDefined(
        f"ISO 2901 has no trapezoidal thread of {pitch_mm:g} mm pitch",
        "take a pitch of 1.5 to 44 mm, or a metric thread",
    )


def acme(major_in: float, tpi: float, starts: int = 1, hand: Hand = "right") -> Leadscrew:
    """An Acme screw (29°) from its size in inches and threads per inch; sizes in mm.

    Source: ASME B1.5 (depth P/2; 0.020 in on the diameter at crest and root up to 10 threads
    per inch, 0.010 in above). Basic sizes, without the allowance of a class.
    """
    rate = positive(tpi, "the threads per inch")
    d, p, n = _size(major_in * _INCH, _INCH / rate, starts)
    play = (0.020 if rate <= 10 else 0.010) * _INCH
    return Leadscrew(
        form="Acme",
        major_mm=d,
        pitch_mm=p,
        starts=n,
        hand=hand,
        flank_deg=14.5,
        pitch_diameter_mm=d - p / 2,
        minor_mm=_left(d - p - play),
        nut_major_mm=d + play,
        nut_minor_mm=d - p,
        is_listed=False,
        source=ACME,
    )


def square(major_mm: float, pitch_mm: float, starts: int = 1, hand: Hand = "right") -> Leadscrew:
    """A square screw, half a pitch deep; mm. Source: textbook proportions, d1 = d − P."""
    d, p, n = _size(major_mm, pitch_mm, starts)
    return Leadscrew(
        form="square",
        major_mm=d,
        pitch_mm=p,
        starts=n,
        hand=hand,
        flank_deg=0.0,
        pitch_diameter_mm=d - p / 2,
        minor_mm=_left(d - p),
        nut_major_mm=d,
        nut_minor_mm=d - p,
        is_listed=False,
        source=SQUARE,
    )


def vee(major_mm: float, pitch_mm: float, starts: int = 1, hand: Hand = "right") -> Leadscrew:
    """A metric screw (60°) that moves, as in a small jack; mm. Source: ISO 68-1."""
    d, p, n = _size(major_mm, pitch_mm, starts)
    return Leadscrew(
        form="metric",
        major_mm=d,
        pitch_mm=p,
        starts=n,
        hand=hand,
        flank_deg=30.0,
        pitch_diameter_mm=d - 0.649519 * p,
        minor_mm=_left(d - 1.226869 * p),
        nut_major_mm=d,
        nut_minor_mm=d - 1.082532 * p,
        is_listed=False,
        source=METRIC,
    )


def _size(major: float, pitch: float, starts: int) -> tuple[float, float, int]:
    d, p = positive(major, "the diameter of the screw"), positive(pitch, "the pitch")
    return d, p, int(within(starts, 1, 12, "the number of starts"))


def _left(minor: float) -> float:
    if minor > 0:
        return minor
    raise NotDefined("the thread is deeper than the screw is thick", "take a finer pitch")


@cache
def _rows(table: str) -> dict[float, Any]:
    return {float(k): v for k, v in _data()[table]["rows"].items()}


def _data() -> dict[str, Any]:
    data: dict[str, Any] = load_data("binder_trade.slides", "trapezoidal.yaml")
    return data


def turns_for(screw: Leadscrew, travel_mm: float) -> float:
    """Turns of the screw for a travel of the nut in mm."""
    return positive(travel_mm, "the travel") / screw.lead_mm
