"""An act, a material, a size and a machine to what is set on it: turns, feed, depth, load."""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache

from binder_making.cutting.drilling import carried_feed, deep_hole, drilling_load
from binder_making.cutting.feed import (
    drill_feed,
    finish_depth,
    ream_feed,
    rough_depth,
    tooth_feed,
    turning_feed,
)
from binder_making.cutting.group import Group
from binder_making.cutting.power import Load, turning_load
from binder_making.cutting.speed import cutting_speed, mpm, rpm, table
from binder_making.cutting.spindle import Speeds, Turning, spindle
from binder_trade.explained import Step

_DRILLS = frozenset({"drill", "centre", "spot", "countersink", "counterbore"})
# A reamer goes at about half the speed at which its hole is really drilled: reaming tables, read.
_REAMED = 0.5
_MILLS = frozenset({"mill", "mill-flat", "keyway", "slit", "cut-teeth"})


@dataclass(frozen=True, slots=True)
class Machine:
    """What is known of a machine: its speeds, self-acting feeds in mm, motor in W, swing in mm."""

    speeds: Speeds
    feeds: tuple[float, ...] = ()
    motor_w: float = 0.0
    swing_mm: float = 0.0


@dataclass(frozen=True, slots=True)
class Cut:
    """What is set for an act.

    `feed_mm` is for a turn, or for a tooth where `is_per_tooth`; 0 where the feed is by feel.
    `depth_mm` is on the radius, 0 where it does not apply. `speed_mpm` is what the set speed
    gives. `load` is None where the motor or the cut is not known. `fluid` is what it is cut
    with. `by_motor` is true where depth or feed is less than the metal would bear, since the
    motor carries no more.
    """

    turning: Turning
    speed_mpm: float
    feed_mm: float
    is_per_tooth: bool
    depth_mm: float
    load: Load | None
    fluid: str
    steps: tuple[Step, ...]
    by_motor: bool = False


@lru_cache(maxsize=4096)
def advise(
    material: Group,
    act: str,
    diameter_mm: float,
    machine: Machine,
    *,
    tool: str = "hss",
    finish: bool = False,
    deep_mm: float = 0.0,
) -> Cut:
    """What to set for an act at a diameter in mm (of the work in a lathe, else of the cutter).

    A roughing cut is made shallower, and a drill fed more lightly, where the motor would not
    carry it; a drill that it does not carry at any feed is left with `load.is_carried` False,
    and wants smaller drills first. A hole `deep_mm` deep is drilled slower and more lightly.
    Raises `NotDefined` for an act, a tool or a size that is none, and for a machine without
    speeds.
    """
    speed = cutting_speed(material, act, tool)
    is_deep = act == "drill" and deep_mm > 0
    slower, lighter = deep_hole(deep_mm, diameter_mm) if is_deep else (1.0, 1.0)
    wanted = rpm(speed.mpm, diameter_mm) * slower
    capped = min(wanted, speed.cap_rpm) if speed.cap_rpm else wanted
    if act == "ream":
        capped = min(capped, _REAMED * _drilled(material, diameter_mm, machine, tool) or capped)
    turning = spindle(capped, machine.speeds)
    reached = mpm(turning.rpm, diameter_mm) if turning.rpm else 0.0
    fed = _feed(material, act, diameter_mm, machine, finish=finish) * lighter
    load: Load | None
    if act == "drill" and turning.rpm and machine.motor_w:
        depth, wished = 0.0, fed
        fed = min(fed, carried_feed(material, diameter_mm, turning.rpm, machine.motor_w)) or fed
        load = drilling_load(material, diameter_mm, fed, turning.rpm, machine.motor_w)
        by_motor = fed < wished
    else:
        depth, load, by_motor = _carried(material, act, fed, reached, machine, finish=finish)
    return Cut(
        turning,
        reached,
        fed,
        act in _MILLS,
        depth,
        load,
        material.cuts,
        (*speed.steps, *turning.steps, *(load.steps if load else ())),
        by_motor,
    )


def _drilled(material: Group, diameter_mm: float, machine: Machine, tool: str) -> float:
    """What the machine turns for the drill of a hole, in r/min; 0 where that goes by hand."""
    wanted = rpm(cutting_speed(material, "drill", tool).mpm, diameter_mm)
    return spindle(wanted, machine.speeds).rpm


def _carried(
    material: Group, act: str, feed: float, speed: float, machine: Machine, *, finish: bool
) -> tuple[float, Load | None, bool]:
    """The depth that the motor carries, its load, and whether it holds the cut back."""
    depth = _depth(material, act, machine, finish=finish)
    load = _load(material, depth, feed, speed, machine)
    if load is None or not depth or load.is_carried:
        return depth, load, False
    depth = load.depth_mm
    return depth, _load(material, depth, feed, speed, machine), True


def _feed(material: Group, act: str, size: float, machine: Machine, *, finish: bool) -> float:
    if act in table()["feeds"]:
        return turning_feed(material, act, finish=finish, owned=machine.feeds)
    if act in _DRILLS:
        return drill_feed(size)
    if act == "ream":
        return ream_feed(size)
    return tooth_feed(material, size) if act in _MILLS else 0.0


def _depth(material: Group, act: str, machine: Machine, *, finish: bool) -> float:
    """The depth of cut of the acts that take one off a diameter."""
    if act not in {"turn", "face", "bore", "taper"}:
        return 0.0
    if finish:
        return finish_depth()
    return rough_depth(material, machine.swing_mm) if machine.swing_mm else 0.0


def _load(
    material: Group, depth: float, feed: float, speed: float, machine: Machine
) -> Load | None:
    if not (depth and feed and speed and machine.motor_w):
        return None
    return turning_load(material, depth, feed, speed, machine.motor_w)
