"""`about 3 mm cap screw` and the taps of a workshop turned into a screw with its thread."""

from __future__ import annotations

import re
from collections.abc import Iterator
from typing import Final

from binder.api import Misread, Workshop, parse_size, read_thread
from binder_trade.explained import NotDefined
from binder_trade.threads import NotMade, Thread, from_name

_ABOUT: Final = re.compile(r"about ([0-9]{1,4}(?:\.[0-9]{1,3}|/[0-9]{1,3})? ?(?:mm|in)) (.+)")
_LONGEST: Final = 120
_NEAR: Final = 0.2  # of the diameter, to either side
# What hardware is commonly sold in: the others come last.
_SOLD: Final = ("metric", "UNC", "UNF", "BA", "BSW", "BSF")


def thread_named(text: str, workshop: Workshop) -> str:
    """The words with a thread in place of `about 3 mm`; raises NotDefined where no tap is near.

    Of the owned taps within a fifth of the size, those that screws are sold for come first,
    then the nearest.
    """
    plain = " ".join(text[:_LONGEST].split())
    if not plain.startswith("about "):
        return text
    found = _ABOUT.fullmatch(plain)
    if found is None:
        raise NotDefined("'about' wants a size and a kind", "write: about 3 mm cap screw")
    size = float(parse_size(found[1]).amount)
    near = [one for one in owned_threads(workshop) if abs(one.major_mm - size) <= _NEAR * size]
    if not near:
        raise NotDefined(
            f"this workshop owns no tap near {found[1]}", "name the thread, and buy its taps"
        )
    best = min(near, key=lambda one: (_rank(one), abs(one.major_mm - size), one.designation))
    return f"{best.designation} {found[2]}"


def owned_threads(workshop: Workshop) -> Iterator[Thread]:
    """The threads of all taps that are threads of the trade."""
    for tap in workshop.taps():
        read = read_thread(tap.designation)
        if not isinstance(read, Misread):
            try:
                yield from_name(read)
            except NotMade:
                continue


def _rank(thread: Thread) -> int:
    return 0 if thread.family in _SOLD else 1


def drills_of(workshop: Workshop) -> tuple[tuple[str, float], ...]:
    """The drills of a workshop by name, in mm."""
    return tuple((drill.name, float(drill.mm)) for drill in workshop.drills())
