"""Gears, racks, ratchets and sprockets to bodies, their teeth by published proportions."""

from __future__ import annotations

from dataclasses import replace

from binder.api import Part, Size, size_text
from binder_plugins.shapes.forming.body import Body
from binder_plugins.shapes.forming.told import figure, note_at, round_step
from binder_plugins.shapes.forming.tooth_data import (
    Teeth,
    gear_data,
    ratchet_data,
    sprocket_data,
)
from binder_plugins.shapes.forming.turned import AXIS, round_body
from binder_plugins.shapes.vocabulary.toothed import Gear, Rack, Ratchet, Sprocket
from binder_solid import gears
from binder_solid.facts import Located, Stretch, Told
from binder_solid.faults import Unbuildable
from binder_solid.forms import Cylinder, Form, Frame, Outline, Raised
from binder_solid.lines import least_and_most
from binder_solid.outlines import circle, moved, pierced
from binder_solid.teeth import internal_outline, rack_outline, spur_outline
from binder_solid.wheels import ratchet_outline, sprocket_outline, sprocket_pitch_diameter

_INCH = 25.4
_USUAL_ANGLE = 20.0
_PRESSURE_ANGLES = (10.0, 35.0)
_MOST_LEAN = 40.0


def module_of(shape: Gear | Rack) -> float | None:
    """The module in mm; of a diametral pitch 25.4 over it."""
    if shape.module is not None:
        return shape.module.mm
    pitch = float(shape.dp.exact) if shape.dp is not None else 0.0
    return _INCH / pitch if pitch > 0 else None


def _angle(shape: Gear | Rack) -> float:
    size = shape.pressure_angle
    return float(size.exact) if size is not None else _USUAL_ANGLE


def reckoned(shape: Gear) -> gears.Gear | None:
    """The gear with its diameters, None without a module."""
    module = module_of(shape)
    if module is None:
        return None
    backlash = shape.backlash.mm if shape.backlash is not None else 0.0
    return gears.Gear(module, shape.teeth, _angle(shape), backlash=backlash)


def teeth_of(shape: Gear | Rack | Ratchet | Sprocket) -> Outline | None:
    """The outline of the teeth; raises Unbuildable where they cannot be, None without a size."""
    if isinstance(shape, Ratchet):
        lean = float(shape.lean.exact) if shape.lean is not None else 0.0
        if not 0.0 <= lean <= _MOST_LEAN:
            raise Unbuildable(f"stopping faces lean back by 0 to {_MOST_LEAN:g} degrees")
        return ratchet_outline(shape.teeth, shape.outside.mm, shape.depth.mm, lean)
    if isinstance(shape, Sprocket):
        return sprocket_outline(shape.pitch.mm, shape.roller.mm, shape.teeth)
    module = module_of(shape)
    if module is None:
        return None
    least, most = _PRESSURE_ANGLES
    if not least <= _angle(shape) <= most:
        raise Unbuildable(f"a pressure angle is from {least:g} to {most:g} degrees")
    if isinstance(shape, Rack):
        back = shape.height.mm - module
        return moved(rack_outline(module, shape.teeth, back, _angle(shape)), (0.0, back))
    gear = gears.Gear(
        module, shape.teeth, _angle(shape),
        backlash=shape.backlash.mm if shape.backlash is not None else 0.0,
    )  # fmt: skip
    return internal_outline(gear) if shape.internal else spur_outline(gear)


def _outline(shape: Gear | Rack | Ratchet | Sprocket) -> Outline | None:
    try:
        return teeth_of(shape)
    except Unbuildable:
        return None


def gear_body(part: Part, shape: Gear, units: str) -> Body | None:
    """A gear with its hub; its outside diameter is reckoned, and told."""
    teeth, gear = _outline(shape), reckoned(shape)
    if teeth is None or gear is None or not has_order(shape):
        return None
    across = gear.tip_diameter
    if shape.internal and shape.outside is not None:
        across = shape.outside.mm
        teeth = pierced(circle(across / 2), teeth)
    teeth_at = Teeth(
        "gear", gear.pitch_diameter, gear.whole_depth, gear_data(part, shape, gear, units)
    )
    return _wheel(part, shape, teeth, across, teeth_at, units)


def has_order(shape: Gear) -> bool:
    """Whether an internal gear has a rim outside its teeth."""
    gear = reckoned(shape)
    if not shape.internal or gear is None:
        return not shape.internal
    root = gear.pitch_diameter + 2 * (gear.addendum + gear.clearance) * gear.module
    return shape.outside is not None and shape.outside.mm > root


