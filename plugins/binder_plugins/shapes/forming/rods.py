"""Tube and bent wire to bodies."""

from __future__ import annotations

import itertools
import math
from collections.abc import Iterable, Iterator
from dataclasses import replace

from binder.api import Part, size_text
from binder_plugins.shapes.forming.body import Body
from binder_plugins.shapes.forming.told import note_at, round_step
from binder_plugins.shapes.forming.turned import round_body
from binder_plugins.shapes.vocabulary.rods import Tube, Wire
from binder_solid.bodies import tube
from binder_solid.facts import Told
from binder_solid.forms import Bent, Vector
from binder_solid.space import minus

_AXES = "xyz"


def tube_body(part: Part, shape: Tube, units: str) -> Body | None:
    """A ring as long as the tube, its bore told in a note."""
    if shape.bore.exact >= shape.outside.exact:
        return None
    texts = (f"⌀{size_text(shape.outside, units)}", size_text(shape.length, units))
    step = round_step(
        part, "outside", 0.0, shape.length.mm, shape.outside.mm, texts, ("outside", "length")
    )
    words = f"bore ⌀{size_text(shape.bore, units)}"
    spot = (shape.length.mm, 0.0, 0.0)
    bore = note_at(part, "bore", spot, words, ("bore",), face="axis")
    bore = replace(bore, kind="bored", diameter=shape.bore.mm)
    form = tube(shape.outside.mm, shape.bore.mm, shape.length.mm)
    return round_body("tube", (form,), (step,), shape.outside.mm / 2, (bore,))


def corners_of(shape: Wire) -> tuple[Vector, ...]:
    """Where the middle line of the wire would turn, in mm."""
    return tuple(
        (one.x.mm, one.y.mm, one.z.mm if one.z is not None else 0.0) for one in shape.points
    )


def developed(shape: Wire) -> float:
    """The length of the middle line of bent wire: legs less their tangents, and the arcs."""
    points = corners_of(shape)
    radius = middle_radius(shape)
    long = sum(math.dist(a, b) for a, b in itertools.pairwise(points))
    for turn in turns_of(points):
        long += radius * (turn - 2 * math.tan(turn / 2))
    return long


def middle_radius(shape: Wire) -> float:
    """The radius of the bends at the middle of the wire."""
    return shape.bend.mm + shape.diameter.mm / 2


def turns_of(points: tuple[Vector, ...]) -> Iterator[float]:
    """By how much the path turns at each corner, in radians."""
    legs = [tuple(q - p for p, q in zip(a, b, strict=True)) for a, b in itertools.pairwise(points)]
    for one, other in itertools.pairwise(legs):
        dot = sum(p * q for p, q in zip(one, other, strict=True))
        lengths = math.hypot(*one) * math.hypot(*other)
        yield math.acos(max(-1.0, min(1.0, dot / lengths))) if lengths else math.pi


def path_fault(shape: Wire) -> tuple[int, str] | None:
    """The corner that cannot be bent, and why."""
    points, radius = corners_of(shape), middle_radius(shape)
    taken = [0.0, *(radius * math.tan(turn / 2) for turn in turns_of(points)), 0.0]
    for n, (a, b) in enumerate(itertools.pairwise(points)):
        leg = math.dist(a, b)
        if leg < 1e-6:
            return n + 1, "two points lie in one place"
        if taken[n] + taken[n + 1] > leg + 1e-9:
            need = taken[n] + taken[n + 1]
            return n + 1, f"a leg of {leg:.2f} mm, its bends take {need:.2f} mm"
    return None


def wire_body(part: Part, shape: Wire, units: str) -> Body | None:
    """Round wire along its corners, told from the first one."""
    if path_fault(shape) is not None:
        return None
    points, half = corners_of(shape), shape.diameter.mm / 2
    spread = [_spread(points, n, half) for n in range(len(points))]
    least = _each_axis(min(p[axis] - s[axis] for p, s in zip(points, spread, strict=True))
                       for axis in range(3))  # fmt: skip
    most = _each_axis(max(p[axis] + s[axis] for p, s in zip(points, spread, strict=True))
                      for axis in range(3))  # fmt: skip
    # As every part, it starts where its left, front and under faces meet.
    points = tuple(minus(one, least) for one in points)
    form = Bent(points, middle_radius(shape), shape.diameter.mm)
    words = (
        f"wire ⌀{size_text(shape.diameter, units)}, bends R{size_text(shape.bend, units)} inside, "
        f"{developed(shape):.1f} mm straight"
    )
    note = note_at(part, "wire", points[0], words, ("diameter", "bend"))
    told = tuple(_told(part, shape, least, units))
    return Body("wire", form, (0.0, 0.0, 0.0), minus(most, least), told=told, notes=(note,))


def _each_axis(amounts: Iterable[float]) -> Vector:
    x, y, z = amounts
    return (x, y, z)


def _spread(points: tuple[Vector, ...], number: int, half: float) -> Vector:
    """How far the wire reaches beyond a point along each axis; its ends are sawn square."""
    if 0 < number < len(points) - 1:
        return (half, half, half)
    a, b = points[:2] if number == 0 else points[-2:]
    leg = math.dist(a, b)
    x, y, z = (half * math.sqrt(max(0.0, 1.0 - ((q - p) / leg) ** 2))
               for p, q in zip(a, b, strict=True))  # fmt: skip
    return (x, y, z)


def _told(part: Part, shape: Wire, least: Vector, units: str) -> Iterator[Told]:
    """Each corner from the first one, along each axis, each place once."""
    first = shape.points[0]
    seen: set[tuple[str, float]] = set()
    for number, one in enumerate(shape.points, 1):
        for axis in _AXES:
            size, start = getattr(one, axis), getattr(first, axis)
            from_mm = start.mm if start is not None else 0.0
            if size is not None and size.mm != from_mm and (axis, size.mm) not in seen:
                seen.add((axis, size.mm))
                key = f"{part.name}.points.{number}.{axis}"
                moved = least[_AXES.index(axis)]
                words = size_text(size, units)
                yield Told(key, axis, from_mm - moved, size.mm - moved, words)
