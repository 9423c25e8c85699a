"""Pulleys, flywheels, handwheels, springs and free profiles: what may be written of each."""

from __future__ import annotations

from typing import Annotated

from pydantic import Field

from binder.api import Angle, Count, Length, LengthToCome, Model, Number, OneOf
from binder_plugins.shapes.vocabulary.points import Turns

Groove = Annotated[str, OneOf("a groove", "flat", "vee", "round")]
SpringKind = Annotated[str, OneOf("a spring", "compression", "extension", "torsion")]
Ends = Annotated[str, OneOf("ends of a spring", "ground", "closed")]
Hand = Annotated[str, OneOf("a hand", "left", "right")]


class Pulley(Model):
    """A pulley: its steps by their outside diameters, each of one width, hub behind the last.

    `belt` is the diameter of a round belt, or the top width of a vee belt; `crown` how much
    higher a flat one is in the middle, on the radius.
    """

    groove: Groove
    diameters: Annotated[list[LengthToCome], Field(min_length=1, max_length=8)]
    width: Length
    belt: Length | None = None
    depth: Length | None = None
    angle: Angle | None = None
    crown: Length | None = None
    hub: Length | None = None
    hub_length: Length | None = None


class Wheel(Model):
    """A flywheel or handwheel: a rim so thick, spokes or a web, and a hub.

    The rim of a flywheel is square, that of a handwheel round.
    """

    outside: Length
    rim: Length
    width: Length | None = None
    hub: Length
    hub_length: Length
    spokes: Count | None = None
    spoke: Length | None = None
    web: Length | None = None


class Spring(Model):
    """A spring of round wire: its outside or mean diameter, and the coils that work.

    `free` is the length of a compression spring with nothing on it, `leg` that of both legs of
    a torsion spring. Right-hand where nothing is said.
    """

    kind: SpringKind
    wire: Length
    outside: Length | None = None
    mean: Length | None = None
    coils: Number
    free: Length | None = None
    ends: Ends | None = None
    leg: Length | None = None
    hand: Hand | None = None


class Profile(Model):
    """Turned work of a free outline: a handle, a finial, a moulding."""

    points: Turns
