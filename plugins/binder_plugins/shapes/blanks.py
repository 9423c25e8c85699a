"""Shapes of the wider vocabulary to the blank that each is made from, in exact mm."""

from __future__ import annotations

import math
from fractions import Fraction

from binder.api import Part, Size, exact
from binder_plugins.shapes.vocabulary.cams import Cam
from binder_plugins.shapes.vocabulary.rods import Sheet, Tube, Wire
from binder_plugins.shapes.vocabulary.toothed import Gear, Rack, Ratchet, Sprocket
from binder_plugins.shapes.vocabulary.wheels import Profile, Pulley, Spring, Wheel

Round = tuple[Fraction, Fraction]


def round_size(part: Part, shape: object) -> Round | None:
    """Diameter and length over all of a shape that is turned; None for another, or one unclear."""
    if isinstance(shape, Tube):
        return shape.outside.exact, shape.length.exact
    if isinstance(shape, Profile):
        return _profile(shape)
    if isinstance(shape, Wheel):
        return _wheel(part, shape)
    if isinstance(shape, Pulley):
        widest = max(size.exact for size in shape.diameters)
        return _with_hub(shape, widest, len(shape.diameters) * shape.width.exact)
    if isinstance(shape, (Gear, Ratchet, Sprocket, Cam)):
        across = _over_teeth(shape)
        return _with_hub(shape, across, shape.width.exact) if across is not None else None
    return None


def _profile(shape: Profile) -> Round | None:
    from binder_plugins.shapes.forming.outline import fault_of, outline_of
    from binder_plugins.shapes.forming.profiles import profile_nodes
    from binder_solid.lines import least_and_most

    nodes = profile_nodes(shape)
    if fault_of(nodes) is not None:
        return None
    written = max(one.diameter.exact for one in shape.points)
    reckoned = exact(2 * least_and_most(outline_of(nodes))[1][1])
    return max(written, reckoned), shape.points[-1].at.exact


def _wheel(part: Part, shape: Wheel) -> Round:
    wide = shape.width if part.shape_kind == "flywheel" and shape.width else shape.rim
    return shape.outside.exact, max(wide.exact, shape.hub_length.exact)


def _with_hub(shape: object, across: Fraction, long: Fraction) -> Round:
    hub, hub_length = getattr(shape, "hub", None), getattr(shape, "hub_length", None)
    if isinstance(hub, Size) and isinstance(hub_length, Size):
        return max(across, hub.exact), long + hub_length.exact
    return across, long


def _over_teeth(shape: Gear | Ratchet | Sprocket | Cam) -> Fraction | None:
    """The outside diameter: as written, over the teeth, or twice the reach of a cam."""
    from binder_plugins.shapes.forming.toothed import reckoned, teeth_of
    from binder_solid.faults import Unbuildable
    from binder_solid.lines import least_and_most

    if isinstance(shape, Cam):
        return exact(2 * shape.contour.reach_mm) if shape.contour is not None else None
    if isinstance(shape, (Ratchet, Gear)) and shape.outside is not None:
        return shape.outside.exact
    if isinstance(shape, Gear):
        gear = reckoned(shape)
        return exact(gear.tip_diameter) if gear is not None and gear.teeth > 0 else None
    try:
        teeth = teeth_of(shape)
    except Unbuildable:
        return None
    return exact(2 * least_and_most(teeth)[1][0]) if teeth is not None else None


def flat_size(shape: object) -> tuple[Fraction, Fraction, Fraction] | None:
    """Length, width and thickness of the blank of a flat shape, bent ones laid flat."""
    if isinstance(shape, Sheet):
        from binder_plugins.shapes.forming.bends import developed

        long = exact(developed(shape)) if shape.bends else shape.length.exact
        return long, shape.width.exact, shape.thickness.exact
    if isinstance(shape, Rack):
        from binder_plugins.shapes.forming.toothed import module_of

        module = module_of(shape)
        if module is None:
            return None
        return exact(math.pi * module * shape.teeth), shape.width.exact, shape.height.exact
    return None


def wire_size(shape: object) -> Round | None:
    """Diameter and length of the wire of a shape."""
    if isinstance(shape, Wire):
        from binder_plugins.shapes.forming.rods import developed

        return shape.diameter.exact, exact(max(developed(shape), 0.001))
    if isinstance(shape, Spring):
        from binder_plugins.shapes.forming.springs import mean_of, wire_length

        if mean_of(shape) is None or shape.coils.exact <= 0:
            return None
        return shape.wire.exact, exact(wire_length(shape))
    return None
