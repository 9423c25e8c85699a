"""Turned work end for end: which end is made first, what waits, how it is cut off."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from binder_plugins.operations.hole_kinds import narrows_to

if TYPE_CHECKING:
    from collections.abc import Iterable, Sequence

    from binder_plugins.operations.work import Work
    from binder_solid.facts import Located, Stretch

SAME = 1e-6
BARS = frozenset({"round bar", "drawn rod", "hexagon bar", "square bar"})
# What parting leaves to face at the back, in mm; common practice, no source.
BACK_MM = 0.5
GRIP_MM = 3.0
_MARRING = frozenset({"grooved", "knurled", "undercut", "screwed"})
_MOST_OF_IT = 0.6
_SHAFT = 2.0
_STIFF = 0.4
_ONE_GRIP = 3.5
# A wall thinner than this part of its diameter is squeezed out of round by what holds a thread.
_WEAK = 0.2


@dataclass(frozen=True, slots=True)
class Plan:
    """Places of steps: those turned from the `free` end first, and those after reversing.

    `behind` of the first are turned behind a larger step. `is_parted` is true where the piece
    comes off the bar at the end of the first set-up; `reach` is how far from the free end
    metal is taken off, in mm. Where it `is_threaded` nothing but the thread is left to hold it
    by, so all threads are cut from the bar, before what is smaller and stands in front of them.
    """

    free: str
    first: tuple[int, ...]
    second: tuple[int, ...]
    behind: tuple[int, ...]
    is_parted: bool
    reach: float
    is_threaded: bool = False

    @property
    def other(self) -> str:
        """The end that the first set-up does not get at."""
        return "left" if self.free == "right" else "right"


def is_turned(step: Stretch, work: Work) -> bool:
    """Whether metal is taken off a step at all; a rod as bought and a bar's flats stay."""
    if step.corners or is_thrown(step, work):
        return False
    as_bar = work.stock_form in BARS | {"tube"} and abs(step.across - work.stock_across) < SAME
    is_straight = abs(step.across - step.end_across) < SAME
    return not (is_straight and (as_bar or work.is_bought_outside(step.name)))


def is_thrown(step: Stretch, work: Work) -> bool:
    """Whether a step is a crank pin or a web, which is not on the main axis."""
    shape = getattr(work.item, "shape", None)
    steps = work.form.stretches if work.form is not None else ()
    if not isinstance(shape, list) or step not in steps or len(shape) != len(steps):
        return False
    told = shape[steps.index(step)]
    return getattr(told, "throw", None) is not None or getattr(told, "web", None) is not None


def has_limits(step: Stretch, work: Work) -> bool:
    """Whether a step is turned to a fit."""
    half = work.half(step.name)
    return half is not None and half.lower is not None and is_turned(step, work)


def plans(
    work: Work, steps: Sequence[Stretch], axial: Sequence[Located], around: Sequence[Located] = ()
) -> list[Plan]:
    """The ends to begin with: first the one after which least is left, least that must be true."""
    if _has_only_threads(work, steps, axial, around):
        return [_headless(work, steps, axial)]
    found = [_from(free, work, steps, axial) for free in ("right", "left")]
    return sorted(found, key=lambda one: _score(one, work, steps, axial, around))


def is_spoiled(located: Iterable[Located], step: Stretch) -> bool:
    """Whether a step must not be gripped: threaded for the most part, or rounded."""
    for one in located:
        if step.start - SAME <= one.frame.origin[0] <= step.end + SAME and one.face != "axis":
            if one.kind == "rounded" and not one.is_dummy:
                return True
            long = (one.length or step.end - step.start) * len(one.spots)
            if one.kind == "screwed" and long > _MOST_OF_IT * (step.end - step.start):
                return True
    return False


