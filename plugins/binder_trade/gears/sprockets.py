"""Wheels for chains: sprockets of roller chain (ISO 606) and pocket wheels of bead chain."""

from __future__ import annotations

import math
from dataclasses import dataclass
from functools import cache
from typing import Any, Final

from binder.api import load_data
from binder_trade.explained import NotDefined, Step, mm, positive, within

ISO_606: Final = "ISO 606"
_LEAST: Final = 6
_FEW: Final = 17


@dataclass(frozen=True, slots=True)
class Chain:
    """A roller chain; mm."""

    name: str
    pitch_mm: float
    roller_mm: float
    inner_mm: float


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


@dataclass(frozen=True, slots=True)
class BeadWheel:
    """A wheel with a pocket for each bead; mm. `outside_mm` holds half of each bead."""

    pockets: int
    pitch_mm: float
    outside_mm: float
    pocket_radius_mm: float
    groove_mm: float
    steps: tuple[Step, ...]


@cache
def chains() -> dict[str, Chain]:
    """The roller chains of ISO 606 that small machines use, by name."""
    rows: dict[str, Any] = load_data("binder_trade.gears", "chains.yaml")["chains"]
    return {
        name: Chain(name, row["pitch"], row["roller"], row["inner"]) for name, row in rows.items()
    }


def chain(name: str) -> Chain:
    """The roller chain of a name, as 06B. Raises NotDefined for another."""
    if name in chains():
        return chains()[name]
    raise NotDefined(f"no roller chain {name} is kept here", f"these are: {', '.join(chains())}")


def pitch_circle(pitch_mm: float, teeth: int) -> float:
    """The diameter on which the pins lie, p / sin (180° / z); mm. Source: ISO 606."""
    within(teeth, 3, 1000, "a number of teeth of a sprocket")
    return positive(pitch_mm, "a pitch") / math.sin(math.pi / teeth)


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


def bead_wheel(pitch_mm: float, bead_mm: float, pockets: int, link_mm: float = 0.0) -> BeadWheel:
    """A wheel for bead chain, measured from bead to bead along the chain; mm.

    `link_mm` is the thickness of the wire, for which a groove runs from pocket to pocket.
    Source: geometry of a polygon of beads; play of a twentieth common practice.
    """
    bead = positive(bead_mm, "a bead")
    if pitch_mm <= bead:
        raise NotDefined("the pitch is no more than a bead", "measure from bead to bead, over ten")
    within(pockets, 4, 1000, "a number of pockets")
    pitch = pitch_circle(pitch_mm, pockets)
    groove = 1.3 * (link_mm or bead / 3)
    return BeadWheel(
        pockets,
        pitch,
        pitch,
        bead * 1.05 / 2,
        groove,
        (
            Step("pitch circle", "p / sin (180° / z)", mm(pitch), "geometry"),
            Step("outside", "the pitch circle: half of each bead", mm(pitch), "geometry"),
            Step("pocket", "1.05 × the bead", mm(bead * 1.05), "common practice, no source"),
        ),
    )
