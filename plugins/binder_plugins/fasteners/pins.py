"""Joints held by pins across hub and shaft, or through plates: their holes and their length."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from math import isfinite

from binder.api import Feature, Part, PlaceFact, made_at, made_size
from binder_plugins.fasteners import codes, shaft_codes
from binder_plugins.fasteners.choosing import (
    better_words,
    chosen,
    lengths_of,
    not_sold,
    unlisted,
    wanted,
    working,
)
from binder_plugins.fasteners.clip_places import free_end
from binder_plugins.fasteners.dowels import other_end, written_hole
from binder_plugins.fasteners.halves import Half
from binder_plugins.fasteners.hinging import hinge_fault
from binder_plugins.fasteners.holes import hole_feature, made_here, says_many
from binder_plugins.fasteners.passing import half_fact, through_words
from binder_plugins.fasteners.pin_holes import Hole, best_length, hole_for, sized, split_fault
from binder_plugins.fasteners.said import Said, Wanted
from binder_plugins.fasteners.seen import Seen
from binder_trade.fastening import Length, pin_in_shaft

_TIGHT_MM = 1e-6
_FROM_END = 2  # pins from the end of the shaft to the middle of a split pin; common practice


def pinned(asked_for: Seen) -> Iterator[Said]:
    """All that follows from a pin through two halves, or across a hub and its shaft."""
    shaft = _shaft(asked_for)
    across = _across(shaft) if shaft is not None else None
    seen = replace(asked_for, asked=sized(asked_for.asked, across))
    size = seen.asked.diameter_mm
    if size is None:
        yield wanted(seen, seen.asked.name)
        return
    yield from hinge_fault(seen, _crossed(seen))
    if shaft is not None:
        yield from _across_shaft(seen, shaft, size)
        yield from split_fault(seen, _across(shaft))
    told = list(_pin_length(seen, shaft))
    hole = hole_for(seen, next((one.length_mm for one in told if isinstance(one, Wanted)), None))
    for half in seen.halves:
        if _stands_beside(seen, half):
            yield half_fact(seen, half, "stands beside the pin", other_end(seen, half), "")
        else:
            yield from _pin_hole(seen, half, hole, size)
    yield from told


def _crossed(seen: Seen) -> tuple[Half, ...]:
    """The halves that the pin crosses, () where one of them takes the other in its bore."""
    if any(
        _is_bored(half) or _is_bore(seen, half) or half.is_axial or _stands_beside(seen, half)
        for half in seen.halves
    ):
        return ()
    crossed = tuple(half for half in seen.halves if half.is_made and half.place is not None)
    is_round = all(half.place is not None and half.place.form == "step" for half in crossed)
    return () if is_round else crossed  # Of two steps one is the boss round the other.


def _stands_beside(seen: Seen, half: Half) -> bool:
    """A split pin holds what is threaded on its shaft by standing before it, not through it."""
    is_split = seen.asked.name.kind == "split pin" and half.hole is None
    return is_split and half.is_made and (half.place is None or half.place.form == "face")


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


def _pin_hole(seen: Seen, half: Half, hole: Hole, size: float) -> Iterator[Said]:
    mate = other_end(seen, half)
    if not half.is_to_make:
        yield from written_hole(seen, half, size, mate)
        return
    is_hole = half.place is not None and half.place.form == "hole" and half.hole is None
    if is_hole or _is_bore(seen, half):
        yield from _across_hub(seen, half, hole, mate)
        return
    feature = hole_feature(seen, half, hole.kind, made_size(hole.drill_mm, seen.joint))
    if feature is not None:
        yield _near_end(seen, half, feature, size)
        what = f"{hole.verb} {hole.drill} {through_words(half)}{says_many(seen, half)}{hole.then}"
        yield half_fact(seen, half, what, mate, hole.how)


def _near_end(seen: Seen, half: Half, feature: Feature, size: float) -> Feature:
    """A split pin that stands beside what it holds goes across the free end of its step."""
    end = free_end(half.place) if half.place is not None and half.hole is None else None
    if end is None or not any(_stands_beside(seen, one) for one in seen.halves):
        return feature
    at = made_at(_FROM_END * size, end, seen.joint)
    return replace(feature, entry=feature.entry.model_copy(update={"at": at}))


def _is_bore(seen: Seen, half: Half) -> bool:
    """A bore to suit along the axis, in a joint with a shaft: the pin crosses it."""
    hole = half.hole
    is_axial = hole is not None and hole.is_to_suit and not hole.across and bool(hole.on)
    shaft = _shaft(seen)
    return is_axial and shaft is not None and shaft is not half


def _across_hub(seen: Seen, half: Half, hole: Hole, mate: str) -> Iterator[Said]:
    """The bore is named: the pin goes across the step that it is in."""
    step = half.place.on if half.place is not None else ""
    if not step:
        return
    values = {hole.kind: made_size(hole.drill_mm, seen.joint), "across": step, "depth": "through"}
    made = made_here(seen, half, "pin", hole.kind, values)
    yield made
    what = f"{hole.verb} {hole.drill} across {step}{hole.then}"
    yield half_fact(seen, half, what, mate, hole.how, made.name)  # The bore has a size of its own.


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
    best = best_length(seen, lengths, through, is_thin=is_thin)
    if name.length_mm is None:
        yield from chosen(seen, best, lengths, through)
        return
    over = name.length_mm - through
    is_split = name.kind == "split pin"
    if is_thin and not is_split and over < -_TIGHT_MM:
        yield shaft_codes.PIN_TOO_SHORT.at(
            seen.asked.at,
            f"'{name.says}' ends {-over:.1f} mm short in '{seen.joint.name}': it goes through "
            f"{through:.1f} mm of plates",
            help=better_words(best, lengths),
        )
    if is_split and isinstance(best, Length) and name.length_mm < best.chosen_mm:
        yield shaft_codes.PIN_TOO_SHORT.at(
            seen.asked.at,
            f"the legs of '{name.says}' stand {over:.1f} mm out of '{seen.joint.name}': too "
            "little to bend",
            help=f"{best.chosen_mm:g} mm is sold, and its {best.why}",
        )
    elif not is_split and over > (seen.asked.diameter_mm or 0.0):
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
    hubs = [half for half in seen.halves if half is not shaft and not _stands_beside(seen, half)]
    bored = [half for half in hubs if _is_bored(half)]
    if shaft is not None and bored:
        return max((_outside(seen, half) for half in bored), default=0.0) or None
    passed = [half for half in seen.halves if half is shaft or half in hubs]
    thick = [_across(half) if half is shaft else half.thick for half in passed]
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
