"""A load that goes lower than the bench, to how the model is stood for it."""

from __future__ import annotations

import math

from binder.api import CordFact, Design, exact, shown_length
from binder_plugins.running.upright import uprights


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
        slewed = ", and lift the load over the bench before it is slewed" if _slews(design) else ""
        return f"{said}stand it with {cord.edge} at the edge of the bench, the load clear{slewed}."
    return ""


def _slews(design: Design) -> bool:
    return next(uprights(design), None) is not None
