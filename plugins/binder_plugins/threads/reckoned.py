"""A thread of the model to its figures for the bench: drill, depths, blank, wires."""

from __future__ import annotations

from dataclasses import dataclass

from binder_plugins.threads.found import Found
from binder_plugins.threads.shop import BLUNT_FIRST, Shop
from binder_trade.drills import NoDrill
from binder_trade.explained import NotDefined
from binder_trade.threading import (
    BlindHole,
    OverWires,
    Screwcutting,
    TappingDrill,
    best_wire,
    blind,
    over_owned,
    over_wires,
    screwcutting,
)
from binder_trade.threads import Thread


@dataclass(frozen=True, slots=True)
class Hole:
    """A tapped hole: its drill or why there is none, and its depths where it is blind.

    `drill_mm` is the depth of the full diameter, `tip_mm` that of the point; without room for
    chips they must be blown out. Depths are in mm, None where the hole goes through.
    """

    drill: TappingDrill | None
    missing: NoDrill | None
    last_tap: str
    depths: BlindHole | None
    drill_mm: float | None
    tip_mm: float | None
    has_chip_room: bool


@dataclass(frozen=True, slots=True)
class Outside:
    """An outside thread: its figures for lathe and die, and its size over three wires.

    The wires are shanks of owned drills where any lie in the thread, else the best wire; None
    where no wire rests in it.
    """

    figures: Screwcutting
    wires: OverWires | None


def hole(found: Found, shop: Shop, material: str) -> Hole:
    """The figures of a tapped hole."""
    chosen = shop.drill_for(found.thread, material)
    drill, missing = (None, chosen) if isinstance(chosen, NoDrill) else (chosen, None)
    last = next(iter(shop.tap_kinds(found.thread)), BLUNT_FIRST[0])
    if not found.is_blind or found.depth is None:
        return Hole(drill, missing, last, None, None, None, has_chip_room=True)
    size = drill.drill.mm if drill is not None else None
    depths = blind(found.thread, float(found.depth), last, size)
    room = float(found.metal) if found.metal is not None else None
    has_room = room is None or depths.tip_mm <= room
    less = 0.0 if has_room else depths.chips_mm
    deep, tip = depths.drill_mm - less, depths.tip_mm - less
    return Hole(drill, missing, last, depths, deep, tip, has_chip_room=has_room)


def outside(found: Found, shop: Shop) -> Outside:
    """The figures of an outside thread."""
    return Outside(screwcutting(found.thread), _wires(found.thread, shop))


def _wires(thread: Thread, shop: Shop) -> OverWires | None:
    # Wires tilt in a steep thread of several starts: the plain sum does not hold there.
    if not thread.form.angle_deg or thread.starts > 1:
        return None
    try:
        return over_owned(thread, shop.drills)
    except NotDefined:
        best = best_wire(thread)
        return over_wires(thread, best, f"{best:.3f} mm wire")
