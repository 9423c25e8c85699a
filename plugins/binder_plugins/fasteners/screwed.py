"""Joints held by screws: the holes of both halves, the seat of the head, the length."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import Diagnostic
from binder_plugins.fasteners import codes
from binder_plugins.fasteners.beside_walls import check_walls
from binder_plugins.fasteners.choosing import (
    better_words,
    chosen,
    faults,
    lengths_of,
    not_sold,
    screw_length,
    unlisted,
    wanted,
    working,
)
from binder_plugins.fasteners.halves import Half
from binder_plugins.fasteners.holding import hold_of, pilot, tap
from binder_plugins.fasteners.layers import layers_mm
from binder_plugins.fasteners.passing import pass_through
from binder_plugins.fasteners.roles import roles_of
from binder_plugins.fasteners.room_beside import laid, room_on
from binder_plugins.fasteners.said import Said
from binder_plugins.fasteners.seating import Seat, seat_of, seat_words, sit
from binder_plugins.fasteners.seen import Seen
from binder_trade.fastening import (
    LEAST_DIAMETERS,
    Grip,
    Layout,
    Length,
    TappedHole,
    choose_wood_screw,
    judge_wood_screw,
)
from binder_trade.hardware import NotListed, washer

_ACROSS_GRAIN_MM = 75.0


def screwed(seen: Seen) -> Iterator[Said]:
    """All that follows from a screwed joint."""
    roles = roles_of(seen)
    if isinstance(roles, Diagnostic):
        yield roles
        return
    under, held = roles.passed[0], roles.held
    seat = seat_of(seen, under)
    yield from pass_through(seen, roles.passed, str(held.end), seat_words(seen, under, seat))
    yield from sit(seen, under, seat)
    for half in seen.halves:
        yield from room_on(seen, half, seat if half is under else None)
    yield from _across_grain(seen)
    grip = grip_of(seen, roles.passed, seat)
    if seen.asked.thread is None:
        yield from pilot(seen, held, str(under.end))
        yield from _wood_length(seen, grip, held)
        return
    hold = hold_of(seen, held, seen.asked.thread, grip)
    yield from tap(seen, held, seen.asked.thread, hold, str(under.end))
    length = list(
        screw_length(
            seen,
            grip,
            hold.hole if hold is not None else None,
            hold.least_mm if hold is not None else 0.0,
        )
    )
    yield from length
    yield from check_walls(seen, under, seat, length)


def grip_of(seen: Seen, passed: tuple[Half, ...], seat: Seat) -> Grip | None:
    """What the screw passes: as it is said, else the metal of all it goes through."""
    thick = [half.gripped for half in passed]
    said = seen.entry.grip
    known = [one for one in thick if one is not None]
    if said is not None:
        plate = said.mm
    elif len(known) == len(thick):
        plate = sum(known) + layers_mm(seen)
    else:
        return None
    sunk = seat.sunk_mm if seat.sunk_mm < plate else 0.0
    washers = 0.0 if "washer" not in seen.asked.name.also else _washer(seen)
    return Grip(plate, sunk_mm=sunk, washer_mm=washers) if plate > 0 else None


def _washer(seen: Seen) -> float:
    try:
        return washer("plain", seen.asked.key).h_mm
    except NotListed:
        return 0.0


def _wood_length(seen: Seen, grip: Grip | None, held: Half) -> Iterator[Said]:
    name, size = seen.asked.name, seen.asked.diameter_mm
    lengths = lengths_of(seen)
    if not isinstance(lengths, dict):
        yield from unlisted(seen, lengths)
        return
    yield from not_sold(seen, lengths)
    if grip is None or held.thick is None or size is None:
        yield wanted(seen, name, grip_mm=grip.length_mm if grip is not None else None)
        return
    best = choose_wood_screw(lengths, grip, held.thick, size)
    if name.length_mm is None:
        yield from chosen(seen, best, lengths, grip.length_mm)
        return
    found = judge_wood_screw(name.length_mm, grip, held.thick, size)
    wood = TappedHole(held.thick, 1.0, is_through=True)
    yield from faults(seen, found, wood, LEAST_DIAMETERS * size, better_words(best, lengths))
    why = f"as written; {found.engagement_mm:.1f} mm in the wood"
    held_by = Length(name.length_mm, found.engagement_mm, found.spare_mm, why, best.steps)
    yield wanted(seen, name, held_by, grip.length_mm)
    yield working(seen, "length", "length of the wood screw", name.length_text, why, best.steps)


def _across_grain(seen: Seen) -> Iterator[Said]:
    """A board (timber lies with its length along the grain) held tight over its width."""
    layout = laid(seen)
    if not isinstance(layout, Layout) or seen.joint.kind == "buttoned":
        return
    width = layout.extent_mm[1]
    for half in seen.halves:
        if half.group in ("hardwood", "softwood") and width > _ACROSS_GRAIN_MM:
            yield codes.WOOD_FIXED_ACROSS_GRAIN.at(
                seen.joint.at,
                f"'{half.end.item}' is held tight over {width:.0f} mm across its grain",
                help="use `buttoned:` with slotted holes, or bring the rows nearer together",
            )