def _has_only_threads(
    work: Work, steps: Sequence[Stretch], axial: Sequence[Located], around: Sequence[Located]
) -> bool:
    """Whether it is held by a thread alone once it is off the bar, as a headless screw is."""
    if not any(one.kind == "screwed" for one in around) or any(a.depth is None for a in axial):
        return False
    spoiled = [i for i, one in enumerate(steps) if is_spoiled(around, one)]
    every = range(len(steps))
    able = {i for end in ("left", "right") for i in grips(work, steps, every, spoiled, end)}
    return bool(spoiled) and not able


def _headless(work: Work, steps: Sequence[Stretch], axial: Sequence[Located]) -> Plan:
    """From the end that has most to be turned; a slot is sawn last, where the thread holds it."""
    slots = {opens_at(one) for one in axial if one.kind in {"slotted", "flatted"}}
    length = max(one.end for one in steps)
    turned = tuple(i for i, one in enumerate(steps) if is_turned(one, work))

    def near(free: str) -> float:
        return min((from_end(steps[i], free, length) for i in turned), default=length)

    free = min(("right", "left"), key=lambda one: (one in slots, near(one)))
    order = turned if free == "left" else turned[::-1]
    reach = max((from_end(steps[i], free, length) for i in turned), default=0.0)
    return Plan(free, order, (), (), is_parted=True, reach=reach, is_threaded=True)


def opens_at(one: Located) -> str:
    """The end at which a feature on the axis opens."""
    return "right" if one.frame.z[0] > 0 else "left"


def is_true(one: Located, work: Work) -> bool:
    """Whether a feature on the axis is a bore with limits."""
    half = work.half(one.name)
    return one.kind in {"reamed", "bored"} and half is not None


def _from(free: str, work: Work, steps: Sequence[Stretch], axial: Sequence[Located]) -> Plan:
    order = list(range(len(steps)))
    if free == "right":
        order.reverse()
    widest = max(max(one.across, one.end_across) for one in steps)
    last = max(n for n, i in enumerate(order) if _wide(steps[i]) > widest - SAME)
    tail = [i for i in order[last + 1 :] if is_turned(steps[i], work)]
    first = [i for i in order[: last + 1] if is_turned(steps[i], work)]
    length = max(one.end for one in steps)
    if tail and _in_one_grip(work, steps, first, tail, axial, length):
        first, tail = [*first, *tail], []
    peak = next(n for n, i in enumerate(order) if _wide(steps[i]) > widest - SAME)
    behind = tuple(
        i
        for n, i in enumerate(order)
        if n > peak and i in first and _wide(steps[i]) < widest - SAME
    )
    shaft = _is_shaft(work, steps, order, tail)
    reach = max((from_end(steps[i], free, length) for i in first), default=0.0)
    return Plan(free, tuple(first), tuple(tail), behind, not shaft, reach)


def _wide(step: Stretch) -> float:
    return max(step.across, step.end_across)


def from_end(step: Stretch, free: str, length: float) -> float:
    """How far the far side of a step is from the free end, in mm."""
    return length - step.start if free == "right" else step.end


def _in_one_grip(
    work: Work,
    steps: Sequence[Stretch],
    first: Sequence[int],
    tail: Sequence[int],
    axial: Sequence[Located],
    length: float,
) -> bool:
    """Whether a short stiff tail is turned behind the largest step, since it must be true."""
    is_fitted = any(has_limits(steps[i], work) for i in tail)
    has_mate = any(has_limits(steps[i], work) for i in first) or any(
        is_true(a, work) for a in axial
    )
    widest = max(_wide(one) for one in steps)
    is_stiff = min(_wide(steps[i]) for i in tail) >= _STIFF * widest
    is_short = length <= _ONE_GRIP * widest and work.stock_form in BARS
    return is_fitted and has_mate and is_stiff and is_short


def _is_shaft(
    work: Work, steps: Sequence[Stretch], order: Sequence[int], tail: Sequence[int]
) -> bool:
    """Whether the piece is sawn to length: a rod that stays as bought where it is gripped."""
    plain = [i for i in order if not is_turned(steps[i], work) and not steps[i].corners]
    longest = max((steps[i].end - steps[i].start for i in plain), default=0.0)
    return longest >= _SHAFT * work.stock_across


