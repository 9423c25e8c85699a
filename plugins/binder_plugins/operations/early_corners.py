"""Corners at the back end formed on the bar, where too little is left to grip once it is off."""

from __future__ import annotations

from typing import TYPE_CHECKING

from binder_plugins.operations.overhang import gripped
from binder_plugins.operations.second_grip import place_held

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

    from binder_plugins.operations.facts import Act, Grip
    from binder_plugins.operations.turning import Turning
    from binder_solid.facts import Located

# What a form tool or a drill asks of a grip: half the thickness, or so much in mm where that is
# less. Common practice, no source.
_HALF, _LEAST_MM = 0.5, 4.0
_HEAVY = frozenset({"form", "drill", "counterbore", "bore", "ream", "tap"})
_JAWED = frozenset({"chuck", "collet", "four-jaw"})
# What a form tool wants beside the corner, in mm, and the part of the bar that must be left to
# carry the piece; common practice, no source.
_BESIDE_MM, _CORE = 1.0, 0.5


def least_grip(across: float) -> float:
    """The least grip in mm of work so thick in mm, for a form tool or a drill."""
    return min(_HALF * across, _LEAST_MM)


def early_corners(turning: Turning) -> list[Located]:
    """The rounded corners of the back end that its second grip would be too short for."""
    plan = turning.plan
    if not plan.is_parted or plan.is_threaded:
        return []
    found = [one for one in turning.edges(plan.other, first=False) if one.kind == "rounded"]
    found += [a for a in turning.axial if a.kind == "rounded" and not turning.is_first(a)]
    place = place_held(turning) if found else None
    if place is None:
        return []
    across = turning.steps[place].across
    is_short = gripped(turning, place, plan.other) < least_grip(across)
    is_stout = all(across - 2 * (one.diameter or 0.0) >= _CORE * across for one in found)
    return found if is_short and is_stout else []


def slips(grip: Grip, acts: Sequence[Act], name: str) -> Iterator[tuple[str, str]]:
    """What is amiss where a second grip is too short for a form tool or a drill."""
    heavy = next((act for act in acts if act.act in _HEAVY), None)
    if heavy is None or grip.kind not in _JAWED or not 0 < grip.long < least_grip(grip.across):
        return
    words = (
        f"'{name}' is gripped by {grip.long:.2g} mm of ⌀{grip.across:g} mm to {heavy.what}, which "
        f"wants {least_grip(grip.across):g} mm"
    )
    yield "nothing-to-grip", words


def room_for(corners: Sequence[Located]) -> float:
    """How much farther the bar stands out for the form tool behind the corners, in mm."""
    return max(((one.diameter or 0.0) + _BESIDE_MM for one in corners), default=0.0)


def formed_behind(turning: Turning) -> Iterator[Act]:
    """A groove behind the piece, as deep as the corner, and the corner formed in it."""
    work = turning.work
    place = 0 if turning.plan.free == "right" else -1
    across = turning.steps[place].across
    for one in turning.early:
        radius = one.diameter or 0.0
        yield work.act(
            "nick",
            f"groove the bar {work.mm(room_for([one]))} wide behind the finished length of "
            f"{work.mm(turning.length)}, to ⌀{work.mm(across - 2 * radius)}: the form tool's room",
            machine=turning.lathe,
            feature="back groove",
            size=across,
        )
        yield work.act(
            "form",
            f"round the back corner to R{work.mm(radius)} in that groove, on the bar: parted off "
            "too little is left to grip for it",
            machine=turning.lathe,
            feature=one.name,
            size=across,
        )
