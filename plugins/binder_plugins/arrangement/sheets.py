"""Pictures of several parts to the views, balloons and sizes of a sheet."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import pairwise
from math import dist

from binder.api import Design, ItemNumber
from binder_drafting import AxisLine, Balloon, Edge, View, edges_of
from binder_plugins.arrangement.gathering import PictureFact, Shown
from binder_solid.forms import Point
from binder_solid.space import placed
from binder_solid.views import Edge as Seen
from binder_solid.views import View as SolidView

PICTURE_SCALES = (2.0, 1.5, 1.0, 0.8, 0.65, 0.5, 0.4, 0.3, 0.25, 0.2, 0.15, 0.1, 0.05, 0.02)
"""A picture is as large as its room: nothing is measured on it."""
_SHARE = 0.4
_LEAST = 0.3
"""How long in mm an edge must be for a leader to point at it."""


@dataclass(frozen=True, slots=True)
class Mark:
    """Where a balloon points: the view by its place, and the point in it."""

    view: int
    at: Point
    length: float


def view_of(fact: PictureFact, number: int, *, is_picture: bool = False) -> View:
    """One view of all parts together."""
    first = fact.shown[0].views[number]
    edges: tuple[Edge, ...] = tuple(
        edge for one in fact.shown for edge in edges_of(_drawn(one.views[number]))
    )
    marks = tuple(AxisLine(first.flat(a), first.flat(b)) for a, b in fact.lines)
    side = "" if first.name == "isometric" else first.name
    return View(first.name, edges, side=side, marks=marks, is_picture=is_picture)


def _drawn(view: SolidView) -> Iterator[Seen]:
    """Sharp edges and outlines: on a small scale the lines between smooth faces only blacken."""
    return (edge for edge in view.edges if edge.kind == "visible")


def balloons_of(
    fact: PictureFact, design: Design, views: Sequence[int], names: Sequence[str] = ()
) -> tuple[Balloon, ...]:
    """A balloon for each item that is seen, in the first of the views that shows it well.

    `names` are the items that the balloons stand for, where several parts are one item.
    """
    found: list[Balloon] = []
    items = list(names) or [one.copy.item for one in fact.shown]
    for item in dict.fromkeys(items):
        shown = [one for one, name in zip(fact.shown, items, strict=True) if name == item]
        number = design.facts.about(ItemNumber, item)
        mark = _mark(shown, views)
        if number is None or mark is None:
            continue
        name = shown[0].views[mark.view].name
        found.append(
            Balloon(
                f"{fact.subject} {item}", name, str(number.number), mark.at, _target(item, design)
            )
        )
    return tuple(found)


def _target(item: str, design: Design) -> str:
    if item in design.parts or item in design.fabrications:
        return f"part-{item}"
    return f"assembly-{item}" if item in design.assemblies else ""


def _mark(shown: Sequence[Shown], views: Sequence[int]) -> Mark | None:
    """A point of the longest edge that is seen of an item, in the view that shows it best.

    The first view is taken unless it shows only a sliver of what another one does.
    """
    best: Mark | None = None
    for number in views:
        marks = [m for one in shown if (m := _longest(one.views[number], number)) is not None]
        here = max(marks, key=lambda mark: mark.length, default=None)
        if here is not None and (best is None or here.length > 4 * best.length):
            best = here
    return best


def _longest(view: SolidView, number: int) -> Mark | None:
    edges = [(_run(edge), edge) for edge in view.edges if edge.kind == "visible"]
    long = max(edges, key=lambda one: round(one[0], 6), default=None)
    if long is None or long[0] < _LEAST:
        return None
    points = long[1].points()
    return Mark(number, _part_way(points), long[0])


def _run(edge: Seen) -> float:
    points = edge.points()
    return sum(dist(one, two) for one, two in pairwise(points))


def _part_way(points: Sequence[Point]) -> Point:
    """A little before the middle, where mostly something else stands."""
    half = sum(dist(one, two) for one, two in pairwise(points)) * _SHARE
    for one, two in pairwise(points):
        step = dist(one, two)
        if step >= half and step > 0:
            share = half / step
            return (one[0] + (two[0] - one[0]) * share, one[1] + (two[1] - one[1]) * share)
        half -= step
    return points[-1]


def box_of(fact: PictureFact) -> tuple[tuple[float, float, float], tuple[float, float, float]]:
    """The least and most corner of all that is shown, by the boxes of the parts."""
    corners = [
        placed(corner, one.frame) for one in fact.shown for corner in _eight(one.copy.corners)
    ]
    least = (min(c[0] for c in corners), min(c[1] for c in corners), min(c[2] for c in corners))
    most = (max(c[0] for c in corners), max(c[1] for c in corners), max(c[2] for c in corners))
    return least, most


def _eight(
    corners: tuple[tuple[float, float, float], tuple[float, float, float]],
) -> Iterator[tuple[float, float, float]]:
    (a, b, c), (d, e, f) = corners
    return ((x, y, z) for x in (a, d) for y in (b, e) for z in (c, f))
