"""Faces laid on paper: their outline, holes, bends and datum, in mm from their lower left corner.

x runs to the right and y upwards, as the face is looked at.
"""

from __future__ import annotations

from dataclasses import dataclass

from .forms import Form, Outline, Point
from .views import Cutting


@dataclass(frozen=True, slots=True)
class FlatHole:
    """One hole: the feature that it belongs to, what is made there, and its diameter in mm.

    `diameter` is that of the drill, reamer or boring; for a thread that of its drill.
    """

    feature: str
    words: str
    at: Point
    diameter: float
    is_through: bool


@dataclass(frozen=True, slots=True)
class FlatBend:
    """A bend across a face from x = `start` to `end`, where its straights begin."""

    start: float
    end: float
    words: str

    @property
    def middle(self) -> float:
        """The line that is scribed."""
        return (self.start + self.end) / 2.0


@dataclass(frozen=True, slots=True)
class PitchCircle:
    """A circle with so many holes evenly round it."""

    feature: str
    centre: Point
    diameter: float
    count: int


@dataclass(frozen=True, slots=True)
class Datum:
    """What coordinates are told from: a point, its words, and the ways that count upwards."""

    at: Point
    words: str
    ways: tuple[int, int] = (1, 1)

    def told(self, point: Point) -> Point:
        """The coordinates of a point."""
        x, y = ((a - b) * way for a, b, way in zip(point, self.at, self.ways, strict=True))
        return (x, y)


@dataclass(frozen=True, slots=True)
class Flat:
    """A face: its name, its size over all, and its outline before anything is cut in it.

    `form` cut by `cutting` shows all that goes through the face; `corner` is the lower left
    one in that view. `bends` make it a developed blank, `thickness` thick; `grain` says what
    runs along x, as far as it can be chosen.
    """

    face: str
    size: Point
    outline: Outline
    holes: tuple[FlatHole, ...]
    datum: Datum
    form: Form
    cutting: Cutting
    corner: Point = (0.0, 0.0)
    thickness: float = 0.0
    bends: tuple[FlatBend, ...] = ()
    circles: tuple[PitchCircle, ...] = ()
    grain: str = ""
