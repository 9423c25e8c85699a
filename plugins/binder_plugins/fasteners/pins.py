"""Joints held by pins: dowels across the joint face, cross pins through hub and shaft."""

from __future__ import annotations

from collections.abc import Iterator
from math import isfinite

from binder.api import Part, PlaceFact, made_size
from binder_plugins.fasteners import codes, hole_codes, shaft_codes
from binder_plugins.fasteners.choosing import (
    better_words,
    chosen,
    lengths_of,
    not_sold,
    unlisted,
    wanted,
    working,
)
from binder_plugins.fasteners.halves import Half
from binder_plugins.fasteners.holes import hole_feature, made_here, says_many
from binder_plugins.fasteners.passing import half_fact, through_words
from binder_plugins.fasteners.room_beside import room_on
from binder_plugins.fasteners.said import Said
from binder_plugins.fasteners.seen import Seen
from binder_trade.fastening import (
    Length,
    choose_cross_pin,
    choose_dowel,
    choose_through_pin,
    pin_in_shaft,
)

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
        other = _other(seen, half)
        feature = hole_feature(seen, half, "reamed", made_size(size, seen.joint), depth)
        if feature is not None:
            yield feature
            to = "through" if is_through else f"{deep:g} mm deep"
            what = f"ream {size:g} mm H7, {to}{says_many(seen, half)}"
            yield half_fact(seen, half, what, other, "reamed through both, screwed together")
        else:
            yield from _written(seen, half, size, other)
        yield from room_on(seen, half, None)
    yield from _dowel_length(seen, size)


def _deep(half: Half, size: float) -> float:
    if half.hole is not None and half.hole.depth is not None:
        return float(half.hole.depth)
    through = half.thick if half.thick is not None else _DEEP * size
    if half.hole is not None and half.hole.is_through and half.hole.diameter is not None:
        return through
    return min(through, _DEEP * size)


def _other(seen: Seen, half: Half) -> str:
    return str(next((one.end for one in seen.halves if one is not half), half.end))


def _written(seen: Seen, half: Half, size: float, mate: str) -> Iterator[Said]:
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


def pinned(seen: Seen) -> Iterator[Said]:
    """All that follows from a pin through two halves, or across a hub and its shaft."""
    size = seen.asked.diameter_mm
    if size is None:
        yield wanted(seen, seen.asked.name)
        return
    shaft = _shaft(seen)
    if shaft is not None:
        yield from _across_shaft(seen, shaft, size)
    for half in seen.halves:
        yield from _pin_hole(seen, half, size)
    yield from _pin_length(seen, shaft)


def _shaft(seen: Seen) -> Half | None:
    """The half that is a round bar or step, whose pin hole goes across it."""
    radial = [half for half in seen.halves if half.is_radial]
    return min(radial, key=_across, default=None)


def _across(half: Half) -> float:
    """The diameter that a pin goes across: along a radial hole its metal is that."""
    if half.thick is not None and half.hole is not None:
        return half.thick
    place = half.place
    is_round = place is not None and place.diameter is not None
    return float(place.diameter or 0) if place is not None and is_round else float("inf")


def _across_shaft(seen: Seen, shaft: Half, size: float) -> Iterator[Said]:
    across = _across(shaft)
    if 0 < across < float("inf"):
        verdict = pin_in_shaft(size, across)
        if size >= across:
            yield shaft_codes.PIN_WIDER_THAN_SHAFT.at(
                shaft.end.at,
                f"a pin of {size:g} mm leaves nothing of a shaft of {across:g} mm",
                help=f"a pin of {across / 3:.1f} mm at the most, or a larger shaft",
            )
        elif not verdict.is_good:
            yield shaft_codes.PIN_TOO_BIG.at(
                shaft.end.at,
                f"a pin of {size:g} mm across a shaft of {across:g} mm; a third, "
                f"{verdict.needs_mm:.1f} mm, is the most",
                help=" or ".join(verdict.ways_out[:2]),
            )
    owner = seen.design.parts.get(shaft.end.item)
    if owner is not None and _is_hardened(owner):
        yield shaft_codes.PIN_IN_HARD_SHAFT.at(
            shaft.end.at,
            f"'{owner.name}' is {owner.finish}, and '{seen.joint.name}' drills it",
            help="drill before hardening, or grind a flat for a grub screw",
        )


def _is_hardened(part: Part) -> bool:
    return "hardened" in part.finish.lower() and "unhardened" not in part.finish.lower()


