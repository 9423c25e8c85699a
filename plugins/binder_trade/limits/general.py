"""A length without limits of its own to what it may be out by general tolerance."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from binder.api import load_data
from binder_trade.explained import NotDefined, positive


def general_tolerance(length_mm: float, grade: str = "m") -> float:
    """How far a length may be out to either side, in mm, by its class: f, m, c or v.

    Below 0.5 mm the standard asks for limits at the size itself; the first row is taken, half
    of the length at most. Raises NotDefined for an unknown class, or a length over 4 m.
    Source: ISO 2768-1, table 1.
    """
    length = positive(length_mm, "a length")
    table = _table()
    if grade not in table["classes"]:
        raise NotDefined(f"no class of general tolerance is {grade[:20]!r}", "f, m, c or v")
    for row in table["rows"]:
        if length <= row["to"]:
            return _given(row[grade], length, grade)
    raise NotDefined(f"{length:g} mm is over the table", "write limits at the size itself")


def stray_mm(length_mm: float) -> float:
    """How far a length of class m strays in mm; nothing where the table does not tell."""
    try:
        return general_tolerance(length_mm)
    except NotDefined:
        return 0.0


def _given(half: float | None, length: float, grade: str) -> float:
    if half is None:
        raise NotDefined(f"class {grade} is not defined at {length:g} mm", "take class m")
    return min(float(half), length / 2)


def general_source() -> str:
    """The table's source."""
    return str(_table()["source"])


def _table() -> Mapping[str, Any]:
    table: Mapping[str, Any] = load_data("binder_trade.limits", "iso2768.yaml")
    return table
