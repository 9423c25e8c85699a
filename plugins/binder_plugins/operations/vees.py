"""Round work in a V-block: which steps lie in it, which end, and where a clamp holds it down."""

from __future__ import annotations

from typing import TYPE_CHECKING

from binder_plugins.operations.bench import vice_for
from binder_plugins.operations.facts import Grip

if TYPE_CHECKING:
    from collections.abc import Sequence

    from binder_plugins.operations.turning import Turning
    from binder_solid.facts import Located, Stretch

# A shorter step does not lie still in a V-block; common practice, no source.
_VEE_MM = 8.0
# How wide the bar of a toolmaker's clamp is, in mm. Common practice, no source.
_CLAMP_MM = 8.0
_SAME = 1e-6


def in_a_vee(turning: Turning, step: Stretch, cut: Sequence[Located]) -> Grip:
    """A V-block carries the step, or what is thicker beside it; short work stands on edge.

    The vice holds the block alone: a clamp holds the round down in it, clear of what is `cut`.
    """
    vice = vice_for(turning.work.design.workshop)
    if vice and turning.length <= max(one.across for one in turning.steps):
        return Grip(vice, "vice", "its end faces", turning.length, turning.length)
    thicker = [one for one in turning.steps if one.across > step.across + _SAME]
    if thicker and (step.end - step.start < _VEE_MM or _is_between(turning, step)):
        step = max(thicker, key=lambda one: (one.across, one.end - one.start))
    lying = _lying(turning, step)
    span = (lying[0].start, lying[-1].end)
    block = f"V-block in the {vice}" if vice else "V-block, clamped"
    return Grip(
        f"{block}, toolmaker's clamp over the round",
        "vee",
        f"⌀{turning.work.mm(step.across)}{_named(lying)}",
        step.across,
        step.end - step.start,
        jaws=span,
        land=_clamped(span, cut)[0],
    )


def _is_between(turning: Turning, step: Stretch) -> bool:
    """Whether thicker steps stand on both sides of it, and keep it off the V-block."""
    place = turning.steps.index(step)
    return any(one.across > step.across for one in turning.steps[:place]) and any(
        one.across > step.across for one in turning.steps[place + 1 :]
    )


def _lying(turning: Turning, step: Stretch) -> list[Stretch]:
    """The step with those beside it that are as thick, along the part."""
    steps = list(turning.steps)
    first = last = steps.index(step)
    while first and _is_level(steps[first - 1], step):
        first -= 1
    while last + 1 < len(steps) and _is_level(steps[last + 1], step):
        last += 1
    return steps[first : last + 1]


def _is_level(one: Stretch, step: Stretch) -> bool:
    return max(abs(one.across - step.across), abs(one.end_across - step.across)) < _SAME


def _named(lying: Sequence[Stretch]) -> str:
    """` (head and shank)` where more than one step lies in the block."""
    names = [one.name.replace("_", " ") for one in lying if one.name]
    said = f"{', '.join(names[:-1])} and {names[-1]}" if len(names) > 1 else ""
    return f" ({said})" if said else ""


def _clamped(span: tuple[float, float], cut: Sequence[Located]) -> tuple[tuple[float, float], str]:
    """From where to where the clamp lies, and towards which end; no length where it has no room."""
    places = [x for one in cut for x, *_ in one.spots]
    half = max((one.length or one.diameter or 0.0 for one in cut), default=0.0) / 2
    left = (span[0], min(places) - half)
    right = (max(places) + half, span[1])
    side, end = (left, "left") if left[1] - left[0] > right[1] - right[0] else (right, "right")
    if side[1] - side[0] < _CLAMP_MM:
        return (0.0, 0.0), end
    middle = (side[0] + side[1]) / 2
    return (middle - _CLAMP_MM / 2, middle + _CLAMP_MM / 2), end


def lies_in(turning: Turning, grip: Grip, cut: Sequence[Located]) -> str:
    """Which end lies in the V, and where the clamp holds it; nothing where no V-block does."""
    if grip.kind != "vee":
        return ""
    clamp, end = _clamped(grip.jaws, cut)
    if clamp == (0.0, 0.0):
        return "the clamp holds it down beside the place; "
    soft = ", card or copper under it on the thread" if _is_on_thread(turning, clamp) else ""
    return f"its {end}-hand end lies in the V, the clamp on it, clear of the place{soft}; "


def _is_on_thread(turning: Turning, clamp: tuple[float, float]) -> bool:
    threads = [one for one in turning.form.located if one.kind == "screwed"]
    return any(
        x - (one.length or 0.0) / 2 < clamp[1] and x + (one.length or 0.0) / 2 > clamp[0]
        for one in threads
        for x, *_ in one.spots
    )
