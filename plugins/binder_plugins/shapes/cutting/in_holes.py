"""What is done in a hole that is there: its mouth, a groove, a wider part, a keyway."""

from __future__ import annotations

import math
from collections.abc import Callable, Iterator

from binder_plugins.shapes.cutting.task import CLEAR, Task, inwards
from binder_plugins.shapes.forming.body import moved
from binder_solid.forms import (
    Arc,
    Box,
    Cone,
    Cylinder,
    Form,
    Frame,
    Outline,
    Revolved,
    Straight,
    Vector,
)
from binder_solid.outlines import polygon

Bore = tuple[float, float]


def in_hole(task: Task, frame: Frame, bore: Bore) -> Iterator[Form]:
    """The tools at one hole; `bore` is its radius and how deep it goes, in mm."""
    make = _MAKE.get(task.feature.kind)
    if make is not None:
        yield from make(task, inwards(frame), bore)


def _chamfer(task: Task, frame: Frame, bore: Bore) -> Iterator[Form]:
    lean = math.radians(task.degrees("angle", 45.0))
    yield Cone(bore[0] + task.size * math.tan(lean), bore[0], task.size, frame)


def _round(task: Task, frame: Frame, bore: Bore) -> Iterator[Form]:
    """The mouth rolled over: all between the bore and a quarter round outside it."""
    radius, size = bore[0], task.size
    lie = size * (1 - math.sqrt(0.5))
    outline = Outline(
        (0.0, 0.0),
        (
            Straight((0.0, radius + size)),
            Arc((lie, radius + lie), (size, radius)),
            Straight((size, 0.0)),
        ),
    )
    yield Revolved(outline, frame)


def _countersink(task: Task, frame: Frame, bore: Bore) -> Iterator[Form]:
    half = math.radians(task.degrees("angle", 90.0) / 2)
    if task.size / 2 > bore[0]:
        yield Cone(task.size / 2, bore[0], (task.size / 2 - bore[0]) / math.tan(half), frame)


def _wider(task: Task, frame: Frame, bore: Bore) -> Iterator[Form]:
    deep = task.depth if task.depth is not None else bore[1]
    yield Cylinder(task.size / 2, deep, frame)


def _recess(task: Task, frame: Frame, bore: Bore) -> Iterator[Form]:
    """A wider part of a length: from so deep, else about the middle of the hole."""
    if task.length is None:
        yield from _wider(task, frame, bore)
        return
    start = task.depth if task.depth is not None else (bore[1] - task.length) / 2
    yield _ring(start, start + task.length, bore[0], task.size / 2, frame)


def _groove(task: Task, frame: Frame, bore: Bore) -> Iterator[Form]:
    """A groove of a width inside, at its place along the hole, else in its middle."""
    middle = task.place.along if task.place.along is not None else bore[1] / 2
    deep = task.depth if task.depth is not None else task.size / 2
    yield _ring(middle - task.size / 2, middle + task.size / 2, bore[0], bore[0] + deep, frame)


def _ring(start: float, end: float, inner: float, outer: float, frame: Frame) -> Form:
    inner *= 0.5
    return Revolved(polygon([(start, inner), (end, inner), (end, outer), (start, outer)]), frame)


def _keyway(task: Task, frame: Frame, bore: Bore) -> Iterator[Form]:
    """A keyway along a bore: its depth is counted from the wall of the bore."""
    deep = task.depth if task.depth is not None else task.size / 2
    up: Vector = (0.0, 0.0, 1.0) if abs(frame.z[2]) < 0.5 else (0.0, 1.0, 0.0)
    upright = Frame(frame.origin, frame.z, up)
    corner = Frame(moved(upright, 0.0, -task.size / 2), frame.z, up)
    yield Box(bore[0] + deep, task.size, bore[1] + CLEAR, corner)


_MAKE: dict[str, Callable[[Task, Frame, Bore], Iterator[Form]]] = {
    "chamfered": _chamfer,
    "rounded": _round,
    "countersunk": _countersink,
    "counterbored": _wider,
    "spotfaced": _wider,
    "reamed": _wider,
    "bored": _wider,
    "drilled": _wider,
    "tapped": _wider,
    "recessed": _recess,
    "grooved": _groove,
    "undercut": _groove,
    "keywayed": _keyway,
}
