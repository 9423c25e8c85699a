"""The data file of ISO 286 to typed tables, read once and when first needed."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache
from typing import Any

from binder.api import load_data
from binder_trade.limits.bands import Band, band_of

Row = tuple[float | None, ...]


@dataclass(frozen=True, slots=True)
class Table:
    """One published table: a row of micrometres for each letter or grade."""

    ends_mm: tuple[float, ...]
    rows: dict[str, Row]

    def read(self, row: str, nominal_mm: float) -> tuple[float | None, Band]:
        """The value in µm for a size in mm, and its band; None where the place is empty."""
        band = band_of(nominal_mm, self.ends_mm)
        return self.rows[row][band.column], band

    def begins_mm(self, row: str) -> float:
        """The size in mm over which a row begins."""
        first = next(at for at, value in enumerate(self.rows[row]) if value is not None)
        return self.ends_mm[first - 1] if first else 0

    def ends_at_mm(self, row: str) -> float:
        """The size in mm up to which a row goes."""
        filled = [at for at, value in enumerate(self.rows[row]) if value is not None]
        return self.ends_mm[filled[-1]]


@cache
def table(name: str) -> Table:
    """A table of `data/iso286.yaml` by its name."""
    content: dict[str, Any] = load_data("binder_trade.limits", "iso286.yaml")
    part = content[name]
    rows = part.get("by_grade") or part["by_letter"]
    ends = content["steps" if name.endswith("_on_steps") else "bands"]
    return Table(tuple(ends), {key: tuple(row) for key, row in rows.items()})


def shaft_table(letter: str) -> Table:
    """The table that has a shaft's letter."""
    on_bands = table("shafts_on_bands")
    return on_bands if letter in on_bands.rows else table("shafts_on_steps")
