"""Centre lines, threads and cutting lines to shapes."""

from __future__ import annotations

from functools import singledispatch
from math import cos, hypot, radians, sin

from binder.api import DrawnArc, DrawnDisc, DrawnShape, Line, Stroke
from binder_drafting.paper import Paper
from binder_drafting.plane import Point, Rectangle
from binder_drafting.symbols import surface_symbol, surface_words_at
from binder_drafting.views import (
    AxisLine,
    CentreMark,
    CuttingLine,
    Mark,
    PitchCircle,
    Surface,
    ThreadCircle,
    ThreadLine,
)
from binder_drafting.words import SMALL, Words, Written

# How far centre lines are drawn past what they belong to (ISO 128-2 says "a little").
_PAST = 3.0
_PAST_HOLE = 1.8
# ISO 128-3: letters of sections are larger than the figures; the arrow meets the line's end.
_LETTER = 5.0
_WIDE_END = 5.0
_ARROW = 8.0
# Two lines nearer than this run into one, in mm on the paper. Common practice, no source.
_TOLD_APART = 0.2
# A stroke shorter than a dash and its gap cannot show its kind.
_SHORTEST_CENTRE = 13.0


def _paper(point: Point, scale: float) -> Point:
    return (point[0] * scale, -point[1] * scale)


def _centre_line(start: Point, end: Point) -> DrawnShape:
    run = hypot(end[0] - start[0], end[1] - start[1])
    return Line(*start, *end, Stroke.CENTRE if run > _SHORTEST_CENTRE else Stroke.THIN)


def _centre(start: Point, end: Point, paper: Paper) -> None:
    paper.draw(_centre_line(start, end))
    paper.shaded.add_line(start, end)
    paper.reach(Rectangle(*map(min, start, end), *map(max, start, end)))


@singledispatch
def draw_mark(mark: Mark, scale: float, paper: Paper) -> None:
    """Draws one mark; TypeError for what is none."""
    raise TypeError(f"no way to draw {type(mark).__name__}")


@draw_mark.register
def _axis(mark: AxisLine, scale: float, paper: Paper) -> None:
    start, end = _paper(mark.start, scale), _paper(mark.end, scale)
    run = hypot(end[0] - start[0], end[1] - start[1]) or 1.0
    across, down = (end[0] - start[0]) / run * _PAST, (end[1] - start[1]) / run * _PAST
    _centre((start[0] - across, start[1] - down), (end[0] + across, end[1] + down), paper)


@draw_mark.register
def _crossed(mark: CentreMark, scale: float, paper: Paper) -> None:
    x, y = _paper(mark.centre, scale)
    arm = mark.radius * scale + _PAST_HOLE
    # Each arm begins at the middle, so that dashes cross there (ISO 128-2).
    for across, down in ((arm, 0.0), (-arm, 0.0), (0.0, arm), (0.0, -arm)):
        _centre((x, y), (x + across, y + down), paper)


@draw_mark.register
def _pitch_circle(mark: PitchCircle, scale: float, paper: Paper) -> None:
    x, y = _paper(mark.centre, scale)
    radius = mark.radius * scale
    paper.draw(DrawnDisc(x, y, radius, stroke=Stroke.CENTRE))
    half = mark.hole_radius * scale + _PAST_HOLE
    for hole in mark.holes:
        turn = radians(hole)
        across, down = cos(turn), -sin(turn)
        near, far = radius - half, radius + half
        paper.draw(
            Line(x + across * near, y + down * near, x + across * far, y + down * far, Stroke.THIN)
        )
    paper.reach(Rectangle(x - radius, y - radius, x + radius, y + radius))


@draw_mark.register
def _thread_line(mark: ThreadLine, scale: float, paper: Paper) -> None:
    if 0 < mark.gap * scale < _TOLD_APART:
        return
    stroke = Stroke.HIDDEN if mark.is_hidden else Stroke.THIN
    paper.line(_paper(mark.start, scale), _paper(mark.end, scale), stroke)


@draw_mark.register
def _thread_circle(mark: ThreadCircle, scale: float, paper: Paper) -> None:
    x, y = _paper(mark.centre, scale)
    # ISO 6410-1: the open quarter is best at the upper right.
    paper.draw(DrawnArc(x, y, mark.radius * scale, 95, 365, Stroke.THIN))


@draw_mark.register
def _surface(mark: Surface, scale: float, paper: Paper) -> None:
    tip = _paper(mark.at, scale)
    words = Words((Written(0.0, 0.0, mark.words, SMALL),))
    paper.draw(*surface_symbol(tip, words.width))
    at = surface_words_at(tip)
    paper.write(words, at)
    paper.reach(Rectangle(tip[0] - 2.1, tip[1] - 7.6, at[0] + words.width + 1.1, tip[1]))


@draw_mark.register
def _cutting_line(mark: CuttingLine, scale: float, paper: Paper) -> None:
    start, end = _paper(mark.start, scale), _paper(mark.end, scale)
    run = hypot(end[0] - start[0], end[1] - start[1]) or 1.0
    along = ((end[0] - start[0]) / run, (end[1] - start[1]) / run)
    looks = (mark.looks[0], -mark.looks[1])
    start = (start[0] - along[0] * 8, start[1] - along[1] * 8)
    end = (end[0] + along[0] * 8, end[1] + along[1] * 8)
    _centre(start, end, paper)
    for tip, sign in ((start, 1), (end, -1)):
        inner = (tip[0] + sign * along[0] * _WIDE_END, tip[1] + sign * along[1] * _WIDE_END)
        paper.draw(Line(*tip, *inner, Stroke.OUTLINE))
        tail = (tip[0] - looks[0] * _ARROW, tip[1] - looks[1] * _ARROW)
        paper.arrow(tail, tip)
        words = Words((Written(0.0, 0.0, mark.letter, _LETTER),))
        # The letter stands outside the arrow's tail, upright whichever way the section looks.
        middle = (tail[0] - sign * along[0] * 3.5, tail[1] - sign * along[1] * 3.5)
        paper.write(words, (middle[0] - words.width / 2, middle[1] + _LETTER / 2))
