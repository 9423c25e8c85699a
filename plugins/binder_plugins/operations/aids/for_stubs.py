"""The stub mandrel: how its end holds the work, with which thread, and what is bought for that."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING

from binder.api import Misread, read_thread
from binder_plugins.operations.aids.needs import tap_drill
from binder_plugins.operations.aids.suited import Suited
from binder_solid.facts import FormFact
from binder_trade.threads import NotMade, from_name

if TYPE_CHECKING:
    from binder.api import Workshop
    from binder_plugins.operations.aids.sizes import Place

# The thread in the end of a stub is this part of the bore or less, so that its wall stays stiff:
# common practice, no source.
_PART = 0.5
# How much shorter than its work in mm a stub is under a washer, and under an end that is faced,
# with the head of a screw in its mouth or without: common practice, no source.
_NIPPED, _FACED, _WRUNG = 0.5, 3.0, 1.0
_SUNK = frozenset({"recessed", "counterbored", "spotfaced"})
_SAME = 1e-3
_GENERAL = (
    "centre, drill and tap the end before the last cut on the outside, the thread half the bore "
    "or less"
)
_NUT = "a screw of that thread with a washer wider than the bore serves as the nut"
_SPREAD = (
    "chamfer the mouth of the thread wide, saw the end across 10 mm deep, deburr: a countersunk "
    "screw spreads it in the bore"
)


def for_stub(words: str, place: Place) -> Suited:
    """The end of a stub as the words of its grip ask: a nut, a screw that spreads it, or none."""
    spigot = _spigot(words, place)
    if "nut" not in words and "taper screw" not in words:
        return Suited({"spigot": spigot, "end": "", "end_tools": "", "end_buy": ""})
    how = _NUT if "nut" in words else _SPREAD
    thread = _thread(place.workshop, place.size)
    saw = "" if "nut" in words else ", countersink, files"
    if not thread:
        tools = f", centre drill{saw}"
        return Suited(
            {"spigot": spigot, "end": f"{_GENERAL}; {how}", "end_tools": tools, "end_buy": ""}
        )
    drill = tap_drill(thread, place.workshop)
    first = f"centre the end, drill it with the {drill}" if drill else "centre and drill the end"
    end = f"{first} and tap it {thread} before the last cut on the outside; {how}"
    screw = (
        f"{thread} screw with a washer wider than ⌀{place.mm(place.size)}"
        if "nut" in words
        else f"{thread} countersunk screw"
    )
    tools = ", ".join(one for one in ("centre drill", drill, f"{thread} taps", "tap wrench") if one)
    return Suited(
        {"spigot": spigot, "end": end, "end_tools": f", {tools}{saw}",
         "end_buy": f"{screw}: stub mandrels (one serves all)"}
    )  # fmt: skip


def _spigot(words: str, place: Place) -> str:
    """How far the stub goes into the work from its shoulder, and why no farther."""
    deep = _inside(place)
    if "nut" in words:
        why = "so that the washer bears on the work and not on the stub"
        short = _NIPPED
    else:
        why = "so that nothing of it stands in the cut that faces the end"
        short = _FACED if "taper screw" in words else _WRUNG
    long = max(deep - short, deep / 2)
    if long <= 0:
        return f"{place.mm(short)} shorter than the work, {why}"
    return f"{place.mm(math.floor(long * 10 + 1e-6) / 10)} long, {why}"


def _inside(place: Place) -> float:
    """From the shoulder in mm to where the bore opens at the free end, in a recess or without."""
    form = place.design.facts.about(FormFact, place.route.subject)
    if form is None:
        return 0.0
    long, free = form.size[0], place.setup.grip.free
    at = 0.0 if free == "left" else long
    sunk = [
        one.depth or 0.0
        for one in form.located
        if one.kind in _SUNK and len(one.spots) == 1 and math.dist(one.spots[0], (at, 0, 0)) < _SAME
    ]
    return long - max(sunk, default=0.0)


def _thread(workshop: Workshop, bore: float) -> str:
    """The largest thread that this workshop taps and the end has room for; '' for none."""
    sizes = []
    for one in workshop.taps():
        name = read_thread(one.designation)
        try:
            found = 0.0 if isinstance(name, Misread) else float(from_name(name).major_mm)
        except NotMade:
            continue
        if 0 < found <= bore * _PART + 1e-6:
            sizes.append((found, one.designation))
    return max(sizes)[1] if sizes else ""
