"""Cams as they are drawn: arcs and flats, or radii at angles, to the points of their outline.

Angles run in the order in which the follower meets the outline, from the middle of its rest.
"""

from __future__ import annotations

import itertools
import math
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from typing import Final

from binder_trade.explained import NotDefined, not_negative, positive, within

TANGENT: Final = "arcs and flats that touch one another on a common normal"
SMOOTHED: Final = "Akima, A new method of interpolation and smooth curve fitting, J. ACM 17, 1970"
_LEAST_RADII: Final = 6
_MOST_RADII: Final = 360
_TURN: Final = 2 * math.pi
_FINE: Final = math.radians(0.25)


@dataclass(frozen=True, slots=True)
class OutlinePoint:
    """A point of an outline in mm, its outward normal in rad, and how it bends.

    `radius_mm` is the outline's radius there: infinite on a flat, below nothing in a hollow.
    `begins` marks the first point of an arc or a flat.
    """

    x_mm: float
    y_mm: float
    normal_rad: float
    radius_mm: float
    begins: bool = False


Points = tuple[OutlinePoint, ...]


def arc_cam(
    base_mm: float, lift_mm: float, nose_mm: float, flank_mm: float | None = None
) -> Points:
    """A cam of base circle, nose and two equal flanks; radii in mm, without one a flank is flat.

    The nose stands at half a turn. Raises NotDefined where the arcs do not touch.
    Source: `TANGENT`.
    """
    base, nose = positive(base_mm, "the base circle"), not_negative(nose_mm, "the nose")
    apart = base + positive(lift_mm, "the lift") - nose
    if nose >= base + lift_mm / 2:
        raise NotDefined(f"a nose of {nose:g} mm leaves no flank", "take a smaller nose")
    if flank_mm is None:
        foot = top = math.pi - math.acos((base - nose) / apart)
        rising = tuple(_flat(base, nose, apart, foot))
    else:
        bulge = positive(flank_mm, "the flank")
        x, y = _middle_of_flank(base, nose, apart, bulge)
        foot, top = math.atan2(-y, -x), math.atan2(-y, -apart - x)
        rising = tuple(_arc(x, y, bulge, foot, top))
    return (
        *_arc(0.0, 0.0, base, 0.0, foot),
        *rising,
        *_arc(-apart, 0.0, nose, top, _TURN - top),
        *_mirrored(rising),
        *_arc(0.0, 0.0, base, _TURN - foot, _TURN),
    )


def radii_cam(radii: Sequence[tuple[float, float]]) -> Points:
    """A cam through radii in mm at angles in degrees, smooth between them.

    A row of equal radii stays round. Raises NotDefined for too few, for angles that do not
    rise within one turn, and for an outline that doubles back. Source: `SMOOTHED`.
    """
    count = int(within(len(radii), _LEAST_RADII, _MOST_RADII, "the number of radii"))
    angles = [math.radians(angle) for angle, _ in radii]
    if any(b <= a for a, b in itertools.pairwise(angles)):
        raise NotDefined("the angles of the cam do not rise", "write them in order, each once")
    if angles[-1] - angles[0] >= _TURN - 1e-9:
        raise NotDefined(
            "the radii go on for more than one turn", "end before the first comes again"
        )
    sizes = [positive(radius, "a radius of the cam") for _, radius in radii]
    ends = [*angles[1:], angles[0] + _TURN]
    slopes = _slopes([*zip(angles, sizes, strict=True)])
    found: list[OutlinePoint] = []
    for n in range(count):
        after = (n + 1) % count
        found += _between((angles[n], sizes[n], slopes[n]), (ends[n], sizes[after], slopes[after]))
    return tuple(found)


def _middle_of_flank(base: float, nose: float, apart: float, flank: float) -> tuple[float, float]:
    """The centre of the rising flank: it stands inside, on the far side of the line of centres."""
    low, high = flank - base, flank - nose
    if low <= 0 or high <= 0 or not abs(high - low) < apart < low + high:
        raise NotDefined(
            f"a flank of {flank:g} mm does not reach from the base circle to the nose",
            f"take one over {(base + nose + apart) / 2:.4g} mm, or a straight one",
        )
    lean = math.acos((low**2 + apart**2 - high**2) / (2 * low * apart))
    return -low * math.cos(lean), -low * math.sin(lean)


def _arc(x: float, y: float, radius: float, start: float, end: float) -> Iterator[OutlinePoint]:
    count = max(2, math.ceil((end - start) / _FINE))
    for n in range(count + 1):
        turn = start + (end - start) * n / count
        yield OutlinePoint(
            x + radius * math.cos(turn), y + radius * math.sin(turn), turn, radius, begins=n == 0
        )


def _flat(base: float, nose: float, apart: float, normal: float) -> Iterator[OutlinePoint]:
    cosine, sine = math.cos(normal), math.sin(normal)
    start, end = (base * cosine, base * sine), (nose * cosine - apart, nose * sine)
    count = max(2, math.ceil(math.dist(start, end) / base / _FINE))
    for n in range(count + 1):
        x, y = (a + (b - a) * n / count for a, b in zip(start, end, strict=True))
        yield OutlinePoint(x, y, normal, math.inf, begins=n == 0)


def _mirrored(rising: Points) -> Iterator[OutlinePoint]:
    for n, one in enumerate(reversed(rising)):
        turned = replace(one, y_mm=-one.y_mm, normal_rad=_TURN - one.normal_rad)
        yield replace(turned, begins=n == 0)


def _slopes(places: Sequence[tuple[float, float]]) -> list[float]:
    """The slope of the radius at each place, by its four neighbours all round."""
    count = len(places)
    rises = []
    for n in range(count):
        (a, low), (b, high) = places[n], places[(n + 1) % count]
        rises.append((high - low) / ((b - a) % _TURN))
    return [_slope(*(rises[(n + k) % count] for k in (-2, -1, 0, 1))) for n in range(count)]


def _slope(first: float, second: float, third: float, fourth: float) -> float:
    # The half sums, which Akima had not, keep a row of equal radii round up to its end.
    left = abs(second - first) + abs(second + first) / 2
    right = abs(fourth - third) + abs(fourth + third) / 2
    if left + right < 1e-12:
        return 0.0
    return (right * second + left * third) / (left + right)


def _between(
    start: tuple[float, float, float], end: tuple[float, float, float]
) -> Iterator[OutlinePoint]:
    """The cubic from one angle, radius and slope to the next, the last point left out."""
    wide, rise = end[0] - start[0], end[1] - start[1]
    b = 3 * rise / wide - 2 * start[2] - end[2]
    c = start[2] + end[2] - 2 * rise / wide
    count = max(2, math.ceil(wide / _FINE))
    for n in range(count):
        u = n / count
        radius = start[1] + u * wide * (start[2] + u * (b + u * c))
        slope = start[2] + u * (2 * b + 3 * u * c)
        bend = (2 * b + 6 * u * c) / wide
        if radius <= 0:
            raise NotDefined("the outline goes through the cam's middle", "tell more radii there")
        turn = start[0] + u * wide
        curl = radius**2 + 2 * slope**2 - radius * bend
        yield OutlinePoint(
            radius * math.cos(turn),
            radius * math.sin(turn),
            turn - math.atan2(slope, radius),
            math.inf if abs(curl) < 1e-12 else math.hypot(radius, slope) ** 3 / curl,
            begins=n == 0,
        )
