"""Outlines and turned profiles told point by point, with the arcs between them."""

from __future__ import annotations

from typing import Annotated

from pydantic import Field

from binder.api import Length, Model, Offset, Size


class Spot(Model):
    """A point of an outline. The line that comes to it is straight, or an arc of a radius.

    `arc` bulges out of the metal, `hollow` bites into it; `corner` rounds the corner at the
    point itself.
    """

    x: Offset
    y: Offset
    arc: Length | None = None
    hollow: Length | None = None
    corner: Length | None = None


class Turn(Model):
    """A point of a turned profile: how far along, and the diameter there."""

    at: Offset
    diameter: Offset
    arc: Length | None = None
    hollow: Length | None = None


class Corner(Model):
    """A point of bent wire, in the flat or in space."""

    x: Offset
    y: Offset
    z: Offset | None = None


Spots = Annotated[list[Spot], Field(min_length=3, max_length=200)]
Turns = Annotated[list[Turn], Field(min_length=2, max_length=200)]
Corners = Annotated[list[Corner], Field(min_length=2, max_length=100)]


def bulge(point: Spot | Turn) -> float:
    """The radius of the arc that comes to a point: outwards over nothing, inwards under it."""
    if isinstance(point.arc, Size):
        return point.arc.mm
    return -point.hollow.mm if isinstance(point.hollow, Size) else 0.0
