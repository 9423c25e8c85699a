"""Tapped holes to findings: have tap and drill room, and does the metal hold."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from fractions import Fraction

from binder.api import (
    Code,
    Design,
    Diagnostic,
    Fabrication,
    Feature,
    Labelled,
    Part,
    Size,
    shown_length,
)
from binder_plugins.threads import codes
from binder_plugins.threads.check_tools import wall_round
from binder_plugins.threads.found import Found
from binder_plugins.threads.reckoned import hole
from binder_plugins.threads.shop import BLUNT_FIRST, Shop
from binder_trade.explained import NotDefined
from binder_trade.threading import (
    is_fitting,
    least_wall,
    percent,
    point_length,
    tap_lead,
    tapping_window,
)
from binder_trade.threads import Thread

# Beyond this a smaller hole on the axis is an oil way, not a tapping hole.
_MOST_PERCENT_OF_A_PILOT = 115.0
_SAME_MM = 1e-6


def check_holes(found: Iterable[Found], shop: Shop, design: Design) -> Iterator[Diagnostic]:
    """All findings about tapped holes."""
    for one in found:
        if one.is_internal:
            yield from _room(one, shop, design.units)
            yield from _wall(one, design.units)
            yield from _drilled(one, shop, design)


def _room(one: Found, shop: Shop, units: str) -> Iterator[Diagnostic]:
    """Full thread, lead of the tap and point of the drill must end in the metal."""
    if not one.is_blind or one.depth is None or one.metal is None:
        return
    room, thread = float(one.metal), one.thread
    tapped = hole(one, shop, "")
    size = tapped.drill.drill.mm if tapped.drill is not None else thread.minor_internal_mm
    point = point_length(size)
    deep = float(one.depth) + tap_lead(thread, tapped.last_tap)
    if deep + point <= room + _SAME_MM:
        return
    plug = float(one.depth) + tap_lead(thread, BLUNT_FIRST[0]) + point
    fits = room - tap_lead(thread, BLUNT_FIRST[0]) - point
    help_ = _less_thread(fits, units)
    metal = shown_length(one.metal, units)
    if tapped.last_tap != BLUNT_FIRST[0] and plug <= room + _SAME_MM:
        yield codes.TAP_BOTTOMS.at(
            one.at,
            f"only a {tapped.last_tap} tap is owned for {thread.designation}, and the hole is"
            f" blind: it needs {_mm(deep + point, units)}, there are {metal}",
            help=f"a plug tap needs {_mm(plug, units)}; buy one for this thread",
        )
    elif deep > room + _SAME_MM:
        yield codes.BLIND_HOLE_TOO_SHALLOW.at(
            one.at,
            f"full thread and the lead of the {tapped.last_tap} tap take {_mm(deep, units)},"
            f" the metal is {metal}",
            help=help_,
        )
    else:
        yield codes.DRILL_POINT_BREAKS_THROUGH.at(
            one.at,
            f"the drill's point comes to {_mm(deep + point, units)}, the metal is {metal}",
            help=help_,
        )


def _less_thread(fits: float, units: str) -> str:
    through = "let the hole go through: `depth: through`"
    if fits <= 0:
        return through
    least = Fraction(int(fits * 10), 10)
    return f"{shown_length(least, units)} of full thread fits by a plug tap; or {through}"


def _mm(value: float, units: str) -> str:
    return shown_length(Fraction(round(value * 100), 100), units)


def _wall(one: Found, units: str) -> Iterator[Diagnostic]:
    wall = wall_round(one)
    least = least_wall(one.thread)
    if wall is not None and wall < least - _SAME_MM:
        yield codes.THREAD_WALL_TOO_THIN.at(
            one.at,
            f"{_mm(wall, units)} of metal is left beside {one.thread.designation} at best",
            help=f"{_mm(least, units)} is wanted, {_rule(one.thread)}: take a thread of"
            f" {_mm(_thread_for(one.thread, wall), units)} or less",
        )


def _rule(thread: Thread) -> str:
    return "a pitch round a fitting" if is_fitting(thread) else "a quarter of the diameter"


def _thread_for(thread: Thread, wall: float) -> float:
    """The largest diameter in mm that leaves metal enough where this thread leaves so much."""
    if is_fitting(thread):
        return thread.major_mm - 2 * (least_wall(thread) - wall)
    return (2 * wall + thread.major_mm) / 1.5


def _drilled(one: Found, shop: Shop, design: Design) -> Iterator[Diagnostic]:
    """A hole that the maker wrote for this tap: on the same place, and no wider."""
    for other in _same_place(one, design):
        size = getattr(other.entry, other.kind)
        code, got = _judged(one, size.mm)
        if code is None:
            continue
        tapped = hole(one, shop, "")
        window = tapping_window(one.thread)
        least, most = _mm(window.least_mm, design.units), _mm(window.most_mm, design.units)
        chosen = tapped.drill.drill.name if tapped.drill is not None else "no drill owned"
        yield code.at(
            size.span,
            f"{size.text} leaves {got:.0f} % of thread for {one.thread.designation}",
            related=(Labelled(one.at, "tapped here"),),
            help=f"drill {chosen}; {least} to {most} will do",
        )


def _judged(one: Found, mm: float) -> tuple[Code | None, float]:
    try:
        got = percent(one.thread, mm).on_chart
    except NotDefined:
        return None, 0.0
    window = tapping_window(one.thread)
    if window.holds(mm) or got > _MOST_PERCENT_OF_A_PILOT:
        return None, got
    if mm < window.least_mm:
        return codes.TAPPING_DRILL_TOO_SMALL, got
    return codes.TAPPING_DRILL_TOO_LARGE, got


def _same_place(one: Found, design: Design) -> Iterator[Feature]:
    owner = design.item(one.feature.owner)
    features = owner.features if isinstance(owner, (Part, Fabrication)) else ()
    for other in features:
        if other.kind != "drilled" or other.is_dummy or _where(other) != _where(one.feature):
            continue
        size = getattr(other.entry, "drilled", None)
        if isinstance(size, Size) and _is_as_deep(other, one):
            yield other


def _where(feature: Feature) -> tuple[str, ...]:
    keys = ("on", "across", "at", "pattern", "off", "each_end")
    return tuple(_text(getattr(feature.entry, key, None)) for key in keys)


def _text(value: object) -> str:
    return str(getattr(value, "text", value))


def _is_as_deep(drilled: Feature, tapped: Found) -> bool:
    """A shallower hole is an entry or a seat, not the hole for the tap."""
    deep = getattr(drilled.entry, "depth", None)
    if not isinstance(deep, Size):
        return True
    return tapped.depth is not None and deep.exact >= tapped.depth
