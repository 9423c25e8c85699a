"""Paper: a piece of drawing under way, its shapes and its words, that can be moved as a whole."""

from __future__ import annotations

from dataclasses import dataclass, field, replace

from binder.api import (
    DrawnArc,
    DrawnArea,
    DrawnBox,
    DrawnDisc,
    DrawnLabel,
    DrawnShape,
    Line,
    Polyline,
    Stroke,
)
from binder_drafting.plane import Point, Rectangle, cross
from binder_drafting.sheet import PlacedLabel
from binder_drafting.style import ROOMY, Style
from binder_drafting.taken import Taken
from binder_drafting.words import Words


@dataclass
class Paper:
    """Shapes in their order, the words among them, and what they take up.

    `shaded` has the hatching and the centre lines: words keep clear of them, lines need not.
    """

    shapes: list[DrawnShape] = field(default_factory=list)
    words: list[PlacedLabel] = field(default_factory=list)
    taken: Taken = field(default_factory=Taken)
    shaded: Taken = field(default_factory=Taken)
    leaders: list[tuple[Point, Point]] = field(default_factory=list)
    extent: Rectangle | None = None
    style: Style = ROOMY

    def draw(self, *shapes: DrawnShape) -> None:
        """Adds shapes that nothing need keep clear of."""
        self.shapes.extend(shapes)

    def line(self, start: Point, end: Point, stroke: Stroke = Stroke.THIN) -> None:
        """Adds a straight line that words keep clear of."""
        self.shapes.append(Line(*start, *end, stroke))
        self.taken.add_line(start, end)
        self.reach(Rectangle(*map(min, start, end), *map(max, start, end)))

    def arrow(self, tail: Point, tip: Point) -> None:
        """Adds a line with a head at its second end."""
        self.line(tail, tip, Stroke.ARROW)

    def growth(self, box: Rectangle) -> float:
        """What a rectangle costs that lies beyond the drawing, in mm of leader."""
        here = self.extent or box
        across = max(0.0, here.left - box.left) + max(0.0, box.right - here.right)
        down = max(0.0, here.top - box.top) + max(0.0, box.bottom - here.bottom)
        return self.style.growth * (across + down)

    def leaders_across(self, start: Point, end: Point) -> int:
        """How many leaders a straight line would cross."""
        return sum(cross(start, end, one, two) for one, two in self.leaders)

    def write(self, words: Words, at: Point, size: str = "", *, is_upright: bool = False) -> None:
        """Adds words and keeps their place."""
        box = words.box(at, is_upright=is_upright)
        self.shapes.extend(words.labels(at, is_upright=is_upright))
        self.words.append(PlacedLabel(size, box))
        self.taken.add_words(box)
        self.reach(box)

    def reach(self, box: Rectangle) -> None:
        """Counts a rectangle as part of the drawing."""
        here = self.extent
        self.extent = (
            box
            if here is None
            else Rectangle(
                min(here.left, box.left),
                min(here.top, box.top),
                max(here.right, box.right),
                max(here.bottom, box.bottom),
            )
        )

    def lay(self, other: Paper, across: float, down: float) -> None:
        """Lays another piece on this one; what it keeps clear of is not asked for again."""
        self.shapes.extend(moved(shape, across, down) for shape in other.shapes)
        self.words.extend(
            PlacedLabel(word.id, word.box.moved(across, down)) for word in other.words
        )
        if other.extent is not None:
            self.reach(other.extent.moved(across, down))


def moved(shape: DrawnShape, across: float, down: float) -> DrawnShape:
    """The same shape elsewhere."""
    if isinstance(shape, Line):
        return Line(
            shape.x1 + across, shape.y1 + down, shape.x2 + across, shape.y2 + down, shape.stroke
        )
    if isinstance(shape, Polyline):
        return Polyline(_moved(shape.points, across, down), shape.stroke)
    if isinstance(shape, DrawnArea):
        chains = tuple(_moved(chain, across, down) for chain in shape.chains)
        return replace(shape, chains=chains)
    return _shifted(shape, across, down)


def _shifted(
    shape: DrawnArc | DrawnBox | DrawnDisc | DrawnLabel, across: float, down: float
) -> DrawnShape:
    return replace(shape, x=shape.x + across, y=shape.y + down)


def _moved(points: tuple[Point, ...], across: float, down: float) -> tuple[Point, ...]:
    return tuple((x + across, y + down) for x, y in points)
