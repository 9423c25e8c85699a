"""Holes that another part's tail goes through, to the face of the part where that comes out."""

from __future__ import annotations

from typing import TYPE_CHECKING

from binder_solid.opposite import BEHIND
from binder_solid.placed import PlacedFact
from binder_solid.space import dot, minus, placed

if TYPE_CHECKING:
    from binder.api import Design
    from binder_solid.facts import Located


def tail_end(item: str, hole: Located, other: str, design: Design) -> str:
    """The face at which the tail of another ends; '' where nobody knows where both stand.

    Of several alike, which may stand either way round, none is told.
    """
    own, mate = _only(item, design), _only(other, design)
    mouth = _mouth(hole)
    if own is None or mate is None or mouth not in BEHIND:
        return ""
    middle = tuple((a + b) / 2 for a, b in zip(*mate.corners, strict=True))
    there = placed((middle[0], middle[1], middle[2]), mate.frame)
    away = minus(there, placed(hole.spots[0], own.frame))
    normal = minus(placed(hole.frame.z, own.frame), own.frame.origin)
    return mouth if dot(away, normal) < 0 else BEHIND[mouth]


def _mouth(hole: Located) -> str:
    """The face at which a hole opens; on the axis of turned work its end."""
    if hole.face != "axis":
        return hole.face
    return "right" if hole.frame.z[0] > 0 else "left"


def _only(item: str, design: Design) -> PlacedFact | None:
    """Where an item stands; None where there are several of it, or where it is not known."""
    found = [one for one in design.facts.all(PlacedFact) if one.item == item]
    return found[0] if len(found) == 1 else None
