"""Bores that taper: drilled under the small end, then bored with the top-slide swung."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from binder.api import exact
from binder_plugins.operations.blind_bores import floor_words, has_floor
from binder_plugins.operations.hole_kinds import many_of, narrows_to
from binder_plugins.operations.hole_tools import bar_name
from binder_plugins.operations.in_the_bar import is_past
from binder_plugins.operations.set_over import swung
from binder_plugins.operations.taper_mates import BLUE, mate_of, tried, tried_min

if TYPE_CHECKING:
    from collections.abc import Iterator

    from binder_plugins.operations.facts import Act
    from binder_plugins.operations.hole_kinds import Where
    from binder_plugins.operations.taper_mates import Mate
    from binder_plugins.operations.work import Work
    from binder_solid.facts import Located

# What a straight bore leaves on the diameter of the small end, from how much on it is made at
# all, and what swinging the slide takes beyond the setting of a boring tool, in min. Common
# practice, no source.
_LEFT_MM, _MUCH_MM, _SWING_MIN = 0.2, 2.0, 3.0
_SPOILS = "a tool off centre height bends the taper"


def taper_bore(work: Work, one: Located, where: Where, start: float) -> Iterator[Act]:
    """The boring of a taper in a hole that is drilled to `start` mm.

    Straight first where no drill comes near it, since the feed along the bed takes that; and down
    to a floor, which a tool faces square before the slide is swung.
    """
    if not where.is_lathe:
        yield _elsewhere(work, one, where)
        return
    small = narrows_to(work, one)
    if small - _LEFT_MM > start and (has_floor(one) or small - start > _MUCH_MM):
        yield _straight(work, one, where, start, small - _LEFT_MM)
        start = small - _LEFT_MM
    yield _tapered(work, one, where, start)


def _straight(work: Work, one: Located, where: Where, start: float, to: float) -> Act:
    past = ", past the line of parting off" if is_past(one, where) else ""
    deep = f"{work.mm(where.deep)} deep{past}" if past or one.depth is not None else "through"
    return work.act(
        "bore",
        f"{many_of(one)}bore ⌀{work.mm(to)} straight, {deep}"
        f"{floor_words(work, one, where)}; the taper comes after",
        machine=where.machine,
        feature=one.name,
        tool=bar_name(work, start, where, is_flat=has_floor(one), across=to),
        size=to,
        deep=where.deep,
        start=start,
        times=len(one.spots),
        tags=(*where.tags, "rough"),
        meets=where.meets,
        end=where.end,
    )


def _tapered(work: Work, one: Located, where: Where, start: float) -> Act:
    """It cuts as a boring tool does, its speed by the mouth, which is its large end."""
    mate = mate_of(work, one.name)
    bored = work.act(
        "bore",
        f"{many_of(one)}{_words(work, one, where, start, mate)}",
        machine=where.machine,
        feature=one.name,
        tool=f"{bar_name(work, start, where)}, on the top-slide{_blue(mate)}",
        size=one.diameter or 0.0,
        deep=where.deep,
        start=start,
        times=len(one.spots),
        tags=(*where.tags, "inside", "finish", *(("fit",) if mate is not None else ())),
        meets=where.meets,
        end=where.end,
        spoils=_SPOILS,
    )
    ready, cuts, run = bored.ready + _SWING_MIN, bored.cuts, bored.run
    if cuts:  # And a light one to the size, once the angle is tried.
        cuts, run = cuts + 1, run * (cuts + 1) / cuts
    run += tried_min(mate)
    gauge = _gauge(work, one, mate)
    return replace(bored, act="taper", ready=ready, cuts=cuts, run=run, measure=gauge)


def _elsewhere(work: Work, one: Located, where: Where) -> Act:
    """What no spindle but a lathe's does: a boring head goes straight down."""
    mm = work.mm
    act = work.act(
        "bore",
        f"{many_of(one)}bore the taper ⌀{mm(one.diameter or 0.0)} to ⌀{mm(narrows_to(work, one))} "
        f"× {mm(where.deep)} in a lathe that takes the part: nothing here cuts it",
        feature=one.name,
        tool="boring tool",
        times=len(one.spots),
        tags=where.tags,
        meets=where.meets,
        end=where.end,
    )
    words = f"'{one.name}' of '{work.name}' is a taper bore, and no lathe here takes it"
    return replace(act, trouble=(("no-machine-for-it", words),))


def _words(work: Work, one: Located, where: Where, start: float, mate: Mate | None) -> str:
    """Both ends, the angle and its sense, and what comes off where it is most."""
    mouth, small, deep = one.diameter or 0.0, narrows_to(work, one), where.deep
    mm = work.mm
    sides = [round((across - start) / 2, 2) for across in (mouth, small)]
    past = ", run on past the line of parting off" if is_past(one, where) else ""
    out = past or (", run out at the far end" if one.depth is None else ", just off its floor")
    at = swung(mouth, small, deep, has_mate=mate is not None)
    return (
        f"bore the taper ⌀{mm(mouth)} at its mouth to ⌀{mm(small)} × {mm(deep)}{out}, {at}, the "
        f"tool on the near wall; it cuts deepest at the mouth, {mm(sides[0])} a side in all, at "
        f"the small end {mm(sides[1])}{tried(work, mate)}"
    )


def _blue(mate: Mate | None) -> str:
    return f", {BLUE}" if mate is not None and mate.is_first else ""


def _gauge(work: Work, one: Located, mate: Mate | None) -> str:
    """Its mate where that is there; else what reads its mouth."""
    if mate is not None and mate.is_first:
        return f"its mate, tried in {BLUE}"
    size = exact(one.diameter or 0.0)
    found = work.design.workshop.finest(size, size, "inside")
    return f"{found.name}, at its mouth" if found is not None else ""
