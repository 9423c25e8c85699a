"""Flats, grooves and undercuts on turned work to what is cut away."""

from __future__ import annotations

import math
from collections.abc import Iterator

from binder_plugins.shapes.cutting.slots import slot
from binder_plugins.shapes.cutting.task import AXIS, AXIS_X, CLEAR, Task
from binder_plugins.shapes.forming.body import cross
from binder_solid.facts import Stretch
from binder_solid.forms import Arc, Box, Form, Frame, Outline, Revolved, Straight
from binder_solid.outlines import polygon


def flat(task: Task, frame: Frame) -> Iterator[Form]:
    """All above a plane: so far from the opposite side, or half the distance of two flats."""
    step = task.place.under
    if step is None:
        return
    radius = radius_of(step)
    count = getattr(task.feature.entry, "off", None) or 1
    plane = task.size / 2 if count % 2 == 0 else task.size - step.across / 2
    height = radius - plane + CLEAR
    if height <= CLEAR:
        return
    start, end = span_of(task, step, frame)
    out = frame.z
    side = cross(out, AXIS_X)
    wide = radius + CLEAR
    corner = tuple(plane * z - wide * y for z, y in zip(out, side, strict=True))
    origin = (start, corner[1], corner[2])
    yield Box(end - start, 2 * wide, height, Frame(origin, out, AXIS_X))


def radius_of(step: Stretch) -> float:
    """The largest radius of a step: over the corners where it has any."""
    across = max(step.across, step.end_across)
    return across / 2 / math.cos(math.pi / step.corners) if step.corners else across / 2


def span_of(task: Task, step: Stretch, frame: Frame) -> tuple[float, float]:
    """Where along x a flat runs: all of its step, or its length about its place, inside it."""
    if task.length is None or task.length >= step.end - step.start:
        return step.start, step.end
    x = frame.origin[0]
    return max(step.start, x - task.length / 2), min(step.end, x + task.length / 2)


def groove(task: Task, frame: Frame) -> Iterator[Form]:
    """A ring cut round a step; on a face that is not turned, a slot."""
    step = task.place.under
    if step is None or task.place.face != "across":
        yield from slot(task, frame)
        return
    deep = task.depth if task.depth is not None else task.size / 2
    half, x, outer = task.size / 2, frame.origin[0], step.across / 2
    if task.is_round:
        yield round_ring(x, half, outer - deep, outer + CLEAR)
    else:
        yield ring(x - half, x + half, outer - deep, outer + CLEAR)


def round_ring(middle: float, half: float, inner: float, outer: float) -> Form:
    """A ring about x with half a circle at its inner radius, and straight walls from there."""
    centre, out = inner + half, max(outer, inner + half + CLEAR)
    outline = Outline(
        (middle - half, out),
        (
            Straight((middle - half, centre)),
            Arc((middle, inner), (middle + half, centre)),
            Straight((middle + half, out)),
        ),
    )
    return Revolved(outline, AXIS)


def ring(start: float, end: float, inner: float, outer: float) -> Form:
    """A ring about x between two radii."""
    return Revolved(polygon([(start, inner), (end, inner), (end, outer), (start, outer)]), AXIS)
