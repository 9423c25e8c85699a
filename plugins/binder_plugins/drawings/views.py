"""Views of the kernel to views of a drawing, with their centre lines and threads."""

from __future__ import annotations

import math
from collections.abc import Iterator

from binder_drafting import (
    AxisLine,
    Bow,
    CentreMark,
    Chain,
    Edge,
    Mark,
    Outline,
    PitchCircle,
    ThreadCircle,
    ThreadLine,
)
from binder_drafting import View as Sheet
from binder_plugins.drawings.pointing import EDGES
from binder_plugins.drawings.tapped import ROOT, inside_thread
from binder_plugins.drawings.toothed import pitch_lines, with_teeth_uncut
from binder_solid.facts import FormFact, Located, ViewsFact
from binder_solid.views import Edge as Seen
from binder_solid.views import RoundLine, StraightLine, View

# A view that is not where the method of projection puts it says from where it is seen: in line with
# the view of the other side it would make the sheet twice as large.
_FREE = {"underside": ("top", "from below"), "back": ("front", "from behind")}
_NOT_ROUND = ("grooved", "undercut", "flatted", "stepped", *EDGES)


def sheets_of(fact: FormFact, found: ViewsFact) -> tuple[Sheet, ...]:
    """The views of one part, a half-section in the place of the front view where there is one."""
    half = next(iter(found.sections), None)
    views: list[Sheet] = []
    for view in found.views:
        if view.name == "front" and half is not None:
            views.append(with_teeth_uncut(_sheet(half, fact, name="front"), fact))
        else:
            opposite = _FREE.get(view.name, ("", ""))[0]
            is_free = any(one.name == opposite for one in found.views)
            views.append(_sheet(view, fact, name=view.name, is_free=is_free))
    return tuple(views)


def _sheet(view: View, fact: FormFact, name: str, *, is_free: bool = False) -> Sheet:
    is_picture = name == "isometric"
    return Sheet(
        name=name,
        edges=tuple(_edges(view, is_picture=is_picture, is_cut=bool(view.faces))),
        side="" if is_picture or is_free else name,
        title=_FREE[name][1] if is_free else "",
        outlines=tuple(Outline(face.outer, face.holes) for face in view.faces),
        marks=() if is_picture else tuple(_marks(view, fact, name)),
        is_picture=is_picture,
    )


def _edges(view: View, *, is_picture: bool, is_cut: bool) -> Iterator[Edge]:
    """Hidden lines are left out of pictures and sections."""
    for edge in view.edges:
        if edge.kind == "hidden" and (is_picture or is_cut):
            continue
        yield _edge(edge)


def _edge(edge: Seen) -> Edge:
    line = edge.line
    if isinstance(line, StraightLine):
        return Chain((line.start, line.end), edge.kind)
    if isinstance(line, RoundLine):
        return Bow(line.centre, line.radius, line.start, line.end, edge.kind)
    return Chain(line.points, edge.kind)


def _marks(view: View, fact: FormFact, name: str) -> Iterator[Mark]:
    if fact.stretches:
        yield from _turned_marks(view, fact, name)
    for one in fact.located:
        yield from _feature_marks(view, one, fact, name)


def _turned_marks(view: View, fact: FormFact, name: str) -> Iterator[Mark]:
    if name == "front":
        (least, _), (most, _) = view.bounds
        yield AxisLine((least, 0.0), (most, 0.0))
    else:
        yield CentreMark(view.flat((0.0, 0.0, 0.0)), fact.size[2] / 2)
    yield from pitch_lines(fact, name)


def _feature_marks(view: View, one: Located, fact: FormFact, name: str) -> Iterator[Mark]:
    if one.is_dummy and not one.tools:
        return
    if one.kind == "screwed":
        yield from _outside_thread(view, one, fact, name)
        return
    if one.diameter is None or not one.tools or one.kind in _NOT_ROUND:
        return
    normal = _toward(view, one)
    if abs(normal) > 0.9:
        yield from _seen_along(view, one, is_towards=normal > 0)
    elif abs(normal) < 0.1:
        yield from _seen_beside(view, one, fact)
        if one.is_thread:
            yield from inside_thread(view, one)


def _toward(view: View, one: Located) -> float:
    """How far a feature's axis points at the reader: 1 towards, 0 in the sheet."""
    a, b = view.right, view.up
    out = (a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0])
    return sum(x * y for x, y in zip(out, one.frame.z, strict=True))


def _seen_along(view: View, one: Located, *, is_towards: bool) -> Iterator[Mark]:
    radius = (one.diameter or 0.0) / 2
    for spot in one.spots:
        yield CentreMark(view.flat(spot), radius)
        if one.is_thread and is_towards:
            yield ThreadCircle(view.flat(spot), radius / ROOT)
    if one.circle is not None and len(one.spots) > 1:
        centre = view.flat(one.frame.origin)
        turns = tuple(_turn(centre, view.flat(spot)) for spot in one.spots)
        yield PitchCircle(centre, one.circle / 2, turns, radius)


def _turn(centre: tuple[float, float], spot: tuple[float, float]) -> float:
    return math.degrees(math.atan2(spot[1] - centre[1], spot[0] - centre[0])) % 360


def _seen_beside(view: View, one: Located, fact: FormFact) -> Iterator[Mark]:
    """The axis of a hole that lies in the sheet."""
    through = sum(abs(z) * size for z, size in zip(one.frame.z, fact.size, strict=True))
    deep = one.depth if one.depth is not None else through
    for spot in one.spots:
        a, b, c = (place - z * deep for place, z in zip(spot, one.frame.z, strict=True))
        start, end = view.flat(spot), view.flat((a, b, c))
        if start != end and not (fact.stretches and one.face == "axis"):
            yield AxisLine(start, end)


def _outside_thread(view: View, one: Located, fact: FormFact, name: str) -> Iterator[Mark]:
    """Thin lines at the root, over the length of the thread."""
    found = [s for s in fact.stretches if s.start <= one.frame.origin[0] <= s.end]
    if not found or name != "front":
        return
    step = found[0]
    root = step.across / 2 * ROOT
    for start, end in thread_lengths(one, fact, step.start, step.end):
        for v in (root, -root):
            yield ThreadLine(view.flat((start, 0.0, v)), view.flat((end, 0.0, v)))


def thread_lengths(
    one: Located, fact: FormFact, start: float, end: float
) -> Iterator[tuple[float, float]]:
    """Where along x an outside thread runs: from the free end of its step inwards."""
    long = min(one.length or end - start, end - start)
    is_last = end >= fact.size[0] - 1e-6
    is_first = start <= 1e-6
    if (is_first and not is_last) or len(one.spots) > 1:
        yield start, start + long
    if not (is_first and not is_last):
        yield end - long, end
