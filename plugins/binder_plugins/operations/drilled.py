"""The start of a hole, and the drills that bring it near its size."""

from __future__ import annotations

import math
from dataclasses import replace
from typing import TYPE_CHECKING

from binder.api import HalfFact, exact
from binder_making.cutting import advise, drills_in_order, pecks
from binder_plugins.operations.blind_bores import enters, short_of_floor
from binder_plugins.operations.hole_kinds import (
    Where,
    entry_of,
    hole_volume,
    least_across,
    many_of,
    narrows_to,
)
from binder_plugins.operations.hole_tools import drill_name
from binder_plugins.operations.in_the_bar import is_past
from binder_plugins.operations.sized import FOR_REAMER, LEFT_MM, left_over
from binder_trade.explained import NotDefined

if TYPE_CHECKING:
    from collections.abc import Iterator

    from binder_plugins.operations.facts import Act
    from binder_plugins.operations.work import Work
    from binder_solid.facts import Located

# What is left for boring, in mm on the diameter. Common practice, no source.
_FOR_BORING = 1.0
_SMALL = 3.0
_SHORT_NOTE = 40
# What a long-series drill reaches in its own diameters; from memory of ISO 340.
_LONG_DRILL = 20.0
# The point of the centre drill in hand, in mm: a hole no wider is spoiled by it. From memory of
# ISO 866, the smallest of its usual sizes.
_CENTRE_POINT = 1.25
_ITSELF = "the drill itself, gripped short in its chuck"
# A pilot that turns so many times too slowly snaps before it helps. Common practice, no source.
_TOO_SLOW = 4.0
# In sheet thinner than this part of its diameter a twist drill breaks out before it is led, and
# tears a hole with corners; from this diameter on, in mm. Common practice, no source.
_SHEET, _TEARS_MM = 0.5, 5.0
_PILOT_ON = ", on into the flat piece of wood under it"
_TORN = "bare sheet tears"
_LED = f"; turned over with that wood on top, whose holes lead it, another piece under: {_TORN}"
_UNLED = (
    "; clamped between two flat pieces of wood, the upper one drilled first and set over the pop "
    f"by the drill in it: {_TORN}"
)
# The mouth of a centre hole of form A in pilots; from memory of ISO 6411.
_CENTRE_MOUTH = 2.12


def start(work: Work, one: Located, where: Where) -> Act:
    """The start of a hole: centred in the lathe, else spotted; a tiny one by its own drill."""
    if where.is_lathe and set(where.tags) <= {"stacked"}:
        words, act = "centre for the drill", "centre"
    else:
        words, act = f"spot for {_of(one, f'⌀{work.mm(one.diameter or 0.0)} hole')}", "spot"
    is_thin = act == "spot" and 0 < (one.diameter or 0.0) <= _CENTRE_POINT
    return work.act(
        act,
        words,
        machine=where.machine,
        feature=one.name,
        tool=_ITSELF if is_thin else "",
        size=(one.diameter or 0.0) if is_thin else _SMALL,
        end=where.end,
        times=len(one.spots),
        tags=where.tags,
        meets=where.meets,
    )


def centred(work: Work, one: Located, where: Where) -> Act:
    """A centre hole that stays in the part: its own drill makes pilot and cone in one go."""
    size = work.mm(one.diameter or 0.0)
    return work.act(
        "centre",
        f"{many_of(one)}centre hole, form A, pilot ⌀{size}, "
        f"to ⌀{work.mm(_mouth(one))} at the mouth",
        machine=where.machine,
        feature=one.name,
        size=one.diameter or 0.0,
        tool=f"{size} centre drill, form A",
        end=where.end,
        times=len(one.spots),
        tags=where.tags,
        meets=where.meets,
    )


def _mouth(one: Located) -> float:
    return round(_CENTRE_MOUTH * (one.diameter or 0.0), 2)


def _of(one: Located, noun: str) -> str:
    count = len(one.spots)
    return f"the {noun}" if count == 1 else f"the {count} {noun}s"


def drilled_to(work: Work, one: Located, where: Where) -> float:
    """The size that the last drill leaves, in mm."""
    across = one.diameter or 0.0
    drills = work.design.workshop.drills()
    largest = float(drills[-1].mm) if drills else 13.0
    if narrows_to(work, one):
        across = least_across(work, one)
    elif one.kind == "reamed":
        return min(_under_reamer(work, across), largest)
    if one.kind == "bored" or narrows_to(work, one):
        able = [
            float(d.mm)
            for d in drills
            if d.mm <= across - _FOR_BORING * 0.5 and enters(one, where, float(d.mm))
        ]
        return max(able, default=min(across * 0.8, largest))
    return min(across, largest)


def _under_reamer(work: Work, across: float) -> float:
    under = work.design.workshop.nearest_drill(exact(across - FOR_REAMER), exact(0.1), exact(0.1))
    return float(under.mm) if under is not None else across - FOR_REAMER


