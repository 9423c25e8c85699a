"""The distance that the frame has between two shafts: from bearing hole to bearing hole."""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass

from binder.api import Design, Joint
from binder_solid.facts import FormFact, Located

_TURNING = frozenset(("runs_in", "swivels", "hinged"))
_SAME_AXIS_MM = 1e-6
_MOST_DEEP = 3  # a bush in a housing in a plate


def centres_in_frame(a: tuple[str, ...], b: tuple[str, ...], design: Design) -> float | None:
    """The distance in mm between the axes of two bodies, by a part that carries both.

    The bodies are given by their items. None where no one part has a bearing hole for each.
    """
    first, second = (dict(_seats(items, design)) for items in (a, b))
    for item, place in first:
        for other, name in second:
            if other == item and name != place:
                apart = _apart(item, place, name, design)
                if apart is not None:
                    return apart
    return None


@dataclass(frozen=True, slots=True)
class Seat:
    """A hole that carries a shaft: of which part, which hole, and under how many bushes."""

    item: str
    place: str
    deep: int


def seats_in_one_part(
    a: tuple[str, ...], b: tuple[str, ...], design: Design
) -> tuple[Seat, Seat] | None:
    """The holes of two bodies in the part that carries both, None where no one part does."""
    found = [[Seat(*seat, deep) for seat, deep in _seats(items, design)] for items in (a, b)]
    for one in found[0]:
        for other in found[1]:
            if one.item == other.item and one.place != other.place:
                apart = _apart(one.item, one.place, other.place, design)
                if apart is not None and apart > _SAME_AXIS_MM:
                    return one, other
    return None


def _seats(items: tuple[str, ...], design: Design) -> Iterator[tuple[tuple[str, str], int]]:
    """The holes in which a body runs: that of its bush, and that in which the bush sits."""
    for joint in design.joints.values():
        if joint.kind not in _TURNING:
            continue
        ends = [end for end in joint.ends if end.item not in items]
        if len(ends) < len(joint.ends):
            for end in ends:
                yield (end.item, end.place), 0
                yield from _carriers(end.item, items, design, 1)


def _carriers(
    item: str, items: tuple[str, ...], design: Design, deep: int
) -> Iterator[tuple[tuple[str, str], int]]:
    """What a bush or stud is fixed in."""
    if deep > _MOST_DEEP:
        return
    for joint in design.joints.values():
        if item in joint.items and _is_fixing(joint):
            for end in joint.ends:
                if end.item != item and end.item not in items:
                    yield (end.item, end.place), deep
                    yield from _carriers(end.item, (*items, item), design, deep + 1)


def _is_fixing(joint: Joint) -> bool:
    meeting = joint.entry.meeting
    return meeting is not None and meeting.group == "fixing"


def _apart(item: str, place: str, other: str, design: Design) -> float | None:
    form = design.facts.about(FormFact, item)
    if form is None:
        return None
    found = {one.name: one for one in form.located if one.name in (place, other)}
    if len(found) < 2:
        return None
    one, two = found[place], found[other]
    if not _alike(one, two) or not one.spots or not two.spots:
        return None
    return min(_across(one, a, b) for a in one.spots for b in two.spots)


def _alike(one: Located, two: Located) -> bool:
    return abs(sum(a * b for a, b in zip(one.frame.z, two.frame.z, strict=True))) > 1 - 1e-9


def _across(one: Located, a: tuple[float, float, float], b: tuple[float, float, float]) -> float:
    """The distance between two spots, square to the axis of the holes."""
    between = [p - q for p, q in zip(a, b, strict=True)]
    along = sum(d * z for d, z in zip(between, one.frame.z, strict=True))
    return math.sqrt(max(sum(d * d for d in between) - along * along, 0.0))
