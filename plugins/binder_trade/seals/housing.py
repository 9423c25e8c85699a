"""Turns the cord of an O-ring and what it does into the groove that holds it."""

from __future__ import annotations

import math
from dataclasses import dataclass
from functools import cache
from typing import Any, Literal

from binder.api import load_data
from binder_trade.explained import NotDefined, Step, mm, within

Duty = Literal["standing", "moving", "face"]


@dataclass(frozen=True, slots=True)
class Housing:
    """The section of a groove; mm.

    `depth_mm` counts from the surface that the ring presses on, so the gap between the two
    parts is in it. `width_mm` may be more by `width_plus_mm`, never less.
    """

    cord_mm: float
    duty: Duty
    depth_mm: float
    width_mm: float
    width_plus_mm: float
    corner_mm: float
    source: str


@cache
def _data() -> dict[str, Any]:
    data: dict[str, Any] = load_data("binder_trade.seals", "housings.yaml")
    return data


def housing(cord_mm: float, duty: Duty) -> Housing:
    """The groove for a cord; mm. Raises NotDefined for a cord that the table has not.

    Inch cords are found by their rounded metric figure. Source: the housing table.
    """
    data = _data()
    for row in data["rows"]:
        line = dict(zip(data["columns"], row, strict=True))
        if abs(line["cord"] - cord_mm) < 0.009:
            return _housing(line, duty, data["source"])
    cords = ", ".join(f"{row[0]:g}" for row in data["rows"])
    raise NotDefined(f"no groove is listed for a cord of {cord_mm:g} mm", f"listed: {cords} mm")


def _housing(line: dict[str, Any], duty: Duty, source: str) -> Housing:
    depth = line[duty]
    if depth is None:
        raise NotDefined(
            f"a cord of {line['cord']:g} mm is too thin for a seal that moves",
            "take a cord of 1.5 mm or more",
        )
    is_face = duty == "face"
    width = line["face_width"] if is_face else line["width"]
    return Housing(
        line["cord"], duty, depth, width, 0.2 if is_face else 0.25, line["corner"], source
    )


@dataclass(frozen=True, slots=True)
class LeadIn:
    """The chamfer that the ring goes in over: length along the axis in mm, angle in degrees."""

    length_mm: float
    angle_deg: float
    steps: tuple[Step, ...]


def lead_in(cord_mm: float, angle_deg: float = 15.0) -> LeadIn:
    """The lead-in for a cord; mm, degrees. Raises NotDefined outside 10 to 30° or 7 mm.

    Source: seal makers' practice, from memory; other angles by the same height.
    """
    angle = within(angle_deg, 10, 30, "the angle of the lead-in", "°")
    cord = within(cord_mm, 0.5, 7, "the cord of the ring in mm")
    table = _data()["lead_in"]
    at_15, at_20 = next(pair for top, pair in table["rows"].items() if cord <= top)
    height = at_15 * math.tan(math.radians(15))
    length = at_20 if angle == 20 else height / math.tan(math.radians(angle))
    step = Step("lead-in", f"by the cord, {angle:g}° to the axis", mm(length), table["source"])
    return LeadIn(length, angle, (step,))
