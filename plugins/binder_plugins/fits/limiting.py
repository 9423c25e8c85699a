"""A wish and the ways of two halves to the deviations of each, in µm from nominal."""

from __future__ import annotations

from dataclasses import replace

from binder_plugins.fits.facts import Half, Wish
from binder_trade.fits.drawn_rod import on_drawn_rod
from binder_trade.fits.given import Way, given_by
from binder_trade.limits import limits

# A hole that is bored for a gap needs no class; H8 is what boring gives with a plug. A shaft
# that is turned to a size of its own keeps h9: both common practice, no source.
_BORED = "H8"
_TURNED = "h9"


def limited(
    nominal_mm: float, hole: Half, shaft: Half, wish: Wish, suit: str, apart_um: float = 0.0
) -> tuple[Half, Half]:
    """Both halves with their deviations from the shaft's nominal size in mm.

    A hole that was written `apart_um` wider than the shaft keeps the limits of its own size.
    Raises NotDefined where a class has none.
    """
    if not wish.hole:
        return _gapped(nominal_mm, hole, shaft, wish, suit, apart_um)
    hole_cls = wish.hole
    if suit == "hole" and shaft.is_fixed and shaft.cls and wish.duty:
        hole_cls = on_drawn_rod(wish.duty, nominal_mm, shaft.cls).hole
    return _to_class(nominal_mm, hole, hole_cls), _to_class(nominal_mm, shaft, wish.shaft)


def _gapped(
    nominal_mm: float, hole: Half, shaft: Half, wish: Wish, suit: str, apart_um: float
) -> tuple[Half, Half]:
    """A gap has no classes: the free half is what keeps the gap to the other."""
    if shaft.is_fixed and not hole.is_fixed:
        shaft = _to_class(nominal_mm, shaft, "")
        low, high = shaft.upper_um + wish.least_um, shaft.lower_um + wish.most_um
        return replace(hole, cls="", lower_um=low, upper_um=high), shaft
    hole = _to_class(nominal_mm + apart_um / 1000, hole, _BORED)
    if hole.way != "bought":
        hole = replace(hole, lower_um=hole.lower_um + apart_um, upper_um=hole.upper_um + apart_um)
    if shaft.is_fixed or not suit:
        return hole, _to_class(nominal_mm, shaft, _TURNED)
    low, high = hole.upper_um - wish.most_um, hole.lower_um - wish.least_um
    return hole, replace(shaft, cls="", lower_um=low, upper_um=high)


def _to_class(nominal_mm: float, half: Half, cls: str) -> Half:
    """A fixed half as its way leaves it, a free one as its class has it."""
    if half.way == "bought":
        return half
    if half.is_fixed:
        way = Way(half.way, "", half.says, half.source, half.cls)
        given = given_by(way, nominal_mm)
        return replace(half, cls=given.cls, upper_um=given.upper_um, lower_um=given.lower_um)
    made = limits(nominal_mm, cls)
    return replace(half, cls=made.cls, upper_um=made.upper_um, lower_um=made.lower_um)
