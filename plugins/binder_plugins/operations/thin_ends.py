"""Ends so thin that the cone of their centre keeps the knife tool off.

They are turned before it is there, or on a half centre, whose cone is ground away to nearly the
axis where the tool comes. The tool has its width between its point and the tailstock, and the cone
widens faster than the trailing edge falls away. Plain geometry; the sizes of the tool, and the two
remedies, are common practice, no source.
"""

from __future__ import annotations

from dataclasses import replace
from math import radians, tan
from typing import TYPE_CHECKING

from binder_plugins.operations.around import is_thread
from binder_plugins.operations.centre_holes import CentreHole, centre_hole
from binder_plugins.operations.gripping import end_across, goes_short, short_out
from binder_plugins.operations.lengthwise import has_limits
from binder_plugins.operations.outsides import is_shaped
from binder_plugins.operations.reaching import SHORT

if TYPE_CHECKING:
    from binder_plugins.operations.facts import Act, Grip
    from binder_plugins.operations.turning import Turning

# Half the angle of a centre, how far the trailing edge of a knife tool falls away, and how wide
# the tool is, in degrees and mm.
_HALF, _FALLS, _WIDE_MM = 30.0, 12.0, 6.0
_SAME = 1e-6
HALF = "half centre in the tailstock"


def thin_end(turning: Turning, grip: Grip) -> int | None:
    """The step at the free end that is turned short out of the grip; None where none must be.

    It is bare of its centre then, so it must be a straight one that the short grip leaves free,
    and done with it: what has limits waits for all roughing, and for a knurl, and is turned
    `on_half_centre`.
    """
    free = turning.plan.free
    place = len(turning.steps) - 1 if free == "right" else 0
    if grip.support != "tailstock centre" or place not in turning.plan.first:
        return None
    step = turning.steps[place]
    is_free = step.end - step.start <= short_out(grip) - SHORT + _SAME
    if turning.plan.is_threaded or is_shaped(turning, place) or not is_free:
        return None
    if has_limits(step, turning.work) or any(one.kind == "knurled" for one in turning.around):
        return None
    across = end_across(turning, free)
    hole = centre_hole(turning, free, across)
    if hole is None or not goes_short(turning, grip):
        return None
    return place if _is_barred(across, hole) else None


def on_half_centre(turning: Turning, grip: Grip, end: str) -> Grip:
    """The grip with a half centre, where a whole one keeps the tool off an end that it carries.

    Nothing need be turned there where the bar stays as bought and has no thread; what is turned
    before the end is centred (`thin_end`) is done with.
    """
    place = len(turning.steps) - 1 if end == "right" else 0
    cut = (*turning.plan.first, *turning.plan.second)
    is_cut = place in cut or any(
        is_thread(one) and turning.step_at(one) == place for one in turning.around
    )
    across = end_across(turning, end)
    hole = centre_hole(turning, end, across)
    if grip.support != "tailstock centre" or not is_cut or hole is None:
        return grip
    if not _is_barred(across, hole):
        return grip
    short = turning.work.mm(round(_WIDE_MM - room_before(across, hole.mouth), 1))
    words = (
        f"{HALF}, oiled, its flat towards the tool: the cone of a whole one "
        f"stops a knife tool {turning.work.mm(_WIDE_MM)} wide {short} before the end"
    )
    return replace(grip, support=words)


def _is_barred(across: float, hole: CentreHole) -> bool:
    return room_before(across, hole.mouth) < _WIDE_MM - _SAME


def ended_bare(turning: Turning, place: int | None) -> list[Act]:
    """All cuts of that step, which is short in its grip and bends under none of them."""
    places = [] if place is None else [place]
    acts = turning.turns(places, turning.plan.free, ("first-end", "short-out"))
    return [replace(act, tags=act.tags - {"slender"}) for act in acts]


def room_before(across: float, mouth: float) -> float:
    """How wide a tool comes to the very end of work `across` mm thick before it meets the cone.

    `mouth` is that of the centre hole in mm.
    """
    return (across - mouth) / 2 / (tan(radians(_HALF)) - tan(radians(_FALLS)))
