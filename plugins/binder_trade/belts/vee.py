"""A V belt's section and a datum diameter to the groove that it runs in."""

from __future__ import annotations

import math
from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from binder.api import load_data
from binder_trade.explained import NotDefined, Step, mm, positive, within
from binder_trade.fits.naming import cited


@dataclass(frozen=True, slots=True)
class VeeGroove:
    """A groove, mm and degrees. The belt's length and ratio go by the datum diameter."""

    section: str
    datum_mm: float
    rim_mm: float
    angle_deg: float
    width_at_rim_mm: float
    depth_mm: float
    face_mm: float
    least_datum_mm: float
    is_too_small: bool
    source: str
    steps: tuple[Step, ...]


def sections() -> tuple[str, ...]:
    """The sections that are kept, smallest first."""
    return tuple(_table()["rows"])


def vee_belt_groove(section: str, datum_mm: float, grooves: int = 1) -> VeeGroove:
    """The groove of a V belt on a pulley of this datum diameter; mm, degrees.

    `is_too_small` says that the diameter is under the least of the standard. Raises
    NotDefined for another section. Source: ISO 4183, ISO 4184.
    """
    rows = _table()["rows"]
    if section not in rows:
        raise NotDefined(f"no V belt “{section[:20]}” is kept here", "one of: " + ", ".join(rows))
    row, datum = rows[section], positive(datum_mm, "the datum diameter")
    count = within(grooves, 1, 12, "the number of grooves")
    angle = next(float(deg) for most, deg in row["angles"] if datum <= most)
    rim = datum + 2 * row["above"]
    width = row["datum"] + 2 * row["above"] * math.tan(math.radians(angle / 2))
    source = cited(_table())
    steps = (
        Step("angle of the groove", f"datum diameter {datum:g} mm", f"{angle:g}°", source),
        Step("rim", "datum + 2 b", mm(rim), source),
        Step("width at the rim", "w + 2 b tan(half angle)", mm(width), source),
        Step("depth", "b + h", mm(row["above"] + row["below"]), source),
    )
    return VeeGroove(
        section=section,
        datum_mm=datum,
        rim_mm=rim,
        angle_deg=angle,
        width_at_rim_mm=width,
        depth_mm=row["above"] + row["below"],
        face_mm=(count - 1) * row["between"] + 2 * row["edge"],
        least_datum_mm=row["least"],
        is_too_small=datum < row["least"],
        source=source,
        steps=steps,
    )


def _table() -> Mapping[str, Any]:
    table: Mapping[str, Any] = load_data("binder_trade.belts", "sections.yaml")["vee"]
    return table
