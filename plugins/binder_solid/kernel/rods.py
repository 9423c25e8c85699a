"""Round rod and wire along a line in space."""

from __future__ import annotations

import math

from OCP.BRepAdaptor import BRepAdaptor_CompCurve
from OCP.BRepBuilderAPI import (
    BRepBuilderAPI_MakeEdge,
    BRepBuilderAPI_MakeFace,
    BRepBuilderAPI_MakeWire,
)
from OCP.BRepOffsetAPI import BRepOffsetAPI_MakePipe, BRepOffsetAPI_MakePipeShell
from OCP.GC import GC_MakeArcOfCircle
from OCP.gp import gp_Ax2, gp_Circ, gp_Pnt, gp_Vec

from binder_solid.faults import Unbuildable
from binder_solid.forms import Bent, Vector
from binder_solid.sane import bend_tangent
from binder_solid.space import minus, plus, unit

from .wires import smooth_line
from .words import Shape, direction, point


def smooth_rod(points: tuple[Vector, ...], wire: float) -> Shape:
    """Makes round wire along a smooth line through points."""
    spine = BRepBuilderAPI_MakeWire(BRepBuilderAPI_MakeEdge(smooth_line(points)).Edge()).Wire()
    ring = _circle(points[0], _first_direction(spine), wire)
    for is_stepwise in (False, True):  # the first is finer, and cannot follow straight pieces
        making = BRepOffsetAPI_MakePipeShell(spine)
        if is_stepwise:
            making.SetDiscreteMode()
        else:
            making.SetMode(IsFrenet=False)
        making.Add(ring, WithContact=False, WithCorrection=True)
        making.Build()
        if making.IsDone() and making.MakeSolid():
            return making.Shape()
    raise Unbuildable("no wire along its line")


def bent_rod(form: Bent) -> Shape:
    """Makes round rod of straight legs and round bends."""
    spine = _spine(form)
    legs = minus(form.points[1], form.points[0])
    face = BRepBuilderAPI_MakeFace(_circle(form.points[0], legs, form.wire)).Face()
    return BRepOffsetAPI_MakePipe(spine, face).Shape()


def _first_direction(spine: Shape) -> Vector:
    start, along = gp_Pnt(), gp_Vec()
    curve = BRepAdaptor_CompCurve(spine)
    curve.D1(curve.FirstParameter(), start, along)
    return (float(along.X()), float(along.Y()), float(along.Z()))


def _circle(at: Vector, along: Vector, wire: float) -> Shape:
    circle = gp_Circ(gp_Ax2(point(at), direction(along)), wire / 2.0)
    return BRepBuilderAPI_MakeWire(BRepBuilderAPI_MakeEdge(circle).Edge()).Wire()


def _spine(form: Bent) -> Shape:
    making = BRepBuilderAPI_MakeWire()
    here = form.points[0]
    for before, corner, after in zip(form.points, form.points[1:], form.points[2:], strict=False):
        bend = _bend(before, corner, after, form.bend)
        if bend is None:
            continue
        here = _leg(making, here, bend[0])
        arc = GC_MakeArcOfCircle(*(point(at) for at in bend)).Value()
        making.Add(BRepBuilderAPI_MakeEdge(arc).Edge())
        here = bend[2]
    _leg(making, here, form.points[-1])
    return making.Wire()


def _leg(making: Shape, here: Vector, there: Vector) -> Vector:
    if math.dist(here, there) > 1e-6:
        making.Add(BRepBuilderAPI_MakeEdge(point(here), point(there)).Edge())
    return there


def _bend(
    before: Vector, corner: Vector, after: Vector, radius: float
) -> tuple[Vector, Vector, Vector] | None:
    """Gives start, middle and end of a bend; nothing where the path goes straight on."""
    way_in, way_out = unit(minus(corner, before)), unit(minus(after, corner))
    taken = bend_tangent(way_in, way_out, radius)
    if taken < 1e-9:
        return None
    start, end = plus(corner, way_in, -taken), plus(corner, way_out, taken)
    inwards = unit(minus(way_out, way_in))
    from_corner = math.hypot(taken, radius) - radius
    return start, plus(corner, inwards, from_corner), end
