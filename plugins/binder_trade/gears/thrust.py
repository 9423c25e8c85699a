"""Forces of gears whose shafts cross, and of planets: across, apart and along each shaft; N, mm."""

from __future__ import annotations

import math
from typing import Final

from binder_trade.explained import Step, within
from binder_trade.gears.bevel import BevelGear, BevelPair
from binder_trade.gears.gear import Gear
from binder_trade.gears.strength import Forces

SPLIT: Final = "the force square to the tooth, taken apart; friction left out"


def mean_diameter(pair: BevelPair, gear: BevelGear) -> float:
    """The pitch diameter in the middle of the face of a bevel gear, mm. Source: geometry."""
    return gear.pitch_mm - pair.face_mm * math.sin(math.radians(gear.pitch_cone_deg))


def bevel_forces(
    pair: BevelPair, torque_n_mm: float, angle_deg: float = 20.0
) -> tuple[Forces, Forces]:
    """The forces on pinion and wheel of straight bevels, by the torque on the wheel; N from N mm.

    All act in the middle of the face; the one along the shaft drives each gear away from the
    point where the axes meet. Source: F_r = F_t tan α cos δ, F_a = F_t tan α sin δ.
    """
    tangential = 2 * within(torque_n_mm, 0, 1e12, "a torque") / mean_diameter(pair, pair.wheel)
    apart = tangential * math.tan(math.radians(within(angle_deg, 0, 45, "a pressure angle", "°")))
    pinion, wheel = (
        _forces(tangential, apart * math.cos(cone), apart * math.sin(cone))
        for cone in (math.radians(one.pitch_cone_deg) for one in (pair.pinion, pair.wheel))
    )
    return pinion, wheel


def crossed_forces(first: Gear, second: Gear, torque_n_mm: float) -> tuple[Forces, Forces]:
    """The forces on two helical gears whose shafts cross, by the torque on the second; N, N mm.

    The force square to the teeth is one and the same for both; its shares go by the helix of
    each. Source: `SPLIT`.
    """
    twist = math.radians(second.helix_deg)
    across = 2 * within(torque_n_mm, 0, 1e12, "a torque") / second.pitch_mm / math.cos(twist)
    radial = across * math.tan(second.angle) * math.cos(twist)
    one, other = (
        _forces(across * math.cos(helix), radial, across * math.sin(helix))
        for helix in (math.radians(gear.helix_deg) for gear in (first, second))
    )
    return one, other


def _forces(tangential: float, radial: float, axial: float) -> Forces:
    total = math.sqrt(tangential**2 + radial**2 + axial**2)
    steps = (
        Step("tangential", "2 T / d at the middle of the face", f"{tangential:.2f} N", "statics"),
        Step("radial", "apart", f"{radial:.2f} N", SPLIT),
        Step("axial", "along the shaft", f"{axial:.2f} N", SPLIT),
    )
    return Forces(tangential, radial, axial, total, steps)
