"""Solids cut by a plane and drawn with the cut faces laid bare."""

from __future__ import annotations

from dataclasses import replace
from itertools import product

from OCP.BRepAlgoAPI import BRepAlgoAPI_Cut
from OCP.BRepPrimAPI import BRepPrimAPI_MakeBox
from OCP.BRepTools import BRepTools, BRepTools_WireExplorer
from OCP.TopAbs import TopAbs_WIRE
from OCP.TopoDS import TopoDS

from binder_solid.extent import bounds_of
from binder_solid.faults import Unbuildable
from binder_solid.forms import Form, Frame, Point, Vector
from binder_solid.joins import closed_polygon
from binder_solid.space import cross, dot, plus
from binder_solid.tidy import tidied
from binder_solid.views import (
    CutFace,
    Cutting,
    Edge,
    Half,
    Line,
    StraightLine,
    View,
    axes_of,
)

from .extents import rough_envelope
from .flatten import flattened
from .project import drawn
from .shapes import combined, solid_of
from .words import Shape, axes, parts, solids

_MARGIN = 10.0
_NEAR = 1e-3
Limits = tuple[float, float]


def sectioned(form: Form, cutting: Cutting) -> View:
    """Cuts a form and draws what is left; raises Unbuildable where the plane misses it."""
    shape = solid_of(form)
    right, up = axes_of(cutting.seen)
    box = _taken_away(shape, cutting, right, up)
    cut = BRepAlgoAPI_Cut()
    rest = combined(cut, [shape], [box.Shape()])
    bare = [TopoDS.Face(face) for face in cut.Modified(box.BottomFace())]
    if not bare or not solids(rest):
        raise Unbuildable("the cutting plane misses the part", cutting.name)
    loops = [_loops(face, right, up) for face in bare]
    seen = drawn([rest], cutting.seen, (right, up))
    return _with_faces(seen, cutting, loops)


def _with_faces(seen: View, cutting: Cutting, faces: list[list[list[Line]]]) -> View:
    rims = [Edge("section", line) for loops in faces for loop in loops for line in loop]
    own = [edge for edge in (*rims, *seen.edges) if not _is_parting(edge, cutting)]
    edges = tidied(own, 0.0)
    hatched = tuple(
        CutFace(closed_polygon(loops[0]), tuple(closed_polygon(loop) for loop in loops[1:]))
        for loops in faces
    )
    return replace(seen, name=cutting.name, edges=edges, bounds=bounds_of(edges), faces=hatched)


def _loops(face: Shape, right: Vector, up: Vector) -> list[list[Line]]:
    """Gives the lines round a face, then those round each hole in it."""
    outer = BRepTools.OuterWire_s(face)
    holes = [wire for wire in parts(face, TopAbs_WIRE) if not wire.IsSame(outer)]
    return [_lines(TopoDS.Wire(wire), face, right, up) for wire in (outer, *holes)]


def _lines(wire: Shape, face: Shape, right: Vector, up: Vector) -> list[Line]:
    found: list[Line] = []
    walk = BRepTools_WireExplorer(wire, face)
    while walk.More():
        line = flattened(walk.Current(), right, up)
        if line is not None:
            found.append(line)
        walk.Next()
    return found


def _is_parting(edge: Edge, cutting: Cutting) -> bool:
    """The line between the cut half and the whole one is no edge: the axis is drawn there."""
    if cutting.half is None or not isinstance(edge.line, StraightLine):
        return False
    across = 1 if cutting.half in ("upper", "lower") else 0
    return all(abs(end[across] - cutting.about) < _NEAR for end in _ends(edge.line))


def _ends(line: StraightLine) -> tuple[Point, Point]:
    return line.start, line.end


def _taken_away(shape: Shape, cutting: Cutting, right: Vector, up: Vector) -> Shape:
    """Makes the box of all that lies before the plane, or of the half of it that is to go."""
    towards = cross(right, up)
    level = sum(towards) * cutting.at
    corners = list(product(*zip(*rough_envelope(shape), strict=True)))
    near, far = _limits(corners, towards)
    if not near + _MARGIN < level < far - _MARGIN:
        raise Unbuildable("the cutting plane misses the part", cutting.name)
    across, height = _halved(cutting, _limits(corners, right), _limits(corners, up))
    corner = plus(plus(plus((0.0, 0.0, 0.0), right, across[0]), up, height[0]), towards, level)
    return BRepPrimAPI_MakeBox(
        axes(Frame(corner, towards, right)),
        across[1] - across[0],
        height[1] - height[0],
        far - level,
    )


def _halved(cutting: Cutting, across: Limits, height: Limits) -> tuple[Limits, Limits]:
    halves: dict[Half | None, tuple[Limits, Limits]] = {
        None: (across, height),
        "upper": (across, (cutting.about, height[1])),
        "lower": (across, (height[0], cutting.about)),
        "left": ((across[0], cutting.about), height),
        "right": ((cutting.about, across[1]), height),
    }
    return halves[cutting.half]


def _limits(corners: list[tuple[float, ...]], along: Vector) -> Limits:
    ways = [dot((x, y, z), along) for x, y, z in corners]
    return min(ways) - _MARGIN, max(ways) + _MARGIN
