"""Tube, wire and sheet: what may be written of each."""

from __future__ import annotations

from typing import Annotated

from pydantic import Field

from binder.api import Angle, Length, Model, Number, OneOf
from binder_plugins.shapes.vocabulary.points import Corners, Spots

BendWay = Annotated[str, OneOf("a way to bend", "up", "down")]


class Tube(Model):
    """A length of tube: its outside and its bore."""

    outside: Length
    bore: Length
    length: Length


class Wire(Model):
    """Bent wire: where its middle line would turn, and the radius of the bends inside."""

    diameter: Length
    bend: Length
    points: Corners


class Bend(Model):
    """A bend across a sheet: how far from the left over the outsides of the legs before it.

    `inside` is its radius; `k` where the neutral line lies, in thicknesses from the inside.
    """

    at: Length
    angle: Angle
    inside: Length
    way: BendWay | None = None
    k: Number | None = None


class Sheet(Model):
    """A part of sheet: a rectangle or an outline, flat; or a rectangle with bends across it.

    With bends, `length` is the sum of the outsides of all legs.
    """

    length: Length
    width: Length
    thickness: Length
    points: Spots | None = None
    bends: Annotated[list[Bend], Field(max_length=20)] = Field(default_factory=list)
