"""A hole and what is bolted together through it, to the bolt by thread and length."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING

from binder.api import Misread, read_thread
from binder_trade.fastening import Length, NutEnd, choose_bolt
from binder_trade.hardware import NotListed, lengths, nut, washer
from binder_trade.threading import clearance
from binder_trade.threads import from_name

if TYPE_CHECKING:
    from collections.abc import Iterator

    from binder_plugins.operations.work import Work
    from binder_trade.threads import Thread

# What is bolted with in a small shop, thinnest first. Common practice, no source.
_METRIC = ("M2", "M2.5", "M3", "M4", "M5", "M6", "M8", "M10")
_INCH = ("4-40 UNC", "6-32 UNC", "8-32 UNC", "10-24 UNC", "1/4-20 UNC", "3/8-16 UNC")
_HEADS = ("hexagon", "pan", "hexagon bolt")
# How thick a faceplate is at its slots, the packing that keeps a drill off it, and a strap, in mm;
# what bolts go in the slots of a plate up to that diameter, and of larger ones. Common practice,
# no source: the workshop file tells a plate by its diameter.
_PLATE_MM, _PACKING_MM, _STRAP_MM = 12.0, 5.0, 6.0
_SMALL_PLATE_MM = 200.0
_IN_SLOTS = {"mm": ("M6", "M8"), "inch": ("1/4-20 UNC", "3/8-16 UNC")}


def takes_bolt(work: Work, across: float) -> bool:
    """Whether a hole of so many mm clears any bolt that is kept here."""
    return bool(_able(work, across))


def through_hole(work: Work, across: float, plates: float) -> str:
    """`M3 × 10 mm`: the thickest bolt that a hole takes, as long as it must be; sizes in mm.

    '' where the hole takes none.
    """
    able = _able(work, across)
    return _sized(work, able[-1], plates) if able else ""


def to_plate(work: Work, across: float, plates: float) -> str:
    """The bolt through a hole of the work and a slot of the faceplate, packing between them."""
    return through_hole(work, across, plates + _PACKING_MM + _PLATE_MM)


def over_strap(work: Work, plates: float) -> str:
    """The bolt from a slot of the faceplate up through a strap over the work."""
    plate = work.design.workshop.entry.holding.faceplate
    small, large = _IN_SLOTS["inch" if work.design.units == "inch" else "mm"]
    name = small if plate is None or plate.mm <= _SMALL_PLATE_MM else large
    whole = _PLATE_MM + _PACKING_MM + plates + _STRAP_MM
    return _sized(work, next(_threads((name,))), whole)


def _able(work: Work, across: float) -> list[Thread]:
    """The threads that a hole clears, at least as the fine series of ISO 273 does."""
    names = _INCH if work.design.units == "inch" else _METRIC
    return [one for one in _threads(names) if clearance(one, "fine").mm <= across + 1e-6]


def _threads(names: tuple[str, ...]) -> Iterator[Thread]:
    for name in names:
        read = read_thread(name)
        if not isinstance(read, Misread):
            yield from_name(read)


def _sized(work: Work, thread: Thread, plates: float) -> str:
    """Head and nut with a washer each; where none is sold so long, of studding."""
    name = thread.designation
    high = nut("full", name).m_mm
    end = NutEnd(plates, 2 * washer("plain", name).h_mm, high, thread.pitch_mm)
    sold = next((one for kind in _HEADS if (one := _lengths(kind, name))), ())
    chosen = choose_bolt(sold, end) if sold else None
    if isinstance(chosen, Length):
        return f"{name} × {work.mm(chosen.chosen_mm)}"
    long = math.ceil(end.stack_mm + high + 2 * thread.pitch_mm)
    return f"{name} × {work.mm(float(long))} (studding, a nut at each end)"


def _lengths(kind: str, thread: str) -> tuple[float, ...]:
    """The lengths that a head is sold in; none of a head that no standard lists for the thread."""
    try:
        return lengths(kind, thread)
    except NotListed:
        return ()
