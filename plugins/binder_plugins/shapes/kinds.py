"""The shapes that a part can have."""

from __future__ import annotations

from typing import Annotated

from pydantic import Field

from binder.api import (
    Angle,
    Kind,
    Length,
    LengthOrRest,
    LengthToCome,
    Model,
    Name,
    Slot,
    TaperOf,
    Words,
)
from binder_plugins.shapes.vocabulary.cams import Cam
from binder_plugins.shapes.vocabulary.rods import Sheet, Tube, Wire
from binder_plugins.shapes.vocabulary.toothed import Gear, Rack, Ratchet, Sprocket
from binder_plugins.shapes.vocabulary.wheels import Profile, Pulley, Spring, Wheel


class TurnedStep(Model):
    """One step of turned work, told from the locating shoulder outwards.

    `ball` is a ball of a diameter, cut off where it meets its neighbour. `throw` sets a step
    off the axis, at a `clock` from the top; a `web` is a crank web so wide, from the axis to
    its throw.
    """

    name: Name | None = None
    length: LengthOrRest
    diameter: LengthToCome | None = None
    taper: TaperOf | None = None
    hexagon: Length | None = None
    square: Length | None = None
    ball: Length | None = None
    web: Length | None = None
    throw: Length | None = None
    clock: Angle | None = None
    note: Words | None = None


class Block(Model):
    """A milled block by its three sizes."""

    length: Length
    width: Length
    height: Length


class Plate(Model):
    """A flat part by the size of its outline and its thickness."""

    length: Length
    width: Length
    thickness: Length


class Disc(Model):
    """A flat round part."""

    diameter: Length
    thickness: Length


class Board(Model):
    """A piece of timber; the length runs with the grain."""

    length: Length
    width: Length
    thickness: Length


Turned = Annotated[list[TurnedStep], Field(min_length=1, max_length=60)]


def shape_kinds() -> list[Kind]:
    """All shapes of this plugin."""
    return [
        Kind(Slot.SHAPE, "turned", Turned, "turned work, step after step"),
        Kind(Slot.SHAPE, "block", Block, "a milled block: length, width, height"),
        Kind(Slot.SHAPE, "plate", Plate, "a flat part: length, width, thickness"),
        Kind(Slot.SHAPE, "disc", Disc, "a flat round part: diameter, thickness"),
        Kind(Slot.SHAPE, "board", Board, "a piece of timber: length along the grain"),
        Kind(Slot.SHAPE, "cut", Length, "a length cut from the bar as bought"),
        Kind(Slot.SHAPE, "profile", Profile, "turned work by the points of its outline"),
        Kind(Slot.SHAPE, "tube", Tube, "a length of tube: outside, bore, length"),
        Kind(Slot.SHAPE, "wire", Wire, "bent wire: diameter, bend, points"),
        Kind(Slot.SHAPE, "sheet", Sheet, "sheet by its outline, flat or with bends"),
        Kind(Slot.SHAPE, "gear", Gear, "a spur gear: module or dp, teeth, width"),
        Kind(Slot.SHAPE, "rack", Rack, "a rack: module or dp, teeth, width, height"),
        Kind(Slot.SHAPE, "ratchet", Ratchet, "a ratchet wheel: teeth, outside, depth, width"),
        Kind(Slot.SHAPE, "cam", Cam, "a plate cam: its width; its drive says the contour"),
        Kind(Slot.SHAPE, "sprocket", Sprocket, "a sprocket: pitch, roller, teeth, width"),
        Kind(Slot.SHAPE, "pulley", Pulley, "a pulley: groove, diameters, width, belt"),
        Kind(Slot.SHAPE, "flywheel", Wheel, "a flywheel: outside, rim, width, hub, spokes"),
        Kind(Slot.SHAPE, "handwheel", Wheel, "a handwheel: outside, rim, hub, spokes"),
        Kind(Slot.SHAPE, "spring", Spring, "a spring: kind, wire, outside or mean, coils"),
    ]
