"""Turns flats into the tool that grips them and the room that it needs to turn."""

from __future__ import annotations

from dataclasses import dataclass
from math import isfinite

from binder_trade.hardware.listing import Listed, NotListed, table

# Usual proportions of hand tools; makers differ, so a tool in hand is to be measured.
_JAW_FACTOR, _JAW_MM = 2.0, 3.0
_SOCKET_FACTOR, _SOCKET_MM = 1.4, 2.0
_TURN_DEG = 60.0
_TURNED_OVER_DEG = 30.0
_LARGEST_MM = 100.0


@dataclass(frozen=True, slots=True, kw_only=True)
class Spanner(Listed):
    """A spanner for flats, mm: width of an open jaw's head, outside of a socket.

    `swing_mm` is the radius round the screw that an open jaw's head needs. It moves on every
    `turn_deg`, or half of it when it is turned over between pulls.
    """

    af_mm: float
    head_width_mm: float
    socket_outside_mm: float
    swing_mm: float
    turn_deg: float
    turned_over_deg: float


@dataclass(frozen=True, slots=True, kw_only=True)
class HexagonKey(Listed):
    """A hexagon (Allen) key, mm: flats, long and short arm."""

    af_mm: float
    long_mm: float
    short_mm: float


def spanner(af_mm: float) -> Spanner:
    """The room that a spanner across flats needs, mm; common practice, no source.

    Head of an open jaw 2 s + 3 mm wide, socket 1.4 s + 2 mm outside. Raises NotListed.
    """
    if not (isfinite(af_mm) and 0 < af_mm <= _LARGEST_MM):
        raise NotListed("flats are a size above nothing, up to 100 mm", "give the width in mm")
    width = _JAW_FACTOR * af_mm + _JAW_MM
    return Spanner(
        af_mm=af_mm,
        head_width_mm=width,
        socket_outside_mm=_SOCKET_FACTOR * af_mm + _SOCKET_MM,
        swing_mm=width / 2,
        turn_deg=_TURN_DEG,
        turned_over_deg=_TURNED_OVER_DEG,
        standard="common practice, no source",
        status="memory",
    )


def hexagon_key(af_mm: float) -> HexagonKey:
    """The hexagon key of a width across flats, mm (ISO 2936); raises NotListed."""
    of = table("spanners.yaml", "hexagon key")
    key = of.at(af_mm, "a hexagon key of")
    return HexagonKey(
        af_mm=af_mm,
        long_mm=of.rows[key]["long"],
        short_mm=of.rows[key]["short"],
        standard=of.standard,
        status=of.status_of(key),
    )
