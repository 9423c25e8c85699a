"""Outlines made into the kernel's flat faces."""

from __future__ import annotations

import math
from collections.abc import Callable

from OCP.BRepBuilderAPI import (
    BRepBuilderAPI_MakeEdge,
    BRepBuilderAPI_MakeFace,
    BRepBuilderAPI_MakeVertex,
    BRepBuilderAPI_MakeWire,
)
from OCP.collections import HArray1_gp_Pnt
from OCP.GC import GC_MakeArcOfCircle
from OCP.GeomAPI import GeomAPI_Interpolate
from OCP.gp import gp_Ax2, gp_Circ, gp_Pln
from OCP.TopoDS import TopoDS

from binder_solid.faults import Unbuildable
from binder_solid.forms import Arc, Curve, Frame, Outline, Point, Segment, Straight, Vector
from binder_solid.lines import Bow, closed, end_of, signed_area, whole_circle
from binder_solid.space import cross, minus, placed, unit

from .words import SEAM, Shape, direction, point

Lift = Callable[[Point], Vector]


def flat_face(outline: Outline, frame: Frame) -> Shape:
    """Makes a face of an outline in the frame's x-y plane, looking along its z."""
    return _face(outline, frame, lambda at: placed((at[0], at[1], 0.0), frame))


def half_plane_face(outline: Outline, frame: Frame) -> Shape:
    """Makes a face of an outline of (along z, from the axis along x)."""
    turned = Frame(frame.origin, cross(frame.z, frame.x), frame.z)
    return _face(outline, turned, lambda at: placed((at[1], 0.0, at[0]), frame))


def _face(outline: Outline, plane: Frame, lift: Lift) -> Shape:
    making = BRepBuilderAPI_MakeFace(
        gp_Pln(point(plane.origin), direction(plane.z)),
        _wire(outline, lift, is_hole=False),
        Inside=True,
    )
    for hole in outline.holes:
        making.Add(_wire(hole, lift, is_hole=True))
    return making.Face()


def _wire(outline: Outline, lift: Lift, *, is_hole: bool) -> Shape:
    made = wire_of(outline, lift)
    is_backwards = (signed_area(outline) < 0.0) is not is_hole
    return TopoDS.Wire(made.Reversed()) if is_backwards else made


def wire_of(outline: Outline, lift: Lift) -> Shape:
    """Makes a closed wire of an outline without its holes, a circle as one edge."""
    circle = whole_circle(outline)
    return _round_wire(circle, lift) if circle else _pieced_wire(outline, lift)


def _round_wire(circle: Bow, lift: Lift) -> Shape:
    """Goes round the way that the outline goes, from a little beyond its start."""
    centre, start = lift(circle.centre), lift(circle.at(SEAM / abs(circle.sweep)))
    quarter = lift(circle.at((SEAM + math.pi / 2.0) / abs(circle.sweep)))
    outwards, onwards = unit(minus(start, centre)), unit(minus(quarter, centre))
    place = gp_Ax2(point(centre), direction(cross(outwards, onwards)), direction(outwards))
    edge = BRepBuilderAPI_MakeEdge(gp_Circ(place, circle.radius)).Edge()
    return BRepBuilderAPI_MakeWire(edge).Wire()


def _pieced_wire(outline: Outline, lift: Lift) -> Shape:
    making = BRepBuilderAPI_MakeWire()
    first = corner = BRepBuilderAPI_MakeVertex(point(lift(outline.start))).Vertex()
    here = outline.start
    segments = closed(outline)
    for number, segment in enumerate(segments, start=1):
        there = end_of(segment)
        is_last = number == len(segments)
        end = first if is_last else BRepBuilderAPI_MakeVertex(point(lift(there))).Vertex()
        making.Add(_edge(here, segment, lift, corner, end))
        here, corner = there, end
    return making.Wire()


def _edge(start: Point, segment: Segment, lift: Lift, first: Shape, last: Shape) -> Shape:
    match segment:
        case Straight():
            return BRepBuilderAPI_MakeEdge(first, last).Edge()
        case Arc(through, to):
            line = GC_MakeArcOfCircle(*(point(lift(at)) for at in (start, through, to))).Value()
        case Curve(points):
            line = smooth_line(tuple(lift(at) for at in (start, *points)))
    return BRepBuilderAPI_MakeEdge(line, first, last).Edge()


def smooth_line(points: tuple[Vector, ...]) -> Shape:
    """Makes a smooth line through points."""
    held = HArray1_gp_Pnt(1, len(points))
    for number, at in enumerate(points, start=1):
        held.SetValue(number, point(at))
    making = GeomAPI_Interpolate(held, PeriodicFlag=False, Tolerance=1e-7)
    making.Perform()
    if not making.IsDone():
        raise Unbuildable("no smooth line through its points")
    return making.Curve()
