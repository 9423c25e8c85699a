"""Where a joint stands on its larger part, told once for both: one place for each such joint."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import replace

from binder.api import Diagnostic, Feature
from binder_plugins.fasteners import codes
from binder_plugins.fasteners.halves import Half
from binder_plugins.fasteners.holes import pattern_on
from binder_plugins.fasteners.said import Said
from binder_plugins.fasteners.seen import Seen


def placed(seen: Seen, said: Iterable[Said]) -> Iterator[Said]:
    """What was said, each new hole of the larger part put to the places of the joint."""
    places = seen.entry.places
    if not places:
        yield from said
        return
    half = _placed_half(seen, len(places))
    if half is None:
        yield _unlike(seen, len(places))
        yield from said
        return
    for one in said:
        is_there = isinstance(one, Feature) and one.owner == half.end.item and half.hole is None
        if isinstance(one, Feature) and is_there:
            yield from _copies(one, seen, half)
        else:
            yield one


def _placed_half(seen: Seen, count: int) -> Half | None:
    """The half on which the joint is made so many times; of two the one with more room."""
    able = [half for half in seen.halves if seen.off_on(half) == count * seen.each]
    return max(able, key=_room, default=None)


def _room(half: Half) -> float:
    place = half.place
    if place is None or place.length is None:
        return 0.0
    return float(place.length * (place.width or place.length))


def _copies(feature: Feature, seen: Seen, half: Half) -> Iterator[Feature]:
    pattern = pattern_on(seen, half) if seen.each > 1 else None
    for number, place in enumerate(seen.entry.places, 1):
        entry = feature.entry.model_copy(
            update={"at": place, "off": seen.each if seen.each > 1 else None, "pattern": pattern}
        )
        name = feature.name if len(seen.entry.places) == 1 else f"{feature.name}_{number}"
        yield replace(feature, name=name, entry=entry)


def _unlike(seen: Seen, count: int) -> Diagnostic:
    needs = max(seen.off_on(half) // seen.each for half in seen.halves)
    return codes.PLACES_DO_NOT_MATCH.at(
        seen.entry.places[0].text.span,
        f"{count} places are told, '{seen.joint.name}' is made {needs} times",
        help=f"tell {needs}, one for each, as `places: [20 mm from left, 40 mm from left]`",
    )
