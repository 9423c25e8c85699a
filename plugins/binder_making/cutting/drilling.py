"""A hole to its drills in order, the pecks that clear it, and the push that each drill needs."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

from binder_making.cutting.group import Group
from binder_making.cutting.power import Load, forces
from binder_making.cutting.published import tables
from binder_trade.explained import NotDefined, Step, positive

# Common practice, no source: above these a pilot, and then a middle drill, goes first.
_PILOT_OVER_MM = 6.0
_MIDDLE_OVER_MM = 13.0
_PILOT = 0.28
_MIDDLE = 0.6
# The flutes hold two diameters (a maker's guide, read); the rest common practice, no source.
_FIRST_PECK = 2.0
_PECK = 1.0
_DEEP_PECK = 0.5
_DEEP = 6.0
_NO_PECK = 3.0
_REACH = 60.0
_POINT_DEG = 118.0


@dataclass(frozen=True, slots=True)
class Push:
    """What a drill asks for: thrust in N, torque in N m, power in W at the drill."""

    thrust_n: float
    torque_nm: float
    power_w: float
    source: str


def push(material: Group, diameter_mm: float, feed_mm: float, rpm: float = 0.0) -> Push:
    """The push of a drill in solid metal: 570 K D f^0.85 N, and K D² (0.630 + 16.84 f)/100 N m.

    Source: published constants by material; some of them from memory (see the data file).
    """
    row = forces()["drilling"]["rows"][material.name]
    size, feed = positive(diameter_mm, "a drill"), positive(feed_mm, "a feed")
    factor = float(row["k"])
    thrust = 570 * factor * size * math.pow(feed, 0.85)
    torque = factor * size**2 * (0.630 + 16.84 * feed) / 100
    source = forces()["drilling"]["source"]
    mark = "" if row["status"] == "verified" else "; this material from memory"
    return Push(thrust, torque, torque * 2 * math.pi * rpm / 60, source + mark)


def drilling_load(
    material: Group, diameter_mm: float, feed_mm: float, rpm: float, motor_w: float
) -> Load:
    """The load of a drill in solid metal; `depth_mm` is 0, since a drill has no depth of cut."""
    asked = push(material, diameter_mm, feed_mm, positive(rpm, "a spindle speed"))
    share = float(forces()["efficiency"]["value"])
    steps = (
        Step("thrust", "570 K D f^0.85", f"{asked.thrust_n:.0f} N", asked.source),
        Step("torque", "K D² (0.630 + 16.84 f)/100", f"{asked.torque_nm:.2f} N m", asked.source),
        Step("power at the drill", "T 2π n/60", f"{asked.power_w:.0f} W", "calculation"),
    )
    motor = positive(motor_w, "the motor's power")
    return Load(asked.power_w, asked.power_w / share, motor, 0.0, steps)


def carried_feed(material: Group, diameter_mm: float, rpm: float, motor_w: float) -> float:
    """The heaviest feed in mm for a turn that the motor carries; 0 where it carries none.

    With none, go by smaller drills first, or slower. Source: as `push`, turned round.
    """
    row = forces()["drilling"]["rows"][material.name]
    share = float(forces()["efficiency"]["value"])
    power = positive(motor_w, "the motor's power") * share
    moment = power * 60 / (2 * math.pi * positive(rpm, "a spindle speed"))
    size = positive(diameter_mm, "a drill")
    return max((100 * moment / (float(row["k"]) * size**2) - 0.630) / 16.84, 0.0)


def thrust_after_pilot(diameter_mm: float, feed_mm: float) -> float:
    """The share of the thrust that is left when a pilot has taken away the chisel edge.

    Feed factor f^0.8, diameter factor D^0.8, T = 0.05 Ff FT B + 0.007 D² J for a standard
    drill. Source: machinists' handbook, 31st edition, p. 1152.
    """
    size, feed = positive(diameter_mm, "a drill"), positive(feed_mm, "a feed")
    chisel = forces()["chisel"]
    lips = 0.05 * math.pow(feed, 0.8) * math.pow(size, 0.8)
    return lips / (lips * float(chisel["b"]) + 0.007 * size**2 * float(chisel["j"]))


def web(diameter_mm: float) -> float:
    """The web of a standard drill at its point, in mm: 0.155 of its diameter."""
    return positive(diameter_mm, "a drill") * float(forces()["chisel"]["web"])


@dataclass(frozen=True, slots=True)
class Drills:
    """The drills for a hole in mm, smallest first, and the caution that belongs to them."""

    sizes_mm: tuple[float, ...]
    why: str
    caution: str


def drills_in_order(diameter_mm: float, owned: Sequence[float], material: Group) -> Drills:
    """The pilot, the middle drill and the last one; pilots are the nearest owned ones.

    A pilot is wider than the web of the next. Source: common practice, no source.
    """
    size = positive(diameter_mm, "a hole")
    found: list[float] = []
    if size > _PILOT_OVER_MM:
        _add(found, size * _PILOT, web(size), size, owned)
    if size > _MIDDLE_OVER_MM:
        _add(found, size * _MIDDLE, max([web(size), *found]), size, owned)
    caution = ""
    if material.snatches and found:
        caution = "it snatches when a hole is opened: dub the lips, clamp, ease the feed"
    why = "the pilot takes the web's share of the thrust" if found else "small enough at once"
    return Drills((*found, size), why, caution)


def _add(
    found: list[float], wanted: float, over: float, under: float, owned: Sequence[float]
) -> None:
    fitting = [one for one in owned if over < one < under]
    if fitting:
        found.append(min(fitting, key=lambda one: (abs(one - wanted), one)))


@dataclass(frozen=True, slots=True)
class Pecks:
    """The depths in mm at which the drill comes out, the last one the full depth.

    `speed` and `feed` are the shares that are left of them in a hole so deep.
    """

    depths_mm: tuple[float, ...]
    speed: float
    feed: float
    source: str


def deep_hole(depth_mm: float, diameter_mm: float) -> tuple[float, float]:
    """The shares of speed and feed that are left in a hole so deep; 1 and 1 in a shallow one.

    Source: published guide to drilling, reductions for deep holes.
    """
    ratio = positive(depth_mm, "a depth") / positive(diameter_mm, "a drill")
    rows = [row for row in tables()["deep_holes"]["rows"] if row[0] <= ratio + 1e-9]
    return (1 - rows[-1][1], 1 - rows[-1][2]) if rows else (1.0, 1.0)


def pecks(depth_mm: float, diameter_mm: float) -> Pecks:
    """The pecks of a hole: none up to three diameters, then two, then one by one, then halves.

    Raises `NotDefined` for a hole that no twist drill reaches. Source: reductions as
    published; the pecks are common practice, no source.
    """
    speed, feed = deep_hole(depth_mm, diameter_mm)
    depth, size, source = depth_mm, diameter_mm, tables()["deep_holes"]["source"]
    ratio = depth / size
    if ratio > _REACH:
        raise NotDefined(
            f"no twist drill goes {ratio:.0f} diameters deep", "drill from both ends, or larger"
        )
    if ratio <= _NO_PECK + 1e-9:
        return Pecks((depth,), speed, feed, source)
    found = [_FIRST_PECK * size]
    while found[-1] < depth - 1e-9:
        step = _PECK if found[-1] < _DEEP * size - 1e-9 else _DEEP_PECK
        found.append(min(found[-1] + step * size, depth))
    return Pecks(tuple(found), speed, feed, source)


def point_length(diameter_mm: float, angle_deg: float = _POINT_DEG) -> float:
    """The length of a drill's point in mm: 0.30 d for 118°."""
    return positive(diameter_mm, "a drill") / 2 / math.tan(math.radians(angle_deg) / 2)
