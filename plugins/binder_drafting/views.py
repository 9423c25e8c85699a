"""Views: what is to be drawn, before anyone knows at which scale or where."""

from __future__ import annotations

from dataclasses import dataclass

from binder_drafting.edges import Edge, Point


@dataclass(frozen=True, slots=True)
class Outline:
    """The closed outline of cut material, which is hatched, and the outlines of holes in it."""

    points: tuple[Point, ...]
    holes: tuple[tuple[Point, ...], ...] = ()
    lean: float = 45.0


@dataclass(frozen=True, slots=True)
class AxisLine:
    """A centre line between two points; it is drawn a little past both."""

    start: Point
    end: Point


@dataclass(frozen=True, slots=True)
class CentreMark:
    """Crossed centre lines of something round."""

    centre: Point
    radius: float


@dataclass(frozen=True, slots=True)
class PitchCircle:
    """The circle on which holes lie; `holes` are the directions in degrees of its centre marks."""

    centre: Point
    radius: float
    holes: tuple[float, ...] = ()
    hole_radius: float = 0.0


@dataclass(frozen=True, slots=True)
class ThreadLine:
    """The root of a thread seen from the side: a thin line (ISO 6410-1).

    `gap` is how far in mm of the part it stands from the line of the crests: where that gets too
    small on the paper to be told apart it is left out. 0 for a line that is always drawn.
    """

    start: Point
    end: Point
    is_hidden: bool = False
    gap: float = 0.0


@dataclass(frozen=True, slots=True)
class ThreadCircle:
    """The root of a thread seen along its axis: three quarters of a thin circle (ISO 6410-1)."""

    centre: Point
    radius: float


@dataclass(frozen=True, slots=True)
class CuttingLine:
    """Where a section is cut: `letter` at both ends, arrows along `looks` (ISO 128-3)."""

    start: Point
    end: Point
    letter: str
    looks: Point


@dataclass(frozen=True, slots=True)
class Surface:
    """A surface that is to be worked, and how smooth: 'Ra 1.6' (ISO 21920-1)."""

    at: Point
    words: str


Mark = AxisLine | CentreMark | PitchCircle | ThreadLine | ThreadCircle | CuttingLine | Surface


@dataclass(frozen=True, slots=True)
class Break:
    """A stretch that is left out: from `start` to `end` along 'u' or 'v'."""

    direction: str
    start: float
    end: float


@dataclass(frozen=True, slots=True)
class View:
    """One view of one part.

    `side` is the side from which it is seen (front, back, left, right, top, underside): it says
    where the view belongs; without it the view goes where there is room. A picture has a scale of
    its own and takes no sizes.
    """

    name: str
    edges: tuple[Edge, ...]
    side: str = ""
    title: str = ""
    outlines: tuple[Outline, ...] = ()
    marks: tuple[Mark, ...] = ()
    breaks: tuple[Break, ...] = ()
    is_picture: bool = False


@dataclass(frozen=True, slots=True)
class Detail:
    """A round piece of another view, enlarged (ISO 128-3); sizes may name it as their view."""

    name: str
    view: str
    centre: Point
    radius: float
