"""Joints held by dowels across the joint face: reamed holes in both halves, their length."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import made_size
from binder_plugins.fasteners import codes, hole_codes
from binder_plugins.fasteners.choosing import (
    better_words,
    chosen,
    lengths_of,
    not_sold,
    unlisted,
    wanted,
)
from binder_plugins.fasteners.halves import Half
from binder_plugins.fasteners.holes import hole_feature, says_many
from binder_plugins.fasteners.passing import half_fact
from binder_plugins.fasteners.room_beside import room_on
from binder_plugins.fasteners.said import Said
from binder_plugins.fasteners.seen import Seen
from binder_trade.fastening import Length, choose_dowel

_DEEP = 2.0  # diameters of a dowel in each half
_LOOSE_MM = 0.3  # a pin hole that is wider than this over its pin is no pin hole
_TIGHT_MM = 1e-6


def dowelled(seen: Seen) -> Iterator[Said]:
    """All that follows from dowels across a joint face: reamed holes, their length."""
    size = seen.asked.diameter_mm
    if size is None:
        yield wanted(seen, seen.asked.name)
        return
    for half in seen.halves:
        deep = _deep(half, size)
        is_through = half.thick is not None and deep >= half.thick - _TIGHT_MM
        depth = "through" if is_through else made_size(deep, seen.joint)
        other = other_end(seen, half)
        feature = hole_feature(seen, half, "reamed", made_size(size, seen.joint), depth)
        if feature is not None:
            yield feature
            to = "through" if is_through else f"{deep:g} mm deep"
            what = f"ream {size:g} mm H7, {to}{says_many(seen, half)}"
            yield half_fact(seen, half, what, other, "reamed through both, screwed together")
        else:
            yield from written_hole(seen, half, size, other)
        yield from room_on(seen, half, None)
    yield from _dowel_length(seen, size)


def _deep(half: Half, size: float) -> float:
    if half.hole is not None and half.hole.depth is not None:
        return float(half.hole.depth)
    through = half.thick if half.thick is not None else _DEEP * size
    if half.hole is not None and half.hole.is_through and half.hole.diameter is not None:
        return through
    return min(through, _DEEP * size)


def other_end(seen: Seen, half: Half) -> str:
    """The mate of a half, as the leaf names it."""
    return str(next((one.end for one in seen.halves if one is not half), half.end))


def written_hole(seen: Seen, half: Half, size: float, mate: str) -> Iterator[Said]:
    """A pin hole that is written: does it fit a pin so thick, in mm."""
    hole = half.hole
    if hole is None or hole.diameter is None:
        return
    diameter = float(hole.diameter)
    # A hole drilled under size is reamed or driven tight: that is how pins are fitted.
    if diameter > size + _LOOSE_MM or diameter < 0.8 * size:
        yield hole_codes.HOLE_SIZES_DIFFER.at(
            half.end.at,
            f"a pin of {size:g} mm does not fit the hole of {diameter:g} mm",
            help=f"ream {size:g} mm, or write `reamed: to suit`",
        )
    yield half_fact(seen, half, f"{hole.kind} {diameter:g} mm", mate, seen.joint.made)


def _dowel_length(seen: Seen, size: float) -> Iterator[Said]:
    name = seen.asked.name
    lengths = lengths_of(seen)
    if not isinstance(lengths, dict):
        yield from unlisted(seen, lengths)
        return
    yield from not_sold(seen, lengths)
    depths = [_deep(half, size) for half in (seen.halves[0], seen.halves[-1])]
    best = choose_dowel(lengths, size, *depths)
    if name.length_mm is None:
        yield from chosen(seen, best, lengths, depths[0])
        return
    over = name.length_mm - sum(depths)
    if over > _TIGHT_MM:
        yield codes.SCREW_TOO_LONG.at(
            seen.asked.at,
            f"'{name.says}' is {over:.1f} mm longer than its two holes in '{seen.joint.name}'",
            help=better_words(best, lengths),
        )
    held = Length(name.length_mm, name.length_mm / 2, -over, "as written", best.steps)
    yield wanted(seen, name, held, depths[0])
