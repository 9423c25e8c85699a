"""Hubs clamped on shafts by a grub screw: its tapped hole, the flat, its size and length."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import (
    Misread,
    Part,
    PlaceFact,
    made_size,
    read_thread,
)
from binder_plugins.fasteners import shaft_codes
from binder_plugins.fasteners.about import owned_threads
from binder_plugins.fasteners.choosing import (
    chosen,
    lengths_of,
    not_sold,
    unlisted,
    wanted,
    working,
)
from binder_plugins.fasteners.halves import Half, written_holes
from binder_plugins.fasteners.holding import SOFT
from binder_plugins.fasteners.holes import made_here
from binder_plugins.fasteners.passing import half_fact
from binder_plugins.fasteners.said import Said
from binder_plugins.fasteners.seen import Seen
from binder_plugins.fasteners.split_hubs import split_clamped
from binder_trade.explained import NotDefined
from binder_trade.fastening import LEAST_THREADS, Length, choose_grub, grub_for
from binder_trade.threads import Thread

_FLAT_SHARE = 0.08  # of the shaft, how deep a flat is filed; common practice, no source
_LEAST_FLAT_MM = 0.3
_FLAT_LONG = 1.5  # diameters of the grub screw
_THOU_MM = 0.0254
_SIXTY_FOURTH_MM = 25.4 / 64
_LEAST_SOFT = 1.5  # diameters of thread in a soft hub; common practice, no source
_NEAR_SHARE = 0.05  # of a diameter: the rule is no finer than that
_SPOTS = {"flatted": "flat", "drilled": "dimple"}


def clamped(seen: Seen) -> Iterator[Said]:
    """All that follows from a hub held by a grub screw; a split hub has a plain screw."""
    thread = seen.asked.thread
    if seen.asked.name.kind != "grub screw":
        yield from split_clamped(seen)
        return
    if thread is None:
        yield wanted(seen, seen.asked.name)
        return
    hub, shaft = _hub_and_shaft(seen)
    across = _diameter(shaft) or _diameter(hub)
    yield from _proportion(seen, thread, across)
    deep = _flat_deep(across, seen.design.units)
    yield from _flat(seen, shaft, thread, across, deep)
    outside = _hub_outside(seen, hub)
    yield from _tapped(seen, hub, thread, outside, across)
    yield from _length(seen, hub, thread, outside, across, deep)


def _hub_and_shaft(seen: Seen) -> tuple[Half, Half]:
    """The half with the hole is the hub, whichever was named first."""
    first, second = seen.halves[0], seen.halves[-1]
    is_hole = second.place is not None and second.place.form == "hole"
    return (second, first) if is_hole else (first, second)


def _diameter(half: Half) -> float | None:
    place = half.place
    return float(place.diameter) if place is not None and place.diameter is not None else None


def _flat_deep(across: float | None, units: str) -> float:
    step = 0.1 if units == "mm" else 5 * _THOU_MM
    return max(round(_LEAST_FLAT_MM / step), round(_FLAT_SHARE * (across or 0.0) / step)) * step


def _flat_long(thread: Thread, units: str) -> float:
    """The length of a flat: a diameter and a half of the screw, at least 1 mm more than it."""
    step = 0.1 if units == "mm" else _SIXTY_FOURTH_MM
    return round(max(_FLAT_LONG * thread.major_mm, thread.major_mm + 1) / step) * step


def _proportion(seen: Seen, thread: Thread, across: float | None) -> Iterator[Said]:
    if across is None:
        return
    try:
        grub_for(across, {thread.designation: thread.major_mm})
    except NotDefined:
        owned = {one.designation: one.major_mm for one in owned_threads(seen.design.workshop)}
        yield shaft_codes.GRUB_TOO_BIG.at(
            seen.asked.at,
            f"grub screw {thread.designation} is out of proportion to a shaft of {across:g} mm",
            help=_better(across, owned),
        )


def _better(across: float, owned: dict[str, float]) -> str:
    try:
        best = grub_for(across, owned)
    except NotDefined as fault:
        return fault.way_out
    return f"{best.name} suits it, {best.why}"


def _flat(
    seen: Seen, shaft: Half, thread: Thread, across: float | None, deep: float
) -> Iterator[Said]:
    """The flat on the shaft: a written one stands, else it is made on the step that is named."""
    written = _written_flat(seen, shaft)
    if written is not None:
        size = f", {float(written.diameter):g} mm" if written.diameter is not None else ""
        over = " to the opposite side" if size and written.kind == "flatted" else ""
        what = f"{_SPOTS[written.kind]} under the grub screw{size}{over}"
        yield half_fact(seen, shaft, what, _hub(seen), "", written.place)
        return
    place = shaft.place
    if not shaft.is_made or place is None or place.form != "step" or across is None:
        yield shaft_codes.GRUB_ON_BARE_SHAFT.at(
            shaft.end.at,
            f"'{shaft.end}' has no flat for the grub screw of '{seen.joint.name}'",
            help=f"file a flat {deep:g} mm deep, or drill a dimple, and say so with `because:`",
        )
        return
    long = _flat_long(thread, seen.design.units)
    values = {
        "flatted": made_size(across - deep, seen.joint),
        "on": place.place,
        "length": made_size(long, seen.joint),
    }
    flat = made_here(seen, shaft, "flat", "flatted", values)
    yield flat
    what = f"flat, {across - deep:.4g} mm to the opposite side, {long:.5g} mm long"
    how = "so that its burr does not lock the hub on"
    yield half_fact(seen, shaft, what, _hub(seen), how, flat.name)


def _hub(seen: Seen) -> str:
    return str(_hub_and_shaft(seen)[0].end)


def _written_flat(seen: Seen, shaft: Half) -> PlaceFact | None:
    """A flat or dimple that the spec has there."""
    owner = seen.design.item(shaft.end.item)
    if not isinstance(owner, Part):
        return None
    for feature in owner.features:
        place = seen.design.facts.about(PlaceFact, f"{owner.name}.{feature.name}")
        is_there = place is not None and shaft.end.place in (
            place.on, place.across, place.place, ""
        )  # fmt: skip
        is_dimple = feature.kind == "drilled" and place is not None and bool(place.across)
        if is_there and (feature.kind == "flatted" or is_dimple):
            return place
    return None


def _hub_outside(seen: Seen, hub: Half) -> float | None:
    """The diameter through which the grub screw goes: of its written hole, else of the hub."""
    owner = hub.end.item
    hole = _screw_hole(seen, hub)
    step = hole.across if hole is not None else hub.place.on if hub.place is not None else ""
    for name in (step, "outside"):
        place = seen.design.facts.about(PlaceFact, f"{owner}.{name}")
        if name and place is not None and place.diameter is not None and place.form == "step":
            return float(place.diameter)
    return None


def _screw_hole(seen: Seen, hub: Half) -> PlaceFact | None:
    return next(
        (one for one in written_holes(hub.end.item, seen.design) if one.kind == "tapped"
         and one.across),
        None,
    )  # fmt: skip


def _tapped(
    seen: Seen, hub: Half, thread: Thread, outside: float | None, across: float | None
) -> Iterator[Said]:
    """The tapped hole across the hub: a written one is told, else it is made."""
    mate = str(_hub_and_shaft(seen)[1].end)
    if not hub.is_made:
        return
    written = _screw_hole(seen, hub)
    if written is not None:
        what = f"tap {thread.designation} across {written.across}, through to the bore"
        yield half_fact(seen, hub, what, mate, _how(hub), written.place)
        return
    read = read_thread(thread.designation)
    step = hub.place.on if hub.place is not None and hub.place.on else "outside"
    place = seen.design.facts.about(PlaceFact, f"{hub.end.item}.{step}")
    if isinstance(read, Misread) or place is None or place.form != "step":
        return
    values: dict[str, object] = {"tapped": read, "across": step}
    if outside is not None and across is not None and outside > across:
        values["depth"] = made_size((outside - across) / 2, seen.joint)
    hole = made_here(seen, hub, "grub", "tapped", values)
    yield hole
    what = f"tap {thread.designation} across {step}, through to the bore"
    yield half_fact(seen, hub, what, mate, _how(hub), hole.name)


def _how(hub: Half) -> str:
    """A soft thread holds half of what steel does: it is nipped, not pulled."""
    first = "clear its burr from the bore by hand"
    return f"{first}; nip the screw lightly in {hub.group}" if hub.group in SOFT else first


def _in_soft(
    seen: Seen, hub: Half, thread: Thread, engaged: float, across: float
) -> Iterator[Said]:
    """A grub screw only presses, so 1.5 d will do where a screw that pulls wants 2 d."""
    least = _LEAST_SOFT * thread.major_mm
    if hub.group not in SOFT or engaged >= least - _NEAR_SHARE * thread.major_mm:
        return
    yield shaft_codes.GRUB_IN_SOFT_HUB.at(
        hub.end.at,
        f"{thread.designation} holds by {engaged:.1f} mm in {hub.group}; "
        f"{least:.1f} mm is the least",
        help=f"make the boss {across + 2 * least:.1f} mm, or bush the hub with brass or steel",
    )


def _length(
    seen: Seen, hub: Half, thread: Thread, outside: float | None, across: float | None, deep: float
) -> Iterator[Said]:
    name = seen.asked.name
    lengths = lengths_of(seen)
    if not isinstance(lengths, dict):
        yield from unlisted(seen, lengths)
        return
    yield from not_sold(seen, lengths)
    if outside is None or across is None or outside <= across:
        yield wanted(seen, name)
        return
    must = LEAST_THREADS * thread.pitch_mm  # it only has to press
    best = choose_grub(lengths, outside, across, deep, must)
    wall = (outside - across) / 2
    held_by = best.engagement_mm if isinstance(best, Length) else wall
    engaged = held_by if name.length_mm is None else min(name.length_mm, wall)
    yield from _in_soft(seen, hub, thread, engaged, across)
    if name.length_mm is None:
        yield from chosen(seen, best, lengths, (outside - across) / 2)
        return
    out = name.length_mm - (outside - across) / 2 - deep
    why = "as written; " + (
        f"stands {out:.1f} mm out of the hub" if out > 0 else f"{-out:.1f} mm below the surface"
    )
    held = Length(
        name.length_mm, min(name.length_mm, (outside - across) / 2), -out, why, best.steps
    )
    yield wanted(seen, name, held, (outside - across) / 2)
    yield working(seen, "length", "length of the grub screw", name.length_text, why, best.steps)
