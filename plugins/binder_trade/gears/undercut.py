"""Least teeth that are not undercut, the profile shift that saves fewer, and what top is left."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from typing import Final

from binder_trade.explained import NotDefined, Step, within
from binder_trade.gears.gear import ISO, Gear
from binder_trade.gears.racks import Rack, rack

TOP: Final = 0.25
TOP_RULE: Final = "the top of a tooth at least a quarter of a module (common practice)"
_HALVINGS: Final = 80


@dataclass(frozen=True, slots=True)
class Limits:
    """What a gear of few teeth bears: profile shifts in modules, top of the tooth in modules.

    `least_shift` is the least without undercut, `most_shift` the one that leaves a top of a
    quarter of a module; `top` is what the gear as given leaves.
    """

    least_teeth: float
    least_shift: float
    most_shift: float
    top: float
    is_undercut: bool
    steps: tuple[Step, ...]


def least_teeth(basic: Rack | None = None, shift: float = 0.0, helix_deg: float = 0.0) -> float:
    """The teeth, no whole number, below which a rack-shaped tool undercuts: 2 (h_a − x) / sin² α.

    Source: ISO 21771; 17.1 at 20°, 31.9 at 14½°.
    """
    basic = basic or rack()
    lean = math.cos(math.radians(helix_deg))
    sine = math.sin(math.atan(math.tan(basic.angle) / lean))
    return float(2 * (basic.addendum - shift) * lean / sine**2)


def least_teeth_with(mate: float, basic: Rack | None = None) -> float:
    """The teeth, no whole number, of the least pinion that clears a mate of `mate` × its teeth.

    Full depth, no shift, drawn teeth and not generated ones. Source: Bevan, Theory of Machines.
    """
    basic = basic or rack()
    within(mate, 1, 1000, "how many times the pinion's teeth its mate has")
    part, sine = 1 / mate, math.sin(basic.angle)
    root = math.sqrt(1 + part * (part + 2) * sine**2)
    return 2 * basic.addendum * part / (root - 1)


def limits(gear: Gear) -> Limits:
    """Undercut and pointed tips of an external gear; raises NotDefined for an internal one."""
    if gear.is_internal:
        raise NotDefined("an internal gear is not undercut by a rack", "look at its pinion")
    bare = least_teeth(gear.rack, 0, gear.helix_deg)
    least = gear.rack.addendum * (bare - gear.teeth) / bare
    below = gear.shift < least - 1e-9
    wanted = f"{least:+.3f} m".replace("-", "−")
    return Limits(
        bare,
        least,
        _most_shift(gear),
        top_of(gear),
        below,
        (
            Step("least teeth", "2 h_a / sin² α", f"{bare:.2f}", ISO),
            Step("least shift", "h_a (z_min − z) / z_min", wanted, ISO),
            Step("top of the tooth", "thickness at the tip / m", f"{top_of(gear):.3f} m", TOP_RULE),
        ),
    )


def top_of(gear: Gear) -> float:
    """The thickness of the tooth at its tip, in modules; under nothing where it is pointed."""
    return gear.thickness_at(max(gear.tip_mm, gear.base_mm)) / gear.module_mm


def _most_shift(gear: Gear) -> float:
    low, high = -1.0, 2.0
    for _ in range(_HALVINGS):
        middle = (low + high) / 2
        low, high = (middle, high) if _top_at(gear, middle) > TOP else (low, middle)
    return low


def _top_at(gear: Gear, shift: float) -> float:
    try:
        return top_of(replace(gear, shift=shift))
    except NotDefined:
        return TOP + 1
