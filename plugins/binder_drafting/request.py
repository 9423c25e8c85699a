"""A request: everything that a sheet is drawn from."""

from __future__ import annotations

from dataclasses import dataclass, field

from binder_drafting.sizes import Balloon, Size
from binder_drafting.views import Detail, View

Room = tuple[float, float]

A4_LEAF: tuple[Room, ...] = ((178.0, 150.0), (178.0, 230.0))


@dataclass(frozen=True, slots=True)
class Fields:
    """What the title block says (ISO 7200); what is empty is left out."""

    title: str
    item: str = ""
    material: str = ""
    stock: str = ""
    number_off: str = ""
    mass: str = ""
    finish: str = ""
    tolerance: str = ""
    issue: str = ""
    units: str = "mm"
    date: str = ""
    edges: str = ""
    hand: str = ""


@dataclass(frozen=True, slots=True)
class Datum:
    """A line of the table of data; `also` are the ids of further sizes that it tells."""

    id: str
    caption: str
    text: str
    also: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class Request:
    """Views, sizes and details of one part, and the rooms to be tried, the smallest first.

    `scales` are tried in order; empty means the preferred ones of ISO 5455 from the largest that
    could fit. `first_angle` is the method of projection (ISO 5456-2). `data` stands in a table
    beside the views.
    """

    views: tuple[View, ...]
    sizes: tuple[Size, ...] = ()
    details: tuple[Detail, ...] = ()
    balloons: tuple[Balloon, ...] = ()
    rooms: tuple[Room, ...] = A4_LEAF
    first_angle: bool = True
    fields: Fields | None = None
    scales: tuple[float, ...] = field(default=())
    data: tuple[Datum, ...] = ()
