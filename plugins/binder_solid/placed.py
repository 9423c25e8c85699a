"""Facts about the model put together: where each copy of a part stands, and what moves."""

from __future__ import annotations

from dataclasses import dataclass

from binder.api import Fact
from binder_solid.forms import Form, Frame, Vector


@dataclass(frozen=True, slots=True)
class PlacedFact(Fact):
    """One copy of a part where it stands; the subject is `cheek 2`, or `base` of a single one.

    `frame` tells where the part's own axes lie in the model, whose x runs to the right, y to
    the back and z upwards. `form` is that of the opposite hand where `is_opposite`; `drawn` is
    what is drawn of it. `corners` are the least and most corner of the part in its own axes,
    in mm; `way` is the direction in which it comes off again what it was put `onto`, and the
    other way as well where it `is_free`.
    """

    item: str
    copy: int
    frame: Frame
    form: Form
    drawn: Form
    corners: tuple[Vector, Vector]
    way: Vector
    onto: str = ""
    is_free: bool = False
    is_opposite: bool = False


@dataclass(frozen=True, slots=True)
class MotionFact(Fact):
    """What a joint lets two copies do; the subject is `joint: one, other`.

    `motion` is turn, slide or screw; the axis runs through `origin` along `way` in the model.
    """

    joint: str
    one: str
    other: str
    motion: str
    origin: Vector
    way: Vector


@dataclass(frozen=True, slots=True)
class CentresFact(Fact):
    """How far apart in mm the axes of two parts lie that mesh; the subject is the joint."""

    distance: float
