"""`M3 cap screw grip 5 mm into brass 10 mm deep` turned into holes, head and length."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass
from typing import Final

from binder.api import NOWHERE, Answer, Diagnostic, Reason, Result, Workshop, reasons
from binder_plugins.fasteners.about import drills_of, thread_named
from binder_plugins.fasteners.asking import Asked, thread_of
from binder_plugins.fasteners.lengths_sold import sold, usual_head
from binder_plugins.fasteners.words_asked import length_mm, one_line, refused
from binder_trade.explained import NotDefined
from binder_trade.fastening import (
    Grip,
    Length,
    NoLength,
    TappedHole,
    choose_length,
    read_fastener,
)
from binder_trade.hardware import Head, NotListed, counterbore, countersink, head
from binder_trade.threading import clearance_drill, engagement, tapping_drill
from binder_trade.threads import Thread

_SIZE: Final = r"[0-9][0-9./ ]{0,12} ?(?:mm|in|thou)"
_GRIP: Final = re.compile(rf" grip ({_SIZE})")
_INTO: Final = re.compile(rf" into ([a-z]+(?: [a-z]+){{0,3}}?)(?: ({_SIZE}) (deep|through))?$")
_MATERIAL: Final = "mild steel"
_WOODS: Final = frozenset({"oak", "beech", "ash", "pine", "wood", "plywood", "mahogany", "teak"})


@dataclass(frozen=True, slots=True)
class Question:
    """What was asked: the screw's words, grip and full thread in mm, None where not said."""

    screw: str
    grip_mm: float | None
    material: str
    deep_mm: float | None
    is_through: bool
    is_sunk: bool


def about_screw(words: Sequence[str], workshop: Workshop) -> Answer | Diagnostic:
    """Holes, head, seat and length of a screw; a finding for words that ask for none."""
    try:
        return _answer(_question(one_line(words)), workshop)
    except (NotDefined, NotListed) as fault:
        return refused(fault.reason, fault.way_out)
    except ValueError as fault:  # NotMade of the threads, a ValueError with both words
        return refused(
            getattr(fault, "reason", str(fault)), getattr(fault, "way_out", "name another")
        )


def _question(line: str) -> Question:
    line, is_sunk = re.sub(r" counterbored\b", "", line), " counterbored" in line
    grip = _GRIP.search(line)
    rest = line[: grip.start()] + line[grip.end() :] if grip else line
    into = _INTO.search(rest)
    return Question(
        screw=rest[: into.start()] if into else rest,
        grip_mm=length_mm(grip[1]) if grip else None,
        material=into[1] if into else _MATERIAL,
        deep_mm=length_mm(into[2]) if into and into[2] else None,
        is_through=bool(into and into[3] == "through"),
        is_sunk=is_sunk,
    )


def _answer(asked: Question, workshop: Workshop) -> Answer:
    name = read_fastener(thread_named(asked.screw, workshop))
    thread = thread_of(name)
    if thread is None or name.kind not in ("screw", "bolt"):
        raise NotDefined(f"{name.says} is no machine screw", "ask as: M3 cap screw")
    one = Asked(name, "", NOWHERE, thread, thread.major_mm)
    results, working = _holes(thread, asked.material, workshop)
    found = head(name.head or usual_head(one), one.key)
    seat, seat_results, reason = _seat(found, is_sunk=asked.is_sunk)
    results += seat_results
    working += [reason]
    notes = [f"head: {found.source}; turned by {found.tool}"]
    more = _length(asked, one, thread, seat)
    return Answer(
        title=name.says,
        results=(*results, *more.results),
        working=(*working, *more.working),
        notes=(*notes, *more.notes),
    )


def _holes(thread: Thread, material: str, workshop: Workshop) -> tuple[list[Result], list[Reason]]:
    drills = drills_of(workshop)
    clear = clearance_drill(thread, drills)
    tap = tapping_drill(thread, drills, material=material)
    return [
        Result("clearance_hole", clear.drill.mm, "mm", "clearance hole", clear.drill.name),
        Result("tapping_drill", tap.drill.mm, "mm", "tapping drill", tap.drill.name),
    ], [*reasons(clear.steps), *reasons(tap.steps)]


def _seat(found: Head, *, is_sunk: bool) -> tuple[float, list[Result], Reason]:
    results = [
        Result("head_diameter", found.dk_mm, "mm", "head"),
        Result("head_height", found.k_mm, "mm", "head, high"),
    ]
    if found.angle_deg is not None:
        cone = countersink(found.kind, found.thread)
        results.append(Result("countersink_diameter", cone.diameter_mm, "mm", "countersink"))
        return 0.0, results, Reason(
            "countersink", f"{cone.angle_deg:g}°, flush", f"{cone.diameter_mm:g} mm", cone.source
        )  # fmt: skip
    seat = counterbore(found.kind, found.thread)
    results += [
        Result("counterbore_diameter", seat.diameter_mm, "mm", "counterbore"),
        Result("counterbore_depth", seat.depth_mm, "mm", "counterbore, deep"),
    ]
    return (seat.depth_mm if is_sunk else 0.0), results, Reason(
        "counterbore", "head + room, just below the face",
        f"{seat.diameter_mm:g} × {seat.depth_mm:g} mm deep", seat.source,
    )  # fmt: skip


@dataclass(frozen=True, slots=True)
class _More:
    results: tuple[Result, ...]
    working: tuple[Reason, ...]
    notes: tuple[str, ...]


def _length(asked: Question, one: Asked, thread: Thread, sunk_mm: float) -> _More:
    if _WOODS & set(asked.material.split()):
        raise NotDefined(
            f"no machine thread holds in {asked.material}", "use a wood screw, or a bolt and nut"
        )
    least = engagement(thread, asked.material)
    must = Result("engagement_least", least.wanted_mm, "mm", "thread that must hold")
    working = reasons(least.steps)
    note = (f"{least.convention}: {least.why}",)
    if asked.grip_mm is None:
        return _More((must,), working, (*note, "say the grip, and a length is chosen"))
    deep = asked.deep_mm or 2 * least.wanted_mm + thread.pitch_mm
    hole = TappedHole(deep, thread.pitch_mm, is_through=asked.is_through)
    lengths = sold(one)
    must_mm = least.wanted_mm
    found = choose_length(lengths, Grip(asked.grip_mm, sunk_mm), hole, must_mm, must_mm)
    if isinstance(found, NoLength):
        raise NotDefined(found.reason, " or ".join(found.ways_out))
    return _More(
        (must, *_of(found, lengths)), (*working, *reasons(found.steps)), (*note, found.why)
    )


def _of(found: Length, lengths: dict[float, str]) -> tuple[Result, ...]:
    text = lengths.get(found.chosen_mm, "")
    return (
        Result("length", found.chosen_mm, "mm", "length", text),
        Result("engagement", found.engagement_mm, "mm", "thread that holds"),
    )
