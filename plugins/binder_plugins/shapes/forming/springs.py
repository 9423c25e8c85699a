"""Springs of round wire to bodies, their axis along x."""

from __future__ import annotations

import math
from collections.abc import Iterator

from binder.api import Part, Size, shown, size_text
from binder_plugins.shapes.forming.body import Body
from binder_plugins.shapes.forming.told import figure, note_at
from binder_plugins.shapes.vocabulary.wheels import Spring
from binder_solid.facts import Told
from binder_solid.faults import Unbuildable
from binder_solid.forms import Form, Frame, Mirrored, Vector, Wire
from binder_solid.springs import compression_spring, extension_spring, torsion_spring

_USUAL_LEG = 2.0


def mean_of(shape: Spring) -> float | None:
    """The mean diameter of the coils."""
    if shape.mean is not None:
        return shape.mean.mm
    return shape.outside.mm - shape.wire.mm if shape.outside is not None else None


def wound(shape: Spring) -> Form | None:
    """The spring; None without its sizes, raises Unbuildable where it cannot be wound."""
    mean, coils, wire = mean_of(shape), float(shape.coils.exact), shape.wire.mm
    if mean is None:
        return None
    if mean <= wire or coils <= 0:
        raise Unbuildable("wire thicker than the coil, or no coils")
    form: Form
    if shape.kind == "compression":
        if shape.free is None:
            return None
        is_ground = shape.ends != "closed"
        form = compression_spring(wire, mean, coils, shape.free.mm, is_ground=is_ground)
    elif shape.kind == "extension":
        form = extension_spring(wire, mean, coils)
    else:
        form = torsion_spring(wire, mean, coils, leg_of(shape))
    return Mirrored(form, Frame()) if shape.hand == "left" else form


def leg_of(shape: Spring) -> float:
    """The length of each leg of a torsion spring; twice the coil where nothing is said."""
    mean = mean_of(shape) or 0.0
    return shape.leg.mm if shape.leg is not None else _USUAL_LEG * mean


def wire_length(shape: Spring) -> float:
    """The wire in a spring, in mm: closed coils and loops as plain turns."""
    mean, coils, wire = mean_of(shape) or 0.0, float(shape.coils.exact), shape.wire.mm
    turn = math.pi * mean
    if shape.kind == "compression" and shape.free is not None and coils > 0:
        pitch = (shape.free.mm - 2 * wire) / coils
        return coils * math.hypot(turn, pitch) + 2 * math.hypot(turn, wire)
    ends = 2 * turn if shape.kind == "extension" else 2 * leg_of(shape)
    return coils * math.hypot(turn, wire) + ends


def spring_body(part: Part, shape: Spring, units: str) -> Body | None:
    """The spring with its sizes in a note, as springs are told."""
    try:
        form = wound(shape)
    except Unbuildable:
        return None
    if form is None:
        return None
    least, most = _box(shape, form)
    spot = ((least[0] + most[0]) / 2, 0.0, most[2])
    note = note_at(part, "spring", spot, *_words(shape, units))
    told = tuple(_told(part, shape, units))
    return Body("spring", form, least, most, told=told, notes=(note,))


def _box(shape: Spring, form: Form) -> tuple[Vector, Vector]:
    inner = form.form if isinstance(form, Mirrored) else form
    half = shape.wire.mm / 2
    if isinstance(inner, Wire):
        low = [min(one[axis] for one in inner.points) - half for axis in range(3)]
        high = [max(one[axis] for one in inner.points) + half for axis in range(3)]
        if isinstance(form, Mirrored):
            low[2], high[2] = -high[2], -low[2]
        return (low[0], low[1], low[2]), (high[0], high[1], high[2])
    outside = (mean_of(shape) or 0.0) / 2 + half
    long = shape.free.mm if shape.free is not None else 0.0
    return (0.0, -outside, -outside), (long, outside, outside)


def _told(part: Part, shape: Spring, units: str) -> Iterator[Told]:
    if shape.free is not None:
        free = size_text(shape.free, units)
        yield Told(f"{part.name}.free", "x", 0.0, shape.free.mm, free)
    if isinstance(shape.outside, Size):
        half = shape.outside.mm / 2
        yield Told(f"{part.name}.outside", "z", -half, half, f"⌀{size_text(shape.outside, units)}")


def _words(shape: Spring, units: str) -> tuple[str, tuple[str, ...]]:
    hand = shape.hand or "right"
    words = f"wire ⌀{size_text(shape.wire, units)}, {shown(shape.coils.quantity)} working coils"
    fields = ["wire", "coils", "kind"]
    if shape.mean is not None:
        words += f", mean ⌀{size_text(shape.mean, units)}"
        fields.append("mean")
    if shape.kind == "compression":
        words += f", ends closed{'' if shape.ends == 'closed' else ' and ground'}"
    if shape.leg is not None:
        words += f", legs {size_text(shape.leg, units)}"
        fields.append("leg")
    words += f", {hand} hand, {figure(round(wire_length(shape), 1))} mm of wire"
    fields += [name for name in ("ends", "hand") if getattr(shape, name) is not None]
    return words, tuple(fields)
