"""A roller chain to its sprocket: pitch circle, root, tips, seats and width (ISO 606)."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Final

from binder_trade.chains.roller import Chain, pitch_circle
from binder_trade.explained import NotDefined, Step, mm

ISO_606: Final = "ISO 606"
_LEAST: Final = 6
_FEW: Final = 17


@dataclass(frozen=True, slots=True)
class Sprocket:
    """A sprocket; mm, degrees. Seating and flanks are the mean of the standard's limits.

    `wobble` is how much the chain's speed rises and falls, as a part of its mean.
    """

    chain: Chain
    teeth: int
    pitch_mm: float
    root_mm: float
    outside_least_mm: float
    outside_most_mm: float
    outside_mm: float
    seat_radius_mm: float
    flank_radius_mm: float
    tooth_width_mm: float
    hub_most_mm: float
    wobble: float
    is_rough: bool
    steps: tuple[Step, ...]


def sprocket(of: Chain, teeth: int) -> Sprocket:
    """A sprocket for a roller chain; mm. Raises NotDefined under 6 teeth. Source: ISO 606."""
    if teeth < _LEAST:
        raise NotDefined(f"a roller chain does not run on {teeth} teeth", "take 9 or more")
    pitch, step, roller = pitch_circle(of.pitch_mm, teeth), of.pitch_mm, of.roller_mm
    least = pitch + step * (1 - 1.6 / teeth) - roller
    most = pitch + 1.25 * step - roller
    flank = (0.12 * (teeth + 2) + 0.008 * (teeth**2 + 180)) / 2 * roller
    seat = 0.505 * roller
    width = (0.93 if step <= 12.7 else 0.95) * of.inner_mm
    hub = step / math.tan(math.pi / teeth) - 2 * roller
    wobble = 1 - math.cos(math.pi / teeth)
    return Sprocket(
        of,
        teeth,
        pitch,
        pitch - roller,
        least,
        most,
        (least + most) / 2,
        seat,
        flank,
        width,
        max(0.0, hub),
        wobble,
        teeth < _FEW,
        (
            Step("pitch circle", "p / sin (180° / z)", mm(pitch), ISO_606),
            Step("root", "d − d₁", mm(pitch - roller), ISO_606),
            Step("outside, least", "d + p (1 − 1.6 / z) − d₁", mm(least), ISO_606),
            Step("outside, most", "d + 1.25 p − d₁", mm(most), ISO_606),
            Step("width of the teeth", "0.93 b₁ (0.95 over 12.7 mm)", mm(width), ISO_606),
            Step(
                "rise and fall of speed", "1 − cos (180° / z)", f"{100 * wobble:.1f} %", "geometry"
            ),
        ),
    )
