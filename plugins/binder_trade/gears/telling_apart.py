"""What to measure next, so that the likeliest candidates for a salvaged gear come apart."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import Final

from binder_trade.explained import NotDefined
from binder_trade.gears.candidates import Candidate
from binder_trade.gears.gear import Gear
from binder_trade.gears.measuring import span


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


def measures(ranked: list[Candidate]) -> tuple[Measure, ...]:
    """What to measure to tell the three likeliest apart, the surest first; none for one alone."""
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
