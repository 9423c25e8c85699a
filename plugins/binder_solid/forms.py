"""Forms: what a part looks like, told in plain values that need no kernel.

Lengths are in mm, angles in degrees. A frame places a form: its own z is the axis of what is
round and the direction in which an outline is raised.
"""

from __future__ import annotations

from dataclasses import dataclass

Point = tuple[float, float]
Vector = tuple[float, float, float]


@dataclass(frozen=True, slots=True)
class Frame:
    """A place and two directions, unit and at right angles; y is z × x."""

    origin: Vector = (0.0, 0.0, 0.0)
    z: Vector = (0.0, 0.0, 1.0)
    x: Vector = (1.0, 0.0, 0.0)


TURNED = Frame(z=(1.0, 0.0, 0.0), x=(0.0, 1.0, 0.0))
"""Where turned work lies: its axis along x, from the locating shoulder at x = 0."""


@dataclass(frozen=True, slots=True)
class Straight:
    """A straight line to a point."""

    to: Point


@dataclass(frozen=True, slots=True)
class Arc:
    """An arc of a circle through one point to another."""

    through: Point
    to: Point


@dataclass(frozen=True, slots=True)
class Curve:
    """A smooth line through points to the last of them."""

    points: tuple[Point, ...]


Segment = Straight | Arc | Curve


@dataclass(frozen=True, slots=True)
class Outline:
    """A closed line from `start` back to it, and the closed lines of the holes in it."""

    start: Point
    segments: tuple[Segment, ...]
    holes: tuple[Outline, ...] = ()


@dataclass(frozen=True, slots=True)
class Revolved:
    """An outline of (along the axis, radius) turned about the frame's z by so many degrees."""

    outline: Outline
    frame: Frame = Frame()
    turn: float = 360.0


@dataclass(frozen=True, slots=True)
class Raised:
    """An outline in the frame's x-y plane raised along its z; `draft` leans the sides inwards."""

    outline: Outline
    height: float
    frame: Frame = Frame()
    draft: float = 0.0


@dataclass(frozen=True, slots=True)
class Cylinder:
    """From the frame's origin along z."""

    radius: float
    height: float
    frame: Frame = Frame()


@dataclass(frozen=True, slots=True)
class Cone:
    """A cone or its frustum, from the frame's origin along z; one radius may be 0."""

    radius: float
    end_radius: float
    height: float
    frame: Frame = Frame()


@dataclass(frozen=True, slots=True)
class Box:
    """From the frame's origin along x, y and z."""

    length: float
    width: float
    height: float
    frame: Frame = Frame()


@dataclass(frozen=True, slots=True)
class Ball:
    """A whole sphere about the frame's origin."""

    radius: float
    frame: Frame = Frame()


@dataclass(frozen=True, slots=True)
class Ring:
    """A torus about the frame's z: mean radius, diameter of the section."""

    radius: float
    section: float
    frame: Frame = Frame()


@dataclass(frozen=True, slots=True)
class Coil:
    """Round wire wound about the frame's z from its x: mean radius, pitch, turns, wire diameter.

    `turns` counts all; so many of them as `closed` says lie wire to wire at either end.
    """

    radius: float
    pitch: float
    turns: float
    wire: float
    is_left_hand: bool = False
    frame: Frame = Frame()
    closed: float = 0.0


@dataclass(frozen=True, slots=True)
class Bent:
    """Round rod of a diameter along points in space, with a mean radius at each bend."""

    points: tuple[Vector, ...]
    bend: float
    wire: float


@dataclass(frozen=True, slots=True)
class Wire:
    """Round wire of a diameter along a smooth line through points in space."""

    points: tuple[Vector, ...]
    wire: float


@dataclass(frozen=True, slots=True)
class Joined:
    """Several forms as one piece."""

    forms: tuple[Form, ...]


@dataclass(frozen=True, slots=True)
class Cut:
    """A form without the tools; all tools are taken away in one go."""

    form: Form
    tools: tuple[Form, ...]


@dataclass(frozen=True, slots=True)
class Shared:
    """What two forms have in common."""

    one: Form
    other: Form


@dataclass(frozen=True, slots=True)
class Placed:
    """A form whose own frame is laid on another."""

    form: Form
    frame: Frame


@dataclass(frozen=True, slots=True)
class Mirrored:
    """A form seen in a mirror that lies in the frame's x-y plane."""

    form: Form
    frame: Frame = Frame()


Form = (
    Revolved
    | Raised
    | Cylinder
    | Cone
    | Box
    | Ball
    | Ring
    | Coil
    | Bent
    | Wire
    | Joined
    | Cut
    | Shared
    | Placed
    | Mirrored
)
