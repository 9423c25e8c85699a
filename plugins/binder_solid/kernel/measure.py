"""Forms measured: volume, area, centre, inertia, envelope."""

from __future__ import annotations

from OCP.BRepGProp import BRepGProp
from OCP.GProp import GProp_GProps

from binder_solid.forms import Form
from binder_solid.solid import Matrix, Solid

from .extents import envelope
from .shapes import solid_of
from .words import Shape, solids


def measured(form: Form) -> Solid:
    """Makes a form and measures it; raises Unbuildable."""
    shape = solid_of(form)
    bulk, skin = GProp_GProps(), GProp_GProps()
    BRepGProp.VolumeProperties_s(shape, bulk)
    BRepGProp.SurfaceProperties_s(shape, skin)
    centre = bulk.CentreOfMass()
    return Solid(
        float(bulk.Mass()),
        float(skin.Mass()),
        (float(centre.X()), float(centre.Y()), float(centre.Z())),
        _rows(bulk.MatrixOfInertia()),
        envelope(shape),
        len(solids(shape)),
    )


def _rows(matrix: Shape) -> Matrix:
    one, two, three = (
        (float(matrix.Value(row, 1)), float(matrix.Value(row, 2)), float(matrix.Value(row, 3)))
        for row in (1, 2, 3)
    )
    return (one, two, three)
