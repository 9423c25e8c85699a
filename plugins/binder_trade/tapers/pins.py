"""Turns a taper pin into the ends of its hole and the drill that comes before the reamer."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from typing import Final

from binder_trade.explained import NotDefined, Step, mm, positive
from binder_trade.tapers.taper import Taper, from_ratio

METRIC: Final = "ISO 2339, 1 : 50, sized at the small end"
INCH: Final = "ASME B18.8.2, 1 : 48, sized at the large end"
SHAFT_RULE: Final = "a cross pin takes a third of the shaft at most (common practice)"
_METRIC_RATIO: Final = 50.0
_INCH_RATIO: Final = 48.0


@dataclass(frozen=True, slots=True)
class PinHole:
    """A taper pin and the hole it needs; mm. `cone` has the ends over the pin's length."""

    cone: Taper
    system: str
    steps: tuple[Step, ...]


def metric_pin(small_mm: float, length_mm: float) -> PinHole:
    """The hole of a metric taper pin, whose name is its small end; mm. Source: ISO 2339."""
    cone = from_ratio(_METRIC_RATIO, length_mm, small_mm=positive(small_mm, "the pin"))
    return PinHole(cone, "1:50", (Step("large end", "d + L / 50", mm(cone.large_mm), METRIC),))


def inch_pin(large_mm: float, length_mm: float) -> PinHole:
    """The hole of an inch taper pin, whose number means its large end; mm.

    Source: ASME B18.8.2 (small end = large end − 0.02083 L; 0.2083 in some prints is a slip).
    """
    cone = from_ratio(_INCH_RATIO, length_mm, large_mm=positive(large_mm, "the pin"))
    return PinHole(cone, "1:48", (Step("small end", "D − L / 48", mm(cone.small_mm), INCH),))


def drill_for(pin: PinHole, drills_mm: Iterable[float]) -> float:
    """The largest owned drill that does not pass the small end; mm.

    Raises NotDefined where the nearest leaves the reamer more than a tenth of the diameter.
    Source: the small end is drilled, the reamer does the rest (common practice).
    """
    small = pin.cone.small_mm
    under = [each for each in drills_mm if 0 < each <= small + 1e-9]
    if under and max(under) >= 0.9 * small:
        return max(under)
    raise NotDefined(
        "no drill that is owned is just under the small end of the pin",
        f"a drill of {0.9 * small:.2f} to {small:.2f} mm serves",
    )


def largest_for_shaft(shaft_mm: float) -> float:
    """The thickest cross pin that a shaft bears, a third of it; mm. Common practice."""
    return positive(shaft_mm, "the shaft") / 3


def mixed(first: PinHole, second: PinHole) -> bool:
    """Whether pin and hole, or pin and reamer, are of two systems and hold at one end only."""
    return first.system != second.system
