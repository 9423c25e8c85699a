"""Turns the number of a Morse taper into its cone."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache
from typing import Any

from binder.api import load_data
from binder_trade.explained import NotDefined
from binder_trade.tapers.taper import Taper, from_diameters

_INCH = 25.4


@dataclass(frozen=True, slots=True)
class Morse:
    """A Morse taper: its cone in mm from gauge line to the small end of the plug.

    `ratio` is the standard's own 1 in n; the cone's is worked from rounded diameters.
    """

    number: int
    gauge_mm: float
    small_mm: float
    ratio: float
    cone: Taper
    source: str

    @property
    def per_foot_in(self) -> float:
        """Change of diameter in inches for a foot of length."""
        return 12 / self.ratio


@cache
def morse(number: int) -> Morse:
    """Morse taper 0 to 5; mm. Raises NotDefined for another number.

    Source: ISO 296 (gauge diameters, tapers); the small end is that of ASME B5.10.
    """
    data = load_data("binder_trade.tapers", "morse.yaml")
    rows: dict[int, dict[str, Any]] = data["rows"]
    if number not in rows:
        raise NotDefined(f"no Morse taper {number} is kept here", "0 to 5 are")
    row = rows[number]
    gauge, small, ratio = row["gauge_mm"], row["small_in"] * _INCH, row["ratio"]
    cone = from_diameters(gauge, small, (gauge - small) * ratio)
    return Morse(number, gauge, small, ratio, cone, data["source"])
