"""Toothed wheels to the table of data on their drawing.

What a gear's maker must be told beside the blank: module, teeth, pressure angle, depth, and a
size by which the teeth are measured (after ISO 1340, from memory).
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from binder.api import Part, Size, shown, size_text
from binder_plugins.shapes.forming.told import figure
from binder_plugins.shapes.vocabulary.toothed import Gear, Ratchet, Sprocket
from binder_solid import gears
from binder_solid.facts import Datum
from binder_solid.wheels import RATCHET_HAND

_INCH = 25.4


@dataclass(frozen=True, slots=True)
class Teeth:
    """Teeth as they are drawn: diameter of the pitch circle, depth, both in mm, and their data."""

    kind: str
    pitch: float | None
    depth: float
    data: tuple[Datum, ...]


def _mm(value: float) -> str:
    return f"{figure(value)} mm"


def gear_data(part: Part, shape: Gear, gear: gears.Gear, units: str) -> tuple[Datum, ...]:
    """The data of a spur gear."""
    return tuple(_gear_rows(part.name, shape, gear, units))


def _gear_rows(name: str, shape: Gear, gear: gears.Gear, units: str) -> Iterator[Datum]:
    if shape.module is not None:
        yield Datum("Module", size_text(shape.module, units), (f"{name}.module",))
    else:
        yield Datum("Diametral pitch", figure(_INCH / gear.module), (f"{name}.dp",))
    yield Datum("Number of teeth", str(shape.teeth), (f"{name}.teeth",))
    angle = (f"{name}.pressure_angle",) if shape.pressure_angle is not None else ()
    yield Datum("Pressure angle", f"{gear.pressure_angle:g}°", angle)
    yield Datum("Basic rack", "ISO 53, profile A")
    yield Datum("Pitch diameter", _mm(gear.pitch_diameter))
    yield Datum("Depth of tooth", _mm(gear.whole_depth))
    if shape.backlash is not None:
        thinner = size_text(shape.backlash, units)
        yield Datum("Teeth thinner by", thinner, (f"{name}.backlash",))
    if not shape.internal:
        count = max(2, round(gear.teeth * gear.pressure_angle / 180.0 + 0.5))
        yield Datum(f"Span over {count} teeth", _mm(gears.span(gear, count)))


def ratchet_data(part: Part, shape: Ratchet, units: str) -> tuple[Datum, ...]:
    """The data of a ratchet wheel."""
    lean = shape.lean
    stop = shown(lean.quantity) if isinstance(lean, Size) else "0°"
    return (
        Datum("Number of teeth", str(shape.teeth), (f"{part.name}.teeth",)),
        Datum("Depth of tooth", size_text(shape.depth, units), (f"{part.name}.depth",)),
        Datum(
            "Stopping face leans back",
            stop,
            (f"{part.name}.lean",) if lean is not None else (),
        ),
        Datum("Stopping faces look", RATCHET_HAND),
        Datum("Tooth to tooth", f"{figure(360.0 / shape.teeth)}°"),
    )


def sprocket_data(part: Part, shape: Sprocket, pitch: float, units: str) -> tuple[Datum, ...]:
    """The data of a sprocket for roller chain."""
    return (
        Datum("Chain pitch", size_text(shape.pitch, units), (f"{part.name}.pitch",)),
        Datum("Rollers", f"⌀{size_text(shape.roller, units)}", (f"{part.name}.roller",)),
        Datum("Number of teeth", str(shape.teeth), (f"{part.name}.teeth",)),
        Datum("Pitch diameter", _mm(pitch)),
        Datum("Root diameter", _mm(pitch - shape.roller.mm)),
    )
