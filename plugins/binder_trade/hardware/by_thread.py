"""Turns a kind of hardware and a series of threads into the one table that lists it."""

from __future__ import annotations

from binder_trade.hardware.listing import NotListed, Table, listing, tables
from binder_trade.hardware.thread_keys import ThreadKey


def table_of(file: str, kind: str, key: ThreadKey, what: str) -> Table:
    """The table of a data file for a kind and a series; raises NotListed with the kinds listed."""
    of_series = [one for one in tables(file).values() if key.series in one.series]
    for one in of_series:
        if one.words["kind"] == kind:
            return one
    reason = f"{kind[:40]!r} is no kind of {what} that is listed for {key.series} threads"
    raise NotListed(reason, f"listed: {listing(one.words['kind'] for one in of_series)}")
