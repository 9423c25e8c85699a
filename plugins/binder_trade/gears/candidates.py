"""Weighs what a salvaged gear may be: one pitch and rack against the sizes that were taken."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

from binder_trade.explained import NotDefined
from binder_trade.gears.gear import Gear
from binder_trade.gears.measuring import span
from binder_trade.gears.pitches import Pitch
from binder_trade.gears.racks import Rack, racks

_FAR: Final = 0.1
_MOST_SHIFT: Final = 0.6
_SELDOM: Final = 0.004
_OLD: Final = 0.002
_STUB: Final = 0.006


@dataclass(frozen=True, slots=True)
class Candidate:
    """What the gear may be. `outside_off_mm` is the measured less the reckoned diameter.

    `shift` is the profile shift that would account for that. `span_mm` is over `across` teeth
    as it would measure; `error` what it is ranked by, a part of one.
    """

    teeth: int
    pitch: Pitch
    rack: Rack
    error: float
    outside_off_mm: float
    shift: float
    across: int
    span_mm: float | None
    next_span_mm: float | None
    depth_mm: float
    wall_mm: float | None

    @property
    def name(self) -> str:
        """As `module 0.5, 20°`."""
        stub = " stub" if self.rack.addendum < 0.9 else ""
        return f"{self.pitch.name}, {self.rack.angle_deg:g}°{stub}"

    def centres_mm(self, mate: int) -> float:
        """The centres of the gear with a mate of so many teeth, both without shift; mm."""
        return self.pitch.module_mm * (self.teeth + mate) / 2


def kinds_of(pitch: Pitch) -> tuple[Rack, ...]:
    """The teeth that a pitch was cut with: 20° for a module; 20°, 14½° and stub for a DP."""
    kept = racks()
    if pitch.system == "module":
        return (kept["A"],)
    twenty = kept["20 DP fine" if pitch.dp >= 20 else "20 DP"]
    return twenty, kept["14.5 DP"], kept["20 stub"]


def candidate(
    pitch: Pitch,
    basic: Rack,
    outside: float,
    teeth: int,
    bore: float | None,
    spans: tuple[tuple[int, float], ...],
) -> Candidate | None:
    """The gear of a pitch and rack weighed against sizes in mm; None where it is too far off."""
    module = pitch.module_mm
    off = outside - module * (teeth + 2 * basic.addendum)
    shift = off / 2 / module
    if abs(off / outside) > _FAR or abs(shift) > _MOST_SHIFT:
        return None
    try:
        gear = Gear(teeth, module, basic)
        across, one, two = _spans(gear)
        error = abs(off / outside) + _odds(pitch, basic) + _span_error(gear, shift, spans)
    except NotDefined:
        return None
    wall = None if bore is None else (outside - bore) / 2 - gear.depth_mm
    return Candidate(
        teeth,
        pitch,
        basic,
        error,
        off,
        shift,
        across,
        one,
        two,
        gear.depth_mm,
        wall,
    )


def _spans(gear: Gear) -> tuple[int, float | None, float | None]:
    """The teeth to span, and what they measure, with one more too; None where it misses."""
    try:
        first = span(gear)
    except NotDefined:
        return 2, None, None
    try:
        return first.across, first.span_mm, span(gear, first.across + 1).span_mm
    except NotDefined:
        return first.across, first.span_mm, None


def _odds(pitch: Pitch, basic: Rack) -> float:
    """What is seldom met counts as if it fitted a little worse; common practice."""
    seldom = 0.0 if pitch.is_common else _SELDOM
    old = _OLD if basic.angle_deg < 20 else 0.0
    return seldom + old + (_STUB if basic.addendum < 0.9 else 0.0)


def _span_error(gear: Gear, shift: float, spans: tuple[tuple[int, float], ...]) -> float:
    """How far spans are from the gear's, with the shift that the diameter tells.

    The difference of two spans knows no shift, and counts beside.
    """
    moved = Gear(gear.teeth, gear.module_mm, gear.rack, max(-1.0, min(1.0, shift)))
    worst = max((abs(span(moved, k).span_mm / value - 1) for k, value in spans), default=0.0)
    pairs = [(later - first) / (at - k) for k, first in spans for at, later in spans if at > k]
    base = max((abs(gear.base_pitch_mm / each - 1) for each in pairs), default=0.0)
    return worst + base
