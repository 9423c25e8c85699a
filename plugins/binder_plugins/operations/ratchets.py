"""Ratchet teeth to how the cutter stands: by its side for the faces, by its end for the backs."""

from __future__ import annotations

import math
from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class RatchetCut:
    """Lengths in mm from the wheel's axis, angle in degrees.

    The faces stand upright and are cut by the side of the cutter down to `face_to`; turned by
    `turn` the backs lie level and are cut by its end, which stands at `back_to`, till its side is
    at `stop`, measured level from over the axis towards where it came from (negative beyond the
    axis): farther on it cuts into the stopping face of that tooth.
    """

    face_to: float
    turn: float
    back_to: float
    stop: float


def ratchet_cut(teeth: int, outside: float, depth: float) -> RatchetCut:
    """How a wheel with radial faces is cut; common geometry of the tooth, no source.

    A face runs from the root at its foot to the point on one radius; the back runs from that
    foot to the point of the next tooth, a pitch on. Where the face leans over the level back,
    its point is what the cutter meets first, and the corner under it is left to the file.
    """
    root, pitch = outside / 2 - depth, 2 * math.pi / teeth
    back = math.atan2(outside / 2 * math.sin(pitch), outside / 2 * math.cos(pitch) - root)
    stop = max(root * math.cos(back), outside / 2 * math.cos(back))
    return RatchetCut(root, abs(math.degrees(back) - 90), root * math.sin(back), stop)
