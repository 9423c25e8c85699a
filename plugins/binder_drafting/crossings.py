"""Diameters in place: a dimension line across the step itself, its figure led out of the view.

For a step that lies between larger ones, where extension lines would run through the part. The
figure stands on a bent extension of the dimension line (ISO 129-1, from memory).
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace
from math import hypot

from binder_drafting.callouts import reference_room
from binder_drafting.paper import Paper
from binder_drafting.plane import Point, Rectangle
from binder_drafting.words import Words

_HEADS = 7.0
_TAIL = 5.0
_ABOVE_LINE = 0.9
_RISES = (7.0, 11.0, 15.0, 20.0, 25.0, 31.0, 37.0, 43.0, 49.0, 56.0, 63.0, 70.0)
_COVERED_LINE = 70.0
_STRUCK_WORDS = 90.0
_INWARDS = 25.0
# How far a dimension line stands off an edge that it would lie on, of the room there is, and how
# far its extension lines go past it (ISO 129-1: about 8 line widths), in mm.
_OFF_EDGE = 2.5
_SHARE = 0.5
_OVERSHOOT = 1.5


@dataclass(frozen=True, slots=True)
class Flanks:
    """The two ends of an upright or level dimension line on the paper, and the words for it.

    `feet` are the flanks themselves where the line stands beside them, on extension lines.
    """

    id: str
    start: Point
    end: Point
    words: Words
    feet: tuple[Point, ...] = ()

    @property
    def at(self) -> Point:
        """A flank, for a leader."""
        return self.feet[0] if self.feet else self.start


def off_edge(one: Flanks, into: Point) -> Flanks:
    """The same with its line moved off the edge it lies on, `into` mm of the paper at the most."""
    room = hypot(*into)
    if not room:
        return one
    share = min(_OFF_EDGE, _SHARE * room) / room
    start, end = (
        (point[0] + into[0] * share, point[1] + into[1] * share) for point in (one.start, one.end)
    )
    return replace(one, start=start, end=end, feet=(one.start, one.end))


def draw_crossing(one: Flanks, outline: Rectangle, paper: Paper) -> bool:
    """Draws a diameter across its step; False if the words find no free place beside the view."""
    best: tuple[float, Point, Point, Point] | None = None
    for cost, knee, end in _choices(one, outline):
        text = (min(knee[0], end[0]) + 1.0, knee[1] - _ABOVE_LINE - one.words.drop)
        box = one.words.box(text)
        room = reference_room(box, knee, end)
        if not paper.taken.is_free(room):
            continue
        total = cost + paper.growth(room) + _COVERED_LINE * paper.taken.lines_through(room)
        total += _STRUCK_WORDS * _struck(one, knee, paper)
        if best is None or total < best[0]:
            best = (total, knee, end, text)
    if best is None:
        return False
    _draw(one, *best[1:], paper)
    return True


def _struck(one: Flanks, knee: Point, paper: Paper) -> int:
    """Words that the line would go through, the tail of an outer head with it."""
    ends = (one.start, one.end)
    return max(paper.taken.words_on(end, knee) for end in ends) + max(
        paper.taken.words_on(tip, _beyond(other, tip)) for tip, other in (ends, ends[::-1])
    )


def _beyond(inner: Point, tip: Point, by: float = _TAIL) -> Point:
    run = hypot(tip[0] - inner[0], tip[1] - inner[1]) or 1.0
    share = by / run
    return (tip[0] + (tip[0] - inner[0]) * share, tip[1] + (tip[1] - inner[1]) * share)


def _choices(one: Flanks, outline: Rectangle) -> Iterator[tuple[float, Point, Point]]:
    is_upright = abs(one.start[0] - one.end[0]) < abs(one.start[1] - one.end[1])
    long = one.words.width + 2.0
    outwards = 1 if one.start[0] >= outline.middle[0] else -1
    for rise in _RISES:
        for way in (-1, 1) if is_upright else (1, -1):
            if is_upright:
                y = outline.top - rise if way < 0 else outline.bottom + rise + 2.0
                knee = (one.start[0], y)
            else:
                x = outline.right + rise if way > 0 else outline.left - rise
                knee = (x, one.start[1])
            for side in (1, -1) if is_upright else (way,):
                cost = rise + (0.0 if side == outwards else _INWARDS) + (0.0 if way == -1 else 4.0)
                yield (cost, knee, (knee[0] + side * long, knee[1]))


def _draw(one: Flanks, knee: Point, end: Point, text: Point, paper: Paper) -> None:
    near, far = sorted(
        (one.start, one.end), key=lambda tip: abs(tip[0] - knee[0]) + abs(tip[1] - knee[1])
    )
    for foot, tip in zip(one.feet, (one.start, one.end), strict=False):
        paper.line(foot, _beyond(foot, tip, _OVERSHOOT))
    run = abs(far[0] - near[0]) + abs(far[1] - near[1])
    if run >= _HEADS:
        middle = ((near[0] + far[0]) / 2, (near[1] + far[1]) / 2)
        paper.arrow(middle, far)
        paper.arrow(middle, near)
        paper.line(near, knee)
    else:
        paper.arrow(_beyond(near, far), far)
        paper.line(far, near)
        paper.arrow(knee, near)
    paper.line(knee, end)
    paper.write(one.words, text, one.id)
