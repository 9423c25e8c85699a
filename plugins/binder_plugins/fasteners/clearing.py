"""A screw and the drills of the workshop to its clearance hole, and whether holes line up."""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache

from binder.api import Design
from binder_plugins.fasteners.about import drills_of
from binder_plugins.fasteners.asking import Asked
from binder_plugins.fasteners.seen import Seen
from binder_trade.explained import NotDefined
from binder_trade.threads import Thread

_FITS = {"close": "fine", "medium": "medium", "free": "coarse"}
_MADE_AS_ONE = ("spotted through", "drilled together", "reamed in line", "lapped together")


@dataclass(frozen=True, slots=True)
class Clear:
    """A clearance hole in mm, its drill by name, and the list or rule that it is from."""

    mm: float
    drill: str
    source: str
    why: str


def how_placed(seen: Seen) -> str:
    """The way in which the holes of the two halves are brought to agree."""
    if seen.joint.made in _MADE_AS_ONE:
        return seen.joint.made
    machines = seen.design.workshop.entry.machines
    return "drilled to coordinates" if machines.mills else "marked out by hand"


def clear_hole(seen: Seen) -> Clear | None:
    """The clearance hole that the joint asks for, None where its fastener's size is not known.

    What is not said is medium, and coarse where several holes are marked out by hand.
    """
    asked = seen.asked
    if asked.thread is None:
        return _for_wood(asked, seen.design)
    wanted = seen.entry.clearance
    is_by_hand = seen.total > 1 and how_placed(seen) == "marked out by hand"
    fit = _FITS[str(wanted)] if wanted else "coarse" if is_by_hand else "medium"
    from binder_trade.threading import clearance

    try:
        hole = clearance(asked.thread, fit)
        name, mm = _owned(asked.thread, drills_of(seen.design.workshop), fit)
    except NotDefined:
        return _unowned(seen, fit)
    return Clear(mm, name, hole.source, f"{fit} clearance")


@lru_cache(maxsize=256)
def _owned(thread: Thread, drills: tuple[tuple[str, float], ...], fit: str) -> tuple[str, float]:
    """The owned drill that clears a thread; raises NotDefined where there is none."""
    from binder_trade.threading import clearance_drill

    found = clearance_drill(thread, drills, fit)
    return found.drill.name, found.drill.mm


def _unowned(seen: Seen, fit: str) -> Clear | None:
    """The size of the list, where no owned drill is near it."""
    from binder_trade.threading import clearance

    if seen.asked.thread is None:
        return None
    try:
        hole = clearance(seen.asked.thread, fit)
    except NotDefined:
        return None
    return Clear(hole.mm, f"{hole.mm:g} mm", hole.source, f"{fit} clearance")


def _for_wood(asked: Asked, design: Design) -> Clear | None:
    from binder_trade.hardware import NotListed, wood_screw

    if asked.name.kind != "wood screw" or not asked.name.thread_text:
        return None
    try:
        screw = wood_screw(int(asked.name.thread_text.removeprefix("no. ")))
    except NotListed:
        return None
    able = [one for one in drills_of(design.workshop) if one[1] >= screw.clearance_mm - 1e-6]
    name, mm = min(able, key=lambda one: one[1], default=("", screw.clearance_mm))
    return Clear(mm, name or f"{mm:g} mm", screw.source, "clears the shank")
