"""The countersink that a riveted tail is spread into."""

from __future__ import annotations

from typing import Final

from binder_trade.explained import positive

# Common practice, no source: the mouth in diameters of the tail, and how much of the plate the
# cone may take.
_MOUTH: Final = 1.5
_DEEPEST: Final = 0.5
TAIL_SEAT_DEG: Final = 90.0
"""The included angle of the cone; at 90° it is as deep as it is wider than its hole, halved."""


def tail_mouth(tail_mm: float, hole_mm: float, thick_mm: float) -> float:
    """How wide in mm the hole of a riveted tail is sunk at 90°, to 0.1 mm.

    1.5 times the tail, but no deeper than half of the plate: common practice, no source. Raises
    NotDefined for what is not positive.
    """
    hole = positive(hole_mm, "a hole")
    most = hole + 2 * _DEEPEST * positive(thick_mm, "a plate")
    return round(max(min(_MOUTH * positive(tail_mm, "a tail"), most), hole), 1)
