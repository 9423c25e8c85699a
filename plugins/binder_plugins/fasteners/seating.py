"""Where a screw's head sits: on top, in a counterbore, a countersink or a spotface."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from binder.api import Diagnostic
from binder_plugins.fasteners import hole_codes
from binder_plugins.fasteners.halves import Half
from binder_plugins.fasteners.holes import seat_feature
from binder_plugins.fasteners.lengths_sold import usual_head
from binder_plugins.fasteners.passing import hole_mm
from binder_plugins.fasteners.said import Said
from binder_plugins.fasteners.seen import Seen
from binder_plugins.fasteners.spotfaces import spotface_deep, spotface_wide
from binder_solid.opposite import BEHIND
from binder_trade.explained import NotDefined
from binder_trade.fastening import countersink_in_plate, land_under_head, same_angle
from binder_trade.hardware import (
    Countersink,
    Head,
    NotListed,
    counterbore,
    countersink,
    head,
    wood_screw,
)


@dataclass(frozen=True, slots=True)
class Seat:
    """How a head sits; in mm: how deep, how wide its seat is, how high the head."""

    how: str
    sunk_mm: float = 0.0
    wide_mm: float | None = None
    head: Head | None = None


def seat_of(seen: Seen, under: Half) -> Seat:
    """The seat that is asked for, else that of the head: a countersunk one is let in."""
    one = head_of(seen)
    cone = "countersunk" in seen.asked.name.head
    how = str(seen.entry.head or ("countersunk" if cone else "on top"))
    recess = under.hole.recess if under.hole is not None else None
    if how == "on top" and recess is not None and not cone:
        return Seat("as written", float(recess), _wide(one), one)
    if how == "spotfaced":
        wide = spotface_wide(seen, one)
        return Seat(how, spotface_deep(seen, under, wide), wide, one)
    if how == "counterbored" and one is not None and not cone:
        try:
            seat = counterbore(one.kind, one.thread)
        except NotListed:
            return Seat(how, 0.0, _wide(one), one)
        return Seat(how, seat.depth_mm, seat.diameter_mm, one)
    return Seat(how, 0.0, _wide(one) or _of_wood_screw(seen), one)


def seat_words(seen: Seen, under: Half, seat: Seat) -> str:
    """`, counterbore ⌀6.5 × 3.4 mm deep on underside`: the seat, for the half's own line."""
    away = BEHIND.get(under.face, "")
    there = f" on {away}" if away and not under.is_radial else ""
    if seat.how == "countersunk":
        cone = _cone(seat)
        wide = cone.diameter_mm if cone is not None else _of_wood_screw(seen)
        return f", countersink to ⌀{wide:.1f}{there}" if wide is not None else ""
    verbs = {"counterbored": "counterbore", "spotfaced": "spotface"}
    if seat.how not in verbs or not seat.wide_mm:
        return ""
    deep = f" × {seat.sunk_mm:g} mm deep" if seat.sunk_mm else ""
    return f", {verbs[seat.how]} ⌀{seat.wide_mm:g}{deep}{there}"


def _cone(seat: Seat) -> Countersink | None:
    if seat.head is None:
        return None
    try:
        return countersink(seat.head.kind, seat.head.thread)
    except NotListed:
        return None


def head_of(seen: Seen) -> Head | None:
    """The head as its standard lists it, None where none does."""
    name = seen.asked.name
    if seen.asked.thread is None or name.kind not in ("screw", "bolt"):
        return None
    try:
        return head(name.head or usual_head(seen.asked), seen.asked.key)
    except NotListed:
        return None


