"""Tells what a salvaged gear is, from its outside diameter, teeth and spans: likeliest first."""

from __future__ import annotations

import math
from collections.abc import Callable, Iterable
from dataclasses import dataclass
from typing import Final

from binder_trade.explained import NotDefined, Step, mm, positive, within
from binder_trade.gears.gear import Gear
from binder_trade.gears.measuring import span
from binder_trade.gears.pitches import Pitch, pitches
from binder_trade.gears.racks import Rack, racks

MATCH: Final = "outside / (z + 2 h_a) against the pitches that are sold"
BASE_PITCH: Final = "span over k + 1 less span over k is π m cos α, whatever the shift"
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


@dataclass(frozen=True, slots=True)
class Measure:
    """What to measure next, how, and what each of the likeliest would give; mm."""

    what: str
    how: str
    readings: tuple[tuple[str, float], ...]
    tells_apart_mm: float
    reads_to_mm: float

    @property
    def certainty(self) -> float:
        """By how many times what can be read the likeliest stands apart from the others."""
        return self.tells_apart_mm / self.reads_to_mm


@dataclass(frozen=True, slots=True)
class Identified:
    """The candidates, likeliest first, and what would tell the first ones apart.

    `module_mm` and `dp` are what the outside diameter gives for full depth.
    """

    module_mm: float
    dp: float
    candidates: tuple[Candidate, ...]
    measure_next: tuple[Measure, ...]
    is_settled: bool
    steps: tuple[Step, ...]


def identify(
    outside_mm: float,
    teeth: int,
    *,
    bore_mm: float | None = None,
    spans_mm: Iterable[tuple[int, float]] = (),
    by_caliper: bool = False,
    keep: int = 6,
) -> Identified:
    """What an external spur gear may be, from sizes in mm; spans as (teeth spanned, mm).

    One span tells pitch and angle together, two over neighbouring counts leave the shift out.
    `by_caliper`: flat jaws over an odd number of teeth read short, which is put right.
    Raises NotDefined where nothing sold is near.
    """
    within(teeth, 6, 1000, "a number of teeth")
    outside_mm = positive(outside_mm, "an outside diameter")
    if by_caliper and teeth % 2:
        outside_mm *= 2 / (1 + math.cos(math.pi / teeth))
    spans = tuple(spans_mm)
    for across, value in spans:
        within(across, 2, max(2, teeth // 2), "a number of teeth spanned")
        positive(value, "a span")
    found = [
        made
        for pitch in pitches()
        for basic in _kinds(pitch)
        if (made := _candidate(pitch, basic, outside_mm, teeth, bore_mm, spans)) is not None
    ]
    if not found:
        raise NotDefined(
            "no pitch that is sold is near it", "count the teeth again, and measure over the tips"
        )
    ranked = sorted(found, key=lambda each: (each.error, each.name))[:keep]
    module = outside_mm / (teeth + 2)
    steps = _steps(module, ranked)
    near = ranked[1:] and ranked[1].error < max(3 * ranked[0].error, 0.008)
    return Identified(module, 25.4 / module, tuple(ranked), _next(ranked), not near, steps)


def _kinds(pitch: Pitch) -> tuple[Rack, ...]:
    """The teeth that a pitch was cut with: 20° for a module; 20°, 14½° and stub for a DP."""
    kept = racks()
    if pitch.system == "module":
        return (kept["A"],)
    twenty = kept["20 DP fine" if pitch.dp >= 20 else "20 DP"]
    return twenty, kept["14.5 DP"], kept["20 stub"]


def _candidate(
    pitch: Pitch,
    basic: Rack,
    outside: float,
    teeth: int,
    bore: float | None,
    spans: tuple[tuple[int, float], ...],
) -> Candidate | None:
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


def _next(ranked: list[Candidate]) -> tuple[Measure, ...]:
    first, found = ranked[:3], []
    if len(first) < 2:
        return ()
    across = first[0].across
    for what, how, reads, of in _WAYS:
        rows = [(each.name, of(each, across)) for each in first]
        made = _measure(what.format(across, across + 1), how, reads, rows)
        found += [] if made is None else [made]
    return tuple(sorted(found, key=lambda each: -each.certainty))


def _measure(
    what: str, how: str, reads_to: float, rows: list[tuple[str, float | None]]
) -> Measure | None:
    """The measure, where every one of the likeliest has a reading."""
    given = tuple((name, value) for name, value in rows if value is not None)
    if len(given) < len(rows):
        return None
    apart = min(abs(value - given[0][1]) for _, value in given[1:])
    return Measure(what, how, given, apart, reads_to)


def _span_of(candidate: Candidate, across: int) -> float | None:
    gear = Gear(candidate.teeth, candidate.pitch.module_mm, candidate.rack)
    try:
        return span(gear, across).span_mm
    except NotDefined:
        return None


def _base_pitch(candidate: Candidate, across: int) -> float | None:
    first, second = _span_of(candidate, across), _span_of(candidate, across + 1)
    return None if first is None or second is None else second - first


_WAYS: Final[tuple[tuple[str, str, float, Callable[[Candidate, int], float | None]], ...]] = (
    (
        "span over {} teeth, and over {}",
        "their difference is the base pitch, whatever the profile shift",
        0.04,
        _base_pitch,
    ),
    ("span over {} teeth", "with a caliper, anvils flat on the flanks", 0.03, _span_of),
    (
        "depth of the teeth",
        "with the tail of a caliper, tip to root",
        0.1,
        lambda each, _: each.depth_mm,
    ),
    (
        "ten teeth of its rack, or of the gear rolled in putty",
        "tip to tip along a straight line, 10 π m",
        0.4,
        lambda each, _: 10 * each.pitch.circular_mm,
    ),
)


def _steps(module: float, ranked: list[Candidate]) -> tuple[Step, ...]:
    best = ranked[0]
    return (
        Step("module by the outside", "outside / (z + 2)", mm(module), MATCH),
        Step("DP by the outside", "25.4 / m", f"{25.4 / module:.3f}", MATCH),
        Step("likeliest", "nearest that is sold", best.name, MATCH),
        Step(
            "off by",
            "outside − m (z + 2 h_a)",
            f"{best.outside_off_mm:+.3f} mm".replace("-", "−"),
            MATCH,
        ),
        Step("span", f"over {best.across} teeth", _or_none(best.span_mm), BASE_PITCH),
    )


def _or_none(span_mm: float | None) -> str:
    return "too few teeth to span" if span_mm is None else mm(span_mm)
