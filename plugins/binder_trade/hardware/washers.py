"""Turns the kind of a washer and the thread that it lies under into its dimensions."""

from __future__ import annotations

from dataclasses import dataclass

from binder_trade.hardware.by_thread import table_of
from binder_trade.hardware.listing import Listed
from binder_trade.hardware.thread_keys import row_key, thread_key

WASHER_KINDS = ("plain", "chamfered", "small", "large", "spring")


@dataclass(frozen=True, slots=True, kw_only=True)
class Washer(Listed):
    """A washer, mm: hole, outside diameter, thickness (a spring washer's when flattened)."""

    kind: str
    thread: str
    d1_mm: float
    d2_mm: float
    h_mm: float


def washer(kind: str, thread: str) -> Washer:
    """A washer of a kind (WASHER_KINDS) for a thread's printed name, mm; raises NotListed.

    Sources: ISO 7089, 7090, 7092 and 7093-1; DIN 127; ASME B18.22.1; BA common practice.
    """
    key = thread_key(thread)
    of = table_of("washers.yaml", kind, key, "washer")
    size = row_key(of, key)
    row = of.rows[size]
    return Washer(
        kind=kind,
        thread=thread,
        d1_mm=row["d1"],
        d2_mm=row["d2"],
        h_mm=row["h"],
        standard=of.standard,
        status=of.status_of(size),
    )
