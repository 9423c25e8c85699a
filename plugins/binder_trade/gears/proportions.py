"""Proportions of a wheel's body: what is left over the bore, rim, hub, face and crossings."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

from binder_trade.explained import NotDefined, Step, mm, not_negative, positive
from binder_trade.gears.gear import Gear

PRACTICE: Final = "common practice, no source"
LEAST_WALL: Final = 1.0


@dataclass(frozen=True, slots=True)
class Body:
    """The body of a gear on a bore; mm.

    `wall_mm` is left between the bore (or the top of its keyway) and the roots; `rim_mm` the
    least rim under them where the wheel is recessed or crossed out; `is_pinion` says that the
    hub would reach the roots, so that gear and hub are one diameter.
    """

    wall_mm: float
    least_wall_mm: float
    is_sound: bool
    rim_mm: float
    hub_mm: float
    hub_length_mm: float
    face_least_mm: float
    face_most_mm: float
    is_pinion: bool
    steps: tuple[Step, ...]


def body(gear: Gear, bore_mm: float, keyway_mm: float = 0.0) -> Body:
    """The body of an external gear on a bore, its keyway so deep in the hub; mm.

    The wall is at least a millimetre and one and a half modules; rim 2 modules, hub 1.8 bores,
    hub length 1.25 bores, face 6 to 12 modules. Common practice.
    """
    if gear.is_internal:
        raise NotDefined("a ring has no bore", "give the ring's outside diameter instead")
    positive(bore_mm, "a bore")
    wall = (gear.root_mm - bore_mm) / 2 - not_negative(keyway_mm, "the depth of a keyway")
    module = gear.module_mm
    least = max(LEAST_WALL, 1.5 * module)
    hub = 1.8 * bore_mm
    return Body(
        wall,
        least,
        wall >= least - 1e-9,
        2 * module,
        hub,
        1.25 * bore_mm,
        6 * module,
        12 * module,
        hub >= gear.root_mm - 4 * module,
        (
            Step("wall over the bore", "(d_f − bore) / 2 − keyway", mm(wall), "geometry"),
            Step("least wall", "1 mm, or 1.5 m", mm(least), PRACTICE),
            Step("rim", "2 m under the roots", mm(2 * module), PRACTICE),
            Step("hub", "1.8 × the bore", mm(hub), PRACTICE),
        ),
    )


def largest_bore(gear: Gear, keyway_mm: float = 0.0) -> float:
    """The largest bore that leaves the least wall under the roots; mm. Raises NotDefined."""
    wall = max(LEAST_WALL, 1.5 * gear.module_mm)
    bore = gear.root_mm - 2 * (wall + keyway_mm)
    if bore <= 0:
        raise NotDefined("the roots leave no room for a bore", "cut the teeth on the shaft itself")
    return bore
