"""Many sizes from one datum to one running line: an origin, and a figure at each place.

Superimposed running dimensioning (ISO 129-1, from memory): each figure stands beyond the line at
its own extension line, read along it; what is too close is led aside.
"""

from __future__ import annotations

from collections.abc import Sequence

from binder.api import DrawnDisc, Polyline, Stroke
from binder_drafting.paper import Paper
from binder_drafting.plane import Point, Rectangle
from binder_drafting.sides import BELOW, LEFT, Side
from binder_drafting.spread import spread
from binder_drafting.tiers import FIRST, Span
from binder_drafting.words import size_words

_ORIGIN = 1.0
_BEND = 4.0
_BEYOND = 1.5
_GAP = 1.0
_APART = 1.3
_AFTER_TIERS = 6.0


def draw_running(spans: Sequence[Span], side: Side, paper: Paper, within: float = 0.0) -> float:
    """Draws sizes that begin on one line and gives how far out their figures reach.

    `within` is the distance that other lines of the side take up already.
    """
    origin = side.local(spans[0].start)[0]
    zero = Span("", spans[0].start, spans[0].start, size_words("0"))
    ordered = sorted((zero, *spans), key=lambda one: (side.local(one.end)[0], one.id))
    alongs = [side.local(one.end)[0] for one in ordered]
    places = spread(alongs, max(one.words.height for one in ordered) + _APART)
    away = within + _AFTER_TIERS if within else FIRST
    while not all(
        paper.taken.is_free(_box(one, place, away, side).grown(0.4))
        for one, place in zip(ordered, places, strict=True)
    ):
        away += 4.0
    paper.draw(DrawnDisc(*side.paper(origin, away), _ORIGIN, stroke=Stroke.THIN))
    for one, along, place in zip(ordered, alongs, places, strict=True):
        _draw_post(one, (along, place, away), side, paper)
        if one is not zero:
            paper.arrow(side.paper(origin, away), side.paper(along, away))
    return away + _BEND + _BEYOND + max(one.words.width for one in ordered)


def _draw_post(one: Span, where: tuple[float, float, float], side: Side, paper: Paper) -> None:
    """The extension line with its bend, and the figure at its end."""
    along, place, away = where
    near = side.local(one.end)[1] + _GAP
    knee, end = side.paper(along, away + _GAP), side.paper(place, away + _BEND)
    paper.line(side.paper(along, near), knee)
    paper.draw(Polyline((knee, end), Stroke.THIN))
    paper.taken.add_line(knee, end)
    paper.write(one.words, _base(one, place, away, side), one.id, is_upright=not side.is_upright)


def _base(one: Span, place: float, away: float, side: Side) -> Point:
    """Where a figure begins that is read along its extension line, centred on it."""
    start = away + _BEND + _BEYOND
    if side.name in {BELOW, LEFT}:
        # These figures end at the line and do not begin there.
        start += one.words.width
    middle = (one.words.extent.top + one.words.extent.bottom) / 2
    x, y = side.paper(place, start)
    return (x, y - middle) if side.is_upright else (x - middle, y)


def _box(one: Span, place: float, away: float, side: Side) -> Rectangle:
    return one.words.box(_base(one, place, away, side), is_upright=not side.is_upright)
