"""Sizes: what is to be written on the views, each once.

`id` says which size of the spec it is. `limits` are the upper and the lower deviation or limit,
stacked behind the figure. `tier` is the class of the size: 'fit', 'tool' or 'free'. `also` are
the ids of further sizes that the same words tell.
"""

from __future__ import annotations

from dataclasses import dataclass

from binder_drafting.edges import Point

FIT = "fit"
TOOL = "tool"
FREE = "free"


@dataclass(frozen=True, slots=True)
class Along:
    """A length along 'u' or 'v' from `start`, which is on the datum, to `end`.

    Sizes of one `datum` stand in one stack; `side` (above, below, left, right) is chosen if it is
    empty; the smaller `rank` lies nearer to the view where two are equally long.
    """

    id: str
    view: str
    direction: str
    start: Point
    end: Point
    text: str
    limits: tuple[str, ...] = ()
    tier: str = TOOL
    datum: str = ""
    side: str = ""
    rank: int = 0


@dataclass(frozen=True, slots=True)
class Across:
    """A diameter between two flanks seen from the side; `start` and `end` are on one line.

    Where that line lies on an edge of the view, `into` leads from it as far as the dimension
    line may move off it, in mm of true size.
    """

    id: str
    view: str
    start: Point
    end: Point
    text: str
    limits: tuple[str, ...] = ()
    tier: str = TOOL
    side: str = ""
    also: tuple[str, ...] = ()
    into: Point = (0.0, 0.0)


@dataclass(frozen=True, slots=True)
class Around:
    """A diameter seen as a circle."""

    id: str
    view: str
    centre: Point
    diameter: float
    text: str
    limits: tuple[str, ...] = ()
    tier: str = TOOL


@dataclass(frozen=True, slots=True)
class Radius:
    """The radius of an arc that runs from `first` to `last` degrees."""

    id: str
    view: str
    centre: Point
    radius: float
    text: str
    first: float = 0.0
    last: float = 360.0
    tier: str = TOOL


@dataclass(frozen=True, slots=True)
class AngleOf:
    """The angle at `apex` from one direction to the other, degrees anticlockwise.

    `reach` is how far the longer leg is drawn from the apex, in mm of true size.
    """

    id: str
    view: str
    apex: Point
    first: float
    last: float
    text: str
    reach: float
    tier: str = TOOL


@dataclass(frozen=True, slots=True)
class Note:
    """Words on a leader: holes, threads, knurls. `radius` is that of the circle pointed at.

    `others` are further places that would do as well: the other holes of a pattern.
    """

    id: str
    view: str
    at: Point
    lines: tuple[str, ...]
    radius: float = 0.0
    tier: str = TOOL
    is_on_face: bool = False
    also: tuple[str, ...] = ()
    others: tuple[Point, ...] = ()


@dataclass(frozen=True, slots=True)
class Balloon:
    """An item number in a circle beside a view (ISO 6433); `target` is what it links to."""

    id: str
    view: str
    number: str
    at: Point
    target: str = ""


Size = Along | Across | Around | Radius | AngleOf | Note
