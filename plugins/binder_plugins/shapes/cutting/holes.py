"""Holes, countersinks, centre holes and round recesses to what is cut away."""

from __future__ import annotations

import math
from collections.abc import Iterator

from binder_plugins.shapes.cutting.task import CLEAR, Task, inwards
from binder_plugins.shapes.forming.body import moved
from binder_solid.forms import Cone, Cylinder, Form, Frame, Raised
from binder_solid.outlines import rectangle

# The point of a twist drill, 118 degrees: half of it.
_POINT = math.radians(59)
_COUNTERSINK = 90.0
# Form A of ISO 6411: a countersink of 60 degrees, 2.12 pilots wide; the pilot of the centre
# drill (ISO 866) is a quarter longer than wide. From memory, clause not opened.
CENTRE_MOUTH = 2.12
_CENTRE_PILOT = 1.25
_CENTRE_SLOPE = math.tan(math.radians(30))


def hole(task: Task, frame: Frame) -> Iterator[Form]:
    """A cylinder, with the point of the drill where it is blind."""
    if task.mm("narrows_to"):
        yield _taper(task, frame)
        return
    radius = task.size / 2
    above = CLEAR if task.place.face == "across" else 0.0
    frame, above = _leaning(task, frame, radius, above)
    if task.depth is None:
        long = _reach(task, frame) + above + (CLEAR if above else 0.0)
        yield Cylinder(radius, long, inwards(frame, above))
        return
    yield Cylinder(radius, task.depth + above, inwards(frame, above))
    if task.feature.kind in ("drilled", "tapped"):
        tip = radius / math.tan(_POINT)
        yield Cone(radius, 0.0, tip, inwards(frame, -task.depth))


def _taper(task: Task, frame: Frame) -> Form:
    """A taper bore, from its mouth to what it narrows to."""
    deep = task.depth if task.depth is not None else _reach(task, frame)
    return Cone(task.size / 2, task.mm("narrows_to") / 2, deep, inwards(frame))


def _leaning(task: Task, frame: Frame, radius: float, above: float) -> tuple[Frame, float]:
    """A hole that leans along the part starts so far out that its whole mouth is cut."""
    lean = math.radians(task.degrees("lean"))
    if not lean:
        return frame, above
    sine, cosine = math.sin(lean), math.cos(lean)
    a, b, c = (cosine * z + sine * x for z, x in zip(frame.z, frame.x, strict=True))
    d, e, f = (cosine * x - sine * z for z, x in zip(frame.z, frame.x, strict=True))
    return Frame(frame.origin, (a, b, c), (d, e, f)), CLEAR + radius * abs(math.tan(lean))


def _reach(task: Task, frame: Frame) -> float:
    """The metal along a hole; along one that leans no more than the whole part."""
    through = task.body.through(frame)
    return through if not task.degrees("lean") else math.dist(task.body.least, task.body.most)


def countersink(task: Task, frame: Frame) -> Iterator[Form]:
    """A cone to its point."""
    radius = task.size / 2
    half = math.radians(task.degrees("angle", _COUNTERSINK) / 2)
    yield Cone(radius, 0.0, radius / math.tan(half), inwards(frame))


def centre(task: Task, frame: Frame) -> Iterator[Form]:
    """A centre hole of form A: its cone, and its pilot with a drilled point."""
    pilot = task.size / 2
    mouth = pilot * CENTRE_MOUTH
    deep = (mouth - pilot) / _CENTRE_SLOPE
    long = deep + _CENTRE_PILOT * task.size
    yield Cone(mouth, pilot, deep, inwards(frame))
    yield Cylinder(pilot, long, inwards(frame))
    yield Cone(
        pilot,
        0.0,
        pilot / math.tan(_POINT),
        Frame(moved(frame, 0, 0, -long), inwards(frame).z, frame.x),
    )


def recess(task: Task, frame: Frame) -> Iterator[Form]:
    """A round recess with a flat floor, or a square-cornered one of a length and width."""
    depth = task.depth if task.depth is not None else task.body.through(frame)
    if task.length is None:
        yield Cylinder(task.size / 2, depth, inwards(frame))
    else:
        yield Raised(rectangle(task.length, task.size), depth, inwards(frame))


def boss(task: Task, frame: Frame) -> Iterator[Form]:
    """A round boss on the surface, let in a little so that it is one piece with the part."""
    root = min(CLEAR, task.body.through(frame) / 2)
    yield Cylinder(
        task.size / 2,
        task.mm("height") + root,
        Frame(moved(frame, 0.0, 0.0, -root), frame.z, frame.x),
    )
