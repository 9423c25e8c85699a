"""What is cut across turned work once it is round: holes, flats, slots, teeth; its burrs."""

from __future__ import annotations

from typing import TYPE_CHECKING

from binder_plugins.operations.along import told_along
from binder_plugins.operations.around import breaking_in
from binder_plugins.operations.bench import (
    drill_for,
    mill_for,
    place_of,
)
from binder_plugins.operations.burrs import burr_setups
from binder_plugins.operations.contours import contour_setups
from binder_plugins.operations.end_cutters import end_cutter
from binder_plugins.operations.faces import widened
from binder_plugins.operations.facts import Act, SetUp
from binder_plugins.operations.flats import at_the_bench, flat_setups, slit_setups
from binder_plugins.operations.hole_kinds import HOLES, SINKS, Where
from binder_plugins.operations.holes import hole_acts
from binder_plugins.operations.mouths import Shoulder
from binder_plugins.operations.oil_ways import oil_way_of
from binder_plugins.operations.rings import ring_setups
from binder_plugins.operations.set_up import set_up
from binder_plugins.operations.teeth import tooth_setups
from binder_plugins.operations.turning import Turning
from binder_plugins.operations.vees import in_a_vee, lies_in

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from binder_solid.facts import Located, Stretch

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
        flat_setups,
        tooth_setups,
        contour_setups,
        slit_setups,
        _holes,
        ring_setups,
        _milled,
        burr_setups,
    ):
        for setup in build(turning, number + 1):
            number += 1
            yield setup


def _across(turning: Turning) -> list[Located]:
    return [one for one in turning.form.located if one.face == "across"]


def _holes(turning: Turning, number: int) -> Iterator[SetUp]:
    """Cross holes by the side from which they are drilled."""
    work = turning.work
    sides: dict[tuple[float, ...], list[Located]] = {}
    way = oil_way_of(work)
    later = way.own if way is not None else None
    for one in _across(turning):
        if one == later or work.is_wholly_left(one.name):
            continue
        if one.kind in HOLES | SINKS.keys():
            sides.setdefault(tuple(round(way, 3) for way in one.frame.z), []).append(one)
    for found in sides.values():
        machine = drill_for(work.design.workshop, max(one.diameter or 0.0 for one in found))
        acts = [act for one in found for act in _hole(turning, one, machine)]
        grip = in_a_vee(turning, _step(turning, found[0]), found)
        place = place_of(work.design.workshop, machine)
        datum = "along from the end that is told, square to the axis"
        lies = lies_in(turning, grip, found)
        yield set_up(number, place, machine, grip, datum, acts, f"{lies}{_AXIS}" if lies else "")
        number += 1


def _hole(turning: Turning, one: Located, machine: str) -> Iterable[Act]:
    work, step = turning.work, _step(turning, one)
    meets = tuple(b.name for b in turning.axial if one in breaking_in(b, turning.form))
    where = Where(
        machine,
        one.depth if one.depth is not None else step.across,
        meets=(*meets, *_threads(turning, one)),
        tags=("cross",),
        is_open=bool(meets),
        beside=_shoulder(turning, one, step),
    )
    return told_along(work, one, hole_acts(work, one, where))


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


def _milled(turning: Turning, number: int) -> Iterator[SetUp]:
    work = turning.work
    found = [one for one in _across(turning) if one.kind in _MILLED]
    if not found:
        return
    mill = mill_for(work.design.workshop)
    grip = in_a_vee(turning, _step(turning, found[0]), found) if mill else at_the_bench(turning)
    acts = [_cut_across(turning, one, mill) for one in found]
    place = "mill" if mill else "bench"
    lies = lies_in(turning, grip, found).removesuffix("; ")
    yield set_up(number, place, mill, grip, "along from the end that is told", acts, lies)


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
