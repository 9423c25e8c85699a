"""Grip and tapped hole turned into the length of screw that holds and does not bottom."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from typing import Final

from binder_trade.explained import Step, not_negative, positive
from binder_trade.fastening.reach import (
    NEAR_ENOUGH,
    Grip,
    Length,
    NoLength,
    TappedHole,
    checked_grip,
    neighbours,
    sold,
)
from binder_trade.fastening.steps import mm, step

BOTTOMS: Final = "bottoms out"
SHORT: Final = "too little engagement"
STANDS_OUT: Final = "stands out"
USEFUL_TIMES: Final = 2.0  # beyond twice the least, more thread holds nothing more


@dataclass(frozen=True, slots=True)
class Judged:
    """A given length in its hole, in mm, and the faults it has (none for one that serves)."""

    length_mm: float
    engagement_mm: float
    spare_mm: float
    faults: tuple[str, ...]


def judge_length(length_mm: float, grip: Grip, hole: TappedHole, least_mm: float) -> Judged:
    """What a screw of this length does in its hole; raises NotDefined.

    A blind hole keeps one pitch free beyond the screw's end, a through hole the far face
    (common practice, no source).
    """
    positive(length_mm, "a length")
    positive(least_mm, "a least engagement")
    reach = length_mm - checked_grip(grip).length_mm
    spare = _checked_hole(hole).full_thread_mm - reach
    engaged = max(0.0, min(reach - grip.point_mm, hole.full_thread_mm))
    faults = []
    if spare < _free(hole) - NEAR_ENOUGH:
        faults.append(STANDS_OUT if hole.is_through else BOTTOMS)
    if engaged < least_mm - NEAR_ENOUGH:
        faults.append(SHORT)
    return Judged(length_mm, engaged, spare, tuple(faults))


def choose_length(
    lengths: Iterable[float],
    grip: Grip,
    hole: TappedHole,
    least_mm: float,
    wanted_mm: float | None = None,
) -> Length | NoLength:
    """The length sold that holds by what is wanted, rounded down, and never bottoms.

    `least_mm` is the engagement that must be there, `wanted_mm` the one to round down from
    (twice the least where it is not said). Where rounding down would hold too little, the next
    longer one is taken if the hole lets it. All in mm; raises NotDefined.
    """
    known = sold(lengths)
    wanted = positive(wanted_mm or USEFUL_TIMES * least_mm, "an engagement")
    target = checked_grip(grip).length_mm + grip.point_mm + max(wanted, least_mm)
    judged = [judge_length(length, grip, hole, least_mm) for length in known]
    good = [one for one in judged if not one.faults]
    steps = _steps(grip, hole, least_mm, target)
    if not good:
        return _none(known, grip, hole, least_mm, steps)
    below = [one for one in good if one.length_mm <= target + NEAR_ENOUGH]
    best = below[-1] if below else good[0]
    rule = "shortest sold that holds" if best is good[0] else "next sold down"
    return Length(best.length_mm, best.engagement_mm, best.spare_mm, _why(best, hole, rule), steps)


def _checked_hole(hole: TappedHole) -> TappedHole:
    positive(hole.full_thread_mm, "a tapped depth")
    positive(hole.pitch_mm, "a pitch")
    not_negative(hole.may_stand_out_mm, "what stands out")
    return hole


def _free(hole: TappedHole) -> float:
    return -hole.may_stand_out_mm if hole.is_through else hole.pitch_mm


def _longest(grip: Grip, hole: TappedHole) -> float:
    return grip.length_mm + hole.full_thread_mm - _free(hole)


def _steps(grip: Grip, hole: TappedHole, least_mm: float, target: float) -> tuple[Step, ...]:
    shortest = grip.length_mm + grip.point_mm + least_mm
    limit = "to the far face" if hole.is_through else "1 thread short of the hole's end"
    return (
        step("grip", "plate − sunk + washers", mm(grip.length_mm)),
        step("shortest that holds", f"grip + point + {mm(least_mm)}", mm(shortest)),
        step("longest that fits", f"grip + full thread, {limit}", mm(_longest(grip, hole))),
        step("rounded down from", "grip + point + engagement wanted", mm(target)),
    )


def _why(best: Judged, hole: TappedHole, rule: str) -> str:
    if best.spare_mm < -NEAR_ENOUGH:
        return f"{rule}; {mm(-best.spare_mm)} stands out"
    left = "below the far face" if hole.is_through else "short of the end of the thread"
    return f"{rule}; ends {mm(best.spare_mm)} {left}"


def _none(
    known: list[float], grip: Grip, hole: TappedHole, least_mm: float, steps: tuple[Step, ...]
) -> NoLength:
    shortest = grip.length_mm + grip.point_mm + least_mm
    longest = _longest(grip, hole)
    holding = [length for length in known if length >= shortest - NEAR_ENOUGH]
    if shortest > longest + NEAR_ENOUGH:
        reason = f"the hole has no room for {mm(least_mm)} of thread"
    elif not holding:
        reason = f"the longest sold, {mm(known[-1])}, holds too little"
    else:
        reason = f"no length is sold between {mm(shortest)} and {mm(longest)}"
    return NoLength(
        reason,
        tuple(_ways(known, holding, (shortest, longest), grip, hole)),
        neighbours(known, shortest),
        steps,
    )


def _ways(
    known: list[float],
    holding: list[float],
    ends: tuple[float, float],
    grip: Grip,
    hole: TappedHole,
) -> list[str]:
    """Each way worked through, the least work first."""
    ways = []
    shortest, longest = ends
    longer = f"a screw of {mm(holding[0])}" if holding else ""
    if holding and shortest <= longest + NEAR_ENOUGH:
        ways.append(f"cut {longer} down to {mm(longest)}")
    if holding and holding[0] > longest:
        more = holding[0] - longest
        ways.append(f"put washers of {mm(more)} in all under the head of {longer}")
        if not hole.is_through:
            ways.append(f"deepen the full thread to {mm(hole.full_thread_mm + more)} for {longer}")
    fitting = [length for length in known if length <= longest + NEAR_ENOUGH]
    deeper = shortest - fitting[-1] if fitting else 0.0
    if 0 < deeper <= grip.plate_mm / 2 - grip.sunk_mm:
        ways.append(f"sink the head {mm(deeper)} for a screw of {mm(fitting[-1])}")
    return ways or ["use a stud or a bolt and nut"]
