"""Ranges as published, to set beside what this package takes."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache
from typing import Any

from binder.api import load_data

PACKAGE = "binder_making.cutting"
FOOT_MM = 304.8


@dataclass(frozen=True, slots=True)
class Band:
    """A published range, m/min or mm, and where it stands."""

    least: float
    most: float
    source: str


@cache
def tables() -> Mapping[str, Any]:
    """The data file of published ranges, read once."""
    content: Mapping[str, Any] = load_data(PACKAGE, "bands.yaml")
    return content


def band(work: str, material: str) -> Band | None:
    """The range of `turning`, `drilling`, `milling` (m/min) or `tooth_feed` (mm), or None."""
    rows = tables()["bands"]
    found = rows[work].get(material)
    return Band(float(found[0]), float(found[1]), rows["source"]) if found else None


def metres(feet: float) -> float:
    """Feet to metres, exactly."""
    return feet * FOOT_MM / 1000
