"""Grip, washers and nut turned into the length of a bolt or a stud."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from typing import Final

from binder_trade.explained import Step, not_negative, positive
from binder_trade.fastening.reach import NEAR_ENOUGH, Length, NoLength, sold
from binder_trade.fastening.steps import mm, step

LEAST_PAST: Final = 1.0  # threads beyond the nut
MOST_PAST: Final = 2.0


@dataclass(frozen=True, slots=True)
class NutEnd:
    """What a nut draws together, in mm: all plates, all washers, the nut, and its pitch."""

    plates_mm: float
    washers_mm: float
    nut_mm: float
    pitch_mm: float

    @property
    def stack_mm(self) -> float:
        """From the seat of the head to the outer face of the nut."""
        return self.plates_mm + self.washers_mm + self.nut_mm


def choose_bolt(
    lengths: Iterable[float], end: NutEnd, threaded_mm: float | None = None
) -> Length | NoLength:
    """The bolt that stands 1 to 2 threads past its nut, the next sold up; in mm.

    `threaded_mm` is the thread of a bolt with a plain shank, None for one threaded to the head.
    Raises NotDefined. Source: common practice, no source.
    """
    known, stack = sold(lengths), _checked(end).stack_mm
    least = stack + LEAST_PAST * end.pitch_mm
    steps = _steps(end, least)
    good = [length for length in known if length >= least - NEAR_ENOUGH]
    if not good:
        return NoLength(
            f"the longest sold, {mm(known[-1])}, does not pass the nut",
            (f"use studding cut to {mm(least)}", "sink the nut", "use a thinner nut"),
            (known[-1],),
            steps,
        )
    chosen = good[0]
    plain = 0.0 if threaded_mm is None else max(0.0, chosen - positive(threaded_mm, "a thread"))
    if plain > end.plates_mm + end.washers_mm + NEAR_ENOUGH:
        short = plain - end.plates_mm - end.washers_mm
        ways = (f"put washers of {mm(short)} under the nut", "use a screw threaded to the head")
        return NoLength(
            f"the nut runs out of thread {mm(short)} too early on a {mm(chosen)} bolt",
            ways,
            (chosen,),
            steps,
        )
    return Length(chosen, end.nut_mm, stack - chosen, _why(chosen, end), steps)


def choose_stud(lengths: Iterable[float], engaged_mm: float, end: NutEnd) -> Length | NoLength:
    """The whole stud: what is screwed in, then the nut's end; in mm; raises NotDefined.

    Studs are mostly cut from studding, so the next length sold up is cut down where it stands
    out more than 2 threads (common practice, no source). `engaged_mm` is what holds in the
    metal: 1 d in steel (DIN 938), 1.25 d in cast iron (DIN 939), 2 d in aluminium (DIN 835).
    """
    positive(engaged_mm, "an engagement")
    known, stack = sold(lengths), _checked(end).stack_mm
    least = engaged_mm + stack + LEAST_PAST * end.pitch_mm
    most = engaged_mm + stack + MOST_PAST * end.pitch_mm
    first = step("screwed in", "engagement of the softer half", mm(engaged_mm))
    steps = (first, *_steps(end, least))
    good = [length for length in known if length >= least - NEAR_ENOUGH]
    if not good:
        reason = f"the longest sold, {mm(known[-1])}, does not pass the nut"
        return NoLength(reason, (f"cut {mm(most)} of studding",), (known[-1],), steps)
    is_long = good[0] > most + NEAR_ENOUGH
    made = most if is_long else good[0]
    past = (made - engaged_mm - stack) / end.pitch_mm
    why = f"{mm(engaged_mm)} in the metal, {past:.1f} threads past the nut"
    cut_to = most if is_long else None
    return Length(good[0], engaged_mm, engaged_mm + stack - made, why, steps, cut_to)


def _checked(end: NutEnd) -> NutEnd:
    positive(end.plates_mm, "a grip")
    not_negative(end.washers_mm, "a washer")
    positive(end.nut_mm, "a nut")
    positive(end.pitch_mm, "a pitch")
    return end


def _steps(end: NutEnd, least: float) -> tuple[Step, ...]:
    return (
        step("stack", "plates + washers + nut", mm(end.stack_mm)),
        step("shortest", "stack + 1 thread past the nut", mm(least)),
    )


def _why(chosen: float, end: NutEnd) -> str:
    past = (chosen - end.stack_mm) / end.pitch_mm
    words = f"next sold up; {past:.1f} threads past the nut"
    if past > MOST_PAST + NEAR_ENOUGH:
        return f"{words}, more than the usual 2: cut it down or add a washer"
    return words
