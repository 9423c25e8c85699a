"""Turns the name of a basic rack into its proportions."""

from __future__ import annotations

import math
from dataclasses import dataclass
from functools import cache
from typing import Any, Literal

from binder.api import load_data
from binder_trade.explained import NotDefined

PitchSystem = Literal["module", "DP"]


@dataclass(frozen=True, slots=True)
class Rack:
    """A basic rack: its angle in degrees, the rest in modules; `system` is how it is sold."""

    key: str
    name: str
    angle_deg: float
    addendum: float
    clearance: float
    fillet: float
    system: PitchSystem

    @property
    def angle(self) -> float:
        """The pressure angle; radians."""
        return math.radians(self.angle_deg)

    @property
    def dedendum(self) -> float:
        """From pitch line to root; modules."""
        return self.addendum + self.clearance

    @property
    def depth(self) -> float:
        """From tip to root; modules."""
        return 2 * self.addendum + self.clearance


@cache
def racks() -> dict[str, Rack]:
    """All basic racks by key. Source: ISO 53 (A to D), inch full depth and stub."""
    rows: dict[str, dict[str, Any]] = load_data("binder_trade.gears", "racks.yaml")["racks"]
    return {key: _rack(key, row) for key, row in rows.items()}


def rack(key: str = "A") -> Rack:
    """The basic rack of this key. Raises NotDefined for another."""
    if key in racks():
        return racks()[key]
    raise NotDefined(f"no basic rack '{key}' is kept here", f"these are: {', '.join(racks())}")


def _rack(key: str, row: dict[str, Any]) -> Rack:
    return Rack(
        key,
        row["name"],
        row["angle"],
        row["addendum"],
        row["clearance"],
        row["fillet"],
        row["pitch"],
    )
