"""What sits on a shaft to how far the shaft may give way there."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from binder.api import load_data
from binder_trade.explained import positive
from binder_trade.fits.naming import cited

_MM_PER_INCH = 25.4


@dataclass(frozen=True, slots=True)
class Allowed:
    """The most deflection in mm and slope in rad (None: not limited), and where they come from."""

    sag_mm: float
    slope_rad: float | None
    source: str


def at_gear(module_mm: float) -> Allowed:
    """Under a spur gear of this module; raises NotDefined. Source: Shigley, Table 7-2.

    The table ends at 50 teeth to the inch; finer ones get the same part of a tooth.
    """
    pitch = _MM_PER_INCH / positive(module_mm, "the module")
    table = _table()["gears"]
    rows: dict[int, float] = table["deflection_in"]
    last = max(rows)
    if pitch > last:
        return Allowed(
            rows[last] * _MM_PER_INCH * last / pitch,
            table["slope_rad"],
            f"{cited(table)}; finer teeth in proportion ({table['finer']})",
        )
    least = min(one for one in rows if pitch <= one)
    return Allowed(rows[least] * _MM_PER_INCH, table["slope_rad"], cited(table))


def elsewhere(length_mm: float) -> Allowed:
    """Under anything else, by the length between the bearings or of the overhang; mm."""
    table = _table()["length"]
    return Allowed(table["part"] * positive(length_mm, "the length"), None, cited(table))


def _table() -> Mapping[str, Any]:
    table: Mapping[str, Any] = load_data("binder_trade.shafting", "bending.yaml")
    return table
