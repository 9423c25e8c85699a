"""Words on a leader: the place with the least that it crosses, covers or wastes."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace
from functools import cache
from math import cos, hypot, radians, sin

from binder.api import DrawnDisc, Stroke
from binder_drafting.paper import Paper
from binder_drafting.plane import Point, Rectangle, enters
from binder_drafting.words import Words

# ISO 128-2, leader and reference lines: leaders lie askew to the lines around them, end in a
# head on an outline or in a dot on a face; words stand on the reference line. From memory.
_LEANS = (60, 120, -60, -120, 45, 135, -45, -135, 30, 150, -30, -150, 75, 105, -75, -105)
_REACHES = (9.0, 13.0, 17.0, 22.0, 28.0, 35.0, 43.0, 53.0, 65.0, 80.0, 100.0)
_ABOVE_LINE = 0.9
_DOT = 0.5

# What a place costs, in mm of leader that one would rather draw.
_COVERED_LINE = 70.0
_COVERED_SHADE = 30.0
_CROSSED_LINE = 2.5
_CROSSED_WORDS = 90.0
_CROSSED_LEADER = 40.0
# Another hole of a pattern than the first, and how many of them are tried.
_ELSEWHERE = 6.0
_OTHERS = 11


@dataclass(frozen=True, slots=True)
class Callout:
    """Words, the point that they speak of or another such, and the radius of a circle about it.

    `leans` are the directions in degrees in which the leader may leave; empty is any. A leader
    that is `inside` a circle begins at its centre.
    """

    id: str
    words: Words
    at: Point
    radius: float = 0.0
    leans: tuple[int, ...] = ()
    is_on_face: bool = False
    others: tuple[Point, ...] = ()


@dataclass(frozen=True, slots=True)
class _Place:
    """A leader's tip and knee, the other end of its reference line, and where the words begin."""

    tip: Point
    knee: Point
    end: Point
    text: Point


def draw_callout(one: Callout, paper: Paper, outline: Rectangle | None = None) -> None:
    """Draws a callout at its best place; beyond the whole drawing if no other is free.

    Words stand outside the `outline` of the part where that costs little.
    """
    best: _Place | None = None
    least = float("inf")
    for order, at in enumerate((one.at, *one.others[:_OTHERS])):
        extra = _ELSEWHERE * (order > 0)
        there = replace(one, at=at) if order else one
        for own, lean, reach, side in _choices(one.leans or _LEANS):
            cost = own + extra
            if cost >= least:
                break
            place = _place(there, lean, reach, side)
            total = cost + _cost(one, place, paper, least - cost, outline)
            if total < least:
                best, least = place, total
    _draw(one, best or _beyond(one, paper), paper)


@cache
def _choices(leans: tuple[int, ...]) -> tuple[tuple[float, int, float, int], ...]:
    """Leans and reaches with what they cost by themselves, the cheapest first."""
    found = []
    for order, lean in enumerate(leans):
        natural = 1 if abs(lean) <= 90 else -1
        for reach in _REACHES:
            for side in (natural, -natural):
                cost = reach + 0.8 * order + (8.0 if side != natural else 0.0)
                found.append((cost, lean, reach, side))
    return tuple(sorted(found))


def _place(one: Callout, lean: float, reach: float, side: int) -> _Place:
    turn = radians(lean)
    across, down = cos(turn), -sin(turn)
    tip = (one.at[0] + across * one.radius, one.at[1] + down * one.radius)
    knee = (tip[0] + across * reach, tip[1] + down * reach)
    end = (knee[0] + side * (one.words.width + 2.0), knee[1])
    begin = min(knee[0] + side * 1.0, knee[0] + side * (one.words.width + 1.0))
    return _Place(tip, knee, end, (begin, knee[1] - _ABOVE_LINE - one.words.drop))


def reference_room(box: Rectangle, knee: Point, end: Point) -> Rectangle:
    """The room of words on a reference line: nothing may touch the line and seem part of it."""
    left, right = min(knee[0], end[0]), max(knee[0], end[0])
    left, right = (left, right + 0.8) if end[0] > knee[0] else (left - 0.8, right)
    return Rectangle(
        min(left, box.left - 0.8), box.top - 0.8, max(right, box.right + 0.8), knee[1] + 0.6
    )


def _cost(
    one: Callout, place: _Place, paper: Paper, most: float, outline: Rectangle | None
) -> float:
    """What a place costs beside its length; infinite where words would cover words."""
    box = one.words.box(place.text)
    room = reference_room(box, place.knee, place.end)
    taken = paper.taken
    cost = paper.growth(room)
    if outline is not None and outline.meets(room):
        cost += paper.style.on_part
    if cost >= most or enters(place.tip, place.knee, box) or not taken.is_free(room):
        return float("inf")
    if taken.is_struck(room):
        if cost + _COVERED_LINE >= most:
            return float("inf")
        cost += _COVERED_LINE * taken.lines_through(room)
    cost += _COVERED_SHADE * paper.shaded.is_struck(box)
    if cost >= most:
        return float("inf")
    cost += _CROSSED_LEADER * paper.leaders_across(place.tip, place.knee)
    cost += _CROSSED_LEADER * paper.leaders_across(place.knee, place.end)
    cost += _CROSSED_WORDS * taken.words_on(place.tip, place.knee)
    cost += _CROSSED_WORDS * taken.words_on(place.knee, place.end)
    return cost + _CROSSED_LINE * taken.lines_across(place.tip, place.knee)


def _beyond(one: Callout, paper: Paper) -> _Place:
    """Under everything that is drawn already, where it is free for certain."""
    here = paper.extent or Rectangle(*one.at, *one.at)
    knee = (one.at[0] + 3.0, here.bottom + one.words.height + 3.0)
    run = hypot(knee[0] - one.at[0], knee[1] - one.at[1])
    share = one.radius / run if run else 0.0
    tip = (
        one.at[0] + (knee[0] - one.at[0]) * share,
        one.at[1] + (knee[1] - one.at[1]) * share,
    )
    end = (knee[0] + one.words.width + 2.0, knee[1])
    return _Place(tip, knee, end, (knee[0] + 1.0, knee[1] - _ABOVE_LINE - one.words.drop))


def _draw(one: Callout, place: _Place, paper: Paper) -> None:
    if one.is_on_face:
        paper.draw(DrawnDisc(*place.tip, _DOT, 1.0, Stroke.THIN))
        paper.line(place.knee, place.tip)
    else:
        paper.arrow(place.knee, place.tip)
    paper.line(place.knee, place.end)
    paper.leaders += [(place.tip, place.knee), (place.knee, place.end)]
    paper.write(one.words, place.text, one.id)


def leans_within(first: float, last: float) -> tuple[int, ...]:
    """Whole degrees for the leader of an arc, the middle first; all if the arc is a circle."""
    if last - first >= 350:
        return _LEANS
    middle = (first + last) / 2
    spread: Iterator[float] = iter((0.17, -0.17, 0.33, -0.33, 0.0))
    return tuple(_half_turned(round(middle + part * (last - first))) for part in spread)


def _half_turned(degrees: int) -> int:
    return (degrees + 179) % 360 - 179
