"""Pockets, steps milled off and bevelled edges to what is cut away."""

from __future__ import annotations

import math
from collections.abc import Iterator

from binder_plugins.shapes.cutting.task import CLEAR, Task, inwards, run_of
from binder_plugins.shapes.forming.body import FACES, Body, cross
from binder_solid.forms import Form, Frame, Outline, Raised, Vector
from binder_solid.outlines import circle, polygon, rectangle, rounded_rectangle, turned
from binder_solid.outlines import slot as obround


def pocket(task: Task, frame: Frame) -> Iterator[Form]:
    """A pocket with upright sides; its corners are as round as it says."""
    frame = run_of(task, frame)
    depth = task.depth if task.depth is not None else task.body.through(frame)
    outline = pocket_outline(task.size, task.mm("width"), task.mm("corner"))
    yield Raised(outline, depth, inwards(frame))


def pocket_outline(length: float, width: float, radius: float) -> Outline:
    """A rectangle with corners sharp, round, or so round that its ends or all of it is."""
    least = min(length, width)
    if radius <= 0.0:
        return rectangle(length, width)
    if 2 * radius < least:
        return rounded_rectangle(length, width, radius)
    if length == width:
        return circle(least / 2)
    along = obround(max(length, width), least)
    return along if length > width else turned(along, 90.0)


def rebate(task: Task, _frame: Frame) -> Iterator[Form]:
    """The metal beside one side and below the face, along their whole edge."""
    yield from _off_edge(task, task.size, task.depth or 0.0, is_square=True)


def bevel(task: Task, _frame: Frame) -> Iterator[Form]:
    """The wedge between the face and the side; 45 degrees where no angle is said."""
    lean = math.tan(math.radians(task.degrees("angle", 45.0)))
    yield from _off_edge(task, task.size, task.size * lean, is_square=False)


def _off_edge(task: Task, far: float, deep: float, *, is_square: bool) -> Iterator[Form]:
    face, side = task.place.face, task.body.face_named(task.word("side"))
    has_edge = side in FACES and face in FACES and not parallel(face, side)
    if has_edge and far > 0.0 and deep > 0.0:
        frame, long = edge_frame(task.body, face, side)
        outline = _square(far, deep) if is_square else wedge(far, deep)
        yield Raised(outline, long, frame)


def parallel(face: str, side: str) -> bool:
    """Whether two faces never meet in an edge."""
    one, other = FACES[face].z, FACES[side].z
    return any(abs(a) > 0.5 and abs(b) > 0.5 for a, b in zip(one, other, strict=True))


def edge_frame(body: Body, face: str, side: str) -> tuple[Frame, float]:
    """A frame on the edge of two faces, and its length with a little at both ends.

    Its x runs along the face into the metal, away from the side; its y down the side. Where
    that would be a left-handed frame it starts at the other end of the edge.
    """
    out, beside = FACES[face].z, FACES[side].z
    inner: Vector = (-beside[0], -beside[1], -beside[2])
    along = cross(inner, (-out[0], -out[1], -out[2]))
    origin: list[float] = []
    long = 0.0
    for axis in range(3):
        least, most = body.least[axis], body.most[axis]
        way = out[axis] + beside[axis]
        if abs(along[axis]) > 0.5:
            long = most - least
            origin.append(least - CLEAR if along[axis] > 0 else most + CLEAR)
        else:
            origin.append(most if way > 0 else least)
    return Frame((origin[0], origin[1], origin[2]), along, inner), long + 2 * CLEAR


def _square(far: float, deep: float) -> Outline:
    return polygon([(-CLEAR, -CLEAR), (far, -CLEAR), (far, deep), (-CLEAR, deep)])


def wedge(far: float, deep: float) -> Outline:
    """The corner outside a line from `far` along the face to `deep` down the side."""
    slope = deep / far
    return polygon(
        [(-CLEAR, -CLEAR), (far + CLEAR / slope, -CLEAR), (-CLEAR, deep + CLEAR * slope)]
    )
