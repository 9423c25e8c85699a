"""Forms made into the kernel's shapes."""

from __future__ import annotations

import math
from functools import lru_cache

from OCP.BRepAlgoAPI import BRepAlgoAPI_Common, BRepAlgoAPI_Cut, BRepAlgoAPI_Fuse
from OCP.BRepBuilderAPI import BRepBuilderAPI_Transform
from OCP.BRepCheck import BRepCheck_Analyzer
from OCP.BRepGProp import BRepGProp
from OCP.BRepLib import BRepLib
from OCP.BRepPrimAPI import (
    BRepPrimAPI_MakeBox,
    BRepPrimAPI_MakeCone,
    BRepPrimAPI_MakeCylinder,
    BRepPrimAPI_MakePrism,
    BRepPrimAPI_MakeRevol,
    BRepPrimAPI_MakeSphere,
    BRepPrimAPI_MakeTorus,
)
from OCP.gp import gp_Ax1, gp_Trsf
from OCP.GProp import GProp_GProps
from OCP.ShapeUpgrade import ShapeUpgrade_UnifySameDomain
from OCP.TopLoc import TopLoc_Location

from binder_solid.coils import coil_points
from binder_solid.faults import Unbuildable
from binder_solid.forms import (
    Ball,
    Bent,
    Box,
    Coil,
    Cone,
    Cut,
    Cylinder,
    Form,
    Joined,
    Mirrored,
    Placed,
    Raised,
    Revolved,
    Ring,
    Shared,
    Wire,
)
from binder_solid.punched import punched
from binder_solid.sane import check
from binder_solid.space import spun

from .drafts import leaning
from .rods import bent_rod, smooth_rod
from .wires import flat_face, half_plane_face
from .words import (
    SEAM,
    Shape,
    arrow,
    axes,
    direction,
    listed,
    move_to,
    point,
    round_axes,
    solids,
)

_TANGENT = 1e-4  # radians between faces that run into one another, for whom no edge is drawn


@lru_cache(maxsize=64)
def solid_of(form: Form) -> Shape:
    """Makes a form, checked before and after; several pieces are one compound.

    Raises Unbuildable for nonsense, and for what is no valid solid of some volume afterwards.
    """
    check(form)
    try:
        made = _shape(form)
    except Exception as fault:
        if not type(fault).__module__.startswith("OCP"):
            raise
        raise Unbuildable(f"the kernel cannot make it ({type(fault).__name__})") from fault
    return _sound(made)


def volume_of(shape: Shape) -> float:
    """Gives a shape's volume in mm³."""
    sums = GProp_GProps()
    BRepGProp.VolumeProperties_s(shape, sums)
    return float(sums.Mass())


def combined(operation: Shape, arguments: list[Shape], tools: list[Shape]) -> Shape:
    """Runs one boolean operation over all its tools at once."""
    operation.SetArguments(listed(arguments))
    operation.SetTools(listed(tools))
    operation.Build()
    if not operation.IsDone():
        raise Unbuildable("forms that the kernel cannot combine")
    return operation.Shape()


def _sound(shape: Shape) -> Shape:
    pieces = solids(shape)
    if not pieces:
        raise Unbuildable("nothing is left of it")
    if not BRepCheck_Analyzer(shape).IsValid():
        raise Unbuildable("no valid solid")
    volume = volume_of(shape)
    if not math.isfinite(volume) or volume <= 0.0:
        raise Unbuildable("no volume")
    BRepLib.EncodeRegularity_s(shape, _TANGENT)
    return pieces[0] if len(pieces) == 1 else shape


def _shape(form: Form) -> Shape:
    match form:
        case Joined() | Cut() | Shared():
            return _combination(form)
        case Placed() | Mirrored():
            return _laid(form)
        case Coil() | Wire() | Bent():
            return _rod(form)
        case Revolved() | Raised():
            return _from_outline(form)
        case _:
            return _plain(form)


def _laid(form: Placed | Mirrored) -> Shape:
    if isinstance(form, Placed):
        return _shape(form.form).Moved(TopLoc_Location(move_to(form.frame)))
    mirror = gp_Trsf()
    mirror.SetMirror(axes(form.frame))
    return BRepBuilderAPI_Transform(_shape(form.form), mirror, theCopyGeom=True).Shape()


def _rod(form: Coil | Wire | Bent) -> Shape:
    match form:
        case Coil():
            return smooth_rod(coil_points(form), form.wire)
        case Wire(points, wire):
            return smooth_rod(points, wire)
        case Bent():
            return bent_rod(form)


def _combination(form: Joined | Cut | Shared) -> Shape:
    match form:
        case Joined(forms):
            shapes = [_shape(child) for child in forms]
            if len(shapes) == 1:
                return shapes[0]
            return _tidied(combined(BRepAlgoAPI_Fuse(), shapes[:1], shapes[1:]))
        case Cut():
            return _cut(punched(form))
        case Shared(one, other):
            return combined(BRepAlgoAPI_Common(), [_shape(one)], [_shape(other)])


def _cut(form: Form) -> Shape:
    if not isinstance(form, Cut):
        return _shape(form)
    whole = _shape(form.form)
    cutters = [_shape(tool) for tool in form.tools]
    return combined(BRepAlgoAPI_Cut(), [whole], cutters) if cutters else whole


def _tidied(shape: Shape) -> Shape:
    """Faces that lie in one another's plane become one, so that no seam is drawn."""
    tidy = ShapeUpgrade_UnifySameDomain(
        shape, UnifyEdges=True, UnifyFaces=True, ConcatBSplines=False
    )
    tidy.Build()
    return tidy.Shape()


def _from_outline(form: Revolved | Raised) -> Shape:
    if isinstance(form, Raised):
        if form.draft:
            return leaning(form)
        face = flat_face(form.outline, form.frame)
        return BRepPrimAPI_MakePrism(face, arrow(form.frame.z, form.height)).Shape()
    axis = gp_Ax1(point(form.frame.origin), direction(form.frame.z))
    if form.turn == 360.0:
        face = half_plane_face(form.outline, spun(form.frame, SEAM))
        return BRepPrimAPI_MakeRevol(face, axis).Shape()
    face = half_plane_face(form.outline, form.frame)
    return BRepPrimAPI_MakeRevol(face, axis, math.radians(form.turn)).Shape()


def _plain(form: Cylinder | Cone | Box | Ball | Ring) -> Shape:
    place = axes(form.frame) if isinstance(form, Box) else round_axes(form.frame)
    match form:
        case Cylinder(radius, height):
            return BRepPrimAPI_MakeCylinder(place, radius, height).Shape()
        case Cone(radius, end_radius, height):
            return BRepPrimAPI_MakeCone(place, radius, end_radius, height).Shape()
        case Box(length, width, height):
            return BRepPrimAPI_MakeBox(place, length, width, height).Shape()
        case Ball(radius):
            return BRepPrimAPI_MakeSphere(place, radius).Shape()
        case Ring(radius, section):
            return BRepPrimAPI_MakeTorus(place, radius, section / 2.0).Shape()
