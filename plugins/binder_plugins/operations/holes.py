"""A hole to its acts: spot, pilot, drill, then bore, ream, tap or sink."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from binder.api import HalfFact, ThreadFact, exact
from binder_making.cutting import advise, drills_in_order, pecks
from binder_plugins.operations.hole_tools import drill_name, led_in, sinker
from binder_plugins.operations.in_the_bar import drilled_past, is_past, reamed_to
from binder_plugins.operations.mouths import Shoulder, countersink_for, opened
from binder_plugins.operations.tapped import tap_rpm
from binder_plugins.operations.work import Work, hole_volume
from binder_trade.explained import NotDefined

if TYPE_CHECKING:
    from collections.abc import Iterator

    from binder_plugins.operations.facts import Act
    from binder_solid.facts import Located

# Common practice, no source: what is left for the reamer on the diameter, in mm.
_FOR_REAMER = 0.2
_FOR_BORING = 1.0
# And for the last cut in a bush that is bored again when it is pressed in.
_LEFT_MM = 0.3
_SMALL = 3.0
_SHORT_NOTE = 40
# A bar goes into a hole that is so much smaller than it is told for, in mm: rounding of inches.
_ENTERS = 0.01
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
# No speed here is slow enough for a machine reamer, and it has no lead to start true in a tap
# wrench. Common practice, no source.
_IN_SPINDLE = (
    "; in the chuck of the spindle, plug out, the spindle turned by hand and fed by its lever; or "
    "borrow a hand reamer"
)
_TEARS = "; clamped between two flat pieces of wood, drilled through both: bare sheet tears"
# The mouth of a centre hole of form A in pilots; from memory of ISO 6411.
_CENTRE_MOUTH = 2.12
HOLES = frozenset({"drilled", "reamed", "bored", "tapped"})
SINKS = {"counterbored": "counterbore", "spotfaced": "counterbore", "countersunk": "countersink"}


@dataclass(frozen=True, slots=True)
class Where:
    """Where a hole is made: on which machine, at which end or face, and so deep in mm.

    `meets` are features that it breaks into; `is_started` is true where a centre is there;
    `first` is the size of a hole that is there already; `is_open` where it ends in a bore;
    `is_together` where its parts are put together for it, so that nothing is left to be done.
    `beside` is what stands up next to its mouth, `mouth` the edge that is told for it. `past` is
    how far from the mouth in mm a bar is parted off or sawn through; 0 where a hole comes out.
    """

    machine: str
    deep: float
    end: str = ""
    meets: tuple[str, ...] = ()
    tags: tuple[str, ...] = ()
    is_started: bool = False
    first: float = 0.0
    is_lathe: bool = False
    is_open: bool = False
    is_together: bool = False
    beside: Shoulder | None = None
    mouth: Located | None = None
    past: float = 0.0


def hole_acts(work: Work, one: Located, where: Where) -> Iterator[Act]:
    """The acts of one hole, or of all that are alike, in their usual order."""
    across = one.diameter or 0.0
    if one.kind in SINKS:
        yield _sink(work, one, where)
        return
    if one.kind == "centred":
        yield _centred(work, one, where)
        return
    if across <= 0 or (work.is_wholly_left(one.name) and not where.is_together):
        return
    given = where
    where = replace(where, deep=_drill_depth(work, one, where))
    if not where.is_started and not where.first:
        yield _start(work, one, where)
    to = _drilled_to(work, one, where)
    yield from _drills(work, one, where, to)
    if where.mouth is not None and one.kind != "tapped":
        yield opened(work, one, where)
    # What a drill leaves at the line of parting is faced off: no bar needs to reach past it.
    yield from finished(work, one, given if one.kind == "bored" else where, to)
    counterbore = getattr(_entry(work, one), "counterbore", None)
    if counterbore is not None:
        yield _sunk(work, one, where, "counterbore", counterbore.mm)


def _drill_depth(work: Work, one: Located, where: Where) -> float:
    """A blind tapped hole is drilled deeper than its thread, for the tap's lead and the chips.

    One right through is drilled past the line at which it comes off the bar.
    """
    if is_past(one, where):
        return drilled_past(work, one, where.past)
    fact = work.design.facts.about(ThreadFact, f"{work.name}.{one.name}")
    if one.kind != "tapped" or one.depth is None or where.is_open:
        return where.deep
    if fact is None or fact.drill_depth is None:
        return where.deep
    return max(where.deep, round(fact.drill_depth, 1))


def through(one: Located, size: tuple[float, float, float]) -> float:
    """How deep a hole is in mm; what it goes through where nothing is told."""
    if one.depth is not None:
        return one.depth
    return sum(abs(way) * size for way, size in zip(one.frame.z, size, strict=True))


def _entry(work: Work, one: Located) -> object:
    found = work.feature(one.name)
    return found.entry if found is not None else None


def _start(work: Work, one: Located, where: Where) -> Act:
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


def _centred(work: Work, one: Located, where: Where) -> Act:
    """A centre hole that stays in the part: its own drill makes pilot and cone in one go."""
    size = work.mm(one.diameter or 0.0)
    return work.act(
        "centre",
        f"{_many(one)}centre hole, form A, pilot ⌀{size}, to ⌀{work.mm(_mouth(one))} at the mouth",
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


def _many(one: Located) -> str:
    return f"{len(one.spots)} × " if len(one.spots) > 1 else ""


def _drilled_to(work: Work, one: Located, where: Where) -> float:
    """The size that the last drill leaves, in mm."""
    across = one.diameter or 0.0
    drills = work.design.workshop.drills()
    largest = float(drills[-1].mm) if drills else 13.0
    if one.kind == "reamed":
        under = work.design.workshop.nearest_drill(
            exact(across - _FOR_REAMER), exact(0.1), exact(0.1)
        )
        return float(under.mm) if under is not None else min(across - _FOR_REAMER, largest)
    if one.kind == "bored":
        able = [float(d.mm) for d in drills if d.mm <= across - _FOR_BORING * 0.5]
        return max(able, default=min(across * 0.8, largest))
    return min(across, largest)


def _drills(work: Work, one: Located, where: Where, to: float) -> Iterator[Act]:
    owned = [float(drill.mm) for drill in work.design.workshop.drills()]
    sizes: tuple[float, ...] = (to,)
    caution = ""
    # Wood is drilled at one go: a pilot would leave the spurs nothing to centre in.
    if work.group is not None and work.group.name != "wood":
        found = drills_in_order(to, owned, work.group)
        sizes, caution = found.sizes_mm, found.caution
    for number, size in enumerate(sizes):
        is_pilot = number < len(sizes) - 1
        if size <= where.first or (is_pilot and _snaps(work, size, where.machine)):
            continue
        yield _drill(work, one, where, size, is_pilot=is_pilot, caution="" if is_pilot else caution)


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
    is_last = not is_pilot and one.kind == "drilled"
    half = work.half(one.name) if is_last else None
    act = work.act(
        "drill",
        f"{_many(one)}drill {_what(work, one, size, where, half, is_last=is_last)}"
        f"{_remark(work, one) if is_last else ''}{_in_sheet(size, where)}",
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


def _in_sheet(size: float, where: Where) -> str:
    """How thin sheet is held while a wide drill goes through it."""
    is_thin = "sheet" in where.tags and where.deep < _SHEET * size
    return _TEARS if is_thin and size >= _TEARS_MM else ""


def _remark(work: Work, one: Located) -> str:
    """What the maker noted of a hole, where it is short."""
    note = str(getattr(_entry(work, one), "note", None) or "")
    return f" ({note})" if 0 < len(note) <= _SHORT_NOTE else ""


def _what(
    work: Work, one: Located, size: float, where: Where, half: HalfFact | None, *, is_last: bool
) -> str:
    if is_last and half is not None and half.lower is not None:
        return half.what.removeprefix("drill ")
    past = ", past the line of parting off" if is_past(one, where) else ""
    is_out = one.depth is None and not past
    deep = "through" if is_out else f"{work.mm(where.deep)} deep{past}"
    ending = f", {pecked(size, where.deep)}" if pecked(size, where.deep) else ""
    if one.kind == "reamed" and not where.is_together and size > 0.8 * (one.diameter or 0.0):
        ending += _left(work, one, size)  # Not beside the pilot.
    return f"⌀{work.mm(size)}, {deep}{ending}"


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


def finished(work: Work, one: Located, where: Where, to: float) -> Iterator[Act]:
    """What leaves the size: reamed, bored or tapped; what is left for later under its size."""
    across = one.diameter or 0.0
    if not where.is_together and work.waits(one.name) is not None:
        if one.kind == "bored":
            yield _under(work, one, where, to)
        return
    if one.kind == "reamed":
        yield ream(work, one, where)
    elif one.kind == "bored" or (one.kind == "drilled" and across > to + 1e-6):
        yield _bore(work, one, where, to)
    elif one.kind == "tapped":
        yield from _tap(work, one, where)


def _under(work: Work, one: Located, where: Where, start: float) -> Act:
    """A bore short of its size: true, with a light cut left for when its parts are together."""
    across = max((one.diameter or 0.0) - _LEFT_MM, start)
    return work.act(
        "bore",
        f"{_many(one)}bore to ⌀{work.mm(across)}{_depth(work, one)}{_left(work, one, across)}",
        machine=where.machine,
        feature=one.name,
        tool=_bar_name(work, across, where),
        size=across,
        deep=where.deep,
        start=start,
        times=len(one.spots),
        tags=(*where.tags, "rough"),
        meets=where.meets,
        end=where.end,
    )


def _left(work: Work, one: Located, across: float) -> str:
    """`, 0.2 mm left: reamed in line later` for what gets its size with other parts."""
    fact = work.waits(one.name)
    left = (one.diameter or 0.0) - across
    return f", {work.mm(left)} left: {fact.how} later" if fact is not None and left > 0 else ""


def ream(work: Work, one: Located, where: Where) -> Act:
    """The reaming of a hole; where no reamer of its size is owned it is bored, or lapped."""
    across = one.diameter or 0.0
    reamer = work.design.workshop.owns_reamer(exact(across))
    if reamer is None:
        return _bore(work, one, where, across - _FOR_REAMER)
    is_blind = one.depth is not None
    act = work.act(
        "ream",
        f"{_many(one)}{_to_size(work, one, 'ream')}{reamed_to(work, one, where)}",
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
    return "" if one.depth is None else f", {work.mm(one.depth)} deep"


def _bore(work: Work, one: Located, where: Where, start: float) -> Act:
    across = one.diameter or 0.0
    return work.act(
        "bore",
        f"{_many(one)}{_to_size(work, one, 'bore')}",
        machine=where.machine,
        feature=one.name,
        tool=_bar_name(work, start, where),
        size=across,
        deep=where.deep,
        start=start,
        times=len(one.spots),
        tags=(*where.tags, "finish", *(("fit",) if work.halves.get(one.name) else ())),
        meets=where.meets,
        end=where.end,
        half=work.half(one.name),
    )


def _bar_name(work: Work, start: float, where: Where) -> str:
    """The stiffest bar that goes into the hole as it is drilled, and through it."""
    if not where.is_lathe:
        return "boring head"
    bars = [
        bar
        for bar in work.design.workshop.entry.cutters.boring_bars
        if bar.least_bore.mm <= start + _ENTERS and bar.reach.mm >= where.deep
    ]
    if not bars:
        return "small boring tool, ground to enter"
    best = max(bars, key=lambda bar: bar.least_bore.mm)
    return f"boring bar (from ⌀{work.mm(best.least_bore.mm)})"


def _tap(work: Work, one: Located, where: Where) -> Iterator[Act]:
    thread = one.note.split(",")[0].split("×")[-1].strip().removeprefix("tap ")
    yield opened(work, one, where)
    is_blind = one.depth is not None and not where.is_open
    kinds = "taper, second, plug" if is_blind else "taper, second"
    tap = work.design.workshop.owns_tap(thread)
    if tap is not None:
        kinds = f"{', '.join(tap.kinds)}"
    half = work.half(one.name)
    words = f"tap {thread}{_depth(work, one)}"
    act = work.act(
        "tap",
        f"{_many(one)}{half.what if half is not None and half.what.startswith('tap') else words}",
        feature=one.name,
        tool=f"{thread} taps: {kinds}",
        times=len(one.spots),
        tags=where.tags,
        meets=where.meets,
        end=where.end,
        spoils="a blind hole full of chips breaks the tap" if is_blind else "",
    )
    rpm = tap_rpm(work, one, where.machine)
    yield replace(act, speed=f"{rpm:g}") if rpm else act


def _sink(work: Work, one: Located, where: Where) -> Act:
    return _sunk(work, one, where, SINKS[one.kind], one.diameter or 0.0)


def _sunk(work: Work, one: Located, where: Where, act: str, across: float) -> Act:
    deep = f", {work.mm(one.depth)} deep" if one.depth is not None and one.kind in SINKS else ""
    verb = {"spotfaced": "spotface"}.get(one.kind, act)
    if act == "countersink":
        tool, is_kept_off = countersink_for(work, across, where.beside)
        tool = "drill of its size, the point ground to the seat" if is_kept_off else tool
    else:
        tool = sinker(work, act, across, is_lathe=where.is_lathe, hole=_in_middle(work, one))
    return work.act(
        act,
        f"{_many(one)}{verb} ⌀{work.mm(across)}{deep}{led_in(tool)}",
        machine=where.machine,
        feature=partner(work, one),
        tool=tool,
        size=across,
        times=len(one.spots),
        tags=where.tags,
        end=where.end,
    )


def _in_middle(work: Work, one: Located) -> float:
    """How wide the hole of a sink is in mm; 0 where it has none."""
    found = work.feature(partner(work, one))
    if found is None or found.name == one.name:
        return one.diameter or 0.0 if one.kind not in SINKS else 0.0
    located = work.form.located if work.form is not None else ()
    return next((hole.diameter or 0.0 for hole in located if hole.name == found.name), 0.0)


def partner(work: Work, one: Located) -> str:
    """The hole that a sink belongs to: its own name without `_seat`, where there is such."""
    base = one.name.removesuffix("_seat")
    return base if work.feature(base) is not None else one.name
