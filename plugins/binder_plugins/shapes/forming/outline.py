"""Points with the arcs between them to a closed outline, and what is wrong with them."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

from binder_solid.forms import Arc, Outline, Point, Segment, Straight


@dataclass(frozen=True, slots=True)
class Node:
    """A point; the line that comes to it is an arc of a radius, bulging out over nothing.

    `corner` is the radius that rounds the corner at the point.
    """

    at: Point
    bulge: float = 0.0
    corner: float = 0.0


def area_of(points: Sequence[Point]) -> float:
    """Twice the area inside straight lines from point to point; over nothing anticlockwise."""
    return sum(
        a[0] * b[1] - b[0] * a[1] for a, b in zip(points, [*points[1:], points[0]], strict=True)
    )


def fault_of(nodes: Sequence[Node]) -> tuple[int, str] | None:
    """The first node that cannot be, and why; None where the outline closes."""
    chords = [math.dist(nodes[n - 1].at, node.at) for n, node in enumerate(nodes)]
    if min(chords) < 1e-6:
        return chords.index(min(chords)), "two points lie in one place"
    for n, (node, chord) in enumerate(zip(nodes, chords, strict=True)):
        if node.bulge and abs(node.bulge) < chord / 2 - 1e-9:
            return n, f"an arc of {abs(node.bulge):g} mm does not reach over {chord:g} mm"
        if node.corner and _cut_of(nodes, n) is None:
            return n, f"a corner of {node.corner:g} mm does not fit between its neighbours"
    is_straight = not any(node.bulge for node in nodes)
    if is_straight and abs(area_of([node.at for node in nodes])) < 1e-6:
        return 0, "the points enclose nothing"
    return None


def outline_of(nodes: Sequence[Node]) -> Outline:
    """The outline through nodes that have no fault; arcs alone are taken to go clockwise."""
    side = 1.0 if area_of([node.at for node in nodes]) > 0 else -1.0
    cuts = [_cut_of(nodes, n) if node.corner else None for n, node in enumerate(nodes)]
    arrivals = [cut[0] if cut else node.at for cut, node in zip(cuts, nodes, strict=True)]
    segments: list[Segment] = []
    for n, node in enumerate(nodes):
        if n > 0:
            segments.append(_line(nodes[n - 1], node, arrivals[n], side))
        cut = cuts[n]
        if cut:
            segments.append(Arc(cut[1], cut[2]))
    segments.append(_line(nodes[-1], nodes[0], arrivals[0], side))
    return Outline(arrivals[0], tuple(segments))


def _line(before: Node, node: Node, to: Point, side: float) -> Segment:
    if not node.bulge:
        return Straight(to)
    (x, y), (u, v) = before.at, node.at
    chord = math.dist(before.at, node.at)
    radius = abs(node.bulge)
    rise = radius - math.sqrt(max(0.0, radius**2 - chord**2 / 4))
    rise *= side * (1 if node.bulge > 0 else -1)
    # Outwards is to the right of the way round where that is anticlockwise.
    return Arc(((x + u) / 2 + (v - y) / chord * rise, (y + v) / 2 - (u - x) / chord * rise), to)


def _cut_of(nodes: Sequence[Node], n: int) -> tuple[Point, Point, Point] | None:
    """Where a rounded corner starts, its middle and its end; None where it has no room."""
    before, node, after = nodes[n - 1], nodes[n], nodes[(n + 1) % len(nodes)]
    if node.bulge or after.bulge:
        return None
    into, out = _unit(node.at, before.at), _unit(node.at, after.at)
    half = math.acos(max(-1.0, min(1.0, into[0] * out[0] + into[1] * out[1]))) / 2
    if half < 1e-6 or half > math.pi / 2 - 1e-6:
        return None
    back = node.corner / math.tan(half)
    if back > min(_room(before, node), _room(after, node)) + 1e-9:
        return None
    far = node.corner / math.sin(half) - node.corner
    wide = math.hypot(into[0] + out[0], into[1] + out[1])
    (x, y) = node.at
    middle = (x + (into[0] + out[0]) / wide * far, y + (into[1] + out[1]) / wide * far)
    return (x + into[0] * back, y + into[1] * back), middle, (x + out[0] * back, y + out[1] * back)


def _room(other: Node, node: Node) -> float:
    """Half a line where both its ends are rounded."""
    return math.dist(other.at, node.at) / (2 if other.corner else 1)


def _unit(start: Point, to: Point) -> Point:
    long = math.dist(start, to)
    return ((to[0] - start[0]) / long, (to[1] - start[1]) / long)
