"""The shapes that a part can have."""

from __future__ import annotations

from typing import Annotated

from pydantic import Field

from binder.api import Kind, Length, LengthOrRest, Model, Name, Slot, TaperOf, Words


class TurnedStep(Model):
    """One step of turned work, told from the locating shoulder outwards."""

    name: Name | None = None
    length: LengthOrRest
    diameter: Length | None = None
    taper: TaperOf | None = None
    hexagon: Length | None = None
    square: Length | None = None
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
    ]
