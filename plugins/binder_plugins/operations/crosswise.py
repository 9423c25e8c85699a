"""What is cut across turned work once it is round: holes, flats, slots, teeth; its burrs."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from binder.api import exact
from binder_plugins.operations.along import told_along
from binder_plugins.operations.bench import (
    bench_vice,
    divider,
    drill_for,
    mill_for,
    place_of,
    vice_for,
)
from binder_plugins.operations.contours import contour_setups
from binder_plugins.operations.end_cutters import STOUT_MM, end_cutter
from binder_plugins.operations.faces import widened
from binder_plugins.operations.facts import Act, Grip, SetUp
from binder_plugins.operations.holes import HOLES, SINKS, Where, hole_acts
from binder_plugins.operations.mouths import Shoulder
from binder_plugins.operations.oil_ways import oil_way_of
from binder_plugins.operations.plain import at_bench
from binder_plugins.operations.relieved import cleared
from binder_plugins.operations.rings import flange_burrs, ring_setups
from binder_plugins.operations.teeth import tooth_setups
from binder_plugins.operations.thin_saws import slit_tool
from binder_plugins.operations.turning import Turning, breaking_in
from binder_plugins.operations.words import holding_min

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

    from binder_solid.facts import Located, Stretch

# A shorter step does not lie still in a V-block; common practice, no source.
_VEE_MM = 8.0
# How the axis of round work is found under a drill; common practice, no source.
_AXIS = (
    "its axis under the spindle: a steel rule, nipped lightly between the round and the point of "
    "the centre drill, lies level; the place along is scribed from the end first"
)
_MILLED = frozenset(
    {"flatted", "slotted", "keywayed", "pocketed", "dovetailed", "stepped", "t_slotted"}
)


def cross_setups(turning: Turning) -> Iterator[SetUp]:
    """The set-ups after the lathe, numbered on from those before."""
    number = len(turning.setups)
    for build in (
        _flats,
        tooth_setups,
        contour_setups,
        _slits,
        _holes,
        ring_setups,
        _milled,
        _burrs,
    ):
        for setup in build(turning, number + 1):
            number += 1
            yield setup


def _setup(
    number: int,
    place: str,
    machine: str,
    grip: Grip,
    datum: str,
    acts: Sequence[Act],
    true: str = "",
) -> SetUp:
    return SetUp(number, place, machine, grip, datum, tuple(acts), true, "", holding_min(grip.kind))


def _across(turning: Turning) -> list[Located]:
    return [one for one in turning.form.located if one.face == "across"]


def _holes(turning: Turning, number: int) -> Iterator[SetUp]:
    """Cross holes by the side from which they are drilled."""
    work, form = turning.work, turning.form
    sides: dict[tuple[float, ...], list[Located]] = {}
    way = oil_way_of(work)
    later = way.own if way is not None else None
    for one in _across(turning):
        if one == later or work.is_wholly_left(one.name):
            continue
        if one.kind in HOLES | SINKS.keys():
            sides.setdefault(tuple(round(way, 3) for way in one.frame.z), []).append(one)
    for found in sides.values():
        largest = max(one.diameter or 0.0 for one in found)
        machine = drill_for(work.design.workshop, largest)
        acts: list[Act] = []
        for one in found:
            meets = tuple(b.name for b in turning.axial if one in breaking_in(b, form))
            step = _step(turning, one)
            deep = one.depth if one.depth is not None else step.across
            meets_all = (*meets, *_threads(turning, one))
            where = Where(
                machine,
                deep,
                meets=meets_all,
                tags=("cross",),
                is_open=bool(meets),
                beside=_shoulder(turning, one, step),
            )
            acts += told_along(work, one, hole_acts(work, one, where))
        step = _step(turning, found[0])
        grip = _vee(turning, step)
        place = place_of(work.design.workshop, machine)
        yield _setup(
            number,
            place,
            machine,
            grip,
            "along from the end that is told, square to the axis",
            acts,
            _AXIS if grip.kind == "vee" else "",
        )
        number += 1


def _shoulder(turning: Turning, one: Located, step: Stretch) -> Shoulder | None:
    """The nearest step beside a cross hole that stands above its own."""
    x = one.frame.origin[0]
    higher = [
        Shoulder(max(x - s.end, s.start - x, 0.0), (max(s.across, s.end_across) - step.across) / 2)
        for s in turning.steps
        if max(s.across, s.end_across) > step.across
    ]
    return min(higher, key=lambda s: s.away, default=None)


def _threads(turning: Turning, one: Located) -> tuple[str, ...]:
    step = _step(turning, one)
    found = (t for t in turning.form.located if t.kind == "screwed")
    return tuple(t.name for t in found if step.start <= t.frame.origin[0] <= step.end)


def _step(turning: Turning, one: Located) -> Stretch:
    x = one.frame.origin[0]
    found = (s for s in turning.steps if s.start - 1e-6 <= x <= s.end + 1e-6)
    return next(found, turning.steps[0])


def _vee(turning: Turning, step: Stretch) -> Grip:
    """A V-block carries the step, or what is thicker beside it; short work stands on edge."""
    vice = vice_for(turning.work.design.workshop)
    if vice and turning.length <= max(one.across for one in turning.steps):
        return Grip(vice, "vice", "its end faces", turning.length, turning.length)
    holder = f"V-block in the {vice}" if vice else "V-block, clamped"
    thicker = [one for one in turning.steps if one.across > step.across + 1e-6]
    if thicker and (step.end - step.start < _VEE_MM or _is_between(turning, step)):
        step = max(thicker, key=lambda one: (one.across, one.end - one.start))
    return Grip(
        holder,
        "vee",
        f"⌀{turning.work.mm(step.across)}",
        step.across,
        step.end - step.start,
        jaws=(step.start, step.end),
    )


def _is_between(turning: Turning, step: Stretch) -> bool:
    """Whether thicker steps stand on both sides of it, and keep it off the V-block."""
    place = turning.steps.index(step)
    return any(one.across > step.across for one in turning.steps[:place]) and any(
        one.across > step.across for one in turning.steps[place + 1 :]
    )


def _milled(turning: Turning, number: int) -> Iterator[SetUp]:
    work = turning.work
    found = [one for one in _across(turning) if one.kind in _MILLED]
    if not found:
        return
    mill = mill_for(work.design.workshop)
    grip = _vee(turning, _step(turning, found[0])) if mill else _bench(turning)
    acts = [_cut_across(turning, one, mill) for one in found]
    place = "mill" if mill else "bench"
    yield _setup(number, place, mill, grip, "along from the end that is told", acts)


def _cut_across(turning: Turning, one: Located, mill: str) -> Act:
    """A flat, slot or keyway across the work, by file where there is no mill."""
    work, where = turning.work, _along(turning, one)
    meets = _threads(turning, one)
    if not mill:
        words = f"file: {one.note}{where}"
        return work.act("file", words, feature=one.name, meets=meets)
    act = {"flatted": "mill-flat", "keywayed": "keyway"}.get(one.kind, "mill")
    width = one.width or (one.diameter if one.kind != "flatted" else one.length) or 6.0
    tool, owned = end_cutter(work.design.workshop, max(width, 2.0), plunging=act != "mill-flat")
    size = owned or width
    return work.act(
        act,
        f"{one.note}{where}{widened(work, one, size)}",
        machine=mill,
        feature=one.name,
        tool=tool,
        size=size,
        times=len(one.spots),
        meets=meets,
    )


def _along(turning: Turning, one: Located) -> str:
    """Where something of a length lies, from the end that is nearer to it."""
    if not one.length or len(one.spots) > 1:
        return ""
    x, half, whole = one.frame.origin[0], one.length / 2, turning.length
    end = "left" if x <= whole / 2 else "right"
    near = max((x if end == "left" else whole - x) - half, 0.0)
    span = f"from {turning.work.mm(near)} to {turning.work.mm(near + one.length)}"
    return f", {span} off the {end}-hand end"


def _bench(turning: Turning) -> Grip:
    vice = bench_vice(turning.work.design.workshop)
    return Grip(f"{vice or 'vice'}, soft jaws", "bench", "the plain part")


def _slits(turning: Turning, number: int) -> Iterator[SetUp]:
    """Slots across an end, as for a screwdriver."""
    found = [one for one in turning.axial if one.kind in {"slotted", "flatted"}]
    if not found:
        return
    acts = [
        turning.work.act(
            "slit",
            one.note,
            feature=one.name,
            tool=slit_tool(turning.work, one.width or one.diameter or 0.0),
            meets=tuple(t.name for t in turning.form.located if t.kind == "screwed"),
        )
        for one in found
    ]
    grip = _bench(turning)
    if turning.plan.is_threaded:
        grip = replace(grip, on="the thread, in a split tapped ring")
    yield _setup(number, "bench", "", grip, "the middle of the end", acts)


def _flats(turning: Turning, number: int) -> Iterator[SetUp]:
    """Hexagons and squares that are not of the bar itself."""
    work = turning.work
    cut = [s for s in turning.steps if s.corners and not _is_of_bar(turning, s)]
    if not cut:
        return
    workshop = work.design.workshop
    head, mill = divider(workshop), mill_for(workshop)
    if head and mill:
        tool, size = end_cutter(workshop)
        acts = [
            work.act(
                "mill-flat",
                f"mill {s.corners} flats, {work.mm(s.across)} across",
                machine=mill,
                feature=s.name,
                tool=tool,
                size=size or STOUT_MM,
                times=s.corners,
                tags=("indexed",),
            )
            for s in cut
        ]
        yield _setup(number, "mill", mill, Grip(head, "divider", "its shank"), "the axis", acts)
        return
    acts = [
        work.act(
            "file",
            f"file {s.corners} flats, {work.mm(s.across)} across, between filing buttons",
            feature=s.name,
            tool="files and filing buttons",
        )
        for s in cut
    ]
    yield _setup(number, "bench", "", _bench(turning), "the axis", acts)


def _is_of_bar(turning: Turning, step: Stretch) -> bool:
    wanted = {4: "square bar", 6: "hexagon bar"}.get(step.corners, "")
    return turning.work.stock_form == wanted and abs(turning.work.stock_across - step.across) < 1e-6


def _burrs(turning: Turning, _: int) -> Iterator[SetUp]:
    """Burrs that need a tool of their own: in a reamed bore the reamer once more, by hand."""
    work, form = turning.work, turning.form
    way = oil_way_of(work)
    acts = [
        _cleared(turning, one, holes)
        for one in turning.axial
        if one.kind == "reamed" and work.feature(one.name) and work.waits(one.name) is None
        if (holes := [hole for hole in breaking_in(one, form) if way is None or hole != way.own])
    ]
    acts += flange_burrs(turning)
    acts += cleared(work, form, [one for one in turning.axial if not turning.is_first(one)])
    if acts:
        yield at_bench(work, "by hand", "", acts)


def _cleared(turning: Turning, one: Located, holes: Sequence[Located]) -> Act:
    work, bore = turning.work, one.name.replace("_", " ")
    reamer = work.design.workshop.owns_reamer(exact(one.diameter or 0.0))
    way = "pass the reamer through by hand" if reamer else "scrape it round inside"
    return work.act(
        "clear",
        f"{way}, to clear the burr that the cross hole threw into the {bore}",
        feature=one.name,
        tool=f"{reamer.name} reamer in a tap wrench" if reamer else "three-square scraper",
        size=one.diameter or 0.0,
        meets=tuple(hole.name for hole in holes),
    )
