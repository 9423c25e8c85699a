"""Our points, directions and frames in the kernel's words."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from typing import Any, TypeAlias

from OCP.collections import List_TopoDS_Shape
from OCP.gp import gp_Ax2, gp_Dir, gp_Pnt, gp_Trsf, gp_Vec
from OCP.TopAbs import TopAbs_EDGE, TopAbs_FACE, TopAbs_SOLID
from OCP.TopExp import TopExp_Explorer
from OCP.TopoDS import TopoDS

from binder_solid.forms import Frame, Vector
from binder_solid.space import spun

Shape: TypeAlias = Any
"""A shape of the kernel, which has no types of its own for Python."""


def point(at: Vector) -> Shape:
    """Gives a point."""
    return gp_Pnt(*at)


def direction(along: Vector) -> Shape:
    """Gives a direction; the kernel makes its length 1."""
    return gp_Dir(*along)


def arrow(along: Vector, times: float = 1.0) -> Shape:
    """Gives a vector."""
    return gp_Vec(*(times * part for part in along))


def axes(frame: Frame) -> Shape:
    """Gives right-handed axes."""
    return gp_Ax2(point(frame.origin), direction(frame.z), direction(frame.x))


SEAM = 0.3
"""Radians from a frame's x to where a round face is closed: on no silhouette of the usual views,

where the kernel would take the silhouette for the seam and leave it out.
"""


def round_axes(frame: Frame) -> Shape:
    """Gives axes for what is round about the frame's z."""
    return axes(spun(frame, SEAM))


def move_to(frame: Frame) -> Shape:
    """Gives the move that lays the space's own axes on a frame."""
    from OCP.gp import gp_Ax3

    move = gp_Trsf()
    move.SetTransformation(gp_Ax3(axes(frame)), gp_Ax3())
    return move


def listed(shapes: Iterable[Shape]) -> Shape:
    """Gives a list of the kernel's own kind."""
    found = List_TopoDS_Shape()
    for shape in shapes:
        found.Append(shape)
    return found


def parts(shape: Shape, kind: Shape) -> Iterator[Shape]:
    """Walks the parts of one kind in a shape."""
    walk = TopExp_Explorer(shape, kind)
    while walk.More():
        yield walk.Current()
        walk.Next()


def solids(shape: Shape) -> list[Shape]:
    """Gives the solids in a shape."""
    return [TopoDS.Solid(part) for part in parts(shape, TopAbs_SOLID)]


def faces(shape: Shape) -> list[Shape]:
    """Gives the faces in a shape."""
    return [TopoDS.Face(part) for part in parts(shape, TopAbs_FACE)]


def edges(shape: Shape) -> list[Shape]:
    """Gives the edges in a shape, one that two faces share twice."""
    return [TopoDS.Edge(part) for part in parts(shape, TopAbs_EDGE)]
