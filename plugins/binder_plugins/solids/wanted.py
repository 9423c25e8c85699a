"""A form to the views that its drawing needs: the fewest that show all."""

from __future__ import annotations

from binder_solid.facts import FormFact, Located
from binder_solid.views import Cutting, Projection

_HOLES = ("drilled", "reamed", "bored", "tapped", "counterbored", "countersunk", "recessed")
_PICTURE: Projection = "isometric"


def projections_of(fact: FormFact) -> tuple[Projection, ...]:
    """Front view and picture always; others where something is to be seen there."""
    wanted: list[Projection] = ["front"]
    if fact.stretches:
        wanted += ["right"] if _needs_end_view(fact) else []
    else:
        wanted += ["top"]
        faces = [one.face for one in fact.located]
        wanted += ["right"] if "right" in faces else ["left"] if "left" in faces else []
        wanted += ["back"] if "back" in faces else []
        wanted += ["underside"] if "underside" in faces else []
    return (*wanted, _PICTURE)


def _needs_end_view(fact: FormFact) -> bool:
    """What is not round about the axis, or stands on a pitch circle."""
    return any(one.corners for one in fact.stretches) or any(
        one.face == "axis" and len(one.spots) > 1 for one in fact.located
    )


def cuttings_of(fact: FormFact) -> tuple[Cutting, ...]:
    """Turned work with a hole along its axis is drawn half in section."""
    if not fact.stretches or not any(_is_bore(one) for one in fact.located):
        return ()
    return (Cutting("half", "front", 0.0, "upper"),)


def _is_bore(one: Located) -> bool:
    return one.face == "axis" and one.kind in _HOLES and len(one.spots) == 1
