"""Outlines raised with leaning sides."""

from __future__ import annotations

import math

from OCP.BRepAdaptor import BRepAdaptor_Surface
from OCP.BRepOffsetAPI import BRepOffsetAPI_DraftAngle
from OCP.BRepPrimAPI import BRepPrimAPI_MakePrism
from OCP.GeomAbs import GeomAbs_Plane
from OCP.gp import gp_Pln

from binder_solid.faults import Unbuildable
from binder_solid.forms import Raised, Vector
from binder_solid.space import dot

from .wires import flat_face
from .words import Shape, arrow, direction, faces, point


def leaning(form: Raised) -> Shape:
    """Raises an outline; its sides lean inwards from the foot on by the draft."""
    foot = flat_face(form.outline, form.frame)
    block = BRepPrimAPI_MakePrism(foot, arrow(form.frame.z, form.height)).Shape()
    making = BRepOffsetAPI_DraftAngle(block)
    pull = direction(form.frame.z)
    neutral = gp_Pln(point(form.frame.origin), pull)
    for face in faces(block):
        if not _is_level(face, form.frame.z):
            making.Add(face, pull, math.radians(form.draft), neutral)
            if not making.AddDone():
                raise Unbuildable("a side that cannot lean", "draft")
    making.Build()
    if not making.IsDone():
        raise Unbuildable("sides that meet before the top", "draft")
    return making.Shape()


def _is_level(face: Shape, up: Vector) -> bool:
    surface = BRepAdaptor_Surface(face)
    if surface.GetType() != GeomAbs_Plane:
        return False
    normal = surface.Plane().Axis().Direction()
    return abs(dot((normal.X(), normal.Y(), normal.Z()), up)) > 1.0 - 1e-9
