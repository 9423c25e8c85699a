"""Screws of different joints in one piece of wood, to how near they come to one another there.

In metal each has its hole in the part, and these are held against each other as its features are.
"""

from __future__ import annotations

from collections.abc import Iterator
from itertools import combinations

from binder.api import Design, Diagnostic
from binder_plugins.fasteners import hole_codes
from binder_plugins.fasteners.near_grain import is_wood, said
from binder_plugins.fasteners.screw_bodies import Body, bodies
from binder_solid.forms import Vector
from binder_solid.space import dot, length, minus, plus, unit
from binder_trade.fastening import LEAST_PITCH

# From middle to middle in wood, in diameters of the thicker one: side by side as those of one
# joint, since both wedge the same grain apart; where they cross, so that one diameter of wood is
# left between them when a hand drill runs off a little. Common practice, no source. In metal they
# must not touch: what is left between their holes is judged where the holes are.
_CROSSED = 2.0
_SAME = 0.05
_PARALLEL, _ALONGSIDE = 1e-9, 0.9


def check_meeting(design: Design) -> Iterator[Diagnostic]:
    """Of each two joints the worst place alone; said of the one that is written later."""
    worst: dict[tuple[str, str, str], tuple[float, float, Body, Body]] = {}
    timber = (one for one in bodies(design) if is_wood(one.copy.item, design))
    for one, other in combinations(timber, 2):
        if one.joint.name == other.joint.name or one.copy.subject != other.copy.subject:
            continue
        has, needs = between(one, other), _least(one, other)
        key = (one.joint.name, other.joint.name, one.copy.item)
        if has < needs - _SAME and (key not in worst or has - needs < worst[key][0]):
            worst[key] = (has - needs, has, one, other)
    for over, has, one, other in worst.values():
        yield _finding(has, has - over, one, other, design)


def between(one: Body, other: Body) -> float:
    """From axis to axis in mm where two screws are nearest, each no longer than it is."""
    first, second = minus(one.end, one.start), minus(other.end, other.start)
    off = minus(other.start, one.start)
    both = dot(first, second)
    square = dot(first, first) * dot(second, second) - both**2
    found = [
        min(_from_line(spot, other) for spot in (one.start, one.end)),
        min(_from_line(spot, one) for spot in (other.start, other.end)),
    ]
    if square > _PARALLEL:
        along = (dot(first, off) * dot(second, second) - dot(second, off) * both) / square
        back = (dot(first, off) * both - dot(second, off) * dot(first, first)) / square
        if 0 <= along <= 1 and 0 <= back <= 1:
            spots = plus(one.start, first, along), plus(other.start, second, back)
            found.append(length(minus(*spots)))
    return min(found)


def _from_line(spot: Vector, body: Body) -> float:
    way = minus(body.end, body.start)
    on = dot(minus(spot, body.start), way) / dot(way, way)
    return length(minus(spot, plus(body.start, way, min(max(on, 0.0), 1.0))))


def _least(one: Body, other: Body) -> float:
    ways = (unit(minus(each.end, each.start)) for each in (one, other))
    times = LEAST_PITCH if abs(dot(*ways)) > _ALONGSIDE else _CROSSED
    return times * max(one.across, other.across)


def _finding(has: float, least: float, one: Body, other: Body, design: Design) -> Diagnostic:
    told = getattr(other.joint.entry, "fastener", None)
    meets = has < (one.across + other.across) / 2 - _SAME
    how = "run into" if meets else f"pass {said(has, design)} from"
    return hole_codes.SCREWS_MEET.at(
        told.span if told is not None else other.joint.at,
        f"the screws of '{other.joint.name}' {how} those of '{one.joint.name}' in "
        f"'{one.copy.item}'; {said(least, design)} from middle to middle is the least",
        help=f"part the two by {said(least - has, design)} more, by `places:` or `pattern:` of "
        "either, or take shorter or thinner screws",
    )
