"""Outlines of cut material to hatching: thin parallel lines that leave the holes out."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise
from math import ceil, cos, radians, sin

from binder_drafting.plane import Point

# ISO 128-3: hatching lies at 45° to the main outlines, its spacing goes with the size of the
# area, never under 0.7 mm. From memory of the standard; the figures are common practice.
_WIDE = 2.6
_NARROW = 1.4
_SMALL_AREA = 12.0


def hatching(loops: tuple[tuple[Point, ...], ...], lean: float) -> tuple[tuple[Point, Point], ...]:
    """Hatch lines of an area on the paper, in mm; a loop within another is a hole in it.

    `lean` is in degrees anticlockwise as seen. Lines of equal lean and spacing fall in with one
    another over the whole sheet, so that two areas of one part look like one part.
    """
    turn = radians(lean)
    along, down = cos(turn), -sin(turn)
    turned = [tuple((x * along + y * down, -x * down + y * along) for x, y in one) for one in loops]
    lines = _filled(turned, _spacing(loops[0]))
    return tuple(
        (
            (start * along - level * down, start * down + level * along),
            (end * along - level * down, end * down + level * along),
        )
        for start, end, level in lines
    )


def _spacing(outer: tuple[Point, ...]) -> float:
    xs, ys = zip(*outer, strict=True)
    least = min(max(xs) - min(xs), max(ys) - min(ys))
    return _WIDE if least > _SMALL_AREA else _NARROW


def _filled(loops: list[tuple[Point, ...]], spacing: float) -> Iterator[tuple[float, float, float]]:
    """Start, end and level of each stretch of each line that lies inside."""
    hits: dict[int, list[float]] = {}
    for loop in loops:
        for (x1, y1), (x2, y2) in pairwise((*loop, loop[0])):
            if y1 == y2:
                continue
            low, high = min(y1, y2), max(y1, y2)
            # Half open: a corner on a line counts for one of its two sides.
            for row in range(ceil(low / spacing), ceil(high / spacing)):
                level = row * spacing
                hits.setdefault(row, []).append(x1 + (x2 - x1) * (level - y1) / (y2 - y1))
    for row in sorted(hits):
        ends = sorted(hits[row])
        for start, end in zip(ends[::2], ends[1::2], strict=True):
            if end - start > 0.05:
                yield (start, end, row * spacing)