def _score(
    one: Plan,
    work: Work,
    steps: Sequence[Stretch],
    axial: Sequence[Located],
    around: Sequence[Located],
) -> tuple[int, int, int, int, int, int]:
    fitted = sum(has_limits(steps[i], work) for i in one.second)
    late = [a for a in axial if opens_at(a) != one.free and _is_of_its_mouth(a, work)]
    fitted += sum(is_true(a, work) for a in late)
    crushed = int(_threads_on_thin(one, work, steps, axial, around))
    return fitted, crushed, len(one.second), len(late), len(one.behind), int(one.free == "left")


def _is_of_its_mouth(one: Located, work: Work) -> bool:
    """Whether a hole is made from its mouth alone: one with a floor, or a taper bore."""
    return one.depth is not None or narrows_to(work, one) > 0


def _threads_on_thin(
    one: Plan,
    work: Work,
    steps: Sequence[Stretch],
    axial: Sequence[Located],
    around: Sequence[Located],
) -> bool:
    """Whether a thread would be cut with a step gripped that was bored thin before."""
    screwed = [a.frame.origin[0] for a in around if a.kind == "screwed"]
    late = (steps[i] for i in one.second)
    if not any(s.start - SAME <= x <= s.end + SAME for s in late for x in screwed):
        return False
    spoiled = [i for i, step in enumerate(steps) if is_spoiled(around, step)]
    held = grips(work, steps, one.first, spoiled, one.other, around)
    bores = [a for a in axial if a.depth is None or opens_at(a) == one.free]
    return bool(held) and is_weak(steps[held[0]], bores)


def grips(
    work: Work,
    steps: Sequence[Stretch],
    done: Sequence[int],
    threaded: Sequence[int],
    end: str,
    located: Sequence[Located] = (),
) -> list[int]:
    """Steps that are fit to be gripped to work at an end, once those in `done` are turned.

    The best first: plain ones before those with a groove or a knurl, then long thick ones. What
    goes into the holder behind the grip must not be larger than the grip.
    """
    able = [
        i
        for i, one in enumerate(steps)
        if (i in done or not is_turned(one, work))
        and i not in threaded
        and abs(one.across - one.end_across) < SAME
        and one.end - one.start >= GRIP_MM - SAME
        and _goes_in(steps, i, end)
    ]
    return sorted(
        able,
        key=lambda i: (
            is_marred(steps[i], located),
            -min(steps[i].end - steps[i].start, 25.0) * steps[i].across,
        ),
    )


def wall_of(step: Stretch, bores: Iterable[Located]) -> float:
    """The wall in mm that bores leave of a step; half its diameter where none reaches it."""
    found = (
        one.diameter or 0.0
        for one in bores
        if one.kind in {"bored", "reamed", "drilled"} and len(one.spots) == 1 and _covers(one, step)
    )
    return (step.across - max(found, default=0.0)) / 2


def is_weak(step: Stretch, bores: Iterable[Located]) -> bool:
    """Whether a step is bored so thin that it is not gripped while a thread is cut."""
    return wall_of(step, bores) < _WEAK * step.across - SAME


def _covers(one: Located, step: Stretch) -> bool:
    if one.depth is None:
        return True
    start = one.frame.origin[0]
    low, high = (start - one.depth, start) if one.frame.z[0] > 0 else (start, start + one.depth)
    return low < step.end and high > step.start


def _goes_in(steps: Sequence[Stretch], place: int, end: str) -> bool:
    behind = steps[place + 1 :] if end == "left" else steps[:place]
    return all(_wide(one) <= steps[place].across + SAME for one in behind)


def is_marred(step: Stretch, located: Sequence[Located]) -> bool:
    """Whether grooves, knurls or threads lie on a step."""
    return any(
        one.kind in _MARRING and step.start - SAME <= one.frame.origin[0] <= step.end + SAME
        for one in located
        if one.face not in {"axis", "left", "right"}
    )
