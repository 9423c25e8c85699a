"""The holes of a joint as features of its parts: clear, tapped, and the seat of a head."""

from __future__ import annotations

import math
from collections.abc import Mapping

from binder.api import Fabrication, Feature, Part, PlaceFact, implied_feature, made_size
from binder_plugins.fasteners.halves import Half
from binder_plugins.fasteners.seen import Seen
from binder_solid.opposite import BEHIND
from binder_trade.explained import NotDefined
from binder_trade.fastening import positions

_KEPT = ("on", "across", "at", "off", "pattern", "each_end", "depth", "counterbore", "note")


def hole_feature(
    seen: Seen, half: Half, kind: str, size: object, depth: object = "through"
) -> Feature | None:
    """The hole of a half: a written one gets its size, else it is made on the named face.

    None where the half is no part that is made here, or its hole is written with its size.
    """
    if not half.is_to_make:
        return None
    if half.hole is not None:
        return _settled(seen, half.hole, kind, size, depth)
    where = "across" if half.is_radial else "on"
    values: dict[str, object] = {kind: size, where: half.end.place, "depth": depth}
    return made_here(seen, half, "", kind, {**values, **many(seen, half)})


def made_here(
    seen: Seen, half: Half, suffix: str, kind: str, values: Mapping[str, object]
) -> Feature:
    """A new feature of a half, named after the joint; no name is taken twice on one item."""
    name = f"{seen.id}_{suffix}" if suffix else seen.id
    while seen.design.facts.about(PlaceFact, f"{half.end.item}.{name}") is not None:
        name += "_hole"
    return implied_feature(seen.design, seen.joint, half.end.item, name, kind, **values)


def _settled(seen: Seen, hole: PlaceFact, kind: str, size: object, depth: object) -> Feature:
    """The written feature with its place, and with the size that the joint gives it."""
    owner = seen.design.parts.get(hole.item) or seen.design.fabrications[hole.item]
    entry = next(one.entry for one in owner.features if one.name == hole.place)
    kept = {name: getattr(entry, name, None) for name in _KEPT}
    if kept["depth"] is None:
        kept["depth"] = depth
    values = {name: value for name, value in kept.items() if value is not None}
    # A hole drilled to suit what is driven into it is reamed.
    is_changed = kind == "tapped" or (kind == "reamed" and hole.kind == "drilled")
    own_kind = kind if is_changed else hole.kind
    values[own_kind] = size
    return implied_feature(seen.design, seen.joint, hole.item, hole.place, own_kind, **values)


def settled_cut(seen: Seen, place: PlaceFact, values: Mapping[str, object]) -> Feature | None:
    """A groove or keyway that was left to suit, in its place, with the sizes of the table."""
    owner = seen.design.item(place.item)
    if not isinstance(owner, (Part, Fabrication)):
        return None
    entry = next(one.entry for one in owner.features if one.name == place.place)
    kept = {name: getattr(entry, name, None) for name in (*_KEPT, "clock", "length", "runs")}
    known = {name: value for name, value in kept.items() if value is not None}
    return implied_feature(
        seen.design, seen.joint, place.item, place.place, place.kind, **{**known, **values}
    )


def many(seen: Seen, half: Half) -> dict[str, object]:
    """How many holes one item has and how they stand, as fields of its feature."""
    off = seen.off_on(half)
    if half.hole is None and half.end.place == "ends" and off % 2 == 0:
        found = _in_row(seen, half, off // 2)
        return {**found, "each_end": True}
    return _in_row(seen, half, off)


def _in_row(seen: Seen, half: Half, off: int) -> dict[str, object]:
    found: dict[str, object] = {"off": off} if off > 1 else {}
    if seen.pattern is not None and seen.pattern.text and off > 1:
        groups = off // seen.each if off % seen.each == 0 else 1
        times = f", {groups} times" if groups > 1 else ""
        found["pattern"] = f"{pattern_on(seen, half)}{times}"
    return found


def pattern_on(seen: Seen, half: Half) -> str:
    """The pattern in words that lay it out alike on a face of another size.

    What is told from the edges of the one part is a grid on the other.
    """
    pattern, face = seen.pattern, seen.owner.place
    if pattern is None:
        return ""
    has_edges = pattern.edge_mm is not None and half is not seen.owner
    if not has_edges or face is None or face.length is None or face.width is None:
        return pattern.text
    try:
        spots = positions(pattern, float(face.length), float(face.width))
    except NotDefined:
        return pattern.text
    along, across = sorted({x for x, _ in spots}), sorted({y for _, y in spots})
    if len(along) < 2 or len(across) < 2 or len(along) * len(across) != len(spots):
        return pattern.text
    steps = (along[1] - along[0], across[1] - across[0])
    sizes = " x ".join(f"{step:.4g} mm" for step in steps)
    return f"{len(along)} by {len(across)} grid at {sizes}"


def seat_feature(
    seen: Seen, half: Half, kind: str, diameter_mm: float, depth_mm: float | None
) -> Feature | None:
    """The counterbore, countersink or spotface, on the side away from the other half."""
    if not half.is_made or half.is_radial:
        return None
    away = BEHIND.get(half.face)
    if away is None:
        return None
    if kind == "countersunk":
        # It is cut by eye until the head is in: a tenth is as near as anyone gets.
        diameter_mm = math.ceil(round(diameter_mm * 10, 6)) / 10
    values: dict[str, object] = {kind: made_size(diameter_mm, seen.joint), "on": away}
    if depth_mm is not None:
        values["depth"] = made_size(depth_mm, seen.joint)
    return made_here(seen, half, "seat", kind, {**values, **many(seen, half)})


def says_many(seen: Seen, half: Half) -> str:
    """`, 4 off: 2 sets of 2 off, 14 mm apart`: how many of a hole, for the part's leaf."""
    off, each = seen.off_on(half), seen.each
    if off <= 1:
        return ""
    pattern = pattern_on(seen, half) if seen.pattern is not None and each > 1 else ""
    times = off // each if off % each == 0 else 1
    if times == 1 or each == 1:
        return f", {_counted(off, pattern)}"
    return f", {off} off: {times} sets of {_counted(each, pattern)}"


def _counted(count: int, pattern: str) -> str:
    """The words of a pattern with how many, told once."""
    if pattern.startswith(f"{count} off"):
        return pattern
    pause = "," if pattern[:1].isdigit() else ""
    return f"{count} off{pause} {pattern}".rstrip()