def ratchet_body(part: Part, shape: Ratchet, units: str) -> Body | None:
    """A ratchet wheel with its hub."""
    teeth = _outline(shape)
    if teeth is None:
        return None
    data = ratchet_data(part, shape, units)
    teeth_at = Teeth("ratchet", None, shape.depth.mm, data)
    return _wheel(part, shape, teeth, shape.outside.mm, teeth_at, units)


def sprocket_body(part: Part, shape: Sprocket, units: str) -> Body | None:
    """A sprocket with its hub; its outside is reckoned."""
    teeth = _outline(shape)
    if teeth is None:
        return None
    pitch = sprocket_pitch_diameter(shape.pitch.mm, shape.teeth)
    across = 2 * least_and_most(teeth)[1][0]
    depth = (across - pitch + shape.roller.mm) / 2
    teeth_at = Teeth("sprocket", pitch, depth, sprocket_data(part, shape, pitch, units))
    return _wheel(part, shape, teeth, across, teeth_at, units)


def _wheel(
    part: Part,
    shape: Gear | Ratchet | Sprocket,
    teeth: Outline,
    across: float,
    said: Teeth,
    units: str,
) -> Body:
    """Teeth of a width from x = 0, and a hub behind them."""
    wide = shape.width.mm
    outside = getattr(shape, "outside", None)
    text = size_text(outside, units) if isinstance(outside, Size) else figure(across)
    steps = [
        round_step(
            part, "outside", 0.0, wide, across, (f"⌀{text}", size_text(shape.width, units)),
            ("outside", "width"),
        )
    ]  # fmt: skip
    forms: list[Form] = [Raised(teeth, wide, AXIS)]
    for form, step in hub_of(part, shape, wide, units):
        forms.append(form)
        steps.append(step)
    widest = max(one.across for one in steps) / 2
    body = round_body(
        said.kind, tuple(forms), tuple(steps), widest, (_teeth_at(part, said, across),)
    )
    return replace(body, data=said.data)


def _teeth_at(part: Part, teeth: Teeth, across: float) -> Located:
    """Where the teeth lie: their pitch circle and depth, by which they are drawn."""
    found = note_at(part, "teeth", (0.0, 0.0, across / 2), "", ())
    return replace(found, kind=teeth.kind, circle=teeth.pitch, depth=teeth.depth)


def hub_of(part: Part, shape: object, start: float, units: str) -> tuple[tuple[Form, Stretch], ...]:
    """The hub behind a wheel, where both its sizes are told."""
    across, long = getattr(shape, "hub", None), getattr(shape, "hub_length", None)
    if not isinstance(across, Size) or not isinstance(long, Size):
        return ()
    end = start + long.mm
    texts = (f"⌀{size_text(across, units)}", size_text(long, units))
    step = round_step(part, "hub", start, end, across.mm, texts, ("hub", "hub_length"))
    frame = Frame((start, 0.0, 0.0), AXIS.z, AXIS.x)
    return ((Cylinder(across.mm / 2, long.mm, frame), step),)


def rack_body(part: Part, shape: Rack, units: str) -> Body | None:
    """A rack with its teeth upwards, as long as they are many."""
    teeth, module = _outline(shape), module_of(shape)
    if teeth is None or module is None or shape.height.mm <= 2.25 * module:
        return None
    (_, _), (long, high) = least_and_most(teeth)
    wide = shape.width.mm
    form = Raised(teeth, wide, Frame((0.0, wide, 0.0), (0.0, -1.0, 0.0), (1.0, 0.0, 0.0)))
    told = tuple(
        Told(f"{part.name}.{name}", along, 0.0, size.mm, size_text(size, units))
        for along, name, size in (("y", "width", shape.width), ("z", "height", shape.height))
    )
    field = "module" if shape.module is not None else "dp"
    pitch = f"module {figure(module)}" if field == "module" else f"{figure(_INCH / module)} DP"
    words = f"{shape.teeth} teeth, {pitch}, {_angle(shape):g}°, {figure(long)} long"
    fields = (field, "teeth", *(("pressure_angle",) if shape.pressure_angle is not None else ()))
    note: Located = note_at(part, "teeth", (long / 2, wide / 2, high), words, fields, face="top")
    return Body("rack", form, (0.0, 0.0, 0.0), (long, wide, high), told=told, notes=(note,))
