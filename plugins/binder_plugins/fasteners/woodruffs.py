"""Woodruff keys: the seat that the cutter sinks in the shaft, the keyway of the hub, the key."""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import replace

from binder.api import Workshop
from binder_plugins.fasteners import codes, shaft_codes
from binder_plugins.fasteners.choosing import wanted, working
from binder_plugins.fasteners.halves import Half
from binder_plugins.fasteners.hubs import under_cut
from binder_plugins.fasteners.keyways import Way, hub_wall, keyway
from binder_plugins.fasteners.said import Said
from binder_plugins.fasteners.seen import Seen
from binder_trade.explained import Step
from binder_trade.fastening import FastenerName
from binder_trade.hardware import (
    InchWoodruff,
    NotListed,
    Woodruff,
    parallel_key,
    woodruff,
    woodruff_for,
    woodruff_number,
)

Key = Woodruff | InchWoodruff
_SAME_MM = 0.02
_CUTTER_MM = 0.5  # a cutter so much over the key still clears it; common practice, no source
_DEEPEST = 0.55  # of the shaft: what the table has at its deepest (ISO 3912)
SEAT = "chord of the cutter at the surface of the shaft"


def woodruff_keyed(seen: Seen, hub: Half, shaft: Half, across: float) -> Iterator[Said]:
    """All that follows from a Woodruff key on a shaft of a diameter in mm."""
    try:
        key = _key(seen.asked.name, across)
    except NotListed as fault:
        yield codes.HARDWARE_NOT_LISTED.at(seen.asked.at, fault.reason, help=fault.way_out)
        yield wanted(seen, seen.asked.name)
        return
    yield from _standard(seen, key, across)
    yield from hub_wall(seen, hub, key.hub_depth_mm, key.b_mm, across)
    yield from _room(seen, hub, shaft, key)
    yield from _cutter(seen, shaft, key, across)
    yield from keyway(seen, shaft, _seat(key), hub)
    yield from keyway(seen, hub, _hub_way(key), shaft)
    name = _named(seen.asked.name, key)
    yield wanted(seen, name)
    yield working(seen, "key", "Woodruff key", _sizes(key), "by the shaft",
                  _steps(key, across))  # fmt: skip


def _key(name: FastenerName, across: float) -> Key:
    if name.thread_text.startswith("no. "):
        return woodruff_number(name.thread_text.removeprefix("no. "))
    if name.diameter_mm is not None and name.height_mm is not None:
        return woodruff(name.diameter_mm, name.height_mm)
    return woodruff_for(across)


def _named(name: FastenerName, key: Key) -> FastenerName:
    """The key with the section of the table where its words give none."""
    if isinstance(key, InchWoodruff) or name.diameter_mm is not None:
        return name
    return replace(
        name, diameter_mm=key.b_mm, height_mm=key.h_mm, says=f"{_sizes(key)} {name.says}"
    )


def _sizes(key: Key) -> str:
    if isinstance(key, InchWoodruff):
        return f"no. {key.number}"
    return f"{key.b_mm:g} mm × {key.h_mm:g} mm"


def seat_length(key: Key) -> float:
    """How long the seat is where the cutter leaves the shaft, in mm."""
    deep = key.shaft_depth_mm
    return 2 * math.sqrt(max(0.0, deep * (key.cutter_mm - deep)))


def _seat(key: Key) -> Way:
    deep = key.shaft_depth_mm
    words = f"Woodruff seat {key.b_mm:.4g} mm wide, {deep:.4g} mm deep, by a cutter of "
    words += f"{key.cutter_mm:.4g} mm; {seat_length(key):.1f} mm long"
    how = f"cutter on the centre line, touch off, down {deep:.4g} mm ({key.source})"
    return Way(key.b_mm, deep, words, how, key.cutter_mm)


def _hub_way(key: Key) -> Way:
    words = f"keyway {key.b_mm:.4g} mm wide, {key.hub_depth_mm:.4g} mm deep, through"
    return Way(key.b_mm, key.hub_depth_mm, words, key.source)


def _steps(key: Key, across: float) -> tuple[Step, ...]:
    table = f"table, shaft of {across:g} mm"
    return (
        Step("key", table, _sizes(key), key.source),
        Step("seat", "2 √(t (D − t))", f"{seat_length(key):.1f} mm long", SEAT),
    )


def _standard(seen: Seen, key: Key, across: float) -> Iterator[Said]:
    """A key that the table has for another shaft, or one that goes too deep."""
    if isinstance(key, Woodruff) and not key.over_mm < across <= key.to_mm + _SAME_MM:
        yield shaft_codes.KEY_NOT_STANDARD.at(
            seen.asked.at,
            f"a Woodruff key of {_sizes(key)} on a shaft of {across:g} mm; it is for over "
            f"{key.over_mm:g} to {key.to_mm:g} mm",
            help=_better(across),
        )
    elif key.shaft_depth_mm > _DEEPEST * across:
        yield shaft_codes.KEY_NOT_STANDARD.at(
            seen.asked.at,
            f"the seat of Woodruff key {_sizes(key)} is {key.shaft_depth_mm:.2f} mm deep in a "
            f"shaft of {across:g} mm",
            help=_better(across),
        )


def _better(across: float) -> str:
    try:
        key = woodruff_for(across)
    except NotListed as fault:
        return fault.way_out
    return f"{key.standard} has {_sizes(key)} for it"


def _room(seen: Seen, hub: Half, shaft: Half, key: Key) -> Iterator[Said]:
    """The cutter must stay on its step, and the hub must cover the key."""
    long, step = seat_length(key), under_cut(seen, shaft)
    room = step.length if step is not None and step.form == "step" else None
    if room is not None and float(room) < long:
        yield shaft_codes.KEY_LONGER_THAN_SEAT.at(
            shaft.end.at,
            f"the seat of the key is {long:.1f} mm long and '{shaft.end}' {float(room):g} mm",
            help=f"make the step {math.ceil(long)} mm or more, or take a smaller key",
        )
    if hub.thick is not None and hub.thick < long - _SAME_MM:
        yield shaft_codes.KEY_LONGER_THAN_SEAT.at(
            hub.end.at,
            f"the key is {long:.1f} mm long and the hub '{hub.end.item}' {hub.thick:g} mm",
            help=f"make the hub {math.ceil(long)} mm long or more, or take a smaller key",
        )


def _cutter(seen: Seen, shaft: Half, key: Key, across: float) -> Iterator[Said]:
    """The cutter that is owned, or what else would hold the hub."""
    if not shaft.is_made or _is_owned(key, seen.design.workshop):
        return
    yield shaft_codes.WOODRUFF_CUTTER_NOT_OWNED.at(
        seen.asked.at,
        f"no Woodruff cutter of {key.cutter_mm:.4g} mm × {key.b_mm:.4g} mm is owned for "
        f"'{seen.joint.name}'",
        help=f"put one on the shopping list, or use {_instead(across)}",
    )


def _is_owned(key: Key, workshop: Workshop) -> bool:
    return any(
        abs(one.width.mm - key.b_mm) <= _SAME_MM
        and -_SAME_MM <= one.diameter.mm - key.cutter_mm <= _CUTTER_MM
        for one in workshop.entry.cutters.tee_slot_cutters
    )


def _instead(across: float) -> str:
    try:
        key = parallel_key(across)
    except NotListed:
        return "a cross pin"
    return (
        f"a parallel key of {key.b_mm:g} mm × {key.h_mm:g} mm, {key.shaft_depth_mm:g} mm deep, "
        "which an end mill cuts"
    )
