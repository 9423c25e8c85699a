"""Where the groove of a clip lies: behind what it holds, else as near the end as it may."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from binder.api import PlaceFact, Position, exact, made_at, shown_length
from binder_plugins.fasteners import shaft_codes
from binder_plugins.fasteners.clip_grooves import Ring
from binder_plugins.fasteners.halves import Half
from binder_plugins.fasteners.said import Said
from binder_plugins.fasteners.seen import Seen

_GROOVES_IN = 2  # widths of a groove from the end of its step to its inner wall, as drawn
_PLAY_MM = Fraction(1, 10)  # of what is held against a shoulder; common practice, no source


def at_of(seen: Seen, holder: Half, place: PlaceFact, ring: Ring) -> Position | None:
    """The middle of the groove from the free end, None where the step has none."""
    end = _mouth(seen, place) if place.form == "hole" else free_end(place)
    if end is None:
        return None
    if place.form == "hole":
        return made_at(_least(ring), end, seen.joint)
    return made_at(_from_end(seen, holder, place, ring), end, seen.joint)


def _mouth(seen: Seen, bore: PlaceFact) -> str | None:
    """The face that a bore starts from: that of a box, or the nearer end of turned work."""
    on = seen.design.facts.about(PlaceFact, f"{bore.item}.{bore.on}")
    if on is None or on.form == "face":
        return bore.on or None
    start, length, whole = on.start or 0, on.length or 0, on.thickness or 0
    return "left" if start < whole - start - length else "right"


def _least(ring: Ring) -> Fraction:
    """The middle of the groove from the end, with no more metal beyond it than it must have."""
    return exact(ring.land_mm) + exact(ring.wide_mm) / 2


def free_end(place: PlaceFact) -> str | None:
    """The end of turned work that a step or bore comes out at: `left`, `right` or neither."""
    if place.form != "step" or None in (place.start, place.length, place.thickness):
        return None
    start, length, whole = place.start or 0, place.length or 0, place.thickness or 0
    if start + length == whole:
        return "right"
    return "left" if start == 0 else None


def _from_end(seen: Seen, holder: Half, place: PlaceFact, ring: Ring) -> Fraction:
    """Behind what it holds where that stands against a shoulder, else with the least land."""
    least = _least(ring)
    held = _held(seen, holder, place)
    if held is None or place.length is None:
        return least
    behind = place.length - held - _PLAY_MM - exact(ring.wide_mm) / 2
    return max(least, behind)


def _held(seen: Seen, holder: Half, place: PlaceFact) -> Fraction | None:
    """The length of the one piece that stands on the step, against its shoulder, in mm."""
    others = [half for half in seen.halves if half is not holder]
    if len(others) != 1 or place.length == place.thickness:
        return None
    for joint in seen.design.joints.values():
        ends = [str(end) for end in joint.ends]
        if str(holder.end) in ends and not {others[0].end.item} & set(joint.items):
            return None
    return _long(seen, others[0])


def _long(seen: Seen, half: Half) -> Fraction | None:
    """How long a piece is along its bore: that of its hole, else of its whole turned length."""
    for name in (half.end.place, "top"):
        place = seen.design.facts.about(PlaceFact, f"{half.end.item}.{name}")
        is_known = place is not None and place.form in ("hole", "face") and place.is_round
        if name and place is not None and is_known:
            return place.thickness
    return None


def room_fault(seen: Seen, holder: Half, place: PlaceFact, ring: Ring) -> Iterator[Said]:
    """A finding where piece, play, groove and land do not go on the step together."""
    if place.form != "step" or place.length is None:
        return
    held = _held(seen, holder, place) if free_end(place) is not None else None
    need = exact(ring.wide_mm) + exact(ring.land_mm)
    need += held + _PLAY_MM if held is not None else 0
    if need > place.length:
        piece = f"{shown_length(held)} of hub, {shown_length(_PLAY_MM)} of play, " if held else ""
        yield shaft_codes.CLIP_HAS_NO_ROOM.at(
            holder.end.at,
            f"'{holder.end}' is {shown_length(place.length)} long; {piece}a groove of "
            f"{ring.wide_mm:g} mm and {ring.land_mm:g} mm of metal beyond it do not go on it",
            help=f"make the step {shown_length(need)} long or more",
        )


def held_by_two(seen: Seen, place: PlaceFact | None, ring: Ring) -> str:
    """How much of the other half goes between two clips, or that one clip holds it."""
    if place is None or place.kind != "grooved" or place.count < 2:
        return "held on one side by the circlip"
    step = seen.design.facts.about(PlaceFact, f"{place.item}.{place.on}")
    if place.count != 2 or step is None or step.length is None or _is_placed(seen, place):
        return "between the circlips"
    room = float(step.length) - 2 * _GROOVES_IN * ring.wide_mm
    return f"between the circlips, {room:g} mm wide at the most" if room > 0 else "no room"


def _is_placed(seen: Seen, place: PlaceFact) -> bool:
    owner = seen.design.parts.get(place.item)
    features = owner.features if owner is not None else ()
    return any(getattr(one.entry, "at", None) for one in features if one.name == place.place)