def left_at(work: Work, one: Located) -> float:
    """What a hole that gets its size with other parts measures until then, in mm."""
    across = one.diameter or 0.0
    if one.kind == "bored" or narrows_to(work, one):
        return least_across(work, one) - LEFT_MM
    set_in_mesh = any(fact.how == "set in mesh" for fact in work.left.get(one.name, ()))
    return across - FOR_REAMER if set_in_mesh else _under_reamer(work, across)


def drills(work: Work, one: Located, where: Where, to: float) -> Iterator[Act]:
    """The drills of a hole up to its last, `to` mm; no more of them than help."""
    owned = [float(drill.mm) for drill in work.design.workshop.drills()]
    sizes: tuple[float, ...] = (to,)
    caution = ""
    # Wood is drilled at one go: a pilot would leave the spurs nothing to centre in.
    if work.group is not None and work.group.name != "wood":
        found = drills_in_order(to, owned, work.group)
        sizes, caution = found.sizes_mm, found.caution
    is_led = False
    for number, size in enumerate(sizes):
        is_pilot = number < len(sizes) - 1
        if size <= where.first or (is_pilot and _snaps(work, size, where.machine)):
            continue
        done = _drill(
            work, one, where, size, is_pilot=is_pilot, caution="" if is_pilot else caution
        )
        if _is_torn(sizes[-1], where):
            more = _PILOT_ON if is_pilot else _LED if is_led else _UNLED
            over = {"turned-over"} if is_led and not is_pilot else set()
            done = replace(done, what=f"{done.what}{more}", tags=done.tags | over)
        is_led = True
        yield done


def _snaps(work: Work, size: float, machine: str) -> bool:
    """Whether a pilot would turn far too slowly, since the work is held beside its middle.

    The point of the centre drill has then taken the web of the next drill away.
    """
    own = work.machine(machine) if machine and math.isfinite(work.most_rpm) else None
    if own is None or work.group is None:
        return False
    try:
        wanted = advise(work.group, "drill", size, own).turning.wanted_rpm
    except NotDefined:
        return False
    return wanted > _TOO_SLOW * work.most_rpm


def _drill(
    work: Work, one: Located, where: Where, size: float, *, is_pilot: bool, caution: str
) -> Act:
    is_last = not is_pilot and one.kind == "drilled" and not narrows_to(work, one)
    half = work.half(one.name) if is_last else None
    where = replace(where, deep=short_of_floor(one, where, size))
    act = work.act(
        "drill",
        f"{many_of(one)}drill {_what(work, one, size, where, half, is_last=is_last)}"
        f"{_remark(work, one) if is_last else ''}",
        machine=where.machine,
        feature=one.name,
        tool=drill_name(work, size, fitted=half is not None and half.lower is not None),
        size=size,
        deep=where.deep,
        amount=hole_volume(size, where.deep),
        times=len(one.spots),
        tags=(*where.tags, *(("pilot",) if is_pilot else ())),
        meets=where.meets,
        end=where.end,
        half=half,
        spoils=caution,
    )
    return _with_reach(act, one, size, where.deep)


def _is_torn(size: float, where: Where) -> bool:
    """Whether a drill of `size` mm tears the sheet that it goes through, held bare."""
    is_thin = "sheet" in where.tags and where.deep < _SHEET * size
    return is_thin and size >= _TEARS_MM


def _remark(work: Work, one: Located) -> str:
    """What the maker noted of a hole, where it is short."""
    note = str(getattr(entry_of(work, one), "note", None) or "")
    return f" ({note})" if 0 < len(note) <= _SHORT_NOTE else ""


def _what(
    work: Work, one: Located, size: float, where: Where, half: HalfFact | None, *, is_last: bool
) -> str:
    across = f"⌀{work.mm(size)}"
    if is_last and half is not None and half.lower is not None:
        across = half.what.removeprefix("drill ")
    past = ", past the line of parting off" if is_past(one, where) else ""
    is_out = one.depth is None and not past
    deep = "through" if is_out else f"{work.mm(where.deep)} deep{past}"
    ending = f", {pecked(size, where.deep)}" if pecked(size, where.deep) else ""
    if one.kind == "reamed" and not where.is_together and size > 0.8 * (one.diameter or 0.0):
        ending += left_over(work, one, size)  # Not beside the pilot.
    return f"{across}, {deep}{ending}"


def pecked(size: float, deep: float) -> str:
    """In how many pecks a drill of `size` goes `deep`, both in mm; empty where in one."""
    try:
        count = len(pecks(deep, size).depths_mm)
    except NotDefined:
        return ""
    return f"in {count} pecks" if count > 1 else ""


def _with_reach(act: Act, one: Located, size: float, deep: float) -> Act:
    if deep <= _LONG_DRILL * size:
        return act
    words = f"'{one.name}' is ⌀{size:g} mm and {deep:g} mm deep, {deep / size:.0f} diameters"
    return replace(act, trouble=(*act.trouble, ("drill-cannot-reach", words)))
