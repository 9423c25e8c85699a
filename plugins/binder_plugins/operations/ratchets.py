"""Ratchet teeth to how the cutter stands: by its side for the faces, by its end for the backs."""

from __future__ import annotations

import math
from dataclasses import dataclass
from itertools import pairwise

# What a floor cut beside a finished back is kept clear of it, in mm, at the least; common
# practice, no source.
_CLEAR_MM = 0.02
# How far the axis of a cutter goes past the sides of the wheel, and to what step it is told, in mm;
# common practice, no source. The mandrel's neck has room for the cutter's radius and 2 mm.
_OVER_MM, _STEP_MM = 0.5, 0.5


@dataclass(frozen=True, slots=True)
class RatchetCut:
    """Lengths in mm from the wheel's axis, angle in degrees.

    The faces stand upright and are cut by the side of the cutter down to `face_to`, which is as
    far as its flat end goes clear of the next back; turned by `turn` the backs lie level and are
    cut by its end, which stands at `back_to`, till its side is at `stop`, measured level from
    over the axis towards where it came from (negative beyond the axis): farther on it cuts into
    the stopping face of that tooth. `left` then stays in the corner at the foot of the face.
    """

    root: float
    face_to: float
    turn: float
    back_to: float
    stop: float
    left: float


def ratchet_cut(teeth: int, outside: float, depth: float, cutter: float) -> RatchetCut:
    """How a wheel with radial faces is cut by a cutter so wide; geometry of the tooth, no source.

    A face runs from the root at its foot to the point on one radius; the back runs from that
    foot to the point of the next tooth, a pitch on. Where the face leans over the level back,
    its point is what the cutter meets first, and the corner under it is left to the file.
    """
    root, pitch = outside / 2 - depth, 2 * math.pi / teeth
    back = math.atan2(outside / 2 * math.sin(pitch), outside / 2 * math.cos(pitch) - root)
    foot, point = root * math.cos(back), outside / 2 * math.cos(back)
    stop = max(foot, point)
    floor = _floor(teeth, outside / 2, root, cutter)
    turn = abs(math.degrees(back) - 90)
    return RatchetCut(root, floor, turn, root * math.sin(back), stop, stop - foot)


def lowest(teeth: int, outside: float, depth: float, lean: float = 0.0) -> float:
    """The least radius in mm that is cut of a wheel whose faces lean so many degrees.

    Of few teeth a back passes nearer to the axis than its own foot; geometry of the tooth, no
    source.
    """
    tip, root = outside / 2, outside / 2 - depth
    lag = math.asin(min(1.0, depth * math.tan(math.radians(lean)) / root))
    turned = 2 * math.pi / teeth + lag
    if tip * math.cos(turned) >= root:
        return root
    return (
        root
        * tip
        * math.sin(turned)
        / math.dist((root, 0), (tip * math.cos(turned), tip * math.sin(turned)))
    )


def fed_each_way(width: float) -> float:
    """How far a cutter is fed along a wheel so wide, from its middle, to square a face; in mm.

    Its round side stands back from the face by r - √(r² - y²) at y beside its axis (geometry), so
    the axis passes all of the width.
    """
    return math.ceil((width / 2 + _OVER_MM) / _STEP_MM - 1e-9) * _STEP_MM


def _floor(teeth: int, outside: float, root: float, cutter: float) -> float:
    """The highest of the finished teeth under a cutter whose side lies on an upright face."""
    pitch = 2 * math.pi / teeth
    corners = []
    for number in range(math.ceil(teeth / 2) + 1):
        here, there = number * pitch, (number + 1) * pitch
        corners += [(root * math.sin(here), root * math.cos(here)),
                    (outside * math.sin(there), outside * math.cos(there))]  # fmt: skip
    highest = root
    for (x, y), (u, v) in pairwise(corners):
        highest = max(highest, *(h for at, h in ((x, y), (u, v)) if 0.0 <= at <= cutter), root)
        if (x - cutter) * (u - cutter) < 0:
            highest = max(highest, y + (v - y) * (cutter - x) / (u - x))
    return highest if highest <= root else math.ceil((highest + _CLEAR_MM) * 100 - 1e-9) / 100
