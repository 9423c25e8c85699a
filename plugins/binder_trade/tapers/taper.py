"""Turns any two or three figures of a taper into all of it, with the settings of the lathe."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Final, Literal

from binder_trade.explained import NotDefined, Step, mm, not_negative, positive, within

Holding = Literal["holds", "may hold", "lets go"]
GEOMETRY: Final = "plane geometry of the cone"
JUDGEMENT: Final = "half angle against the friction angle, friction 0.06 oiled to 0.14 dry"
_INCH: Final = 25.4
_OILED: Final = 0.06
_DRY: Final = 0.14
# Over 60° a sine bar tells little: common practice, no source.
_STEEPEST_SINE: Final = 60.0


@dataclass(frozen=True, slots=True)
class Taper:
    """A cone in mm and degrees: both ends, its length, and the steps.

    `half_angle_deg` is what the topslide is set to, from the lathe's axis; `one_in` the
    length in which the diameter changes by one; `per_foot_in` inches in a foot.
    """

    large_mm: float
    small_mm: float
    length_mm: float
    one_in: float
    half_angle_deg: float
    steps: tuple[Step, ...]

    @property
    def included_deg(self) -> float:
        """The whole angle of the cone; degrees."""
        return 2 * self.half_angle_deg

    @property
    def per_foot_in(self) -> float:
        """Change of diameter in inches for a foot of length."""
        return 12 / self.one_in

    @property
    def holding(self) -> Holding:
        """Whether it grips by itself; see `holding`."""
        return holding(self.half_angle_deg)


def from_diameters(large_mm: float, small_mm: float, length_mm: float) -> Taper:
    """The taper between two diameters; mm. Raises NotDefined where the ends are alike.

    Source: geometry, 1 : L / (D − d).
    """
    large, small = positive(large_mm, "the large end"), not_negative(small_mm, "the small end")
    length = positive(length_mm, "the length of the taper")
    if large <= small:
        raise NotDefined("the large end is not larger than the small end", "exchange the two")
    return _taper(large, small, length, length / (large - small))


def from_ratio(
    one_in: float,
    length_mm: float,
    *,
    large_mm: float | None = None,
    small_mm: float | None = None,
) -> Taper:
    """The taper 1 : n from one end; mm. Raises NotDefined where nothing is left.

    Source: geometry, D − d = L / n.
    """
    ratio = within(one_in, 0.01, 10_000, "the taper (one in)")
    change = positive(length_mm, "the length of the taper") / ratio
    large, small = _ends(large_mm, small_mm, change)
    return _taper(large, small, length_mm, ratio)


def from_angle(
    half_angle_deg: float,
    length_mm: float,
    *,
    large_mm: float | None = None,
    small_mm: float | None = None,
) -> Taper:
    """The taper whose side stands at this angle to its axis; mm, degrees.

    Source: geometry, D − d = 2 L tan(half angle).
    """
    half = within(half_angle_deg, 0.001, 89, "the half angle", "°")
    return from_ratio(
        1 / (2 * math.tan(math.radians(half))), length_mm, large_mm=large_mm, small_mm=small_mm
    )


def _ends(large_mm: float | None, small_mm: float | None, change: float) -> tuple[float, float]:
    if (large_mm is None) == (small_mm is None):
        raise NotDefined("a taper starts from one of its ends", "give the large or the small end")
    if small_mm is not None:
        small = not_negative(small_mm, "the small end")
        return small + change, small
    large = positive(large_mm or 0.0, "the large end")
    if large - change >= -1e-9:
        return large, max(large - change, 0.0)
    raise NotDefined(
        f"the taper takes {change:.2f} mm off the diameter and the large end is {large:g} mm",
        "make it shorter or the taper finer",
    )


def _taper(large: float, small: float, length: float, one_in: float) -> Taper:
    half = math.degrees(math.atan(1 / (2 * one_in)))
    return Taper(
        large,
        small,
        length,
        one_in,
        half,
        (
            Step("large end", "D", mm(large), GEOMETRY),
            Step("small end", "d = D − L / n", mm(small), GEOMETRY),
            Step("taper", "1 : L / (D − d)", f"1 : {one_in:.3f}", GEOMETRY),
            Step("topslide", "atan((D − d) / 2 L)", f"{half:.3f}°", GEOMETRY),
        ),
    )


def holding(half_angle_deg: float) -> Holding:
    """Whether a cone of this half angle grips by itself; degrees.

    "holds" below the friction angle of oiled steel, "lets go" above that of dry steel. The
    frictions are common practice: Morse at 1.4° holds, 7:24 at 8.3° lets go.
    """
    slope = math.tan(math.radians(within(half_angle_deg, 0, 89, "the half angle", "°")))
    if slope <= _OILED:
        return "holds"
    return "may hold" if slope <= _DRY else "lets go"


def set_over(taper: Taper, between_centres_mm: float) -> float:
    """How far the tailstock moves across for work of this whole length; mm.

    Source: geometry, half of the taper over the whole length between centres.
    """
    return positive(between_centres_mm, "the length between centres") / (2 * taper.one_in)


def sine_packing(angle_deg: float, bar_mm: float) -> float:
    """The packing under one roller of a sine bar that stands at an angle; mm.

    `bar_mm` is between its rollers. Raises `NotDefined` for an angle that is none up to 60°,
    where the packing tells little of the angle any more. Source: geometry, L sin α.
    """
    if positive(angle_deg, "the angle") > _STEEPEST_SINE:
        raise NotDefined(
            f"a sine bar is not set to {angle_deg:g}°", "set up the other angle, from upright"
        )
    return positive(bar_mm, "the sine bar") * math.sin(math.radians(angle_deg))


def press_on(taper: Taper, interference_mm: float) -> float:
    """How far a cone goes on past the touch for an interference on diameter; mm.

    Source: geometry, n · δ for a taper 1 : n.
    """
    return not_negative(interference_mm, "the interference") * taper.one_in


def interference_at(taper: Taper, pressed_on_mm: float) -> float:
    """The interference on diameter that a push of so many mm gives; mm. Source: push / n."""
    return not_negative(pressed_on_mm, "the push") / taper.one_in
