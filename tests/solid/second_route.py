"""The kernel's other routes to what is seen: rays through the solid, and its skin in triangles."""

from __future__ import annotations

import math
from bisect import bisect_left, bisect_right
from collections.abc import Iterator

from OCP.BRep import BRep_Tool
from OCP.BRepAdaptor import BRepAdaptor_Curve
from OCP.BRepMesh import BRepMesh_IncrementalMesh
from OCP.GeomAbs import GeomAbs_C0
from OCP.gp import gp_Dir, gp_Lin, gp_Pnt
from OCP.IntCurvesFace import IntCurvesFace_ShapeIntersector
from OCP.TopLoc import TopLoc_Location

from binder_solid.forms import Form, Point, Vector
from binder_solid.kernel.shapes import solid_of
from binder_solid.kernel.words import Shape, edges, faces
from binder_solid.space import cross, plus
from binder_solid.views import Projection, axes_of, flat

STEP = 0.02  # mm beside an edge and before it, where the rays start


def seen_points(form: Form, side: Projection) -> Iterator[tuple[Point, bool | None]]:
    """Gives points along the sharp edges, and whether a ray to the eye is free.

    Nothing is said of a point where the rays about it do not agree on one ring and on a wider.
    """
    shape = solid_of(form)
    hits = IntCurvesFace_ShapeIntersector()
    hits.Load(shape, 1e-7)
    right, up = axes_of(side)
    for edge in edges(shape):
        if BRep_Tool.Degenerated_s(edge) or BRep_Tool.MaxContinuity_s(edge) != GeomAbs_C0:
            continue
        curve = BRepAdaptor_Curve(edge)
        first, last = curve.FirstParameter(), curve.LastParameter()
        for share in (0.23, 0.71):
            at = curve.Value(first + share * (last - first))
            point = (at.X(), at.Y(), at.Z())
            near, far = (_is_free(hits, point, right, up, step) for step in (STEP, 3 * STEP))
            yield flat(point, side), near if near == far else None


def _is_free(hits: Shape, point: Vector, right: Vector, up: Vector, step: float) -> bool:
    towards = cross(right, up)
    for turn in range(10):
        angle = math.tau * (turn + 0.37) / 10
        aside = plus(plus(point, right, step * math.cos(angle)), up, step * math.sin(angle))
        line = gp_Lin(gp_Pnt(*plus(aside, towards, step)), gp_Dir(*towards))
        hits.Perform(line, 0.0, 1e4)
        if hits.NbPnt() == 0:
            return True
    return False


def triangles(form: Form, side: Projection, fineness: float) -> list[tuple[Point, Point, Point]]:
    """Gives the skin in flat triangles as seen from a side."""
    shape = solid_of(form)
    BRepMesh_IncrementalMesh(shape, fineness, False, 0.08, False)
    found: list[tuple[Point, Point, Point]] = []
    for face in faces(shape):
        place = TopLoc_Location()
        mesh = BRep_Tool.Triangulation_s(face, place)
        nodes = [
            mesh.Node(n).Transformed(place.Transformation()) for n in range(1, mesh.NbNodes() + 1)
        ]
        corners = [flat((at.X(), at.Y(), at.Z()), side) for at in nodes]
        for n in range(1, mesh.NbTriangles() + 1):
            one, two, three = (mesh.Triangle(n).Value(corner) - 1 for corner in (1, 2, 3))
            found.append((corners[one], corners[two], corners[three]))
    return found


def covered(
    corners: list[tuple[Point, Point, Point]], heights: list[float]
) -> list[tuple[float, float]]:
    """Gives the outermost points, left and right, that triangles cover at each rising height."""
    ends: list[list[float]] = [[] for _ in heights]
    for triangle in corners:
        rises = [v for _, v in triangle]
        for n in range(bisect_left(heights, min(rises)), bisect_right(heights, max(rises))):
            ends[n] += crossings(triangle, heights[n])
    return [(min(one), max(one)) for one in ends]


def crossings(points: tuple[Point, ...], height: float) -> Iterator[float]:
    """Gives where a closed line crosses a height."""
    for (ax, ay), (bx, by) in zip(points, (*points[1:], points[0]), strict=True):
        if (ay > height) != (by > height):
            yield ax + (bx - ax) * (height - ay) / (by - ay)
