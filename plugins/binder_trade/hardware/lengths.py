"""Turns the kind of a screw and its thread into the lengths that are sold and their thread."""

from __future__ import annotations

from math import isfinite

from binder_trade.hardware.heads import head_table
from binder_trade.hardware.listing import NotListed, Table, cited, listing, tables
from binder_trade.hardware.steps_sold import steps_within, texts_within
from binder_trade.hardware.thread_keys import ThreadKey, row_key, thread_key

# ISO 4014, note to table 1: bolts over this length carry more thread.
_LONG_MM = 125.0
_MORE_MM = 6.0


def lengths(kind: str, thread: str) -> tuple[float, ...]:
    """The lengths in which a kind of screw is sold, mm; raises NotListed.

    From under the head; of a countersunk head over all. Sources: ISO 888 and the standards of the
    heads; BA and inch lengths are common practice, no source.
    """
    of, row = _listed(kind, thread)
    return steps_within(of.words["list"], of.rows[row])


def length_texts(kind: str, thread: str) -> tuple[str, ...]:
    """The same lengths as they are asked for in a shop, such as 10 mm or 3/8 in."""
    of, row = _listed(kind, thread)
    return texts_within(of.words["list"], of.rows[row])


def lengths_source(kind: str, thread: str) -> str:
    """Where the list of lengths of a kind of screw comes from."""
    of, row = _listed(kind, thread)
    return cited(of.source, of.status_of(row))


def threaded_length(kind: str, thread: str, length_mm: float) -> float:
    """How much of a screw's length carries thread, mm from its point; raises NotListed.

    The whole length where the standard threads a screw to its head (a countersunk one then to
    the cone, which this does not take off), else the b of the standard.
    """
    if not (isfinite(length_mm) and length_mm > 0):
        raise NotListed("a screw's length is a size above nothing", "give it in mm")
    of, key = _listed(kind, thread)
    row = of.rows[key]
    if "b" not in row or length_mm <= row["full"]:
        return length_mm
    longer = _MORE_MM if of.standard == "ISO 4014" and length_mm > _LONG_MM else 0.0
    return min(length_mm, row["b"] + longer)


def _listed(kind: str, thread: str) -> tuple[Table, str]:
    key = thread_key(thread)
    row_key(head_table(kind, key), key)
    of = _table(kind, key)
    return of, row_key(of, key)


def _table(kind: str, key: ThreadKey) -> Table:
    for one in tables("lengths.yaml").values():
        if key.series in one.series and kind in one.words["kinds"].split(", "):
            return one
    known = [one.words["kinds"] for one in tables("lengths.yaml").values()]
    raise NotListed(f"no lengths are listed for {kind} {key.name}", f"listed: {listing(known)}")
