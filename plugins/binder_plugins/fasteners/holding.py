"""The half that the thread holds in: its tapped hole or pilot, and how much holds there."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from math import ceil

from binder.api import Misread, PlaceFact, made_size, read_thread
from binder_plugins.fasteners import codes, hole_codes
from binder_plugins.fasteners.about import drills_of
from binder_plugins.fasteners.choosing import lengths_of
from binder_plugins.fasteners.halves import Half
from binder_plugins.fasteners.holes import hole_feature, says_many
from binder_plugins.fasteners.passing import half_fact
from binder_plugins.fasteners.said import Said
from binder_plugins.fasteners.seen import Seen
from binder_trade.explained import NotDefined
from binder_trade.fastening import (
    Engagement,
    Grip,
    NoLength,
    TappedHole,
    choose_length,
    least_engagement,
    times_d,
)
from binder_trade.hardware import NotListed, WoodScrew, wood_screw
from binder_trade.threads import NotMade, Thread, from_name, is_same

_SCREW_GROUPS = {
    "brass": "brass",
    "copper": "copper",
    "nylon": "plastic",
    "aluminium": "aluminium",
    "stainless steel": "stainless steel",
    "stainless": "stainless steel",
    "bronze": "bronze",
    "phosphor bronze": "bronze",
}
SOFT = ("aluminium", "magnesium", "zinc alloy", "plastic", "laminate")
# A blind hole has a thread free beyond the screw's end and one over; half as much again as must
# hold where the screw's end is not known.
_TIMES_LEAST = 1.5
_THREADS_OVER = 2
_TAP_LEAD = 4
_HALF_MM = 0.5
_THIRTY_SECOND_MM = 25.4 / 32
_SAME = 1e-6
_DEEPEST_MM = 1000.0


@dataclass(frozen=True, slots=True)
class Hold:
    """The thread that is there, and the least that must hold, in mm."""

    hole: TappedHole
    least: Engagement
    wanted_mm: float | None

    @property
    def least_mm(self) -> float:
        """By the rule, or what the maker asks for where that is more."""
        return max(self.least.least_mm, self.wanted_mm or 0.0)


def screw_group(seen: Seen) -> str:
    """The group of metals that a fastener is of; steel where its words do not say."""
    return _SCREW_GROUPS.get(seen.asked.name.material, "carbon steel")


def hold_of(seen: Seen, held: Half, thread: Thread, grip: Grip | None = None) -> Hold | None:
    """The tapped hole of the half that holds; None where its depth is not known at all.

    A hole that the joint makes is deep enough for the length that is written, else for the
    shortest sold that holds.
    """
    least = _least(seen, held, thread)
    wanted = seen.entry.engagement.mm if seen.entry.engagement is not None else None
    must = max(least.least_mm, wanted or 0.0)
    hole = held.hole if held.hole is not None and held.is_tapped else None
    pitch = thread.pitch_mm
    if hole is not None and hole.depth is not None:
        return Hold(TappedHole(float(hole.depth), pitch), least, wanted)
    is_through = hole is not None and (not held.is_to_make or _says_through(seen, hole))
    metal = held.metal
    if hole is not None and hole.is_through and is_through and metal is not None:
        return Hold(TappedHole(metal, pitch, is_through=True), least, wanted)
    if not held.is_to_make:
        return None
    wish = _reach(seen, grip, must) + _THREADS_OVER * pitch
    step_mm = _HALF_MM if seen.design.units == "mm" else _THIRTY_SECOND_MM
    full = round(ceil(min(wish, _DEEPEST_MM) / step_mm - _SAME) * step_mm, 5)
    room = full + _TAP_LEAD * pitch + 0.3 * thread.major_mm
    if metal is not None and metal <= room:
        return Hold(TappedHole(metal, pitch, is_through=True), least, wanted)
    return Hold(TappedHole(full, pitch), least, wanted)


def _reach(seen: Seen, grip: Grip | None, must_mm: float) -> float:
    """How far the end of the screw comes into the held half, or may come, in mm."""
    if seen.joint.kind == "studded":
        return must_mm
    length = seen.asked.name.length_mm
    if grip is None:
        return _TIMES_LEAST * must_mm
    if length is not None:
        return max(length - grip.length_mm, must_mm)
    lengths = lengths_of(seen)
    if not isinstance(lengths, dict) or not lengths:
        return _TIMES_LEAST * must_mm
    best = choose_length(lengths, grip, TappedHole(_DEEPEST_MM, 1.0), must_mm, must_mm)
    return _TIMES_LEAST * must_mm if isinstance(best, NoLength) else best.chosen_mm - grip.length_mm


def _says_through(seen: Seen, hole: PlaceFact) -> bool:
    """A hole that is left to suit may still be written `depth: through`."""
    owner = seen.design.parts.get(hole.item) or seen.design.fabrications.get(hole.item)
    features = owner.features if owner is not None else ()
    return any(
        getattr(one.entry, "depth", None) == "through" for one in features if one.name == hole.place
    )


def _least(seen: Seen, held: Half, thread: Thread) -> Engagement:
    """By the softer half; a material that no rule names is taken for steel."""
    return least_engagement(
        held.group if holds_thread(held.group) else "carbon steel",
        screw_group(seen),
        thread.major_mm,
        thread.pitch_mm,
        is_undone_often=seen.entry.serviced,
    )


def holds_thread(group: str) -> bool:
    """A rule says how much of a thread must hold in this group of materials."""
    try:
        times_d(group)
    except NotDefined:
        return False
    return True


def tap(seen: Seen, held: Half, thread: Thread, hold: Hold | None, mate: str) -> Iterator[Said]:
    """The tapped hole as a feature, its line for the leaf, and what is wrong with it."""
    yield from _differs(seen, held, thread)
    if hold is not None and held.is_to_make:
        read = read_thread(thread.designation)
        if isinstance(read, Misread):
            return
        full = made_size(hold.hole.full_thread_mm, seen.joint)
        depth = "through" if hold.hole.is_through else full
        feature = hole_feature(seen, held, "tapped", read, depth)
        if feature is not None:
            yield feature
    if hold is not None:
        deep = "through" if hold.hole.is_through else f"{hold.hole.full_thread_mm:g} mm full"
        what = f"tap {thread.designation}, {deep}{says_many(seen, held)}"
        yield half_fact(seen, held, what, mate, seen.joint.made)
    if seen.entry.serviced and held.group in SOFT:
        yield codes.SOFT_THREAD_UNDONE_OFTEN.at(
            held.end.at,
            f"'{seen.joint.name}' is often undone, and its thread is in {held.group}",
            help=f"use {thread.designation} studs and nuts, or a thread insert",
        )


def _differs(seen: Seen, held: Half, thread: Thread) -> Iterator[Said]:
    hole = held.hole
    if hole is None or hole.thread is None:
        return
    try:
        there = from_name(hole.thread)
    except NotMade:
        return
    if not is_same(there, thread):
        yield hole_codes.HOLE_SIZES_DIFFER.at(
            held.end.at,
            f"'{held.end}' is tapped {there.designation}, the screw is {thread.designation}",
            help=f"tap {thread.designation}, or write `tapped: to suit`",
        )


def screw_of(seen: Seen) -> WoodScrew | None:
    """The wood screw as its table lists it."""
    number = seen.asked.name.thread_text.removeprefix("no. ")
    try:
        return wood_screw(int(number)) if number.isdecimal() else None
    except NotListed:
        return None


def pilot(seen: Seen, held: Half, mate: str) -> Iterator[Said]:
    """The pilot hole in wood: a written one is checked, else it is told on the leaf."""
    screw = screw_of(seen)
    if screw is None:
        return
    is_hard = held.group == "hardwood"
    wanted = screw.pilot_hard_mm if is_hard else screw.pilot_soft_mm
    is_brass = seen.asked.name.material == "brass"
    hole = held.hole.diameter if held.hole is not None else None
    if is_hard and is_brass and hole is not None and float(hole) < wanted - 0.1:
        yield codes.BRASS_SCREW_INTO_HARDWOOD.at(
            held.end.at,
            f"a brass no. {screw.number} screw twists off in a pilot hole of {float(hole):g} mm",
            help=f"drill {wanted:g} mm and cut the thread with a steel screw first",
        )
    drills = drills_of(seen.design.workshop)
    near = min(drills, key=lambda one: abs(one[1] - wanted), default=(f"{wanted:g} mm", wanted))
    steel = "; cut the thread with a steel screw first" if is_brass and is_hard else ""
    how = f"spotted through its mate{steel}"
    yield half_fact(seen, held, f"pilot hole {near[0]}{says_many(seen, held)}", mate, how)
