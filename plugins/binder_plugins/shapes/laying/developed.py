"""Bent sheet to the flat blank that it is bent from, with its bend lines and its holes."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from binder.api import Design, Part, shown, size_text
from binder_plugins.shapes.forming.bends import (
    bent_frames,
    developed,
    fault_of,
    straights,
    turns_of,
)
from binder_plugins.shapes.laying.holes import circles_of, holes_of, is_hole
from binder_plugins.shapes.vocabulary.rods import Sheet
from binder_solid.facts import FormFact, Located
from binder_solid.flats import Datum, Flat, FlatBend, FlatHole, PitchCircle
from binder_solid.forms import Box, Cut, Form, Frame, Placed, Point, Vector
from binder_solid.outlines import rectangle
from binder_solid.space import dot, frame_y, minus, plus
from binder_solid.views import Cutting


@dataclass(frozen=True, slots=True)
class Leg:
    """A leg of the bent part, and where its middle lies in the flat."""

    bent: Frame
    flat: Frame

    def on(self, point: Vector) -> Point:
        """Where a point of the leg lies on the blank."""
        x, y, _ = self.laid(point)
        return (x, y)

    def laid(self, point: Vector) -> Vector:
        """A point of the leg in the space of the blank."""
        return plus(self.flat.origin, self._turned(minus(point, self.bent.origin)))

    def _turned(self, way: Vector) -> Vector:
        """A direction of the leg as it lies in the blank, whose own run along x, y and z."""
        bent = self.bent
        return (dot(way, bent.x), dot(way, frame_y(bent)), dot(way, bent.z))

    def tool(self, form: Form) -> Form:
        """What cuts the leg, moved to where the leg lies in the blank."""
        frame = Frame(
            self.laid((0.0, 0.0, 0.0)),
            self._turned((0.0, 0.0, 1.0)),
            self._turned((1.0, 0.0, 0.0)),
        )
        return Placed(form, frame)


def developed_flat(form: FormFact, part: Part, shape: Sheet, design: Design) -> Flat | None:
    """The blank; None where the bends cannot be made."""
    if fault_of(shape) is not None:
        return None
    long, wide, thick = developed(shape), shape.width.mm, shape.thickness.mm
    legs = _legs(shape)
    tools: list[Form] = []
    holes: tuple[FlatHole, ...] = ()
    circles: tuple[PitchCircle, ...] = ()
    for name, leg in legs.items():
        located = [one for one in form.located if _leg_of(one) == name]
        tools += [leg.tool(tool) for one in located if not one.adds for tool in one.tools]
        marked = [one for one in located if is_hole(one)]
        holes += holes_of(marked, part, leg, design)
        circles += circles_of(marked, leg)
    blank = Box(long, wide, thick)
    return Flat(
        face="flat",
        size=(long, wide),
        outline=rectangle(long, wide, (0.0, 0.0)),
        holes=holes,
        datum=Datum((0.0, 0.0), "lower left corner"),
        form=Cut(blank, tuple(tools)) if tools else blank,
        cutting=Cutting("flat", "top", thick / 2.0),
        thickness=thick,
        bends=tuple(_bends(shape, design.units)),
        circles=circles,
        grain="grain",
    )


def _leg_of(one: Located) -> str:
    return "leg1" if one.face == "top" else one.face


def _starts(shape: Sheet) -> Iterator[tuple[float, float]]:
    """Where the straight of each leg begins and ends in the flat."""
    x = 0.0
    rounds = [turn.allowance(shape.thickness.mm) for turn in turns_of(shape)]
    for straight, round_ in zip(straights(shape), (*rounds, 0.0), strict=True):
        yield x, x + straight
        x += straight + round_


def _legs(shape: Sheet) -> dict[str, Leg]:
    middle = shape.width.mm / 2.0
    return {
        name: Leg(frame, Frame(((start + end) / 2.0, middle, shape.thickness.mm)))
        for (name, frame), (start, end) in zip(bent_frames(shape), _starts(shape), strict=True)
    }


def _bends(shape: Sheet, units: str) -> Iterator[FlatBend]:
    straight = list(_starts(shape))
    for n, bend in enumerate(shape.bends):
        angle, inside = shown(bend.angle.quantity), size_text(bend.inside, units)
        words = f"bend {angle} {bend.way or 'up'}, R{inside}"
        yield FlatBend(straight[n][1], straight[n + 1][0], words)
