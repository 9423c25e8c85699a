"""Turns a pitch into the depths, flats and radii of a thread's profile."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final


@dataclass(frozen=True, slots=True)
class Form:
    """The profile of a thread, each size as a multiple of the pitch; source: its standard.

    `triangle` is the height H of the sharp profile, `effective_drop` what the effective
    diameter lies below the major diameter, `internal_drop` what the internal minor diameter
    does, `depth` the depth of the external thread as cut, `radius` the radius of its root.
    `is_rounded` says that the depth of each size is rounded, so the drops follow the depth.
    """

    name: str
    angle_deg: float
    triangle: float
    effective_drop: float
    internal_drop: float
    depth: float
    radius: float
    standard: str
    is_rounded: bool = False


ISO_60: Final = Form(
    "ISO 60°", 60.0, 0.866025404, 0.649519053, 1.082531755, 0.613434661, 0.144337567, "ISO 68-1"
)
UNIFIED_60: Final = Form(
    "Unified 60°",
    60.0,
    0.866025404,
    0.649519053,
    1.082531755,
    0.613434661,
    0.144337567,
    "ASME B1.1",
)
WHITWORTH_55: Final = Form(
    "Whitworth 55°", 55.0, 0.960491, 0.640327, 1.280654, 0.640327, 0.137329, "BS 84"
)
BA_47: Final = Form("BA 47.5°", 47.5, 1.13634, 0.6, 1.2, 0.6, 0.18083, "BS 93", is_rounded=True)
