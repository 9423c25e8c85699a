"""Slots, keyways, T-slots and dovetails to what is cut away."""

from __future__ import annotations

import math
from collections.abc import Iterator

from binder_plugins.shapes.cutting.task import CLEAR, Task, inwards, run_of, section_of
from binder_plugins.shapes.forming.body import Body, cross, moved
from binder_solid.forms import Arc, Cylinder, Form, Frame, Outline, Raised, Straight
from binder_solid.outlines import polygon, rectangle
from binder_solid.outlines import slot as obround

_DOVETAIL = 60.0


def slot(task: Task, frame: Frame) -> Iterator[Form]:
    """Round where it ends inside its face, open where it meets an edge."""
    frame = run_of(task, frame)
    depth = task.depth if task.depth is not None else task.body.through(frame)
    start, end = run_within(task, frame)
    least, most = room_of(task, frame)
    is_open_left, is_open_right = start <= least + 1e-9, end >= most - 1e-9
    if not is_open_left and not is_open_right:
        yield from _closed(task, frame, depth, start, end)
        return
    extra = task.size if _is_free(task) else 0.0
    start = least - extra if is_open_left else start
    end = most + extra if is_open_right else end
    middle = Frame(moved(frame, (start + end) / 2, 0.0), frame.z, frame.x)
    if is_open_left and is_open_right:
        yield Raised(rectangle(end - start, task.size), depth, inwards(middle))
    else:
        yield Raised(
            _one_round_end(start, end, task.size, is_open_left=is_open_left), depth, inwards(frame)
        )


def keyway(task: Task, frame: Frame) -> Iterator[Form]:
    """A slot; or the round seat that a Woodruff cutter sinks to its depth."""
    radius = task.mm("cutter") / 2
    if not radius or task.depth is None:
        yield from slot(task, frame)
        return
    across = cross(frame.z, frame.x)
    start = moved(frame, 0.0, -task.size / 2, radius - task.depth)
    yield Cylinder(radius, task.size, Frame(start, across, frame.x))


def _closed(task: Task, frame: Frame, depth: float, start: float, end: float) -> Iterator[Form]:
    middle = Frame(moved(frame, (start + end) / 2, 0.0), frame.z, frame.x)
    long = end - start
    if long > task.size:
        yield Raised(obround(long, task.size), depth, inwards(middle))
    else:
        yield Raised(rectangle(long, task.size), depth, inwards(middle))


def _is_free(task: Task) -> bool:
    """A slot in a step of turned work may not run on into its neighbours."""
    return task.place.under is None or task.place.face != "across"


def _one_round_end(start: float, end: float, width: float, *, is_open_left: bool) -> Outline:
    # Seen from inside the metal: the frame that points inwards keeps x and turns y round.
    r = width / 2
    if is_open_left:
        x = end - r
        return Outline(
            (start, -r), (Straight((x, -r)), Arc((end, 0.0), (x, r)), Straight((start, r)))
        )
    x = start + r
    return Outline(
        (x, -r),
        (Straight((end, -r)), Straight((end, r)), Straight((x, r)), Arc((start, 0.0), (x, -r))),
    )


def run_within(task: Task, frame: Frame) -> tuple[float, float]:
    """Where a slot starts and ends along its run, from the frame's origin."""
    least, most = room_of(task, frame)
    if task.length is None or task.length >= most - least:
        return least, most
    return -task.length / 2, task.length / 2


def room_of(task: Task, frame: Frame) -> tuple[float, float]:
    """Where the face, or the step, begins and ends along the frame's x, from its origin."""
    step = task.place.under
    if task.place.face == "across" and step is not None and abs(frame.x[0]) > 0.5:
        return step.start - frame.origin[0], step.end - frame.origin[0]
    return face_room(task.body, frame)


def face_room(body: Body, frame: Frame) -> tuple[float, float]:
    """Where the body begins and ends along the frame's x, from its origin."""
    axis = max(range(3), key=lambda n: abs(frame.x[n]))
    ends = sorted(
        (side[axis] - frame.origin[axis]) * frame.x[axis] for side in (body.least, body.most)
    )
    return ends[0], ends[1]


def t_slot(task: Task, frame: Frame) -> Iterator[Form]:
    """The neck, and the wider head at its floor, as one outline along the run."""
    frame = run_of(task, frame)
    neck, head = task.size / 2, task.mm("head") / 2
    deep = task.depth if task.depth is not None else task.body.through(frame)
    under = -(deep - task.mm("head_depth"))
    outline = polygon([
        (-neck, CLEAR), (-neck, under), (-head, under), (-head, -deep),
        (head, -deep), (head, under), (neck, under), (neck, CLEAR),
    ])  # fmt: skip
    yield _along(task, frame, outline)


def dovetail(task: Task, frame: Frame) -> Iterator[Form]:
    """A dovetailed slot, or the metal on both sides of a tail that is left standing."""
    frame = run_of(task, frame)
    depth = task.depth if task.depth is not None else task.size / 4
    lean = 1 / math.tan(math.radians(task.degrees("angle", _DOVETAIL)))
    narrow, wide = task.size / 2, task.size / 2 + depth * lean
    if getattr(task.feature.entry, "inside", False):
        yield _along(task, frame, _dovetail_slot(narrow, wide, depth))
        return
    across = section_of(frame, 0.0)
    left, right = face_room(task.body, across)
    top = wide + CLEAR * lean
    if right > wide:
        far = right + CLEAR
        points = ((narrow, -depth), (far, -depth), (far, CLEAR), (top, CLEAR))
        yield _along(task, frame, polygon(points))
    if -left > wide:
        far = left - CLEAR
        points = ((-narrow, -depth), (-top, CLEAR), (far, CLEAR), (far, -depth))
        yield _along(task, frame, polygon(points))


def _dovetail_slot(narrow: float, wide: float, depth: float) -> Outline:
    return polygon([
        (-wide, -depth), (wide, -depth), (narrow, 0.0),
        (narrow, CLEAR), (-narrow, CLEAR), (-narrow, 0.0),
    ])  # fmt: skip


def _along(task: Task, frame: Frame, outline: Outline) -> Form:
    """An outline square to the run, raised along it; past the edges where it is open."""
    start, end = run_within(task, frame)
    least, most = room_of(task, frame)
    start = start - CLEAR if start <= least + 1e-9 else start
    end = end + CLEAR if end >= most - 1e-9 else end
    return Raised(outline, end - start, section_of(frame, start))
