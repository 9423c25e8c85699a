"""Material, tool and act to a cutting speed, and with a diameter to the spindle's speed."""

from __future__ import annotations

import math
from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache
from typing import Any

from binder.api import load_data
from binder_making.cutting.group import PACKAGE, Group
from binder_trade.explained import NotDefined, Step, positive

RPM = "n = 1000 v / (π d)"


@dataclass(frozen=True, slots=True)
class CuttingSpeed:
    """A speed of the edge through the metal in m/min; `cap_rpm` is the fastest spindle, or 0."""

    mpm: float
    cap_rpm: float
    by_hand: bool
    steps: tuple[Step, ...]


@cache
def table() -> Mapping[str, Any]:
    """The data file of acts, tools and feeds, read once."""
    content: Mapping[str, Any] = load_data(PACKAGE, "acts.yaml")
    return content


def cutting_speed(material: Group, act: str, tool: str = "hss") -> CuttingSpeed:
    """The cutting speed of an act in a material with a tool of `hss`, `carbide` or `carbon`.

    Raises `NotDefined` for an act or tool that is not known. Source: common practice, no
    source, unless the data file names one.
    """
    row = _row("acts", act, "act that cuts")
    kind = _row("tools", tool, "tool material")
    mpm = material.usual_mpm * row["take"] * kind["factor"]
    source = table()["source"]
    steps = (
        Step("turning speed", material.name, f"{material.usual_mpm:g} m/min", material.source),
        Step("for this act", act, f"× {row['take']:g}", row.get("source", source)),
        Step("tool", kind["says"], f"× {kind['factor']:g}", kind.get("source", source)),
        Step("cutting speed", "the product", f"{mpm:.3g} m/min", "calculation"),
    )
    return CuttingSpeed(mpm, float(row.get("cap_rpm", 0)), bool(row.get("by_hand", False)), steps)


def _row(kind: str, name: str, what: str) -> Mapping[str, Any]:
    rows: Mapping[str, Mapping[str, Any]] = table()[kind]
    if name not in rows:
        raise NotDefined(f"'{name}' is no {what} of the tables", "one of: " + ", ".join(rows))
    return rows[name]


def rpm(mpm: float, diameter_mm: float) -> float:
    """Turns in a minute for a cutting speed in m/min at a diameter in mm: 1000 v/(π d)."""
    return 1000 * positive(mpm, "a speed") / (math.pi * positive(diameter_mm, "a diameter"))


def mpm(turns: float, diameter_mm: float) -> float:
    """The cutting speed in m/min at a diameter in mm: π d n/1000."""
    return math.pi * positive(diameter_mm, "a diameter") * turns / 1000
