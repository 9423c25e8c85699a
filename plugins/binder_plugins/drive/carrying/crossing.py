"""Bevels, skew gears and planets: what they do to the shafts that carry them."""

from __future__ import annotations

from math import hypot

from binder.api import Design, End, Joint, Size
from binder_plugins.drive.carrying.pair import Pair
from binder_plugins.drive.train.told import module_of, teeth_of
from binder_trade.explained import NotDefined
from binder_trade.gears.bevel import bevel
from binder_trade.gears.gear import Gear
from binder_trade.gears.strength import Forces
from binder_trade.gears.thrust import bevel_forces, crossed_forces, mean_diameter

_RIGHT_ANGLE, _USUAL_PRESSURE = 90.0, 20.0
_UNTOLD = NotDefined("the teeth are not told", "write `teeth:` and `module:`")
Two = tuple[End, End]


def bevel_pair(joint: Joint, ends: Two, torque: float, _step: int, design: Design) -> Pair:
    """Straight bevels push one another away from the point where their axes meet."""
    teeth, module = _teeth(joint, ends, design), _module(joint, design)
    face = getattr(joint.entry, "face", None)
    made = bevel(
        *teeth,
        module,
        shafts_deg=_degrees(joint, "shafts_at", _RIGHT_ANGLE),
        face_mm=face.mm if isinstance(face, Size) else None,
    )
    pressure = _degrees(joint, "pressure_angle", _USUAL_PRESSURE)
    radii = (mean_diameter(made, made.pinion) / 2, mean_diameter(made, made.wheel) / 2)
    return _pair(bevel_forces(made, torque, pressure), radii, is_apart=True)


def skew_pair(joint: Joint, ends: Two, torque: float, _step: int, design: Design) -> Pair:
    """Helical gears on shafts that cross slide on one another, and push along both shafts."""
    teeth, module = _teeth(joint, ends, design), _module(joint, design)
    helix = [float(one.exact) for one in joint.entry.helix]  # type: ignore[attr-defined]
    turns = helix if ends[0] is joint.ends[0] else helix[::-1]
    gears = [Gear(z, module, helix_deg=abs(one)) for z, one in zip(teeth, turns, strict=True)]
    radii = (gears[0].pitch_mm / 2, gears[1].pitch_mm / 2)
    return _pair(crossed_forces(gears[0], gears[1], torque), radii)


def orbit_pair(joint: Joint, ends: Two, _torque: float, _step: int, design: Design) -> Pair:
    """Planets that stand evenly round the sun push from all sides alike: nothing is left over.

    The pushes of a single planet, and those on the pins, are not reckoned.
    """
    planets = getattr(joint.entry, "planets", None)
    if planets is None or int(planets) < 2:
        raise NotDefined("a single planet, or one not told, leaves a push", "write `planets: 3`")
    return Pair(0.0, 0.0)


def _pair(
    made: tuple[Forces, Forces], radii: tuple[float, float], *, is_apart: bool = False
) -> Pair:
    driver, driven = made
    return Pair(
        driven.radial_n,
        driven.tangential_n,
        hypot(driver.radial_n, driver.tangential_n),
        (driver.axial_n, driven.axial_n),
        radii,
        is_apart,
    )


def _teeth(joint: Joint, ends: Two, design: Design) -> tuple[int, int]:
    first = 0 if ends[0] is joint.ends[0] else 1
    found = [teeth_of(joint, number, design) for number in (first, 1 - first)]
    if not found[0] or not found[1]:
        raise _UNTOLD
    return found[0], found[1]


def _module(joint: Joint, design: Design) -> float:
    module = module_of(joint, design)
    if module is None:
        raise _UNTOLD
    return float(module)


def _degrees(joint: Joint, name: str, usual: float) -> float:
    said = getattr(joint.entry, name, None)
    return float(said.exact) if isinstance(said, Size) else usual
