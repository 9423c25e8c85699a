"""Outlines of ratchet wheels and sprockets."""

from __future__ import annotations

import math
from collections.abc import Callable

from .faults import Unbuildable
from .forms import Arc, Outline, Segment
from .outlines import polar, polygon

# Which way the stopping faces of `ratchet_outline` look, once it lies along a turned part.
RATCHET_HAND = "clockwise, seen from the right"


def ratchet_outline(teeth: int, outside: float, depth: float, undercut: float = 0.0) -> Outline:
    """Gives a ratchet wheel: stopping faces towards −y at +x, each leaning back by an angle.

    `outside` is the diameter over the points; `undercut` in degrees draws the pawl in.
    """
    if teeth < 3 or depth >= outside / 2.0:
        raise Unbuildable("no ratchet wheel")
    radius, root = outside / 2.0, outside / 2.0 - depth
    lag = math.degrees(math.asin(min(1.0, depth * math.tan(math.radians(undercut)) / root)))
    pitch = 360.0 / teeth
    if lag >= pitch:
        raise Unbuildable("teeth undercut through to the next")
    points = []
    for number in range(teeth):
        points += [polar(root, pitch * number + lag), polar(radius, pitch * number)]
    return polygon(points[::-1])


def sprocket_pitch_diameter(pitch: float, teeth: int) -> float:
    """Gives the diameter through the middles of the rollers, p / sin(180°/z) (ISO 606)."""
    return pitch / math.sin(math.pi / teeth)


def sprocket_outline(pitch: float, roller: float, teeth: int) -> Outline:
    """Gives a sprocket for roller chain, a roller's seat at +x; raises Unbuildable.

    Seats of 0.505 × roller diameter over 140° − 90°/z, flanks of 0.12 × roller × (z + 2), tips
    at pitch diameter + pitch × (1 − 1.6/z) − roller: the least tooth form of ISO 606.
    """
    if not 6 <= teeth <= 150 or not 0.0 < roller < pitch:
        raise Unbuildable("no sprocket")
    corner, middle, tip = _flank(pitch, roller, teeth)
    bottom = sprocket_pitch_diameter(pitch, teeth) / 2.0 - 0.505 * roller
    step = 360.0 / teeth
    is_pointed = tip[1] > step / 2.0 - 1e-9
    segments: list[Segment] = []
    for number in range(teeth):
        here, there = step * number, step * (number + 1)
        segments.append(Arc(polar(bottom, here), polar(corner[0], here + corner[1])))
        segments.append(Arc(polar(middle[0], here + middle[1]), polar(tip[0], here + tip[1])))
        if not is_pointed:
            top = polar(tip[0], here + step / 2.0)
            segments.append(Arc(top, polar(tip[0], there - tip[1])))
        segments.append(
            Arc(polar(middle[0], there - middle[1]), polar(corner[0], there - corner[1]))
        )
    return Outline(polar(corner[0], -corner[1]), tuple(segments))


Polar = tuple[float, float]


def _flank(pitch: float, roller: float, teeth: int) -> tuple[Polar, Polar, Polar]:
    """Gives foot, middle and tip of the flank beside the seat at +x, as radius and degrees."""
    centre = sprocket_pitch_diameter(pitch, teeth) / 2.0
    seat, flank = 0.505 * roller, 0.12 * roller * (teeth + 2)
    lean = math.pi - math.radians(140.0 - 90.0 / teeth) / 2.0
    towards = (math.cos(lean), math.sin(lean))
    pivot = (centre + (seat + flank) * towards[0], (seat + flank) * towards[1])

    def at(turn: float) -> Polar:
        angle = lean + math.pi + turn
        x, y = pivot[0] + flank * math.cos(angle), pivot[1] + flank * math.sin(angle)
        return math.hypot(x, y), math.degrees(math.atan2(y, x))

    outside = centre + pitch * (1.0 - 1.6 / teeth) / 2.0 - roller / 2.0
    turn = _until(lambda t: at(t)[0] >= outside or at(t)[1] >= 180.0 / teeth)
    return at(0.0), at(turn / 2.0), at(turn)


def _until(is_past: Callable[[float], bool]) -> float:
    """Finds the angle up to half a turn at which something comes true."""
    least, most = 0.0, math.pi
    for _ in range(60):
        middle = (least + most) / 2.0
        least, most = (least, middle) if is_past(middle) else (middle, most)
    return most
