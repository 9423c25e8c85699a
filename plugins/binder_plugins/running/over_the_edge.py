"""A load that goes lower than the bench, to how the model is stood for it."""

from __future__ import annotations

import math

from binder.api import CordFact, Design, exact, shown_length
from binder_plugins.running.upright import uprights

# What a load keeps off an edge that it passes, since cord and load swing: common practice, no
# source.
_CLEAR_MM = 5.0


def stood_for(design: Design) -> str:
    """The line on where the model stands while its load runs, '' where the bench is no bar.

    Common practice, no source.
    """
    for cord in design.facts.all(CordFact):
        room = cord.room_mm
        if not cord.is_hung or room is None or room >= cord.travel_mm:
            continue
        travel, over = (
            shown_length(exact(float(mm)), design.units)
            for mm in (cord.travel_mm, max(math.floor(room), 0))
        )
        said = f"The load goes through {travel}, and the bench leaves it {over}: "
        if not cord.edge:
            lacks = shown_length(exact(float(math.ceil(cord.travel_mm - room))), design.units)
            return f"{said}block the model up by {lacks} or more, firm under its whole foot."
        slewed = _slewed(cord, room, design) if _slews(design) else ""
        wide = _shown(2 * (cord.past_mm - _CLEAR_MM), design)
        return (
            f"{said}stand it with {cord.edge} at the edge of the bench, the load clear of both: "
            f"no wider than {wide} across that edge{slewed}."
        )
    return ""


def _slewed(cord: CordFact, room: float, design: Design) -> str:
    """How a load comes round over what stands: only one that is low enough with its sling."""
    low = _shown(room - cord.stands_mm, design)
    return (
        f"; lift it over the bench before it is slewed, and slew it over what stands there only "
        f"if it is no taller than {low} with its sling, else only as far as it hangs outside"
    )


def _shown(mm: float, design: Design) -> str:
    return shown_length(exact(float(max(math.floor(mm), 0))), design.units)


def _slews(design: Design) -> bool:
    return next(uprights(design), None) is not None
