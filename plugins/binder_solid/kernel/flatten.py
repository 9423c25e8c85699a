"""Edges in space drawn on paper: straight, round, or free."""

from __future__ import annotations

import math

from OCP.BRepAdaptor import BRepAdaptor_Curve
from OCP.GCPnts import GCPnts_TangentialDeflection
from OCP.GeomAbs import GeomAbs_Circle, GeomAbs_Line

from binder_solid.fitting import fitted
from binder_solid.forms import Point, Vector
from binder_solid.space import cross, dot
from binder_solid.views import Line, RoundLine, StraightLine

from .words import Shape

_DEVIATION = 0.01  # of a drawn free line from the true one, mm
_BEND = 0.15  # radians between two chords of a free line


def flattened(edge: Shape, right: Vector, up: Vector) -> Line | None:
    """Draws an edge; nothing where it is looked at end on."""
    curve = BRepAdaptor_Curve(edge)
    kind = curve.GetType()
    if kind == GeomAbs_Line:
        ends = (curve.Value(curve.FirstParameter()), curve.Value(curve.LastParameter()))
        start, end = (_flat(_vector(at), right, up) for at in ends)
        return StraightLine(start, end) if math.dist(start, end) > 1e-6 else None
    if kind == GeomAbs_Circle:
        drawn = _circle(curve, right, up)
        if drawn is not None:
            return drawn
    return fitted(_samples(curve, right, up))


def _circle(curve: Shape, right: Vector, up: Vector) -> Line | None:
    """Draws a circle looked at square on; others are drawn by points."""
    circle = curve.Circle()
    across = _vector(circle.Axis().Direction())
    lean = dot(across, cross(right, up))
    if abs(lean) < 1.0 - 1e-10:
        return None
    first, last = float(curve.FirstParameter()), float(curve.LastParameter())
    nought = _flat(_vector(circle.XAxis().Direction()), right, up)
    angle = math.atan2(nought[1], nought[0])
    hand = math.copysign(1.0, lean)
    ends = sorted((angle + hand * first, angle + hand * last))
    centre = _flat(_vector(circle.Location()), right, up)
    return RoundLine(centre, float(circle.Radius()), *_degrees(ends[0], ends[1]))


def _degrees(start: float, end: float) -> tuple[float, float]:
    begin, sweep = math.degrees(start) % 360.0, math.degrees(end - start)
    return (0.0, 360.0) if sweep > 360.0 - 1e-6 else (begin, begin + sweep)


def _samples(curve: Shape, right: Vector, up: Vector) -> tuple[Point, ...]:
    walk = GCPnts_TangentialDeflection(curve, _BEND, _DEVIATION, 3)
    count = int(walk.NbPoints())
    return tuple(_flat(_vector(walk.Value(n)), right, up) for n in range(1, count + 1))


def _vector(at: Shape) -> Vector:
    return (float(at.X()), float(at.Y()), float(at.Z()))


def _flat(at: Vector, right: Vector, up: Vector) -> Point:
    return (dot(at, right), dot(at, up))
