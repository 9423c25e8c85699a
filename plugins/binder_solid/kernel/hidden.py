"""Solids seen from one side: which parts of their edges are hidden."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence

from OCP.BRep import BRep_Tool
from OCP.BRepAdaptor import BRepAdaptor_Curve
from OCP.GeomAbs import GeomAbs_Circle, GeomAbs_Line
from OCP.gp import gp_Ax2, gp_Dir, gp_Pnt
from OCP.HLRAlgo import HLRAlgo_Projector
from OCP.HLRBRep import HLRBRep_Algo, HLRBRep_HLRToShape, HLRBRep_TypeOfResultingEdge

from binder_solid.forms import Vector
from binder_solid.space import cross, plus, unit
from binder_solid.views import Kind

from .words import Shape, direction, edges

TILT = (0.0009, 0.0005)
"""How far, in radians, the eye stands beside the axis that it looks along.

Looked at dead straight, crossing round faces meet edge on, which costs the kernel seconds. Only
what hides what is found from there: the edges themselves are drawn from the true side.
"""

_SHARP = HLRBRep_TypeOfResultingEdge.HLRBRep_Sharp
_OUTLINE = HLRBRep_TypeOfResultingEdge.HLRBRep_OutLine
_SMOOTH = HLRBRep_TypeOfResultingEdge.HLRBRep_Rg1Line

_WANTED: tuple[tuple[Kind, Shape, bool], ...] = (
    ("visible", _SHARP, True),
    ("visible", _OUTLINE, True),
    ("smooth", _SMOOTH, True),
    ("hidden", _SHARP, False),
    ("hidden", _OUTLINE, False),
)


def seen_of_each(
    shapes: Sequence[Shape], right: Vector, up: Vector, *, is_tilted: bool
) -> Iterator[list[tuple[Kind, Shape]]]:
    """Gives for each of several shapes the pieces of its edges that are seen among the others."""
    algorithm = HLRBRep_Algo()
    for shape in shapes:
        algorithm.Add(shape)
    algorithm.Projector(HLRAlgo_Projector(_eye(right, up, TILT if is_tilted else (0.0, 0.0))))
    algorithm.Update()
    algorithm.Hide()
    found = HLRBRep_HLRToShape(algorithm)
    for shape in shapes:
        seen: list[tuple[Kind, Shape]] = []
        for kind, sort, is_seen in _WANTED:
            compound = (
                found.CompoundOfEdges(shape, sort, visible=True, In3d=True) if is_seen else None
            )
            if compound is not None and not compound.IsNull():
                seen.extend((kind, edge) for edge in edges(compound))
        yield seen


def seen_edges(
    shapes: Sequence[Shape], right: Vector, up: Vector, *, is_tilted: bool
) -> Iterator[tuple[Kind, Shape]]:
    """Gives the pieces of edges in space, each with what it is to one who looks at them."""
    algorithm = HLRBRep_Algo()
    for shape in shapes:
        algorithm.Add(shape)
    algorithm.Projector(HLRAlgo_Projector(_eye(right, up, TILT if is_tilted else (0.0, 0.0))))
    algorithm.Update()
    algorithm.Hide()
    found = HLRBRep_HLRToShape(algorithm)
    for kind, sort, is_seen in _WANTED:
        compound = found.CompoundOfEdges(sort, visible=is_seen, In3d=True)
        if compound is not None and not compound.IsNull():
            for edge in edges(compound):
                yield kind, edge


def _eye(right: Vector, up: Vector, tilt: tuple[float, float]) -> Shape:
    towards = plus(plus(cross(right, up), right, tilt[0]), up, tilt[1])
    return gp_Ax2(gp_Pnt(0.0, 0.0, 0.0), gp_Dir(*unit(towards)), direction(right))


def has_free_edges(shape: Shape) -> bool:
    """Says whether round faces may cross, which is what the tilted eye is for."""
    return any(
        BRepAdaptor_Curve(edge).GetType() not in (GeomAbs_Line, GeomAbs_Circle)
        for edge in edges(shape)
        if not BRep_Tool.Degenerated_s(edge)
    )


def slack(depth: float) -> float:
    """Gives how far, in mm, the tilted eye may set off where a line becomes hidden."""
    return 2.0 * depth * math.hypot(*TILT)
