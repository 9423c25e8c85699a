"""What brings a drilled hole to its size: bored, reamed or tapped; what is left for later."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from binder.api import exact
from binder_plugins.operations.blind_bores import floor_words, has_floor
from binder_plugins.operations.hole_kinds import least_across, many_of, narrows_to
from binder_plugins.operations.hole_tools import bar_name
from binder_plugins.operations.in_the_bar import reamed_to
from binder_plugins.operations.mouths import opened
from binder_plugins.operations.taper_bores import taper_bore
from binder_plugins.operations.tapped import tap_rpm, taps_of, thread_of

if TYPE_CHECKING:
    from collections.abc import Iterator

    from binder_plugins.operations.facts import Act
    from binder_plugins.operations.hole_kinds import Where
    from binder_plugins.operations.work import Work
    from binder_solid.facts import Located

# Common practice, no source: what is left for the reamer on the diameter, in mm.
FOR_REAMER = 0.2
# And for the last cut in a bush that is bored again when it is pressed in.
LEFT_MM = 0.3
# No speed here is slow enough for a machine reamer, and it has no lead to start true in a tap
# wrench. Common practice, no source.
_IN_SPINDLE = (
    "; in the chuck of the spindle, plug out, the spindle turned by hand and fed by its lever; or "
    "borrow a hand reamer"
)


def finished(work: Work, one: Located, where: Where, to: float) -> Iterator[Act]:
    """What leaves the size: reamed, bored or tapped; what is left for later under its size."""
    across = one.diameter or 0.0
    if not where.is_together and work.waits(one.name) is not None:
        if one.kind == "bored" or narrows_to(work, one):
            yield _under(work, one, where, to)
        return
    if narrows_to(work, one):
        yield from taper_bore(work, one, where, to)
    elif one.kind == "reamed":
        yield ream(work, one, where)
    elif one.kind == "bored" or (one.kind == "drilled" and across > to + 1e-6):
        yield _bore(work, one, where, to)
    elif one.kind == "tapped":
        yield from _tap(work, one, where)


def _under(work: Work, one: Located, where: Where, start: float) -> Act:
    """A bore short of its size: true, with a light cut left for when its parts are together."""
    across = max(least_across(work, one) - LEFT_MM, start)
    return work.act(
        "bore",
        f"{many_of(one)}bore to ⌀{work.mm(across)}"
        f"{_depth(work, one)}{floor_words(work, one, where)}{left_over(work, one, across)}",
        machine=where.machine,
        feature=one.name,
        tool=bar_name(work, across, where, is_flat=has_floor(one), across=across),
        size=across,
        deep=where.deep,
        start=start,
        times=len(one.spots),
        tags=(*where.tags, "rough"),
        meets=where.meets,
        end=where.end,
    )


def left_over(work: Work, one: Located, across: float) -> str:
    """`, 0.2 mm left: reamed in line later` for what gets its size with other parts."""
    fact = work.waits(one.name)
    left = (one.diameter or 0.0) - across
    return f", {work.mm(left)} left: {fact.how} later" if fact is not None and left > 0 else ""


def ream(work: Work, one: Located, where: Where) -> Act:
    """The reaming of a hole; where no reamer of its size is owned it is bored, or lapped."""
    across = one.diameter or 0.0
    reamer = work.design.workshop.owns_reamer(exact(across))
    if reamer is None:
        return _bore(work, one, where, across - FOR_REAMER)
    is_blind = one.depth is not None
    act = work.act(
        "ream",
        f"{many_of(one)}{_to_size(work, one, 'ream')}{reamed_to(work, one, where)}",
        machine="" if reamer.is_hand else where.machine,
        feature=one.name,
        tool=f"{reamer.name} {'hand ' if reamer.is_hand else ''}reamer",
        size=across,
        times=len(one.spots),
        tags=(*where.tags, "finish", *(("fit",) if work.halves.get(one.name) else ())),
        meets=where.meets,
        end=where.end,
        half=work.half(one.name),
        spoils="reaming to the bottom: its lead leaves a cone" if is_blind else "",
    )
    if not reamer.is_hand and act.speed == "by hand":
        act = replace(act, what=f"{act.what}{_IN_SPINDLE}")
    if is_blind and reamer.is_hand:
        words = f"'{one.name}' is blind, and the only {reamer.name} reamer is a hand reamer"
        return replace(act, trouble=(("ream-blind", words),))
    return act


def _to_size(work: Work, one: Located, verb: str) -> str:
    half = work.half(one.name)
    if half is not None and half.what.startswith(verb):
        return half.what
    return f"{verb} ⌀{work.mm(one.diameter or 0.0)}{_depth(work, one)}"


def _depth(work: Work, one: Located) -> str:
    """`, 6 mm deep`; nothing of a hole that goes through."""
    return "" if one.depth is None else f", {work.mm(one.depth)} deep"


def _bore(work: Work, one: Located, where: Where, start: float) -> Act:
    across = one.diameter or 0.0
    faced = 0.0 if where.is_together else across  # Put together, its floor is there.
    return work.act(
        "bore",
        f"{many_of(one)}{_to_size(work, one, 'bore')}{floor_words(work, one, where)}",
        machine=where.machine,
        feature=one.name,
        tool=bar_name(work, start, where, is_flat=has_floor(one), across=faced),
        size=across,
        deep=where.deep,
        start=start,
        times=len(one.spots),
        tags=(*where.tags, "finish", *(("fit",) if work.halves.get(one.name) else ())),
        meets=where.meets,
        end=where.end,
        half=work.half(one.name),
    )


def _tap(work: Work, one: Located, where: Where) -> Iterator[Act]:
    thread = thread_of(one)
    yield opened(work, one, where)
    is_blind = one.depth is not None and not where.is_open
    kinds = taps_of(work, thread) or ("taper", "second", *(("plug",) if is_blind else ()))
    half = work.half(one.name)
    words = f"tap {thread}{_depth(work, one)}"
    act = work.act(
        "tap",
        f"{many_of(one)}{half.what if half is not None and half.what.startswith('tap') else words}",
        feature=one.name,
        tool=f"{thread} taps: {', '.join(kinds)}",
        times=len(one.spots),
        tags=where.tags,
        meets=where.meets,
        end=where.end,
        spoils="a blind hole full of chips breaks the tap" if is_blind else "",
    )
    rpm = tap_rpm(work, one, where.machine)
    yield replace(act, speed=f"{rpm:g}") if rpm else act
