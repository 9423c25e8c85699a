"""The lines of a view to lines on the paper, each of the kind that its meaning asks for."""

from __future__ import annotations

from math import hypot

from binder.api import DrawnArc, DrawnDisc, DrawnShape, Line, Polyline, Stroke
from binder_drafting.edges import HIDDEN, SECTION, SMOOTH, VISIBLE, Bow, Edge, as_chain, extremes
from binder_drafting.hatch import hatching
from binder_drafting.marks import draw_mark
from binder_drafting.paper import Paper
from binder_drafting.plane import Point, Rectangle, around
from binder_drafting.views import View

# ISO 128-2: visible outlines 01.2, hidden ones 02.1, smooth transitions and hatching 01.1.
_STROKES = {
    SMOOTH: Stroke.THIN,
    HIDDEN: Stroke.HIDDEN,
    SECTION: Stroke.OUTLINE,
    VISIBLE: Stroke.OUTLINE,
}

# Shorter pieces than this are left out of what words keep clear of: a gear has thousands.
_WORTH = 0.8


def on_paper(point: Point, scale: float) -> Point:
    """A point of a view in mm of paper from the view's origin."""
    return (point[0] * scale, -point[1] * scale)


def outline_of(view: View, scale: float) -> Rectangle:
    """The rectangle that a view's edges fill."""
    points = [point for edge in view.edges for point in extremes(edge)]
    points += [point for outline in view.outlines for point in outline.points]
    return around(on_paper(point, scale) for point in points or [(0.0, 0.0)])


def draw_lines(view: View, scale: float, paper: Paper, *, has_words: bool = True) -> None:
    """Hatching first, outlines over it, centre lines and threads last.

    A view without words need not remember what they would have to keep clear of.
    """
    for outline in view.outlines:
        loops = tuple(
            tuple(on_paper(point, scale) for point in loop)
            for loop in (outline.points, *outline.holes)
        )
        for one, two in hatching(loops, outline.lean):
            paper.draw(Line(*one, *two, Stroke.THIN))
            paper.shaded.add_line(one, two)
    for kind, stroke in _STROKES.items():
        for edge in view.edges:
            if edge.kind == kind:
                paper.draw(drawn_edge(edge, scale, stroke))
                if has_words:
                    _keep_clear(edge, scale, paper)
    paper.reach(outline_of(view, scale))
    for mark in view.marks:
        draw_mark(mark, scale, paper)


def drawn_edge(edge: Edge, scale: float, stroke: Stroke) -> DrawnShape:
    """One edge as a shape."""
    if not isinstance(edge, Bow):
        points = tuple(on_paper(point, scale) for point in edge.points)
        return (
            Line(*points[0], *points[1], stroke) if len(points) == 2 else Polyline(points, stroke)
        )
    x, y = on_paper(edge.centre, scale)
    radius = edge.radius * scale
    if edge.end - edge.start >= 360 - 1e-6:
        return DrawnDisc(x, y, radius, stroke=stroke)
    return DrawnArc(x, y, radius, edge.start, edge.end, stroke)


def _keep_clear(edge: Edge, scale: float, paper: Paper) -> None:
    points = [on_paper(point, scale) for point in as_chain(edge, 20.0)]
    here = points[0]
    for point in points[1:-1]:
        if hypot(point[0] - here[0], point[1] - here[1]) >= _WORTH:
            paper.taken.add_line(here, point)
            here = point
    paper.taken.add_line(here, points[-1])
