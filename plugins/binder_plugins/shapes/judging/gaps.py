"""The metal in mm between two cuts of one part, whatever faces they are cut from.

None where the two are meant to meet, or where another judge looks at such a pair.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

from binder_plugins.shapes.judging.behind import LEAST_BEFORE, POINT, POINTED
from binder_plugins.shapes.judging.bores import Bore
from binder_plugins.shapes.judging.hollows import Hollow, between, from_section
from binder_plugins.shapes.judging.walls import least_wall

_SAME = 1e-6
_THREADED = ("drilled", "reamed", "bored", "tapped")
Span = tuple[float, float]


@dataclass(frozen=True, slots=True)
class Gap:
    """How much metal in mm is left, negative where none is, and the least that should be."""

    left: float
    least: float


def past(one: Span, other: Span) -> float:
    """From the end of a span to the start of the next; negative where they share some."""
    return max(other[0] - one[1], one[0] - other[1])


def of_bores(one: Bore, radius: float, other: Bore, wide: float, *, strangers: bool) -> Gap | None:
    """Between two holes of these radii over their threads, the first the narrower.

    Of two that cross, one may be drilled into the other; `strangers` are for two fasteners, and
    may not. Those that run alike are judged as neighbours, unless they are strangers.
    """
    least = least_wall(2 * radius)
    if one.axis == other.axis:
        if not strangers or one.apart(other) < _SAME or not one.meets(other):
            return None
        return Gap(one.apart(other) - radius - wide, least)
    aside = next(n for n in range(3) if n not in (one.axis, other.axis))
    off = abs(_at(one, aside) - _at(other, aside))
    beside = off - radius - wide
    ways = (_ahead(one, other, wide, off - radius), _ahead(other, one, radius, off - wide))
    if beside >= _SAME or min(ways) > _SAME:
        return Gap(math.hypot(*(max(gap, 0.0) for gap in (beside, *ways))), least)
    if ways[0] > _SAME:
        return _before(one, ways[0], other, wide, off)
    if ways[1] > _SAME:
        return _before(other, ways[1], one, radius, off)
    is_into = off < max(one.radius, other.radius) - _SAME
    is_known = _is_threaded(one, other) or (is_into and not strangers)
    return None if is_known else Gap(beside, least)


def _ahead(one: Bore, other: Bore, wide: float, off: float) -> float:
    """From the floor of a hole to another across its way; negative where it has come to it."""
    return past((one.start, one.end), _over(_at(other, one.axis), wide, off))


def _before(one: Bore, floor: float, other: Bore, wide: float, off: float) -> Gap:
    """Before the floor of a hole, or the point of its drill, which another passes so far off."""
    point = POINT * 2 * one.radius if one.located.kind in POINTED else 0.0
    tip = _ahead(one, other, wide, off) - point if off < wide else floor
    return Gap(max(min(floor, tip), 0.0), LEAST_BEFORE)


def _over(middle: float, radius: float, off: float) -> Span:
    """What a hole takes of the way of another that passes it so far off its middle."""
    half = math.sqrt(max(0.0, radius**2 - max(0.0, off) ** 2))
    return (middle - half, middle + half)


def _is_threaded(one: Bore, other: Bore) -> bool:
    """A hole that cuts through a thread is found where threads are judged."""
    kinds = (one.located.kind, other.located.kind)
    return "tapped" in kinds and all(kind in _THREADED for kind in kinds)


def of_bore(bore: Bore, radius: float, cut: Hollow, *, strangers: bool) -> Gap | None:
    """Between a hole of this radius over its thread and a slot or pocket.

    A hole whose middle lies in the cut is meant to open into it, where neither of the two is for
    another fastener. What a blind hole ends before is judged behind its floor.
    """
    least = least_wall(2 * radius)
    if past((bore.start, bore.end), cut.spans[bore.axis]) > -_SAME:
        return None
    if bore.axis == cut.axis:
        away = from_section(bore.middle, cut.section)
        return None if away < 0 and not strangers else Gap(away - radius, least)
    aside = next(n for n in range(3) if n not in (bore.axis, cut.axis))
    at, middle = _at(bore, cut.axis), _at(bore, aside)
    axes = [n for n in range(3) if n != cut.axis]
    along = past((at - radius, at + radius), (cut.start, cut.end))
    beside = between(_box(axes, bore, (middle - radius, middle + radius)), cut.section)
    if along > _SAME or beside > _SAME:
        return Gap(math.hypot(max(along, 0.0), beside), least)
    line = _box(axes, bore, (middle - _SAME, middle + _SAME))
    if cut.start < at < cut.end and between(line, cut.section) <= _SAME:
        return Gap(-2 * radius, least) if strangers else None
    return Gap(max(along, past(cut.spans[aside], (middle, middle)) - radius), least)


def _box(axes: Sequence[int], bore: Bore, wide: Span) -> tuple[tuple[float, float], ...]:
    """A hole as it is seen along the cut: its length by its width."""
    spans = [(bore.start, bore.end) if n == bore.axis else wide for n in axes]
    (a, b), (c, d) = spans
    return ((a, c), (b, c), (b, d), (a, d))


def of_hollows(one: Hollow, other: Hollow, *, strangers: bool) -> Gap | None:
    """Between two slots or pockets; those that run into each other mostly are meant to."""
    if one.axis == other.axis:
        along = past((one.start, one.end), (other.start, other.end))
        beside = between(one.section, other.section)
    else:
        gaps = [past(a, b) for a, b in zip(one.spans, other.spans, strict=True)]
        along, beside = 0.0, math.hypot(*(max(gap, 0.0) for gap in gaps))
    left = math.hypot(max(along, 0.0), beside)
    least = least_wall(min(high - low for cut in (one, other) for low, high in cut.spans))
    return None if left <= _SAME and not strangers else Gap(left, least)


def _at(bore: Bore, axis: int) -> float:
    """Where the middle of a hole lies on an axis across it."""
    return bore.middle[[n for n in range(3) if n != bore.axis].index(axis)]
