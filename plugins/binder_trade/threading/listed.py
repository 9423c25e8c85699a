"""A thread to the tapping drills that standards and published lists give it."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from typing import Any

from binder.api import load_data
from binder_trade.drills import drill_named
from binder_trade.threading.keys import thread_key
from binder_trade.threads import Thread


@dataclass(frozen=True, slots=True)
class Listed:
    """A drill as a list gives it: its name, its diameter in mm, the list and its convention.

    `said` is the list in a word or two.
    """

    name: str
    mm: float
    source: str
    convention: str
    said: str


def listed(thread: Thread) -> Listed | None:
    """The tapping drill of the thread's standard or customary chart, or None.

    Source: ISO 2306 (metric), the 75 % chart (unified), BS 1157 (BSW, BSF), charts for BSP.
    """
    return next(iter(_found(thread, _table()["lists"])), None)


def published(thread: Thread) -> tuple[Listed, ...]:
    """What published lists without a standard give BA, ME and 26 to the inch, for comparison."""
    return tuple(_found(thread, _table()["published"]))


def _found(thread: Thread, rows: Iterable[Mapping[str, Any]]) -> Iterable[Listed]:
    key = thread_key(thread)
    for row in rows:
        name = row["members"].get(key) if thread.family in row["families"] else None
        if name is not None:
            # A list may name a size that no drill list has, as 30.75 mm.
            mm = float(name.removesuffix(" mm")) if name.endswith(" mm") else drill_named(name).mm
            source = said_source(row)
            yield Listed(name, mm, source, row.get("convention", ""), row.get("said", source))


def said_source(row: Mapping[str, Any]) -> str:
    """The source, with the words that a figure nobody looked up must carry."""
    read = row["status"] == "verified"
    return str(row["source"]) if read else f"{row['source']} (from memory)"


def _table() -> Mapping[str, Any]:
    table: Mapping[str, Any] = load_data("binder_trade.threading", "tapping.yaml")
    return table
