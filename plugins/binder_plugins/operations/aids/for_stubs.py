"""The stub mandrel: how its end holds the work, with which thread, and what is bought for that."""

from __future__ import annotations

from typing import TYPE_CHECKING

from binder.api import Misread, read_thread
from binder_plugins.operations.aids.needs import tap_drill
from binder_plugins.operations.aids.suited import Suited
from binder_trade.threads import NotMade, from_name

if TYPE_CHECKING:
    from binder.api import Workshop
    from binder_plugins.operations.aids.sizes import Place

# The thread in the end of a stub is this part of the bore or less, so that its wall stays stiff:
# common practice, no source.
_PART = 0.5
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
    if "nut" not in words and "taper screw" not in words:
        return Suited({"end": "", "end_tools": "", "end_buy": ""})
    how = _NUT if "nut" in words else _SPREAD
    thread = _thread(place.workshop, place.size)
    saw = "" if "nut" in words else ", countersink, files"
    if not thread:
        told = {"end": f"{_GENERAL}; {how}", "end_tools": f", centre drill{saw}", "end_buy": ""}
        return Suited(told)
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
        {"end": end, "end_tools": f", {tools}{saw}",
         "end_buy": f"{screw}: stub mandrels (one serves all)"}
    )  # fmt: skip


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