def sit(seen: Seen, under: Half, seat: Seat) -> Iterator[Said]:
    """The feature of the seat, and what is wrong with it."""
    if seat.how == "counterbored" and seat.wide_mm is not None:
        yield from _one(seat_feature(seen, under, "counterbored", seat.wide_mm, seat.sunk_mm))
    elif seat.how == "countersunk":
        yield from _countersunk(seen, under, seat)
    elif seat.how == "spotfaced":
        yield from _one(seat_feature(seen, under, "spotfaced", seat.wide_mm or 0.0, seat.sunk_mm))
    elif _is_on_round(under) and "countersunk" not in seen.asked.name.head:
        yield hole_codes.SEAT_MISSING.at(
            under.end.at,
            f"the head of '{seen.asked.name.says}' bears on a round surface of '{under.end}'",
            help="say `head: spotfaced`, or mill a flat there",
        )
    yield from _land(seen, under, seat)


def _one(found: Said | None) -> Iterator[Said]:
    if found is not None:
        yield found


def _wide(one: Head | None) -> float | None:
    return one.envelope_mm if one is not None else None


def _of_wood_screw(seen: Seen) -> float | None:
    name = seen.asked.name
    if name.kind != "wood screw" or not name.thread_text.startswith("no. "):
        return None
    try:
        return wood_screw(int(name.thread_text.removeprefix("no. "))).head_mm
    except NotListed:
        return None


def _is_on_round(under: Half) -> bool:
    return under.is_radial and (under.place is None or under.place.is_round)


def _land(seen: Seen, under: Half, seat: Seat) -> Iterator[Said]:
    size = seen.asked.diameter_mm
    metal = under.metal
    if not seat.sunk_mm or metal is None or metal <= 0 or size is None:
        return
    try:
        verdict = land_under_head(metal, seat.sunk_mm, size)
    except NotDefined:
        return
    if not verdict.is_good:
        yield hole_codes.LAND_THIN.at(
            under.end.at,
            f"the head sunk {seat.sunk_mm:g} mm leaves {verdict.has_mm:.1f} mm of '{under.end}'; "
            f"{verdict.needs_mm:.1f} mm is the least",
            help=f"use {', '.join(verdict.ways_out[:2])}",
        )


def _countersunk(seen: Seen, under: Half, seat: Seat) -> Iterator[Said]:
    name = seen.asked.name
    if name.kind in ("screw", "bolt") and "countersunk" not in name.head:
        yield _mismatch(seen, under, f"a {name.head or 'plain'} head does not fill a cone")
        return
    if name.kind == "wood screw":
        yield from _wood_cone(seen, under)
    cone = _cone(seat)
    if cone is None:
        return
    yield from _one(seat_feature(seen, under, "countersunk", cone.diameter_mm, None))
    yield from _angle(seen, under, cone.angle_deg)
    hole = hole_mm(seen, under)
    if under.thick is None or hole is None:
        return
    verdict = countersink_in_plate(under.thick, cone.diameter_mm, hole, cone.angle_deg)
    if not verdict.is_good:
        words = f"a countersink of {cone.diameter_mm:g} mm wants {verdict.needs_mm:.1f} mm of plate"
        yield _mismatch(seen, under, f"{words}, there are {under.thick:g}")


def _wood_cone(seen: Seen, under: Half) -> Iterator[Said]:
    """The countersink of a wood screw, as wide as its head."""
    number = seen.asked.name.thread_text.removeprefix("no. ")
    try:
        screw = wood_screw(int(number))
    except (NotListed, ValueError):
        return
    yield from _one(seat_feature(seen, under, "countersunk", screw.head_mm, None))


def _angle(seen: Seen, under: Half, angle_deg: float) -> Iterator[Said]:
    owned = [float(one.angle.exact) for one in seen.design.workshop.entry.cutters.countersinks]
    if owned and not any(same_angle(angle_deg, one) for one in owned):
        have = ", ".join(f"{one:g}°" for one in owned)
        yield _mismatch(seen, under, f"the head has {angle_deg:g}°, the countersink owned {have}")


def _mismatch(seen: Seen, under: Half, words: str) -> Diagnostic:
    return hole_codes.COUNTERSINK_MISMATCH.at(
        under.end.at,
        f"'{seen.asked.name.says}' does not sit in '{under.end}': {words}",
        help="use a cheese or cap head, or a screw that suits the countersink",
    )
