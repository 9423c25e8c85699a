"""Turns a cord and an inside diameter, or a dash number, into an O-ring with its tolerances."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache
from typing import Any, Final

from binder.api import load_data
from binder_trade.explained import NotDefined, positive, within

_INCH: Final = 25.4


@dataclass(frozen=True, slots=True)
class Ring:
    """An O-ring, free, in mm, with the tolerances of class B (±).

    `name` is how it is asked for: "10 × 2 mm" or "AS568-012". `source` says which list has it.
    """

    name: str
    inside_mm: float
    cord_mm: float
    inside_tolerance_mm: float
    cord_tolerance_mm: float
    source: str

    @property
    def outside_mm(self) -> float:
        """Its outside diameter, free; mm."""
        return self.inside_mm + 2 * self.cord_mm


@cache
def _table(name: str) -> dict[str, Any]:
    table: dict[str, Any] = load_data("binder_trade.seals", "rings.yaml")[name]
    return table


def ring(inside_mm: float, cord_mm: float) -> Ring:
    """A ring of any inside diameter and cord, mm, with class B tolerances.

    Raises NotDefined for a cord over 8.4 mm or under 0.5 mm. Source: ISO 3601-1.
    """
    inside = positive(inside_mm, "the inside diameter of the ring")
    cord = within(cord_mm, 0.5, 8.4, "the cord of the ring in mm")
    return _ring(f"{inside:g} × {cord:g} mm", inside, cord, _list_of(inside, cord))


def inch_ring(dash: str) -> Ring:
    """A ring by its AS568 dash number; sizes in mm. Raises NotDefined for one not kept here."""
    rows: dict[str, list[float]] = _table("inch")["rows"]
    number = dash.strip().removeprefix("AS568").strip("- ").zfill(3)
    if number not in rows:
        raise NotDefined(f"no AS568-{number} is kept here", "one of: " + ", ".join(rows))
    inside, cord = rows[number]
    return _ring(f"AS568-{number}", inside * _INCH, cord * _INCH, _table("inch")["source"])


def _ring(name: str, inside: float, cord: float, source: str) -> Ring:
    tolerance = next(pm for top, pm in _table("tolerance")["cord"].items() if cord <= top)
    return Ring(name, inside, cord, 0.009 * inside**0.95 + 0.11, tolerance, source)


def _list_of(inside: float, cord: float) -> str:
    for series in ("iso", "metric"):
        table = _table(series)
        if inside in table["rows"].get(cord, ()):
            return str(table["source"])
    return "not in the lists kept here"


@cache
def rings() -> tuple[Ring, ...]:
    """All rings that are kept: metric cords, the ISO 3601-1 series, some inch sizes."""
    metric = [
        ring(inside, cord)
        for series in ("metric", "iso")
        for cord, insides in _table(series)["rows"].items()
        for inside in insides
    ]
    return (*metric, *(inch_ring(dash) for dash in _table("inch")["rows"]))
