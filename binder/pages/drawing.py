"""Line drawings in millimetres of paper, y downwards from the top left corner."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum


class Stroke(StrEnum):
    """Kinds of line after ISO 128-2: what a line means decides how it looks."""

    OUTLINE = "outline"
    THIN = "thin"
    HIDDEN = "hidden"
    CENTRE = "centre"
    PHANTOM = "phantom"
    CUTTING = "cutting"
    SYMBOL = "symbol"
    ARROW = "arrow"


class Anchor(StrEnum):
    """Which point of a label lies at its coordinates."""

    START = "start"
    MIDDLE = "middle"
    END = "end"


@dataclass(frozen=True, slots=True)
class Line:
    """A straight line; the kind ARROW gets a head at its second end."""

    x1: float
    y1: float
    x2: float
    y2: float
    stroke: Stroke = Stroke.OUTLINE


@dataclass(frozen=True, slots=True)
class Polyline:
    """Straight lines through points; ARROW gets a head at the last one."""

    points: tuple[tuple[float, float], ...]
    stroke: Stroke = Stroke.OUTLINE


@dataclass(frozen=True, slots=True)
class Arc:
    """Part of a circle from `start` to `end`, degrees anticlockwise from the right as it is seen.

    `end` is the greater of the two, by less than a turn; an arc has no head.
    """

    x: float
    y: float
    radius: float
    start: float
    end: float
    stroke: Stroke = Stroke.OUTLINE


@dataclass(frozen=True, slots=True)
class Area:
    """The inside of closed chains of points, filled with a grey; a chain in another is a hole."""

    chains: tuple[tuple[tuple[float, float], ...], ...]
    tint: float = 1.0


@dataclass(frozen=True, slots=True)
class Box:
    """A rectangle; `tint` is a grey from 0 (none) to 1 (black) that fills it."""

    x: float
    y: float
    width: float
    height: float
    tint: float = 0.0
    stroke: Stroke = Stroke.OUTLINE


@dataclass(frozen=True, slots=True)
class Disc:
    """A circle, filled with a grey from 0 (none) to 1 (black)."""

    x: float
    y: float
    radius: float
    tint: float = 0.0
    stroke: Stroke = Stroke.OUTLINE


@dataclass(frozen=True, slots=True)
class Label:
    """Words on the drawing; `height` is the letter height in mm, never under 2.5.

    `turn` is how far the words are turned about their anchor, in degrees anticlockwise; 90 reads
    from the right (ISO 129-1).
    """

    x: float
    y: float
    text: str
    height: float = 3.5
    anchor: Anchor = Anchor.START
    target: str = ""
    turn: float = 0.0


Shape = Line | Polyline | Arc | Area | Box | Disc | Label


@dataclass(frozen=True, slots=True)
class Drawing:
    """Shapes on a sheet `width` by `height` mm, drawn in their order."""

    width: float
    height: float
    shapes: tuple[Shape, ...]
