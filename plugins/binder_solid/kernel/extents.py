"""The box that a shape lies in."""

from __future__ import annotations

from collections.abc import Iterator

from OCP.Bnd import Bnd_Box
from OCP.BRepAdaptor import BRepAdaptor_Curve, BRepAdaptor_Surface
from OCP.BRepBndLib import BRepBndLib
from OCP.BRepClass import BRepClass_FaceClassifier
from OCP.BRepTools import BRepTools
from OCP.GCPnts import GCPnts_TangentialDeflection
from OCP.GeomAbs import GeomAbs_BSplineSurface
from OCP.gp import gp_Pnt2d
from OCP.TopAbs import TopAbs_OUT

from binder_solid.forms import Vector

from .words import Shape, edges, faces

Box = tuple[Vector, Vector]
_AROUND = 24  # points across a free-form face, and to each of its knots along it twice
_MOST = 40_000


def envelope(shape: Shape) -> Box:
    """Gives the least and most corner of a shape, to 0.2 % of a curve's radius on free forms."""
    plain = Bnd_Box()
    points: list[Vector] = []
    for face in faces(shape):
        if BRepAdaptor_Surface(face).GetType() == GeomAbs_BSplineSurface:
            points.extend(_outermost(face))
        else:
            BRepBndLib.AddOptimal_s(face, plain, useTriangulation=False, useShapeTolerance=False)
    if not plain.IsVoid():
        points.extend(_corners(plain))
    return _box(points)


def rough_envelope(shape: Shape) -> Box:
    """Gives the corners of a box that a shape surely lies in."""
    box = Bnd_Box()
    BRepBndLib.Add_s(shape, box, useTriangulation=False)
    return _corners(box)


def _corners(box: Shape) -> Box:
    return _vector(box.CornerMin()), _vector(box.CornerMax())


def _vector(at: Shape) -> Vector:
    return (float(at.X()), float(at.Y()), float(at.Z()))


def _box(points: list[Vector]) -> Box:
    xs, ys, zs = zip(*points, strict=True)
    return (min(xs), min(ys), min(zs)), (max(xs), max(ys), max(zs))


def _outermost(face: Shape) -> Iterator[Vector]:
    """Gives points of a free-form face that lie farthest out, edges and inside."""
    for edge in edges(face):
        walk = GCPnts_TangentialDeflection(BRepAdaptor_Curve(edge), 0.1, 0.005, 3)
        yield from (_vector(walk.Value(n)) for n in range(1, int(walk.NbPoints()) + 1))
    sampled = list(_sampled(face))
    for axis in range(3):
        for is_most in (False, True):
            for at, u, v in sorted(sampled, key=lambda entry: entry[0][axis], reverse=is_most):
                if BRepClass_FaceClassifier(face, gp_Pnt2d(u, v), 1e-6).State() != TopAbs_OUT:
                    yield at
                    break


def _sampled(face: Shape) -> list[tuple[Vector, float, float]]:
    surface = BRepAdaptor_Surface(face)
    u0, u1, v0, v1 = (float(value) for value in BRepTools.UVBounds_s(face))
    across, along = (
        max(_AROUND, 2 * int(knots)) for knots in (surface.NbUKnots(), surface.NbVKnots())
    )
    thin = max(1, across * along // _MOST)
    us = [u0 + (u1 - u0) * n / across for n in range(across + 1)]
    vs = [v0 + (v1 - v0) * n / along for n in range(0, along + 1, thin)]
    return [(_vector(surface.Value(u, v)), u, v) for u in us for v in vs]
