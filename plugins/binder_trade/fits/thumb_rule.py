"""A fit by the model engineer's thumb rule: the hole to size, the shaft by thousandths."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from binder.api import load_data
from binder_trade.explained import NotDefined, Step, within
from binder_trade.fits.naming import plain, way_out
from binder_trade.fits.printed import micrometres, millimetres

CONVENTION = "hole is to size, shaft varies"
_MM_PER_INCH = 25.4
_UM_PER_THOU = 25.4
_MOST_MM = 300.0


@dataclass(frozen=True, slots=True)
class ThumbShaft:
    """A shaft by the thumb rule: its size in mm and its difference from the hole in µm."""

    name: str
    nominal_mm: float
    shaft_mm: float
    difference_um: float
    convention: str
    source: str
    steps: tuple[Step, ...]


def thumb_shaft(nominal_mm: float, name: str) -> ThumbShaft:
    """The shaft for a hole of exactly the nominal size in mm, by the name of the fit.

    The constant matters on small work: a thousandth an inch alone is nothing there. Raises
    NotDefined for another name, or above 300 mm. Source: Model Engineer's Handbook, fits.
    """
    size = within(nominal_mm, 1e-6, _MOST_MM, "the diameter")
    row = _row(name)
    thou = row["constant"] + row["per_inch"] * size / _MM_PER_INCH
    difference = thou * _UM_PER_THOU
    shaft = size + difference / 1000
    source = str(_table()["source"])
    formula = f"{row['constant']:+g} {row['per_inch']:+g} × {size / _MM_PER_INCH:.4f} in"
    steps = (
        Step("difference", formula, f"{thou:+.2f} thou = {micrometres(difference)}", source),
        Step("shaft", "hole + difference", millimetres(shaft), CONVENTION),
    )
    return ThumbShaft(row["name"], size, shaft, difference, CONVENTION, source, steps)


def thumb_names() -> tuple[str, ...]:
    """The names of fits that the thumb rule knows, tightest first."""
    return tuple(row["name"] for row in _table()["fits"])


def _row(name: str) -> Mapping[str, Any]:
    rows: dict[str, Mapping[str, Any]] = {row["name"]: row for row in _table()["fits"]}
    asked = plain(name)
    if asked not in rows:
        raise NotDefined(f"the thumb rule has no “{asked}” fit", way_out(asked, rows, rows))
    return rows[asked]


def _table() -> Mapping[str, Any]:
    table: Mapping[str, Any] = load_data("binder_trade.fits", "thumb_rule.yaml")
    return table
