"""Turns the kind of a nut and its thread into its flats and height."""

from __future__ import annotations

from dataclasses import dataclass
from math import cos, pi

from binder_trade.hardware.by_thread import table_of
from binder_trade.hardware.listing import Listed
from binder_trade.hardware.thread_keys import row_key, thread_key

NUT_KINDS = ("full", "thin", "high", "locking")
_CORNERS = 1 / cos(pi / 6)


@dataclass(frozen=True, slots=True, kw_only=True)
class Nut(Listed):
    """A hexagon nut, mm: across flats, the circle that its corners sweep, greatest height."""

    kind: str
    thread: str
    s_mm: float
    envelope_mm: float
    m_mm: float


def nut(kind: str, thread: str) -> Nut:
    """A nut of a kind (NUT_KINDS) for a thread's printed name, mm; raises NotListed.

    Sources: ISO 4032, 4035, 4033 and 7040; BS 57; BS 1083; ASME B18.2.2.
    """
    key = thread_key(thread)
    of = table_of("nuts.yaml", kind, key, "nut")
    size = row_key(of, key)
    row = of.rows[size]
    return Nut(
        kind=kind,
        thread=thread,
        s_mm=row["s"],
        envelope_mm=row["s"] * _CORNERS,
        m_mm=row["m"],
        standard=of.standard,
        status=of.status_of(size),
    )
