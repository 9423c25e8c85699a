"""Ends of turned steps that are chamfered, rounded or domed, to what is cut away."""

from __future__ import annotations

import math
from collections.abc import Iterator

from binder_plugins.shapes.cutting.rounds import radius_of
from binder_plugins.shapes.cutting.task import AXIS, Task
from binder_plugins.shapes.forming.body import Body
from binder_solid.facts import Stretch
from binder_solid.forms import Arc, Form, Outline, Point, Revolved, Straight

Corner = tuple[Stretch, float, int]
_ALL = ("edges", "all", "ends")


def turned_edges(task: Task) -> Iterator[Form]:
    """A ring for each corner that is broken."""
    for step, end, way in corners_of(task):
        form = _corner(task, step, end, way)
        if form is not None:
            yield form


def corners_of(task: Task) -> Iterator[Corner]:
    """The corners that are meant: those of a step, of an end, of both ends, or all."""
    where, body = task.word("on"), task.body
    if task.place.under is not None:
        yield from free_ends(task.place.under, body)
    elif where in ("edges", "all"):
        for step in body.stretches:
            yield from free_ends(step, body)
    else:
        first, last = body.stretches[0], body.stretches[-1]
        if task.place.face == "left" or where == "ends":
            yield first, first.start, 1
        if task.place.face == "right" or where == "ends":
            yield last, last.end, -1


def free_ends(step: Stretch, body: Body) -> Iterator[Corner]:
    """The ends of a step that stand free: at the end of the part or above the next step."""
    places = list(body.stretches)
    n = places.index(step)
    before = places[n - 1].end_across if n else 0.0
    after = places[n + 1].across if n + 1 < len(places) else 0.0
    if before < step.across:
        yield step, step.start, 1
    if after < step.end_across:
        yield step, step.end, -1


def _corner(task: Task, step: Stretch, end: float, way: int) -> Form | None:
    size = task.size
    radius = (step.across if way > 0 else step.end_across) / 2
    if step.corners:
        radius = radius_of(step)
    if size > radius or size > step.end - step.start:
        return None
    outer: Point = (end, radius)
    tip: Point = (end + way * size, radius)
    if task.feature.kind == "rounded":
        middle = size * (1 - math.sqrt(0.5))
        bend: Point = (end + way * middle, radius - middle)
        return Revolved(Outline((end, radius - size), (Arc(bend, tip), Straight(outer))), AXIS)
    lean = size * math.tan(math.radians(task.degrees("angle", 45.0)))
    inner: Point = (end, radius - min(lean, radius))
    return Revolved(Outline(inner, (Straight(tip), Straight(outer))), AXIS)
