"""A form to the views that its drawing needs: the fewest that show all."""

from __future__ import annotations

from collections.abc import Iterator

from binder_solid.facts import FormFact, Located
from binder_solid.forms import Form, Raised
from binder_solid.opposite import BEHIND
from binder_solid.views import Cutting, Projection

_HOLES = ("drilled", "reamed", "bored", "tapped", "counterbored", "countersunk", "recessed")
_PICTURE: Projection = "isometric"
_FLAT = ("plate",)
_EDGES = ("chamfered", "rounded")
_THROUGH = ("drilled", "reamed", "bored", "tapped", "slotted")
_USUAL = {"underside": "top", "back": "front", "left": "right"}
_ORDER: tuple[Projection, ...] = ("top", "right", "left", "back", "underside")


def projections_of(fact: FormFact) -> tuple[Projection, ...]:
    """Turned work from the front, a flat part from above, others from where there is work.

    A picture always.
    """
    if fact.stretches:
        end: tuple[Projection, ...] = ("right",) if _needs_end_view(fact) else ()
        return ("front", *end, _PICTURE)
    if fact.shape in _FLAT and all(_is_seen_from_above(one) for one in fact.located):
        return ("top", _PICTURE)
    return (*_sides(fact), _PICTURE)


def _is_seen_from_above(one: Located) -> bool:
    if not one.tools:
        return True
    is_edge = one.kind in _EDGES
    return one.face in ("top", "underside") and (
        _is_through(one) or (is_edge and all(_is_upright(tool) for tool in one.tools))
    )


def _is_upright(tool: Form) -> bool:
    return isinstance(tool, Raised) and abs(tool.frame.z[2]) > 0.9


def _is_through(one: Located) -> bool:
    return one.depth is None and one.kind in _THROUGH


def _sides(fact: FormFact) -> Iterator[Projection]:
    """The front, and each face that is worked in; what goes right through is seen from one."""
    cut = [one for one in fact.located if one.kind not in _EDGES]
    needed = {one.face for one in cut if not _is_through(one)}
    for one in cut:
        if _is_through(one) and not needed & {one.face, BEHIND.get(one.face, "")}:
            needed.add(_USUAL.get(one.face, one.face))
    if not needed & {"top", "underside", "left", "right"}:
        needed.add("top")
    yield "front"
    for face in _ORDER:
        if face in needed:
            yield face


def _needs_end_view(fact: FormFact) -> bool:
    """What is not round about the axis, or stands on a pitch circle; a ratchet, a cam."""
    return (
        fact.shape in ("ratchet", "cam")
        or any(one.corners for one in fact.stretches)
        or any(one.face == "axis" and len(one.spots) > 1 for one in fact.located)
    )


def cuttings_of(fact: FormFact) -> tuple[Cutting, ...]:
    """Turned work with a hole along its axis is drawn half in section."""
    if not fact.stretches or not any(_is_bore(one) for one in fact.located):
        return ()
    return (Cutting("half", "front", 0.0, "upper"),)


def _is_bore(one: Located) -> bool:
    return one.face == "axis" and one.kind in _HOLES and len(one.spots) == 1
