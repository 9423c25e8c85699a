"""Circlips and E-clips: the groove of the table, where it lies, and whether it has room."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from binder.api import PlaceFact, Position, exact, made_size, shown_length
from binder_plugins.fasteners import codes, shaft_codes
from binder_plugins.fasteners.choosing import wanted
from binder_plugins.fasteners.clip_bottoms import told
from binder_plugins.fasteners.clip_grooves import Ring, listed_ring
from binder_plugins.fasteners.clip_places import at_of, held_by_two, room_fault
from binder_plugins.fasteners.halves import Half
from binder_plugins.fasteners.holes import made_here, says_many, settled_cut
from binder_plugins.fasteners.hubs import under_cut
from binder_plugins.fasteners.passing import half_fact
from binder_plugins.fasteners.said import Said
from binder_plugins.fasteners.seen import Seen
from binder_trade.explained import NotDefined
from binder_trade.fastening import FastenerName
from binder_trade.hardware import NotListed

_GROOVE_MM = 0.15


def clipped(seen: Seen) -> Iterator[Said]:
    """All that follows from a circlip or E-clip: its groove, and the clip by its size."""
    holder = _holder(seen)
    nominal = _nominal(seen, holder) if holder is not None else None
    try:
        ring = listed_ring(seen.asked.name, seen.asked.diameter_mm, nominal)
    except (NotListed, NotDefined) as fault:
        if holder is not None and nominal is not None and seen.asked.diameter_mm is not None:
            yield _other_size(seen, holder, "no table has it", nominal)
        else:
            yield codes.HARDWARE_NOT_LISTED.at(seen.asked.at, fault.reason, help=fault.way_out)
        yield wanted(seen, seen.asked.name)
        return
    if holder is not None and nominal is not None and not ring.suits(nominal):
        yield _other_size(seen, holder, f"it is for {ring.range_words}", nominal)
    elif holder is not None and nominal is not None:
        yield from _at_holder(seen, holder, ring, nominal)
    yield wanted(seen, _named(seen.asked.name, ring))


def _other_size(seen: Seen, holder: Half, why: str, nominal: float) -> Said:
    """The clip of another shaft or bore, with the one that is right."""
    try:
        right = listed_ring(seen.asked.name, None, nominal)
        help_ = f"'{_sized(seen.asked.name, right)}' is the one for it"
    except (NotListed, NotDefined) as fault:
        help_ = f"{fault.reason}; {fault.way_out}"
    return shaft_codes.CLIP_OF_OTHER_SIZE.at(
        seen.asked.at,
        f"'{seen.asked.name.says}' on '{holder.end}' of {nominal:g} mm: {why}",
        help=help_,
    )


def _named(name: FastenerName, ring: Ring) -> FastenerName:
    if name.diameter_mm is not None:
        return name
    return replace(
        name,
        diameter_mm=ring.size_mm,
        diameter_text=f"{ring.size_mm:g} mm",
        says=_sized(name, ring),
    )


def _sized(name: FastenerName, ring: Ring) -> str:
    says = name.says if name.diameter_mm is None else name.kind
    return f"{ring.size_mm:g} mm {says}"


def _at_holder(seen: Seen, holder: Half, ring: Ring, nominal: float) -> Iterator[Said]:
    place = holder.place
    if place is not None and place.kind == "grooved" and not place.is_to_suit:
        yield from _written(seen, holder, place, ring, nominal)
    elif place is not None and holder.is_made:
        yield from _cut(seen, holder, place, ring, nominal)
    for half in seen.halves:
        if half is not holder and half.is_made:
            yield half_fact(seen, half, held_by_two(seen, place, ring), str(holder.end), "")


def _holder(seen: Seen) -> Half | None:
    """The half with the groove: the last one, where its size is known, else any."""
    known = [half for half in reversed(seen.halves) if _nominal(seen, half) is not None]
    inside = seen.asked.name.kind == "internal circlip"
    wanted_form = "hole" if inside else "step"
    fitting = [half for half in known if _form(seen, half) == wanted_form]
    return next(iter(fitting), None)


def _form(seen: Seen, half: Half) -> str:
    under = under_cut(seen, half)
    return under.form if under is not None else ""


def _nominal(seen: Seen, half: Half) -> float | None:
    """The diameter that the groove is cut in."""
    under = under_cut(seen, half)
    return float(under.diameter) if under is not None and under.diameter is not None else None


def _written(
    seen: Seen, holder: Half, place: PlaceFact, ring: Ring, nominal: float
) -> Iterator[Said]:
    """A written groove against the table: its width, and the diameter at its bottom."""
    wide = float(place.diameter) if place.diameter is not None else None
    wrong = []
    if wide is not None and not ring.thick_mm < wide <= ring.wide_mm + _GROOVE_MM:
        wrong.append(f"{wide:g} mm wide for {ring.wide_mm:g}")
    if place.depth is not None:
        way = 1 if ring.is_inside else -1
        bottom = nominal + 2 * way * float(place.depth)
        if abs(bottom - ring.groove_mm) > _GROOVE_MM:
            wrong.append(f"{bottom:g} mm at its bottom for {ring.groove_mm:g}")
    if wrong:
        yield shaft_codes.CIRCLIP_GROOVE_WRONG.at(
            holder.end.at,
            f"the groove of '{holder.end}' is {' and '.join(wrong)}",
            help=f"cut it {ring.wide_mm:g} mm wide to {ring.groove_mm:g} mm ({ring.standard})",
        )


def _cut(seen: Seen, holder: Half, place: PlaceFact, ring: Ring, nominal: float) -> Iterator[Said]:
    """The groove of the table: one left to suit gets its size, else it is made and placed."""
    values: dict[str, object] = {
        "grooved": made_size(ring.wide_mm, seen.joint),
        "depth": made_size(abs(nominal - ring.groove_mm) / 2, seen.joint),
    }
    if place.kind == "grooved":
        found = settled_cut(seen, place, values)
        if found is not None:
            yield found
        yield _groove_fact(seen, holder, ring, nominal, "")
        return
    yield from room_fault(seen, holder, place, ring)
    at = at_of(seen, holder, place, ring)
    values |= {"on": place.place, **({"at": at} if at is not None else {})}
    groove = made_here(seen, holder, "groove", "grooved", values)
    yield groove
    yield _groove_fact(seen, holder, ring, nominal, _wall(at, ring))


def _wall(at: Position | None, ring: Ring) -> str:
    """Where the wall lies that the clip bears on: a wider groove grows inwards from it."""
    if at is None or at.distance is None:
        return ""
    wall = exact(at.distance.mm) - exact(ring.wide_mm) / 2
    return f", outer wall {shown_length(wall)} {at.rest}"


def _groove_fact(seen: Seen, holder: Half, ring: Ring, nominal: float, where: str) -> Said:
    wide = f"{ring.wide_mm:g} to {ring.wide_to_mm:g} mm wide"
    what = f"groove {wide} to ⌀{ring.groove_mm:g}, {ring.low_mm:.3f} to {ring.high_mm:.3f}{where}"
    what += says_many(seen, holder)
    others = [str(half.end) for half in seen.halves if half is not holder]
    made = half_fact(seen, holder, what, others[0] if others else "the circlip", ring.source)
    gauged, fed = told(ring, seen.asked.name.kind, nominal, seen.design)
    return replace(made, gauged=gauged, fed=fed)
