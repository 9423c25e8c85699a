"""Turns a rod into the stuffing box around it: packing, rings, box and gland."""

from __future__ import annotations

import math
from collections.abc import Iterable
from dataclasses import dataclass
from typing import Final

from binder_trade.explained import NotDefined, Step, mm, positive, within

PRACTICE: Final = "common practice, no source"
DEPTH: Final = "packed depth 3 to 5 times the packing (power-plant training handbook on packing)"
# Square packing that is sold, mm.
SECTIONS: Final = (1.5, 2.0, 2.5, 3.0, 4.0, 5.0, 6.0, 8.0, 10.0)
_CLEAR: Final = 0.15


@dataclass(frozen=True, slots=True)
class StuffingBox:
    """A packed gland; mm. `ring_mm` is the length to which each ring is cut.

    The packed depth is `rings` times the section; the box is deeper by half of the gland's
    nose (`nose_mm` long), and the other half follows as the packing beds down.
    """

    rod_mm: float
    section_mm: float
    rings: int
    box_mm: float
    packed_mm: float
    depth_mm: float
    nose_mm: float
    gland_outside_mm: float
    gland_bore_mm: float
    ring_mm: float
    steps: tuple[Step, ...]


def section_for(rod_mm: float, owned: Iterable[float] = SECTIONS) -> float:
    """The square packing for a rod, nearest to a third of it and not under 1.5 mm; mm.

    Raises NotDefined where none is within a quarter and five eighths of the rod, the smallest
    rods excepted. Source: common practice (1/3 of a small rod, less of a stout one).
    """
    rod = positive(rod_mm, "the rod")
    wanted = max(1.5, rod / 3 if rod <= 16 else 16 / 3 + (rod - 16) / 6)
    near = [each for each in owned if 0.7 * wanted <= each <= 1.6 * wanted]
    if near:
        return min(near, key=lambda each: (abs(each - wanted), each))
    raise NotDefined(
        f"no packing that is owned suits a rod of {rod:g} mm",
        f"square packing of about {wanted:.1f} mm serves, or an O-ring",
    )


def stuffing_box(rod_mm: float, section_mm: float | None = None, rings: int = 4) -> StuffingBox:
    """The box for a rod, packed with so many square rings; mm. Raises NotDefined outside 2 to 8.

    Source: box = rod + 2 s; depth 3 to 5 s (see `DEPTH`); clearances common practice.
    """
    rod = positive(rod_mm, "the rod")
    section = positive(section_for(rod) if section_mm is None else section_mm, "the packing")
    count = int(within(rings, 2, 8, "the number of rings"))
    box, packed, nose = rod + 2 * section, count * section, 2 * section
    cut = math.pi * (rod + section)
    return StuffingBox(
        rod,
        section,
        count,
        box,
        packed,
        packed + nose / 2,
        nose,
        box - _CLEAR,
        rod + _CLEAR,
        cut,
        (
            Step("bore of the box", "rod + 2 s", mm(box), PRACTICE),
            Step("packed depth", "rings · s", mm(packed), DEPTH),
            Step("depth of the box", "packed + half the nose", mm(packed + nose / 2), PRACTICE),
            Step("ring cut to", "π (rod + s), ends scarfed at 45°", mm(cut), PRACTICE),
        ),
    )
