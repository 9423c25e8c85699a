"""Shapes of the language to bodies: turned work along x, everything else as a box."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

from binder.api import CutSize, Design, Part, Size, shown_length, size_text
from binder_plugins.shapes.forming.body import Body
from binder_plugins.shapes.forming.turned import plain_round, turned_body
from binder_plugins.shapes.kinds import Block, Board, Disc, Plate
from binder_plugins.shapes.turned import measured
from binder_plugins.shapes.vocabulary.cams import Cam
from binder_plugins.shapes.vocabulary.rods import Sheet, Tube, Wire
from binder_plugins.shapes.vocabulary.toothed import Gear, Rack, Ratchet, Sprocket
from binder_plugins.shapes.vocabulary.wheels import Profile, Pulley, Spring, Wheel
from binder_solid.facts import Stretch, Told
from binder_solid.forms import Box

_RODS = ("round bar", "drawn rod", "wire", "tube")
_CORNERS = {"hexagon bar": 6, "square bar": 4}


def body_of(part: Part, design: Design) -> Body | None:
    """The body of a part; None where its sizes are not whole."""
    shape = part.shape
    if isinstance(shape, list):
        steps, _ = measured(part, shape)
        return turned_body(part, steps, design.units) if steps else None
    if isinstance(shape, Disc):
        return _disc(part, shape, design.units)
    if isinstance(shape, Block):
        return box_body("block", shape.length.mm, shape.width.mm, shape.height.mm)
    if isinstance(shape, (Plate, Board)):
        name = "plate" if isinstance(shape, Plate) else "board"
        return box_body(name, shape.length.mm, shape.width.mm, shape.thickness.mm)
    if isinstance(shape, Size):
        return _as_bought(part, shape, design)
    return _wider(part, shape, design.units)


def _wider(part: Part, shape: object, units: str) -> Body | None:
    """A shape of the wider vocabulary, which is only loaded where one is written."""
    from binder_plugins.shapes.forming import cams, profiles, rods, sheet, springs, toothed, wheels

    makers: dict[type, Callable[[Part, Any, str], Body | None]] = {
        Profile: profiles.profile_body,
        Tube: rods.tube_body,
        Wire: rods.wire_body,
        Sheet: sheet.sheet_body,
        Gear: toothed.gear_body,
        Rack: toothed.rack_body,
        Ratchet: toothed.ratchet_body,
        Sprocket: toothed.sprocket_body,
        Cam: cams.cam_body,
        Pulley: wheels.pulley_body,
        Wheel: wheels.wheel_body,
        Spring: springs.spring_body,
    }
    make = makers.get(type(shape))
    return make(part, shape, units) if make is not None else None


def _disc(part: Part, shape: Disc, units: str) -> Body:
    across, thick = shape.diameter.mm, shape.thickness.mm
    ids = (f"{part.name}.diameter", f"{part.name}.thickness")
    text, long = f"⌀{size_text(shape.diameter, units)}", size_text(shape.thickness, units)
    return plain_round("disc", (Stretch("outside", 0, thick, across, across, 0, ids, text, long),))


def told_of(part: Part, units: str) -> tuple[Told, ...]:
    """The sizes of a box: its three sides, as they are written."""
    shape = part.shape
    sides: tuple[tuple[str, Size], ...] = ()
    if isinstance(shape, Block):
        sides = (("length", shape.length), ("width", shape.width), ("height", shape.height))
    elif isinstance(shape, (Plate, Board)):
        sides = (("length", shape.length), ("width", shape.width), ("thickness", shape.thickness))
    elif isinstance(shape, Size):
        sides = (("cut", shape),)
    return tuple(
        Told(f"{part.name}.{name}", along, 0.0, size.mm, size_text(size, units))
        for along, (name, size) in zip("xyz", sides, strict=False)
    )


def box_body(shape: str, length: float, width: float, height: float) -> Body:
    """A box with its least corner at the origin."""
    return Body(shape, Box(length, width, height), (0.0, 0.0, 0.0), (length, width, height))


def _as_bought(part: Part, length: Size, design: Design) -> Body | None:
    cut = design.facts.about(CutSize, part.name)
    if cut is None or not cut.section:
        return None
    across = float(cut.section[0])
    text = shown_length(cut.section[0], design.units)
    ids = (f"{part.name}.section", f"{part.name}.cut")
    long = size_text(length, design.units)
    corners = _CORNERS.get(cut.form, 0)
    if cut.form in _RODS or corners:
        one = Stretch("outside", 0, length.mm, across, across, corners, ids, text, long)
        return plain_round("cut", (one,))
    if len(cut.section) == 2:
        wide, thick = float(max(cut.section)), float(min(cut.section))
        return box_body("cut", length.mm, wide, thick)
    return None
