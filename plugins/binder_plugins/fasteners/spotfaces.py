"""The seat that is milled for a head: how wide it is, and how deep it goes into a dome or bar."""

from __future__ import annotations

from math import sqrt

from binder.api import Fabrication, Part, PlaceFact, Size
from binder_plugins.fasteners.halves import Half
from binder_plugins.fasteners.seen import Seen
from binder_solid.opposite import BEHIND
from binder_trade.hardware import Head, NotListed, counterbore, spotface

_CLEANS_MM = 0.5  # as deep as a flat face needs; common practice, no source
_ROOM_MM = 0.5


def spotface_wide(seen: Seen, head: Head | None) -> float:
    """The diameter of the seat in mm: DIN 974-2 under a hexagon, DIN 974-1 under a round head."""
    try:
        if head is not None and head.drive != "hexagon":
            return counterbore(head.kind, head.thread).diameter_mm
        return spotface(seen.asked.key).diameter_mm
    except NotListed:
        across = head.envelope_mm if head is not None else 2 * (seen.asked.diameter_mm or 0.0)
        return across + _ROOM_MM


def spotface_deep(seen: Seen, under: Half, wide_mm: float) -> float:
    """How far its floor lies below the highest metal, in mm.

    On a flat it only cleans up; across a bar or in a dome it goes down till the flat is there.
    """
    rise = _rise(seen, under, wide_mm / 2)
    return round(max(_CLEANS_MM, rise), 2)


def _rise(seen: Seen, under: Half, half_mm: float) -> float:
    """The height of the round surface over the rim of the seat."""
    if under.is_radial:
        across = under.thick if under.hole is not None else _diameter(under.place)
        return _sagitta((across or 0.0) / 2, half_mm)
    away = BEHIND.get(under.face, "")
    face = seen.design.facts.about(PlaceFact, f"{under.end.item}.{away}")
    across, edge = _diameter(face), _rounding(seen, under, away)
    if across is None or edge <= 0:
        return 0.0
    return _sagitta(edge, half_mm - (across / 2 - edge))


def _diameter(place: PlaceFact | None) -> float | None:
    return float(place.diameter) if place is not None and place.diameter is not None else None


def _sagitta(radius: float, half_mm: float) -> float:
    if half_mm <= 0 or radius <= 0:
        return 0.0
    reach = min(half_mm, radius)
    return radius - sqrt(radius * radius - reach * reach)


def _rounding(seen: Seen, under: Half, face: str) -> float:
    """The radius of the rounded edge of a face; one that is there for looks is metal gone too."""
    owner = seen.design.item(under.end.item)
    features = owner.features if isinstance(owner, (Part, Fabrication)) else ()
    for feature in features:
        size = getattr(feature.entry, "rounded", None)
        is_there = str(getattr(feature.entry, "on", None) or "") == face
        if feature.kind == "rounded" and is_there and isinstance(size, Size):
            return size.mm
    return 0.0
