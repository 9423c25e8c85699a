"""What the solid's views consist of to edges and outlines of a drawing."""

from __future__ import annotations

from collections.abc import Iterable

from binder_drafting.edges import HIDDEN, Bow, Chain, Edge
from binder_drafting.views import Outline
from binder_solid.views import CutFace, RoundLine, StraightLine
from binder_solid.views import Edge as SolidEdge


def edges_of(edges: Iterable[SolidEdge], *, with_hidden: bool = True) -> tuple[Edge, ...]:
    """The edges of a view; a section is drawn without its hidden ones (ISO 128-3)."""
    return tuple(_edge(edge) for edge in edges if with_hidden or edge.kind != HIDDEN)


def _edge(edge: SolidEdge) -> Edge:
    line = edge.line
    if isinstance(line, RoundLine):
        return Bow(line.centre, line.radius, line.start, line.end, edge.kind)
    if isinstance(line, StraightLine):
        return Chain((line.start, line.end), edge.kind)
    return Chain(line.points, edge.kind)


def outlines_of(faces: Iterable[CutFace], lean: float = 45.0) -> tuple[Outline, ...]:
    """The cut faces of a section, to be hatched at an angle in degrees."""
    return tuple(Outline(face.outer, face.holes, lean) for face in faces)