def _pin_hole(seen: Seen, half: Half, size: float) -> Iterator[Said]:
    mate = _other(seen, half)
    if not half.is_to_make:
        yield from _written(seen, half, size, mate)
        return
    is_hole = half.place is not None and half.place.form == "hole" and half.hole is None
    if is_hole or _is_bore(seen, half):
        yield from _across_hub(seen, half, size, mate)
        return
    feature = hole_feature(seen, half, "drilled", made_size(size, seen.joint))
    if feature is not None:
        yield feature
        what = f"drill {size:g} mm {through_words(half)}{says_many(seen, half)}"
        yield half_fact(seen, half, what, mate, _how(seen))


def _is_bore(seen: Seen, half: Half) -> bool:
    """A bore to suit along the axis, in a joint with a shaft: the pin crosses it."""
    hole = half.hole
    is_axial = hole is not None and hole.is_to_suit and not hole.across and bool(hole.on)
    shaft = _shaft(seen)
    return is_axial and shaft is not None and shaft is not half


def _across_hub(seen: Seen, half: Half, size: float, mate: str) -> Iterator[Said]:
    """The bore is named: the pin goes across the step that it is in."""
    step = half.place.on if half.place is not None else ""
    if not step:
        return
    values = {"drilled": made_size(size, seen.joint), "across": step, "depth": "through"}
    yield made_here(seen, half, "pin", "drilled", values)
    yield half_fact(seen, half, f"drill {size:g} mm across {step}", mate, _how(seen))


def _how(seen: Seen) -> str:
    is_taper = seen.asked.name.kind == "taper pin"
    return "drill the small end through both, then taper ream" if is_taper else "drilled together"


def _pin_length(seen: Seen, shaft: Half | None) -> Iterator[Said]:
    name = seen.asked.name
    lengths = lengths_of(seen)
    if not isinstance(lengths, dict):
        yield from unlisted(seen, lengths)
        return
    yield from not_sold(seen, lengths)
    through = _through(seen, shaft)
    if through is None:
        yield wanted(seen, name)
        return
    is_thin = _is_thin(seen, shaft)
    best = (choose_through_pin if is_thin else choose_cross_pin)(lengths, through)
    if name.length_mm is None:
        yield from chosen(seen, best, lengths, through)
        return
    over = name.length_mm - through
    if is_thin and over < -_TIGHT_MM:
        yield shaft_codes.PIN_TOO_SHORT.at(
            seen.asked.at,
            f"'{name.says}' ends {-over:.1f} mm short in '{seen.joint.name}': it goes through "
            f"{through:.1f} mm of plates",
            help=better_words(best, lengths),
        )
    if over > (seen.asked.diameter_mm or 0.0):
        yield codes.SCREW_TOO_LONG.at(
            seen.asked.at,
            f"'{name.says}' stands {over:.1f} mm out of '{seen.joint.name}'",
            help=better_words(best, lengths),
        )
    held = Length(name.length_mm, min(name.length_mm, through), -over, "as written", best.steps)
    yield wanted(seen, name, held, through)
    yield working(seen, "length", f"length of the {name.kind}", name.length_text, "as written",
                  best.steps)  # fmt: skip


def _is_thin(seen: Seen, shaft: Half | None) -> bool:
    """A plate on the outside is no thicker than the pin: there every bit of it must bear."""
    size = seen.asked.diameter_mm or 0.0
    plates = [half for half in seen.halves if half is not shaft and not _is_bored(half)]
    thick = [half.thick / half.plates for half in plates if half.thick is not None]
    return any(one <= size + _TIGHT_MM for one in thick)


def _through(seen: Seen, shaft: Half | None) -> float | None:
    """What the pin goes through in all: the hub round a shaft, else the metal of both halves."""
    if seen.entry.grip is not None:
        return seen.entry.grip.mm
    hubs = [half for half in seen.halves if half is not shaft]
    bored = [half for half in hubs if _is_bored(half)]
    if shaft is not None and bored:
        return max((_outside(seen, half) for half in bored), default=0.0) or None
    thick = [_across(half) if half is shaft else half.thick for half in seen.halves]
    known = [one for one in thick if one is not None and isfinite(one)]
    return sum(known) if len(known) == len(thick) else None


def _is_bored(half: Half) -> bool:
    return half.place is not None and half.place.form == "hole" and half.hole is None


def _outside(seen: Seen, hub: Half) -> float:
    """The diameter of the step that a bore is in, 0 where it is not known."""
    step = hub.place.on if hub.place is not None else ""
    place = seen.design.facts.about(PlaceFact, f"{hub.end.item}.{step}")
    is_round = place is not None and place.form == "step" and place.diameter is not None
    return float(place.diameter or 0) if place is not None and is_round else 0.0
