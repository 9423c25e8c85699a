"""Outlines of spur gears, internal gears and racks."""

from __future__ import annotations

import math

from .faults import Unbuildable
from .forms import Arc, Curve, Outline, Point, Segment, Straight
from .gears import Gear, involute, thickness_at
from .outlines import polar, polygon

_FLANK = 9  # points on a flank, close enough together for a smooth line within 0.1 µm a module


def spur_outline(gear: Gear) -> Outline:
    """Gives the outline of an external gear, a tooth about +x; raises Unbuildable.

    Flanks are involutes from the base circle or the root, whichever is greater; under the base
    circle they run straight towards the centre, as form cutters leave them. Root corners are
    sharp.
    """
    _check(gear)
    start = _flank(gear, -1)[0]
    low = _root_point(gear, start)
    segments: list[Segment] = []
    for number in range(gear.teeth):
        segments.extend(_tooth(gear, 360.0 * number / gear.teeth))
    return Outline(low, tuple(segments))


def internal_outline(gear: Gear) -> Outline:
    """Gives the hole of an internal gear, a space about +x; for use as a hole or a tool.

    The space is as the tooth of a gear of the same size, its tip deeper by the clearance.
    """
    cutter = Gear(
        gear.module,
        gear.teeth,
        gear.pressure_angle,
        gear.shift,
        gear.addendum + gear.clearance,
        -gear.clearance,
        -gear.backlash,
    )
    return spur_outline(cutter)


def rack_outline(module: float, teeth: int, height: float, pressure_angle: float = 20.0) -> Outline:
    """Gives a rack seen from the side: pitch line at y = 0, teeth upwards, back at y = −height.

    Basic rack of ISO 53 profile A with sharp root corners; it starts and ends in a space.
    """
    pitch, lean = math.pi * module, math.tan(math.radians(pressure_angle))
    top, root = module, -1.25 * module
    points: list[Point] = [(0.0, -height), (0.0, root)]
    for number in range(teeth):
        middle = pitch * (number + 0.5)
        quarter = pitch / 4.0
        points += [
            (middle - quarter + root * lean, root),
            (middle - quarter + top * lean, top),
            (middle + quarter - top * lean, top),
            (middle + quarter - root * lean, root),
        ]
    end = pitch * teeth
    return polygon([*points, (end, root), (end, -height)])


def _check(gear: Gear) -> None:
    if gear.teeth < 4:
        raise Unbuildable("a gear of fewer than 4 teeth")
    if gear.teeth > 400:
        raise Unbuildable("a gear of more than 400 teeth")
    if gear.root_diameter <= 0.0:
        raise Unbuildable("teeth deeper than the gear")
    if thickness_at(gear, gear.tip_diameter) <= 0.01 * gear.module:
        raise Unbuildable("teeth that come to a point below their tips")
    gap = gear.circular_pitch * _foot(gear) / gear.pitch_diameter
    if thickness_at(gear, _foot(gear)) >= gap - 1e-3 * gear.module:
        raise Unbuildable("teeth that run together at the root")


def _foot(gear: Gear) -> float:
    return max(gear.base_diameter, gear.root_diameter)


def _tooth(gear: Gear, degrees: float) -> list[Segment]:
    """Gives root corner, flank, tip, flank and the root up to the next tooth."""
    up = [_turned(point, degrees) for point in _flank(gear, -1)]
    down = [_turned(point, degrees) for point in _flank(gear, 1)][::-1]
    tip = polar(gear.tip_diameter / 2.0, degrees)
    after = _turned(_root_point(gear, _flank(gear, -1)[0]), degrees + 360.0 / gear.teeth)
    middle = polar(gear.root_diameter / 2.0, degrees + 180.0 / gear.teeth)
    own_root = _root_point(gear, down[-1])
    has_neck = math.dist(own_root, down[-1]) > 1e-6
    neck_in: list[Segment] = [Straight(up[0])] if has_neck else []
    neck_out: list[Segment] = [Straight(own_root)] if has_neck else []
    return [
        *neck_in,
        Curve(tuple(up[1:])),
        Arc(tip, down[0]),
        Curve(tuple(down[1:])),
        *neck_out,
        Arc(middle, after),
    ]


def _root_point(gear: Gear, foot: Point) -> Point:
    share = gear.root_diameter / 2.0 / math.hypot(*foot)
    return (foot[0] * share, foot[1] * share)


def _flank(gear: Gear, side: int) -> list[Point]:
    """Gives points of a flank from the foot outwards, evenly along the line that unrolls it."""
    base, half = gear.base_diameter / 2.0, gear.tooth_thickness / gear.pitch_diameter
    rolls = [
        math.sqrt(max(0.0, (diameter / 2.0 / base) ** 2 - 1.0))
        for diameter in (_foot(gear), gear.tip_diameter)
    ]
    found: list[Point] = []
    for number in range(_FLANK):
        roll = rolls[0] + (rolls[1] - rolls[0]) * number / (_FLANK - 1)
        here = math.atan(roll)
        angle = half + involute(gear.angle) - involute(here)
        found.append(polar(base / math.cos(here), side * math.degrees(angle)))
    return found


def _turned(point: Point, degrees: float) -> Point:
    c, s = math.cos(math.radians(degrees)), math.sin(math.radians(degrees))
    return (c * point[0] - s * point[1], s * point[0] + c * point[1])
