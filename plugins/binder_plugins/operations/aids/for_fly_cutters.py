"""Fly cutters: the piece that one is tried on, and the holder that the mill takes."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING

from binder.api import Misread, read_thread
from binder_plugins.operations.aids.needs import holed_with
from binder_plugins.operations.aids.suited import Suited
from binder_plugins.operations.tried_early import is_on_mandrel
from binder_trade.threads import NotMade, from_name

if TYPE_CHECKING:
    from binder.api import Workshop
    from binder_plugins.operations.aids.sizes import Place

# Common practice, no source, in mm: the holder at its thickest and, with metal beside the hole, at
# its thinnest; the square of the blank; the screw that holds the blank; the length of the holder.
_HOLDER, _LEAST, _BLANK, _SCREW, _LONG = 16.0, 14.0, 6.0, 5.0, 75.0
# Minutes for a disc that is turned, drilled and reamed to try a cutter on: common practice, no
# source.
_DISC_MIN = 15.0
_DISC = (
    "for its trial turn a scrap disc as large as the {part}, and bore it as that is bored, with "
    "the {drill} and the {reamer}, for the mandrel of the table"
)
_PIECE = "for its trial keep a piece of scrap as large as the {part}"
_GRUB, _USUAL = (4.0, 6.5), (0.0, "M5", 4.2)


def for_trial(place: Place) -> Suited:
    """What a fly cutter is tried on: a disc for the mandrel, or scrap that is held as the work."""
    grip = place.setup.grip
    if not is_on_mandrel(grip):
        return Suited({"trial": _PIECE.format(part=place.route.title), "trial_tools": ""})
    holed = holed_with(grip.across, place)
    drill, reamer = holed["under_drill"], holed["reamer"]
    return Suited(
        {
            "trial": _DISC.format(part=place.route.title, drill=drill, reamer=reamer),
            "trial_tools": f", centre drill, {drill}, {reamer}",
        },
        minutes=_DISC_MIN,
    )


def for_fly_cutters(place: Place) -> Suited:
    """The holder as the mill of the workshop takes it; a square blank needs its diagonal."""
    workshop = place.design.workshop
    shank = holder_shank(workshop) or _LEAST
    hole = math.ceil((_BLANK * math.sqrt(2)) * 10 + 0.05) / 10
    return Suited(
        {
            "shank": place.mm(shank),
            "hole": place.mm(hole),
            **_grub(workshop, place),
        },
        max(shank, _LEAST),
        _LONG,
    )


def holder_shank(workshop: Workshop) -> float:
    """The thickest shank in mm, up to the usual, that a mill here is able to hold; 0 for none.

    Its own largest end mill bounds it; a collet has to take it, or else a drill chuck.
    """
    mills = workshop.entry.machines.mills.values()
    largest = [one.largest_end_mill.mm for one in mills if one.largest_end_mill is not None]
    most = min(max(largest, default=_HOLDER), _HOLDER) + 1e-6
    sets = workshop.entry.holding.collets.values()
    sizes = [float(one.mm) for each in sets for run in each.sizes for one in run.members]
    able = [size for size in sizes if size <= most]
    if able:
        return max(able)
    ends = [float(one.most.mm) for one in workshop.entry.holding.drill_chucks.values()]
    return float(math.floor(min(max(ends), most))) if ends else 0.0


def _grub(workshop: Workshop, place: Place) -> dict[str, str]:
    """The screw that holds the blank, of a thread that is tapped here, and its drill."""
    found: list[tuple[float, str, float]] = []
    for one in workshop.taps():
        name = read_thread(one.designation)
        try:
            thread = None if isinstance(name, Misread) else from_name(name)
        except NotMade:
            continue
        if thread is not None and _GRUB[0] <= thread.major_mm <= _GRUB[1]:
            off = abs(float(thread.major_mm) - _SCREW)
            drill = float(thread.major_mm) - float(thread.pitch_mm)
            found.append((off, one.designation, round(drill, 1)))
    _, thread_name, drill = min(found, default=_USUAL)
    return {"grub": thread_name, "grub_drill": place.mm(drill)}
