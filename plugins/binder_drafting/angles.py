"""An angle to its dimension arc: heads at both legs, the figure level beside the arc."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from math import degrees, radians

from binder.api import DrawnArc, DrawnArea, Stroke
from binder_drafting.edges import on_circle
from binder_drafting.paper import Paper
from binder_drafting.plane import Point, Rectangle
from binder_drafting.words import Words

_HEAD = 2.5
_HALF_HEAD = 0.42
_PAST = 2.0
_GAP = 1.0
_COVERED_LINE = 70.0


@dataclass(frozen=True, slots=True)
class Opening:
    """An angle at a point of the paper; directions in degrees anticlockwise as seen."""

    id: str
    apex: Point
    first: float
    last: float
    reach: float
    words: Words


def draw_opening(one: Opening, paper: Paper) -> None:
    """Draws an angle at the least crowded radius."""
    choices = list(_choices(one))
    free = [place for place in choices if paper.taken.is_free(one.words.box(place[1]).grown(0.5))]
    radius, text = min(free, key=lambda place: _cost(one, place, paper), default=choices[-1])
    if not free:
        here = paper.extent or Rectangle(*one.apex, *one.apex)
        text = (one.apex[0], here.bottom + one.words.height + 2.0)
    _draw(one, radius, text, paper)


def _choices(one: Opening) -> Iterator[tuple[float, Point]]:
    for more in (4.0, 8.0, 12.0, 17.0, 23.0, 30.0, 38.0):
        radius = one.reach + more
        for turn in ((one.first + one.last) / 2, one.last + degrees(7 / radius)):
            yield (radius, _beside(one, turn, radius))
        yield (radius, _beside(one, one.first - degrees(7 / radius), radius))


def _beside(one: Opening, turn: float, radius: float) -> Point:
    """Where words begin that stand just outside the arc in that direction."""
    across, up = on_circle((0.0, 0.0), 1.0, turn)
    half, tall = one.words.width / 2, one.words.height / 2
    far = radius + 1.5 + abs(across) * half + abs(up) * tall
    x, y = one.apex[0] + across * far, one.apex[1] - up * far
    return (x - half, y + tall - one.words.drop)


def _cost(one: Opening, place: tuple[float, Point], paper: Paper) -> float:
    box = one.words.box(place[1]).grown(0.5)
    return place[0] + _COVERED_LINE * paper.taken.lines_through(box)


def _draw(one: Opening, radius: float, text: Point, paper: Paper) -> None:
    x, y = one.apex
    for leg in (one.first, one.last):
        near, far = one.reach + _GAP, radius + _PAST
        paper.line(_at(one.apex, near, leg), _at(one.apex, far, leg))
    span = degrees(_HEAD / radius)
    outside = radians(one.last - one.first) * radius < 2.4 * _HEAD
    sign = -1 if outside else 1
    paper.draw(_head(one.apex, radius, one.first, sign * span))
    paper.draw(_head(one.apex, radius, one.last, -sign * span))
    more = 2 * span if outside else 0.0
    paper.draw(DrawnArc(x, y, radius, one.first - more, one.last + more, Stroke.THIN))
    paper.write(one.words, text, one.id)


def _head(apex: Point, radius: float, tip: float, back: float) -> DrawnArea:
    base = tip + back
    return DrawnArea(
        (
            (
                _at(apex, radius, tip),
                _at(apex, radius - _HALF_HEAD, base),
                _at(apex, radius + _HALF_HEAD, base),
            ),
        )
    )


def _at(apex: Point, radius: float, turn: float) -> Point:
    across, up = on_circle((0.0, 0.0), radius, turn)
    return (apex[0] + across, apex[1] - up)
