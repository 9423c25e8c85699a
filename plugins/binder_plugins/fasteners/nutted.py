"""Joints held by nuts: bolts through all halves, studs in the last one."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from binder.api import Diagnostic
from binder_plugins.fasteners.asking import Asked
from binder_plugins.fasteners.beside_walls import check_walls
from binder_plugins.fasteners.choosing import (
    chosen,
    lengths_of,
    not_sold,
    unlisted,
    wanted,
    working,
)
from binder_plugins.fasteners.faults_of_lengths import bolt_faults
from binder_plugins.fasteners.halves import Half
from binder_plugins.fasteners.holding import hold_of, tap
from binder_plugins.fasteners.layers import layers_mm
from binder_plugins.fasteners.passing import pass_through
from binder_plugins.fasteners.roles import roles_of
from binder_plugins.fasteners.room_beside import room_on
from binder_plugins.fasteners.said import Said, Wanted
from binder_plugins.fasteners.seating import Seat, seat_of, seat_words, sit
from binder_plugins.fasteners.seen import Seen
from binder_trade.fastening import (
    Length,
    NutEnd,
    choose_bolt,
    choose_stud,
    read_fastener,
)
from binder_trade.hardware import NotListed, Nut, nut, threaded_length, washer


def bolted(seen: Seen) -> Iterator[Said]:
    """All that follows from a joint with a bolt and nut through every half."""
    seat = seat_of(seen, seen.halves[0])
    words = seat_words(seen, seen.halves[0], seat)
    yield from pass_through(seen, seen.halves, "the bolt", words)
    yield from sit(seen, seen.halves[0], seat)
    for half in seen.halves:
        is_outer = half in (seen.halves[0], seen.halves[-1])
        yield from room_on(seen, half, seat if is_outer else None)
    length = list(_bolt_length(seen, seat))
    yield from length
    yield from check_walls(seen, seen.halves[0], seat, length)
    yield from check_walls(seen, seen.halves[-1], seat, [])


def studded(seen: Seen) -> Iterator[Said]:
    """All that follows from studs in the last half with nuts on the first."""
    roles = roles_of(seen)
    thread = seen.asked.thread
    if isinstance(roles, Diagnostic):
        yield roles
        return
    if thread is None:
        return
    yield from pass_through(seen, roles.passed, str(roles.held.end))
    for half in seen.halves:
        yield from room_on(seen, half, None)
    hold = hold_of(seen, roles.held, thread)
    yield from tap(seen, roles.held, thread, hold, str(roles.passed[0].end))
    end = _nut_end(seen, roles.passed, washers=1)
    yield from _nuts(seen, washers=1)
    if hold is None or end is None:
        yield wanted(seen, seen.asked.name)
        return
    lengths = _whole_millimetres(hold.least.least_mm + end.stack_mm)
    found = choose_stud(lengths, hold.least.least_mm, end)
    yield from chosen(seen, found, {mm: f"{mm:g} mm" for mm in lengths}, end.plates_mm)


def _whole_millimetres(about_mm: float) -> list[float]:
    """Studs are cut from studding: any whole length will do."""
    return [float(mm) for mm in range(1, int(about_mm) + 40)]


def _bolt_length(seen: Seen, seat: Seat) -> Iterator[Said]:
    name = seen.asked.name
    lengths = lengths_of(seen)
    yield from _nuts(seen, washers=seen.asked.name.also.count("washer"))
    if not isinstance(lengths, dict):
        yield from unlisted(seen, lengths)
        return
    yield from not_sold(seen, lengths)
    end = _nut_end(seen, seen.halves, seat, name.also.count("washer"))
    if end is None:
        yield wanted(seen, name)
        return
    best = choose_bolt(lengths, end)
    if name.length_mm is None:
        if isinstance(best, Length):
            best = choose_bolt(lengths, end, _threaded(seen, best.chosen_mm))
        yield from chosen(seen, best, lengths, end.plates_mm)
        return
    yield from bolt_faults(seen, end, best, lengths)
    past = (name.length_mm - end.stack_mm) / end.pitch_mm
    why = f"as written; {past:.1f} threads past the nut"
    yield wanted(
        seen, name, Length(name.length_mm, end.nut_mm, -past, why, best.steps), end.plates_mm
    )
    yield working(seen, "length", "length of the bolt", name.length_text, why, best.steps)


def _threaded(seen: Seen, length_mm: float) -> float | None:
    try:
        return threaded_length(seen.asked.name.head, seen.asked.key, length_mm)
    except NotListed:
        return None


def _nut_end(
    seen: Seen, passed: tuple[Half, ...], seat: Seat | None = None, washers: int = 0
) -> NutEnd | None:
    one, thread = nut_of(seen.asked), seen.asked.thread
    known = [mm for half in passed if (mm := half.gripped) is not None]
    if one is None or thread is None:
        return None
    plates = sum(known) + layers_mm(seen)
    if seen.entry.grip is not None:
        plates = seen.entry.grip.mm
    elif len(known) < len(passed):
        return None
    plates -= seat.sunk_mm if seat is not None else 0.0
    stack = washers * _washer_mm(seen)
    return NutEnd(plates, stack, one.m_mm, thread.pitch_mm) if plates > 0 else None


def nut_of(asked: Asked) -> Nut | None:
    """The full nut of a thread, None where no table has it."""
    try:
        return nut("full", asked.key)
    except NotListed:
        return None


def _washer_mm(seen: Seen) -> float:
    try:
        return washer("plain", seen.asked.key).h_mm
    except NotListed:
        return 0.0


def _nuts(seen: Seen, washers: int) -> Iterator[Wanted]:
    """Nuts and washers where the joint asked by words; a bought item says its own."""
    if seen.asked.bought:
        return
    for what in ("nut", *(["washer"] if washers else [])):
        name = read_fastener(f"{seen.asked.name.thread_text} {what}")
        more = wanted(replace(seen, asked=replace(seen.asked, name=name)), name)
        why = "one to each" if what == "nut" or washers == 1 else f"{washers} to each"
        yield replace(more, count=seen.total * (washers if what == "washer" else 1), why=why)
