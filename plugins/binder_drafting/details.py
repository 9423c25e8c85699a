"""Details: the small features of a view, enlarged beside it (ISO 128-3)."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace
from math import cos, hypot, radians, sin

from binder.api import DrawnDisc, Stroke
from binder_drafting.callouts import Callout, draw_callout
from binder_drafting.clip import clipped, is_in_circle, loop_in_circle, within_circle
from binder_drafting.edges import SMOOTH, Bow, Point, on_circle
from binder_drafting.paper import Paper
from binder_drafting.plane import Rectangle
from binder_drafting.scales import PREFERRED
from binder_drafting.sizes import Along, Size
from binder_drafting.views import AxisLine, Detail, Outline, ThreadLine, View
from binder_drafting.words import Words, Written

# A feature shorter than this on the paper hides between its own extension lines.
TOO_SMALL = 1.5
# Of this rank is the whole of a part: thin as it is, nothing hides in it.
OVERALL = 9
_AIM = 5.0
_WIDEST = 45.0
_LETTER = 5.0
_LETTERS = "ZYXWVUTS"


def detail_view(detail: Detail, source: View) -> View:
    """What lies in the circle of a detail, within a thin circle."""
    kept = within_circle(detail.centre, detail.radius)
    is_inside = is_in_circle(detail.centre, detail.radius)
    edges = tuple(piece for edge in source.edges for piece in clipped(edge, kept, is_inside))
    border = Bow(detail.centre, detail.radius, kind=SMOOTH)
    return View(
        detail.name,
        (*edges, border),
        title=detail.name,
        outlines=tuple(_outlines(detail, source.outlines)),
        marks=tuple(_marks(detail, source)),
    )


def _outlines(detail: Detail, outlines: Sequence[Outline]) -> Iterator[Outline]:
    for one in outlines:
        points = loop_in_circle(one.points, detail.centre, detail.radius)
        if len(points) > 2:
            holes = (loop_in_circle(hole, detail.centre, detail.radius) for hole in one.holes)
            yield Outline(points, tuple(hole for hole in holes if len(hole) > 2), one.lean)


def _marks(detail: Detail, source: View) -> Iterator[AxisLine | ThreadLine]:
    kept = within_circle(detail.centre, detail.radius)
    for mark in source.marks:
        if not isinstance(mark, AxisLine | ThreadLine):
            continue
        share = kept(mark.start, mark.end)
        if share is not None:
            yield replace(mark, start=_part(mark, share[0]), end=_part(mark, share[1]))


def _part(mark: AxisLine | ThreadLine, share: float) -> Point:
    return (
        mark.start[0] + (mark.end[0] - mark.start[0]) * share,
        mark.start[1] + (mark.end[1] - mark.start[1]) * share,
    )


def enlarged(detail: Detail, scale: float, small: float) -> float:
    """The scale of a detail: its smallest size shows, and the circle does not grow too wide."""
    larger = [one for one in PREFERRED if one > scale]
    fits = [one for one in larger if one * detail.radius * 2 <= _WIDEST]
    clear = [one for one in fits if small * one >= _AIM]
    if clear:
        return min(clear)
    return max(fits, default=min(larger, default=scale))


def draw_detail_circle(detail: Detail, scale: float, paper: Paper) -> None:
    """The thin circle around what is enlarged, its letter beside it (ISO 128-3)."""
    x, y = detail.centre[0] * scale, -detail.centre[1] * scale
    radius = detail.radius * scale
    paper.draw(DrawnDisc(x, y, radius, stroke=Stroke.THIN))
    paper.reach(Rectangle(x, y, x, y).grown(radius))
    words = Words((Written(0.0, 0.0, detail.name, _LETTER),))
    for away in (1.0, 3.0, 6.0, 10.0, 15.0, 21.0, 28.0):
        for turn in (45, 135, -45, -135, 90, -90, 0, 180):
            across, up = on_circle((0.0, 0.0), radius + away, turn)
            half, tall = words.width / 2, _LETTER / 2
            middle = (
                x + across + half * cos(radians(turn)),
                y - up - tall * sin(radians(turn)),
            )
            at = (middle[0] - half, middle[1] + tall)
            box = words.box(at).grown(0.5)
            if paper.taken.is_free(box) and not paper.taken.is_struck(box):
                paper.write(words, at)
                return
    draw_callout(Callout("", words, (x, y), radius), paper)


def with_details(
    views: Sequence[View], sizes: Sequence[Size], asked: Sequence[Detail], scale: float
) -> tuple[tuple[Detail, ...], tuple[Size, ...]]:
    """The details asked for and those that small sizes need, and the sizes moved into them."""
    taken = {detail.name for detail in asked} | {view.name for view in views}
    letters = iter(letter for letter in _LETTERS if letter not in taken)
    made: list[Detail] = []
    found: list[Size] = []
    own = {view.name for view in views if not view.is_picture}
    for size in sizes:
        if (
            not isinstance(size, Along)
            or size.view not in own
            or size.rank >= OVERALL
            or _length(size) * scale >= TOO_SMALL
        ):
            found.append(size)
            continue
        home = next((one for one in made if _is_home(one, size)), None)
        if home is None:
            letter = next(letters, "")
            if not letter:
                found.append(size)
                continue
            home = _about(size, letter, scale)
            made.append(home)
        found.append(replace(size, view=home.name, side=""))
    return ((*asked, *made), tuple(found))


def smallest(sizes: Sequence[Size], radius: float) -> float:
    """The shortest length that a detail has to show."""
    return min((_length(size) for size in sizes if isinstance(size, Along)), default=radius)


def _length(size: Along) -> float:
    return hypot(size.end[0] - size.start[0], size.end[1] - size.start[1])


def _is_home(detail: Detail, size: Along) -> bool:
    is_inside = is_in_circle(detail.centre, detail.radius)
    return detail.view == size.view and is_inside(size.start) and is_inside(size.end)


def _about(size: Along, letter: str, scale: float) -> Detail:
    centre = ((size.start[0] + size.end[0]) / 2, (size.start[1] + size.end[1]) / 2)
    return Detail(letter, size.view, centre, max(1.8 * _length(size), 2.5 / scale))
