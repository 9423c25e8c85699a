"""The cups of rivet snap and dolly: with which drill, ground round, and how deep they are sunk."""

from __future__ import annotations

from typing import TYPE_CHECKING

from binder.api import exact
from binder_plugins.operations.aids.suited import Suited
from binder_trade.fastening.rivet_cup import rivet_cup

if TYPE_CHECKING:
    from binder_plugins.operations.aids.sizes import Place

# A drill is ground to a round point from one that is at the most this part larger or smaller:
# common practice, no source.
_NEAR = 0.1


def for_cup(place: Place) -> Suited:
    """The drill that sinks the cup of a rivet's head, and how deep; no size where none is told."""
    if not place.size:
        return Suited({"cup_drill": "drill", "cup_deep": "to the form of the head"})
    cup = rivet_cup(place.size)
    near = exact(round(_NEAR * cup.across, 3))
    found = place.workshop.nearest_drill(exact(round(cup.across, 3)), near, near)
    name = found.name if found is not None else place.mm(round(cup.across, 1))
    drill = name if "drill" in name else f"{name} drill"
    return Suited({"cup_drill": drill, "cup_deep": f"{place.mm(round(cup.deep, 2))} deep"})
