"""Turns a thread and the metal that a stud goes into, into the ends of the stud."""

from __future__ import annotations

from dataclasses import dataclass

from binder_trade.hardware.listing import Listed, NotListed, listing, tables
from binder_trade.hardware.steps_sold import steps_within
from binder_trade.hardware.thread_keys import row_key, thread_key

ENGAGED = ("1 d", "1.25 d", "2 d")


@dataclass(frozen=True, slots=True, kw_only=True)
class Stud(Listed):
    """A stud, mm: the end that is screwed in, thread for the nut, lengths without the first."""

    thread: str
    engaged_mm: float
    nut_end_mm: float
    lengths_mm: tuple[float, ...]


def stud(thread: str, engaged: str) -> Stud:
    """A stud screwed in by 1 d (steel), 1.25 d (cast iron) or 2 d (aluminium), mm.

    Raises NotListed. Sources: DIN 938, 939 and 835.
    """
    of = tables("studs.yaml").get(engaged)
    key = thread_key(thread)
    if of is None:
        raise NotListed(
            f"no stud engaged by {engaged[:20]} is listed", f"listed: {listing(ENGAGED)}"
        )
    if key.series != "M":
        reason = f"no stud is listed in {thread}"
        raise NotListed(reason, "make it from rod: ends of 1 d in steel, 1.25 d in cast iron")
    size = row_key(of, key)
    row = of.rows[size]
    return Stud(
        thread=thread,
        engaged_mm=row["engaged"],
        nut_end_mm=row["nut"],
        lengths_mm=steps_within(of.words["list"], row),
        standard=of.standard,
        status=of.status_of(size),
    )
