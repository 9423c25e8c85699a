"""What is known of a solid once it is made, and of solids that stand together."""

from __future__ import annotations

from dataclasses import dataclass

from .forms import Form, Frame, Vector

AT_HOME = Frame()
Matrix = tuple[Vector, Vector, Vector]


@dataclass(frozen=True, slots=True)
class Solid:
    """Volume in mm³, area in mm², centre of mass, least and most corner in mm, pieces.

    `inertia` is about the centre for a density of 1, in mm⁵: moments on the diagonal, the
    products with a minus sign beside it.
    """

    volume_mm3: float
    area_mm2: float
    centre: Vector
    inertia: Matrix
    envelope: tuple[Vector, Vector]
    pieces: int


@dataclass(frozen=True, slots=True)
class NamedForm:
    """A form under its part's name, laid on a frame of the model."""

    name: str
    form: Form
    frame: Frame = AT_HOME


@dataclass(frozen=True, slots=True)
class Clash:
    """Two parts in one another's way: how much they share, and the corners of it."""

    first: str
    second: str
    volume_mm3: float
    least: Vector
    most: Vector
