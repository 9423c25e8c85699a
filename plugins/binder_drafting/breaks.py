"""A long view to a short one: stretches in which nothing happens are left out (ISO 128-3)."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import replace
from typing import Any, TypeVar

from binder_drafting.clip import clipped, is_in_strip, loop_in_strip, within_strip
from binder_drafting.edges import SMOOTH, Bow, Chain, Edge, Point, extremes
from binder_drafting.sizes import Size
from binder_drafting.views import Break, Mark, Outline, View

# The gap between the halves and what the zigzag stands past them, in mm of paper.
_GAP = 3.0
_PAST = 3.0
_ZIG = 1.5
# Beyond any part, in mm.
_FAR = 1e7

# The fields of marks and sizes that are points of the view.
_POINTS = ("start", "end", "centre", "apex", "at")

Strip = tuple[float, float, float]
Noun = TypeVar("Noun", bound=Mark | Size)


def shortened(view: View, sizes: Sequence[Size], scale: float) -> tuple[View, tuple[Size, ...]]:
    """A view without its breaks, and its sizes at the places to which their points have come."""
    # From the far end, so that a break does not move the ones that are still to come.
    for one in sorted(view.breaks, key=lambda one: -one.start):
        view, sizes = _without(view, sizes, one, scale)
    return (replace(view, breaks=()), tuple(sizes))


def _without(
    view: View, sizes: Sequence[Size], one: Break, scale: float
) -> tuple[View, tuple[Size, ...]]:
    axis = 0 if one.direction == "u" else 1
    back = one.end - one.start - _GAP / scale
    if back <= 0:
        return (view, tuple(sizes))
    strips = ((-_FAR, one.start, 0.0), (one.end, _FAR, -back))
    edges = [
        piece for edge in view.edges for strip in strips for piece in _pieces(edge, axis, strip)
    ]
    zigzags = _zigzags(view, axis, (one.start, one.end - back), scale)
    move = _mover(axis, one, back)
    closer = replace(
        view,
        edges=(*edges, *zigzags),
        outlines=tuple(_outlines(view.outlines, axis, strips)),
        marks=tuple(_with_points(mark, move) for mark in view.marks),
    )
    return (closer, tuple(_with_points(size, move) for size in sizes))


def _pieces(edge: Edge, axis: int, strip: Strip) -> Iterator[Edge]:
    low, high, shift = strip
    kept = within_strip(axis, low, high)
    for piece in clipped(edge, kept, is_in_strip(axis, low, high)):
        yield _edge_moved(piece, axis, shift)


def _edge_moved(edge: Edge, axis: int, shift: float) -> Edge:
    if isinstance(edge, Bow):
        return replace(edge, centre=_shifted(edge.centre, axis, shift))
    return replace(edge, points=tuple(_shifted(point, axis, shift) for point in edge.points))


def _shifted(point: Point, axis: int, shift: float) -> Point:
    return (point[0] + shift, point[1]) if axis == 0 else (point[0], point[1] + shift)


def _mover(axis: int, one: Break, back: float) -> Callable[[Point], Point]:
    """Moves a point with its half; what lies in the gap goes to the near edge of it."""

    def move(point: Point) -> Point:
        here = point[axis]
        if here <= one.start:
            return point
        return _shifted(point, axis, -min(back, here - one.start))

    return move


def _outlines(outlines: Sequence[Outline], axis: int, strips: Sequence[Strip]) -> Iterator[Outline]:
    for outline in outlines:
        for low, high, shift in strips:
            points = _loop(outline.points, axis, (low, high, shift))
            if len(points) > 2:
                holes = (_loop(hole, axis, (low, high, shift)) for hole in outline.holes)
                yield replace(
                    outline, points=points, holes=tuple(hole for hole in holes if len(hole) > 2)
                )


def _loop(loop: Sequence[Point], axis: int, strip: Strip) -> tuple[Point, ...]:
    low, high, shift = strip
    return tuple(_shifted(point, axis, shift) for point in loop_in_strip(loop, axis, low, high))


def _with_points(noun: Noun, move: Callable[[Point], Point]) -> Noun:
    """The same mark or size with all of its points moved."""
    named = [name for name in _POINTS if hasattr(noun, name)]
    changes: dict[str, Any] = {name: move(getattr(noun, name)) for name in named}
    return replace(noun, **changes)


def _zigzags(view: View, axis: int, places: tuple[float, float], scale: float) -> Iterator[Chain]:
    """A thin line with a zigzag at both edges of the gap (ISO 128-2, line 01.1)."""
    across = [point[1 - axis] for edge in view.edges for point in extremes(edge)]
    low, high = min(across) - _PAST / scale, max(across) + _PAST / scale
    middle, zig = (low + high) / 2, _ZIG / scale
    for place in places:
        path = (
            (place, low),
            (place, middle - zig),
            (place + zig / 2, middle - zig / 2),
            (place - zig / 2, middle + zig / 2),
            (place, middle + zig),
            (place, high),
        )
        yield Chain(path if axis == 0 else tuple((v, u) for u, v in path), SMOOTH)
