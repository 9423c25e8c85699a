"""Threaded joints to findings: do the halves meet, hold, and stay together."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from fractions import Fraction

from binder.api import Design, Diagnostic, End, Joint, Labelled, Span, shown_length
from binder_plugins.threads import codes
from binder_plugins.threads.check_plain import check_plain
from binder_plugins.threads.check_seating import check_seating
from binder_plugins.threads.found import JOINTS, Found, by_item, half_at, material_of, thread_of
from binder_plugins.threads.kinds import ThreadedEntry
from binder_trade.threading import engagement, lookalikes, metal
from binder_trade.threads import NotMade, Thread, is_alike, mates

_LEAST_THREADS = 3
_RUNS = "runs_in"


def check_joints(found: Iterable[Found], design: Design) -> Iterator[Diagnostic]:
    """All findings about joints of threads, and about threads that look alike."""
    threads = tuple(found)
    items = by_item(threads)
    claimed: dict[str, Joint] = {}
    turning = {joint.ends[0].item for joint in design.joints.values() if joint.kind == _RUNS}
    for joint in design.joints.values():
        if joint.kind not in JOINTS:
            continue
        halves = [(end, half) for end in joint.ends if (half := half_at(end, joint, items))]
        yield from _own_thread(joint, halves, design)
        yield from _differ(joint, halves)
        yield from _short(joint, halves, design)
        yield from check_seating(joint, halves, design)
        yield from check_plain(joint, halves, design)
        yield from _claimed(joint, halves, claimed)
        yield from _unscrews(joint, halves, turning, design)
    yield from _alike(threads)


Halves = list[tuple[End, Found]]


def _own_thread(joint: Joint, halves: Halves, design: Design) -> Iterator[Diagnostic]:
    """The thread that the joint itself states must be that of its halves."""
    name = joint.entry.thread if isinstance(joint.entry, ThreadedEntry) else None
    if name is None:
        return
    span = design.spec.resolved.document.span(("joints", joint.name, "thread"))
    thread = thread_of(name)
    if isinstance(thread, NotMade):
        yield codes.THREAD_NOT_MADE.at(span, thread.reason, help=thread.way_out)
        return
    for end, half in halves:
        if not is_alike(thread, half.thread):
            yield _unlike(span, half, f"'{end}' is {half.thread.designation}", thread)


def _unlike(span: Span, other: Found, message: str, thread: Thread) -> Diagnostic:
    return codes.THREAD_HALVES_DIFFER.at(
        span,
        message,
        related=(Labelled(other.at, f"{other.thread.designation} here"),),
        help=f"write {thread.designation} in both, or leave one half `to suit`",
    )


def _differ(joint: Joint, halves: Halves) -> Iterator[Diagnostic]:
    inside = [half for _, half in halves if half.is_internal]
    outside = [half for _, half in halves if not half.is_internal]
    if len(halves) < len(joint.ends):
        return
    if not inside or not outside:
        word = "tapped" if inside else "outside threads"
        yield codes.THREAD_HALVES_DIFFER.at(
            joint.at,
            f"both halves of '{joint.name}' are {word}",
            related=[Labelled(half.at, half.thread.designation) for _, half in halves],
            help="one half is `tapped`, the other `screwed`",
        )
        return
    for screw in outside:
        for nut in inside:
            meeting = mates(screw.thread, nut.thread)
            if not meeting.is_mating:
                yield _unlike(screw.at, nut, f"'{joint.name}': {meeting.reason}", nut.thread)


def _short(joint: Joint, halves: Halves, design: Design) -> Iterator[Diagnostic]:
    """What is engaged: the shorter of the two threads, or the nut alone where it travels."""
    nuts = [half for _, half in halves if half.is_internal]
    screws = [half for _, half in halves if not half.is_internal and joint.kind != "leads"]
    lengths = [half.length for half in (*nuts, *screws)]
    known = [length for length in lengths if length is not None]
    if not nuts or len(known) < len(lengths):
        return
    nut, engaged = nuts[0], min(known)
    material = material_of(nut.feature.owner, design)
    wanted = _wanted(nut.thread, material)
    if float(engaged) >= wanted[0] - 1e-6:
        return
    threads = float(engaged) / nut.thread.pitch_mm
    yield codes.THREAD_ENGAGEMENT_SHORT.at(
        joint.at,
        f"{shown_length(engaged, design.units)} of {nut.thread.designation} engages,"
        f" {threads:.1f} threads",
        related=[Labelled(half.at, "this half") for half in (*nuts, *screws)],
        help=f"make it {_up(wanted[0], design.units)} or more: {wanted[1]}",
    )


def _wanted(thread: Thread, material: str) -> tuple[float, str]:
    """The rule of thumb where the metal is known, else the least that any thread needs."""
    if metal(material) is None:
        return _LEAST_THREADS * thread.pitch_mm, f"{_LEAST_THREADS} full threads"
    rule = engagement(thread, material)
    return rule.wanted_mm, rule.why


def _up(value: float, units: str) -> str:
    return shown_length(Fraction(-int(-value * 100 // 1), 100), units)


def _claimed(joint: Joint, halves: Halves, claimed: dict[str, Joint]) -> Iterator[Diagnostic]:
    for end, half in halves:
        if not half.is_internal or half.count > 1:
            continue
        first = claimed.setdefault(half.subject, joint)
        if first is not joint:
            yield codes.THREAD_CLAIMED_TWICE.at(
                end.at,
                f"'{end}' takes the thread of '{first.name}' too",
                related=(Labelled(first.at, "the first joint"),),
                help="give each its own hole",
            )


def _unscrews(
    joint: Joint, halves: Halves, turning: set[str], design: Design
) -> Iterator[Diagnostic]:
    """A part screwed on a shaft that turns, with nothing else between the two."""
    if joint.kind == "leads" or joint.entry.fixed or joint.held_by:
        return
    on = [item for item in joint.items if item in turning]
    if len(on) != 1 or any(half.thread.is_left_hand for _, half in halves):
        return
    both = set(joint.items)
    if any(other is not joint and both <= set(other.items) for other in design.joints.values()):
        return
    loose = next((item for item in joint.items if item != on[0]), "")
    yield codes.UNSCREWS_IN_USE.at(
        joint.at,
        f"'{loose}' is screwed on '{on[0]}', which turns, and nothing locks it",
        help="pin it or use compound and say `fixed: true`, or cut the thread left hand",
    )


def _alike(threads: tuple[Found, ...]) -> Iterator[Diagnostic]:
    first: dict[Thread, Found] = {}
    for one in threads:
        first.setdefault(one.thread, one)
    for pair in lookalikes(first):
        earlier, later = sorted((first[one] for one in pair), key=lambda one: one.at)
        names = f"{earlier.thread.designation} and {later.thread.designation}"
        yield codes.LOOKALIKE_THREAD.at(
            later.at,
            f"{names} look alike: {_sizes(earlier.thread)} and {_sizes(later.thread)}",
            related=(Labelled(earlier.at, earlier.thread.designation),),
            help="use one of them throughout, or keep their screws in labelled bags",
        )


def _sizes(thread: Thread) -> str:
    return f"{thread.major_mm:.2f} × {thread.pitch_mm:.2f} mm"
