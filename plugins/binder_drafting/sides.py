"""A side of a view: where along it and how far away from it something stands."""

from __future__ import annotations

from dataclasses import dataclass

from binder_drafting.plane import Point, Rectangle

BELOW = "below"
ABOVE = "above"
LEFT = "left"
RIGHT = "right"


@dataclass(frozen=True, slots=True)
class Side:
    """One side of an outline; `along` grows in the direction in which its figures are read."""

    name: str
    outline: Rectangle

    @property
    def is_upright(self) -> bool:
        """Whether its figures are read from the right (ISO 129-1)."""
        return self.name in {LEFT, RIGHT}

    @property
    def is_inward(self) -> bool:
        """Whether figures, which stand above their line, stand towards the view."""
        return self.name in {BELOW, RIGHT}

    def local(self, point: Point) -> Point:
        """A point of the paper as (along, away); inside the outline `away` is negative."""
        x, y = point
        here = self.outline
        if self.name == BELOW:
            return (x, y - here.bottom)
        if self.name == ABOVE:
            return (x, here.top - y)
        return (-y, x - here.right) if self.name == RIGHT else (-y, here.left - x)

    def paper(self, along: float, away: float) -> Point:
        """A point of the paper from (along, away)."""
        here = self.outline
        if self.name == BELOW:
            return (along, here.bottom + away)
        if self.name == ABOVE:
            return (along, here.top - away)
        return (here.right + away if self.name == RIGHT else here.left - away, -along)
