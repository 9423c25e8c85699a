"""Grooves in the step that the second grip holds: they wait till it has been held plain."""

from __future__ import annotations

from typing import TYPE_CHECKING

from binder_plugins.operations.edges import edge_acts
from binder_plugins.operations.facts import Grip
from binder_plugins.operations.lengthwise import GRIP_MM, SAME
from binder_plugins.operations.second_grip import finished_bore, jaws_of, place_held

if TYPE_CHECKING:
    from collections.abc import Sequence

    from binder_plugins.operations.turning import Turning
    from binder_solid.facts import Located


def late_grooves(turning: Turning) -> list[Located]:
    """Grooves that would leave the jaws too little land, where a mandrel can carry them later.

    They hold on one whole land, no shorter than any grip: common practice, no source.
    """
    place = place_held(turning)
    if place is None or finished_bore(turning) is None:
        return []
    low, high = jaws_of(turning, place, turning.plan.other)
    found = [
        one
        for one in turning.edges(turning.plan.free, first=True)
        if one.kind == "grooved"
        and (len(one.spots) == 1 or turning.is_turned_at(one))
        and low - SAME <= one.frame.origin[0] <= high + SAME
    ]
    return found if _land(found, low, high) < GRIP_MM - SAME else []


def _land(grooves: Sequence[Located], low: float, high: float) -> float:
    """The longest land between two places that grooves leave whole, in mm."""
    half = [((one.diameter or 0.0) / 2, x) for one in grooves for x, *_ in one.spots]
    starts = [low, *sorted(x + wide for wide, x in half)]
    ends = [*sorted(x - wide for wide, x in half), high]
    return max(end - start for start, end in zip(starts, ends, strict=True))


def on_mandrel(turning: Turning) -> None:
    """The set-up for the grooves that waited: both ends are finished, so a nut may cover one."""
    bore = finished_bore(turning)
    if not turning.late or bore is None:
        return
    end, long = turning.plan.other, turning.length
    name = "stub mandrel turned to the bore, with a shoulder and a nut"
    grip = Grip(name, "mandrel", "its bore", bore.diameter or 0.0, long, long, free=end)
    acts = edge_acts(turning.work, turning.form, turning.late, turning.lathe, end, tags=("back",))
    true = f"the outside true to the {bore.name.replace('_', ' ')}"
    turning.add("lathe", turning.lathe, grip, turning.datum(end), list(acts), true=true)
