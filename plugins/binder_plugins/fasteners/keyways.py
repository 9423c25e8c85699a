"""A keyway in a shaft or a hub: made, given its size or looked over, and the wall beside it."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from binder.api import made_size
from binder_plugins.fasteners import shaft_codes
from binder_plugins.fasteners.halves import Half
from binder_plugins.fasteners.holes import made_here, settled_cut
from binder_plugins.fasteners.hubs import outside, under_cut
from binder_plugins.fasteners.passing import half_fact
from binder_plugins.fasteners.said import Said
from binder_plugins.fasteners.seen import Seen

_SAME_MM = 0.02


@dataclass(frozen=True, slots=True)
class Way:
    """A keyway as the table has it, mm; `cutter_mm` where a Woodruff cutter sinks it."""

    wide_mm: float
    deep_mm: float
    words: str
    how: str
    cutter_mm: float | None = None


def keyway(seen: Seen, half: Half, way: Way, mate: Half) -> Iterator[Said]:
    """The keyway of a half: a written one looked over, else cut in the step or bore."""
    if not half.is_made or half.place is None:
        return
    yield from _cut(seen, half, way)
    yield half_fact(seen, half, way.words, str(mate.end), way.how)


def _cut(seen: Seen, half: Half, way: Way) -> Iterator[Said]:
    values: dict[str, object] = {
        "keywayed": made_size(way.wide_mm, seen.joint),
        "depth": made_size(way.deep_mm, seen.joint),
    }
    if way.cutter_mm is not None:
        values["cutter"] = made_size(way.cutter_mm, seen.joint)
    place = half.place
    if place is None:
        return
    if place.kind != "keywayed":
        on = place.place if place.form == "step" else place.on
        # In a bore the keyway stands on the bore itself: a step would be cut from outside.
        values["on"] = place.place if place.form == "hole" else on
        yield made_here(seen, half, "keyway", "keywayed", values)
    elif place.is_to_suit:
        found = settled_cut(seen, place, values)
        if found is not None:
            yield found
    else:
        yield from _written(seen, half, way)


def _written(seen: Seen, half: Half, way: Way) -> Iterator[Said]:
    wide = half.place.diameter if half.place is not None else None
    if wide is not None and abs(float(wide) - way.wide_mm) > _SAME_MM:
        yield shaft_codes.KEY_NOT_STANDARD.at(
            half.end.at,
            f"the keyway of '{half.end}' is {float(wide):g} mm wide, the key {way.wide_mm:g} mm",
            help=f"cut it {way.wide_mm:g} mm wide and {way.deep_mm:g} mm deep",
        )


def hub_wall(
    seen: Seen, hub: Half, deep_mm: float, least_mm: float, across: float
) -> Iterator[Said]:
    """A finding where less than `least_mm` of hub is left over a keyway so deep."""
    over = outside(seen, hub)
    if over is None or under_cut(seen, hub) is None:
        return
    wall = (over - across) / 2 - deep_mm
    if wall < least_mm:
        yield shaft_codes.KEYWAY_THINS_HUB.at(
            hub.end.at,
            f"{wall:.1f} mm of hub are left over the keyway, {least_mm:g} mm is the least",
            help=f"make the hub {across + 2 * (deep_mm + least_mm):.1f} mm or more",
        )
