"""A thread that cannot be cut here to the threads that can, best first, with what changes."""

from __future__ import annotations

import math
from collections.abc import Iterable
from dataclasses import dataclass
from typing import Final

from binder_trade.explained import Step, not_negative
from binder_trade.threading.fittings import least_wall, may_stand_in
from binder_trade.threads import MOVING, Thread, is_alike

LEAST_AREA: Final = 0.9
_MOST_CHANGE: Final = 0.25
_LOOK_CHANGE: Final = 0.1
_LEAST_THREADS: Final = 3
# Series whose screws are in the shops; ME, 26 to the inch and pipe are made at the bench.
_SOLD: Final = ("metric", "BA", "UNC", "UNF", "BSW", "BSF")
_ALIKE_DIAMETER: Final = 0.07
_ALIKE_PITCH: Final = 0.3


@dataclass(frozen=True, slots=True)
class Substitute:
    """A thread that stands in for another.

    `area_ratio` is its stress area over that of the thread asked, both as π/4 ((d2 + d3) / 2)²;
    `major_change_mm` is larger above nothing. `failings` are the tests that it does not pass;
    with none it `serves`.
    """

    thread: Thread
    area_ratio: float
    major_change_mm: float
    failings: tuple[str, ...]
    why: str
    steps: tuple[Step, ...]

    @property
    def serves(self) -> bool:
        """Whether it passes every test that the joint's strength and room ask."""
        return not self.failings


def stress_area(thread: Thread) -> float:
    """The area in mm² that any thread pulls with, π/4 ((d2 + d3) / 2)², for comparing series.

    Source: ISO 898-1, used for every form alike; ASME B1.1 gives unified threads 1 to 2 % less.
    """
    return math.pi / 4 * ((thread.effective_mm + thread.minor_external_mm) / 2) ** 2


def substitutes(
    thread: Thread,
    owned: Iterable[Thread],
    wall_mm: float | None = None,
    engaged_mm: float | None = None,
) -> tuple[Substitute, ...]:
    """The owned threads within a quarter of the diameter, best first; lengths in mm.

    `owned` are the threads of which the workshop has both halves (tap, and die or screws);
    `wall_mm` is the metal left round the thread asked, `engaged_mm` the length in it. A pipe
    thread has none but pipe threads. Tests in order: hand, `least_wall`, area ≥ 0.9, 3 full
    threads; then the nearest look, screws in the shops. Raises
    `NotDefined` for lengths that are none. Source: common practice; areas ISO 898-1.
    """
    wall = None if wall_mm is None else not_negative(wall_mm, "a wall")
    engaged = None if engaged_mm is None else not_negative(engaged_mm, "an engaged length")
    near = [one for one in owned if _is_near(one, thread)]
    found = [_judged(thread, one, wall, engaged) for one in near]
    return tuple(sorted(found, key=_rank))


def lookalikes(threads: Iterable[Thread]) -> tuple[tuple[Thread, Thread], ...]:
    """The pairs of unlike threads that a hand takes one for the other: M3 and 5 BA.

    Diameters within 7 % and pitches within 30 % of the larger. Source: common practice.
    """
    kept = sorted(threads, key=lambda one: (one.major_mm, one.pitch_mm, one.designation))
    return tuple(
        (first, second)
        for place, first in enumerate(kept)
        for second in kept[place + 1 :]
        if _looks_like(first, second)
    )


def _looks_like(first: Thread, second: Thread) -> bool:
    if is_alike(first, second) or (first.family in MOVING) != (second.family in MOVING):
        return False
    apart = abs(first.major_mm - second.major_mm) / max(first.major_mm, second.major_mm)
    pitch = abs(first.pitch_mm - second.pitch_mm) / max(first.pitch_mm, second.pitch_mm)
    return apart <= _ALIKE_DIAMETER and pitch <= _ALIKE_PITCH


def _is_near(one: Thread, asked: Thread) -> bool:
    change = abs(one.major_mm - asked.major_mm) / asked.major_mm
    is_near = change <= _MOST_CHANGE and not is_alike(one, asked)
    return is_near and may_stand_in(one, asked)


def _judged(asked: Thread, one: Thread, wall: float | None, engaged: float | None) -> Substitute:
    ratio = stress_area(one) / stress_area(asked)
    change = one.major_mm - asked.major_mm
    failings = tuple(_failings(asked, one, ratio, (wall, engaged)))
    why = _why(one, ratio, change, failings)
    return Substitute(one, ratio, change, failings, why, _steps(asked, one, ratio))


def _steps(asked: Thread, one: Thread, ratio: float) -> tuple[Step, ...]:
    formula = "π/4 × ((d2 + d3) ÷ 2)²"
    areas = [(named, stress_area(named)) for named in (asked, one)]
    return (
        *(
            Step(f"area of {named.designation}", formula, f"{area:.3f} mm²", "ISO 898-1")
            for named, area in areas
        ),
        Step("strength", "one area ÷ the other", f"{100 * ratio:.0f} %", "calculation"),
    )


def _failings(
    asked: Thread, one: Thread, ratio: float, room: tuple[float | None, float | None]
) -> Iterable[str]:
    wall, engaged = room
    if one.is_left_hand != asked.is_left_hand:
        yield "turns the other way"
    left = None if wall is None else wall - (one.major_mm - asked.major_mm) / 2
    if left is not None and left < least_wall(one) - 1e-9:
        yield f"leaves {left:.2f} mm of wall, {least_wall(one):.2f} are wanted"
    if ratio < LEAST_AREA:
        yield f"{100 * (1 - ratio):.0f} % weaker"
    if engaged is not None and engaged < _LEAST_THREADS * one.pitch_mm - 1e-9:
        yield f"{engaged / one.pitch_mm:.1f} threads in {engaged:g} mm, 3 are wanted"


def _why(one: Thread, ratio: float, change: float, failings: tuple[str, ...]) -> str:
    if failings:
        return "; ".join(failings)
    strength = f"{100 * (ratio - 1):+.0f} % strength"
    sold = "" if one.family in _SOLD else "; its screws are made, not bought"
    return f"{strength}, {change:+.2f} mm on the diameter{sold}".replace("-", "−")


def _rank(found: Substitute) -> tuple[int, bool, bool, float, str]:
    major = found.thread.major_mm - found.major_change_mm
    is_unlike = abs(found.major_change_mm) / major > _LOOK_CHANGE
    is_made = found.thread.family not in _SOLD
    apart = abs(found.area_ratio - 1) + abs(found.major_change_mm) / major
    return (len(found.failings), is_unlike, is_made, apart, found.thread.designation)
