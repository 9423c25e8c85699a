"""A head and a plate turned into the seat that the head sits in, and what is left under it."""

from __future__ import annotations

import math
from typing import Final

from binder_trade.explained import NotDefined, not_negative, positive
from binder_trade.fastening.steps import mm, step
from binder_trade.fastening.verdict import Verdict, at_least

LEAST_LAND: Final = 0.5  # diameters of metal under a head
KNIFE_EDGE_MM: Final = 0.2


def counterbore_depth(head_height_mm: float, major_mm: float) -> float:
    """How deep a head sits so that it lies just below the face, in mm; raises NotDefined.

    DIN 974-1 adds to the head's height 0.2 mm up to M1.4, 0.4 mm up to M6, 0.6 mm up to M20
    and 0.8 mm above (additions from memory; published tables differ by 0.2 mm).
    """
    positive(major_mm, "a diameter")
    height = positive(head_height_mm, "a head")
    bands = ((1.4, 0.2), (6.0, 0.4), (20.0, 0.6))
    return height + next((added for upto, added in bands if major_mm <= upto), 0.8)


def land_under_head(plate_mm: float, sunk_mm: float, major_mm: float) -> Verdict:
    """The metal left under a sunk head: half a diameter at least; mm; raises NotDefined."""
    land = positive(plate_mm, "a plate") - not_negative(sunk_mm, "a counterbore")
    needs = LEAST_LAND * positive(major_mm, "a diameter")
    return at_least(
        "the metal under the head",
        land,
        needs,
        step("metal under the head", "plate − counterbore, 0.5 d at least", mm(land)),
        ("a lower head", f"a plate of {mm(sunk_mm + needs)}", "the head left proud"),
    )


def countersink_depth(mouth_mm: float, hole_mm: float, angle_deg: float) -> float:
    """How deep a countersink of this mouth and angle cuts above its hole, in mm: geometry."""
    if not math.isfinite(angle_deg) or not 0 < angle_deg < 180:
        raise NotDefined(f"a countersink of {angle_deg:g}° is no cone", "say 90° or 82°")
    gap = positive(mouth_mm, "a countersink") - positive(hole_mm, "a hole")
    return max(0.0, gap / 2) / math.tan(math.radians(angle_deg / 2))


def countersink_in_plate(
    plate_mm: float, mouth_mm: float, hole_mm: float, angle_deg: float
) -> Verdict:
    """A countersink leaves a band of the hole 0.2 mm high, else a knife edge; mm."""
    depth = countersink_depth(mouth_mm, hole_mm, angle_deg)
    return at_least(
        "the plate",
        positive(plate_mm, "a plate"),
        depth + KNIFE_EDGE_MM,
        step(
            "depth of the countersink",
            f"(mouth − hole) / 2 / tan({angle_deg / 2:g}°)",
            mm(depth),
            "plane geometry",
        ),
        ("a thicker plate", "a cheese head on the face", "the plate dimpled into the one below"),
    )


def same_angle(screw_deg: float, countersink_deg: float) -> bool:
    """Head and countersink are of one angle: 90° metric and BA, 82° US inch (from memory)."""
    return abs(screw_deg - countersink_deg) < 1
