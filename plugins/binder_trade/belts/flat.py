"""A flat belt's width and its pulley to the face and the crown that keep it on."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from binder.api import load_data
from binder_trade.explained import NotDefined, Step, mm, positive
from binder_trade.fits.naming import cited


@dataclass(frozen=True, slots=True)
class FlatPulley:
    """Face and crown in mm: the middle stands `crown_mm` above each edge, on the radius."""

    diameter_mm: float
    face_mm: float
    crown_mm: float
    steps: tuple[Step, ...]


def flat_pulley(diameter_mm: float, belt_mm: float) -> FlatPulley:
    """The face and crown for a flat belt of this width; mm. Crown one of the two pulleys.

    Raises NotDefined above 500 mm. Source: ISO 22 from 40 mm up; below, common practice.
    """
    diameter = positive(diameter_mm, "the pulley's diameter")
    rule = _data()["face"]
    face = positive(belt_mm, "the width of the belt") * rule["part_of_belt"]
    height, source = _crown(diameter, face)
    steps = (
        Step("face", f"belt × {rule['part_of_belt']:g}", mm(face), rule["source"]),
        Step("crown, on the radius", f"by a diameter of {diameter:g} mm", mm(height), source),
    )
    return FlatPulley(diameter, face, height, steps)


def least_flat_pulley(thickness_mm: float, belt: str) -> tuple[float, str]:
    """The least pulley in mm for a flat belt of this thickness, with its source."""
    rows = _data()["least_pulley"]
    if belt not in rows:
        raise NotDefined(f"no flat belt of “{belt[:40]}” is kept", "one of: " + ", ".join(rows))
    row = rows[belt]
    return positive(thickness_mm, "the thickness of the belt") * row["ratio"], row["source"]


def _crown(diameter: float, face: float) -> tuple[float, str]:
    table = _data()["crown"]
    small = table["small"]
    if diameter < small["below"]:
        return max(small["thinnest"], small["part_of_face"] * face), small["source"]
    for most, height in table["rows"]:
        if diameter <= most:
            return float(height), cited(table)
    raise NotDefined(
        f"no crown is kept for a flat pulley of {diameter:g} mm", "keep it to 500 mm or less"
    )


def _data() -> Mapping[str, Any]:
    data: Mapping[str, Any] = load_data("binder_trade.belts", "sections.yaml")
    return data
