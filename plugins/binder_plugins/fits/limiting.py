"""A wish and the ways of two halves to the deviations of each, in µm from nominal."""

from __future__ import annotations

from dataclasses import replace

from binder_plugins.fits.facts import Half, Wish
from binder_trade.fits.drawn_rod import on_drawn_rod
from binder_trade.fits.given import Way, given_by
from binder_trade.limits import limits

# A hole that is bored for a gap needs no class; H8 is what boring gives with a plug.
_BORED = "H8"


def limited(nominal_mm: float, hole: Half, shaft: Half, wish: Wish, suit: str) -> tuple[Half, Half]:
    """Both halves with their deviations; raises NotDefined where a class has none."""
    if not wish.hole:
        return _gapped(nominal_mm, hole, shaft, wish)
    hole_cls = wish.hole
    if suit == "hole" and shaft.is_fixed and shaft.cls and wish.duty:
        hole_cls = on_drawn_rod(wish.duty, nominal_mm, shaft.cls).hole
    return _to_class(nominal_mm, hole, hole_cls), _to_class(nominal_mm, shaft, wish.shaft)


def _gapped(nominal_mm: float, hole: Half, shaft: Half, wish: Wish) -> tuple[Half, Half]:
    """A gap has no classes: the free half is what keeps the gap to the other."""
    if shaft.is_fixed and not hole.is_fixed:
        shaft = _to_class(nominal_mm, shaft, "")
        low, high = shaft.upper_um + wish.least_um, shaft.lower_um + wish.most_um
        low, high = _in_order(low, high)
        return replace(hole, cls="", lower_um=low, upper_um=high), shaft
    hole = _to_class(nominal_mm, hole, _BORED)
    if shaft.is_fixed:
        return hole, _to_class(nominal_mm, shaft, "")
    low, high = _in_order(hole.upper_um - wish.most_um, hole.lower_um - wish.least_um)
    return hole, replace(shaft, cls="", lower_um=low, upper_um=high)


def _in_order(low: float, high: float) -> tuple[float, float]:
    """Limits that leave nothing are one size: the half is made to the measured other."""
    return (low, high) if low <= high else ((low + high) / 2, (low + high) / 2)


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
