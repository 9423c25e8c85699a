"""Turns a head into the seat that is cut for it: counterbore, countersink or spotface."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from math import ceil
from types import MappingProxyType

from binder_trade.hardware.bands import upper_band
from binder_trade.hardware.heads import Head, head
from binder_trade.hardware.listing import Listed, NotListed, Table, listing, table
from binder_trade.hardware.thread_keys import ThreadKey, row_key, thread_key

_ROWS: Mapping[str, str] = MappingProxyType(
    {"cap": "row 1 M", "cheese": "row 1 M", "pan": "row 2 M", "pan cross": "row 2 M"}
)
ROOMS = ("seat", "socket")
_PRACTICE = "common practice, no source"
# Where no table serves: diameter over the head's, rounded up to a drill's half millimetre; depth.
_ROUND_MM = 0.3
_STEP_MM = 0.5
_SUNK_MM = 0.3


@dataclass(frozen=True, slots=True, kw_only=True)
class Counterbore(Listed):
    """A counterbore that hides a head, mm; the depth is the head's height and a little."""

    thread: str
    diameter_mm: float
    depth_mm: float


@dataclass(frozen=True, slots=True, kw_only=True)
class Countersink(Listed):
    """A countersink that takes a head flush, mm: diameter at the face, angle over all."""

    thread: str
    diameter_mm: float
    angle_deg: float


@dataclass(frozen=True, slots=True, kw_only=True)
class Spotface(Listed):
    """A spotface under a hexagon, mm."""

    thread: str
    diameter_mm: float


def counterbore(kind: str, thread: str) -> Counterbore:
    """The counterbore for a head that is no countersunk one, mm; raises NotListed.

    Sources: DIN 974-1 (rows 1 and 2), ASME B18.3 for inch cap screws; other heads by common
    practice: 0.3 mm over the head, rounded up to 0.5 mm, and 0.3 mm deeper.
    """
    one = head(kind, thread)
    if one.angle_deg is not None:
        raise NotListed(f"a {kind} head sits in a countersink", "ask for its countersink")
    key = thread_key(thread)
    of = _table(kind, key)
    if of is None:
        return _by_practice(one)
    size = row_key(of, key)
    return Counterbore(
        thread=thread,
        diameter_mm=of.rows[size]["d"],
        depth_mm=one.k_mm + _depth(key),
        standard=of.standard,
        status=of.status_of(size),
    )


def countersink(kind: str, thread: str) -> Countersink:
    """The countersink for a countersunk head, mm: the head's sharp diameter; raises NotListed.

    Sources: ISO 15065 for heads to ISO 7721, else the standard of the head.
    """
    one = head(kind, thread)
    if one.angle_deg is None or one.dk_sharp_mm is None:
        raise NotListed(f"a {kind} head has no countersink", "ask for its counterbore")
    iso = one.standard in ("ISO 2009", "ISO 2010", "ISO 7046-1", "ISO 7047")
    return Countersink(
        thread=thread,
        diameter_mm=one.dk_sharp_mm,
        angle_deg=one.angle_deg,
        standard="ISO 15065" if iso else one.standard,
        status=one.status,
    )


def spotface(thread: str, room: str = "seat") -> Spotface:
    """The spotface under a hexagon, mm: just the seat, or with room for a socket (ROOMS).

    Raises NotListed. Source: DIN 974-2.
    """
    key = thread_key(thread)
    if room not in ROOMS:
        raise NotListed(f"{room[:20]!r} is no spotface that is listed", f"listed: {listing(ROOMS)}")
    of = table("seats.yaml", room)
    if key.series != "M":
        ways = "take the circle of the head's corners and 0.5 mm more"
        raise NotListed(f"no spotface is listed for {thread}", ways)
    size = row_key(of, key)
    return Spotface(
        thread=thread,
        diameter_mm=of.rows[size]["d"],
        standard=of.standard,
        status=of.status_of(size),
    )


def _table(kind: str, key: ThreadKey) -> Table | None:
    if key.series == "M" and kind in _ROWS:
        return table("seats.yaml", _ROWS[kind])
    return table("seats.yaml", "cap UN") if key.series in ("UNC", "UNF") and kind == "cap" else None


def _by_practice(one: Head) -> Counterbore:
    return Counterbore(
        thread=one.thread,
        diameter_mm=ceil((one.envelope_mm + _ROUND_MM) / _STEP_MM) * _STEP_MM,
        depth_mm=one.k_mm + _SUNK_MM,
        standard=_PRACTICE,
        status="memory",
    )


def _depth(key: ThreadKey) -> float:
    """What DIN 974-1 adds to the head's height, mm; inch heads take the same."""
    return upper_band(table("seats.yaml", "depth"), key.nominal_mm, "a counterbore for")["add"]
