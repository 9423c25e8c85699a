"""Joints without a rivet: a step of the one part is riveted over in a hole of the other."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import Design, Diagnostic, Joint, PlaceFact, exact, made_size, shown_length
from binder_plugins.fasteners import hole_codes
from binder_plugins.fasteners.asking import Asked
from binder_plugins.fasteners.halves import Half
from binder_plugins.fasteners.holes import hole_feature, says_many
from binder_plugins.fasteners.passing import half_fact
from binder_plugins.fasteners.riveting import next_drill
from binder_plugins.fasteners.said import Said
from binder_plugins.fasteners.seen import Seen, look
from binder_trade.fastening import TAIL_SEAT_DEG, read_fastener, tail_mouth

# All common practice, no source: what stands out for the head in diameters of the tail, and how
# wide the hole may be over it.
_HEAD = 1.0
_LEAST_HEAD = 0.5
_MOST_HEAD = 1.25
_LOOSE_SHARE = 0.15
_LOOSE_MM = 0.3
_NEAR_MM = 1e-6
_VERBS = {"drilled": "drill", "reamed": "ream", "bored": "bore"}


def is_own_rivet(joint: Joint, design: Design) -> bool:
    """A step meets a hole, and no rivet is named."""
    if joint.kind != "riveted" or len(joint.ends) != 2:
        return False
    places = [design.facts.about(PlaceFact, str(end)) for end in joint.ends]
    return {"step", "hole"} <= {place.form for place in places if place is not None}


def riveted_over(joint: Joint, design: Design) -> Iterator[Said]:
    """Both halves: the tail with what stands out of it, and its hole, sized or checked."""
    tail = next(
        place
        for end in joint.ends
        if (place := design.facts.about(PlaceFact, str(end))) is not None and place.form == "step"
    )
    if tail.diameter is None or tail.diameter <= 0:
        return
    across = float(tail.diameter)
    rivet = read_fastener(f"{across:.4f} mm rivet")
    seen = look(joint, design, Asked(rivet, "", joint.at, None, across))
    if isinstance(seen, Diagnostic):
        yield seen
        return
    by_form = {half.place.form: half for half in seen.halves if half.place is not None}
    yield from _hole(seen, by_form["hole"], by_form["step"], across)
    yield from _tail(seen, by_form["step"], by_form["hole"], across)


def _hole(seen: Seen, half: Half, tail: Half, across: float) -> Iterator[Said]:
    place = half.place
    if place is None or not half.is_made:
        return
    drill, mm = next_drill(seen, across)
    verb, size = _VERBS.get(place.kind, "drill"), drill
    if place.is_to_suit:
        feature = hole_feature(seen, half, place.kind, made_size(mm, seen.joint, drill))
        if feature is not None:
            yield feature
    elif place.diameter is not None:
        size = _shown(float(place.diameter), seen.design)
        yield from _fits(seen, half, float(place.diameter), across)
    wide = float(place.diameter) if place.diameter is not None else mm
    mouth = tail_mouth(across, wide, half.thick or across)
    sunk = f"{_shown(mouth, seen.design)} × {TAIL_SEAT_DEG:g}°"
    what = f"{verb} {size}{says_many(seen, half)}, mouth countersunk ⌀{sunk} on the far side"
    yield half_fact(seen, half, what, str(tail.end), seen.joint.made)


def _fits(seen: Seen, half: Half, hole: float, across: float) -> Iterator[Said]:
    drill = next_drill(seen, across)[0]
    tail, found = _shown(across, seen.design), _shown(hole, seen.design)
    if hole < across - _NEAR_MM:
        yield hole_codes.CLEARANCE_TOO_SMALL.at(
            half.end.at, f"a tail of {tail} does not pass a hole of {found}", help=f"drill {drill}"
        )
    elif hole > across + max(_LOOSE_MM, _LOOSE_SHARE * across) + _NEAR_MM:
        yield hole_codes.HOLE_SIZES_DIFFER.at(
            half.end.at,
            f"a tail of {tail} is loose in a hole of {found}, and sets crooked",
            help=f"drill {drill}, or make the tail thicker",
        )


def _tail(seen: Seen, half: Half, hole: Half, across: float) -> Iterator[Said]:
    if not half.is_made:
        return
    length = half.place.length if half.place is not None else None
    what, how = f"tail ⌀{_shown(across, seen.design)}, left soft", "riveted over"
    if length is not None and hole.thick is not None:
        out = float(length) - hole.thick
        yield from _too_short(seen, half, hole.thick, out, across)
        what += f", {_shown(max(0.0, out), seen.design)} stands out of the hole"
        how = _closing(seen, out, across)
    yield half_fact(seen, half, what, str(hole.end), how)


def _closing(seen: Seen, out: float, across: float) -> str:
    if out > _MOST_HEAD * across:
        left = _shown(_HEAD * across, seen.design)
        return f"file it to {left} above the plate, then rivet over"
    return "riveted over" if out >= _HEAD * across - _NEAR_MM else "riveted into the countersink"


def _too_short(seen: Seen, half: Half, thick: float, out: float, across: float) -> Iterator[Said]:
    if out >= _LEAST_HEAD * across - _NEAR_MM:
        return
    design = seen.design
    stands = f"stands {_shown(out, design)} out of" if out > 0 else "ends inside"
    yield hole_codes.RIVET_TOO_SHORT.at(
        half.end.at,
        f"'{half.end}' {stands} {_shown(thick, design)} of plate; its head wants "
        f"{_shown(_LEAST_HEAD * across, design)} at the least",
        help=f"make it {_shown(thick + _HEAD * across, design)} long",
    )


def _shown(mm: float, design: Design) -> str:
    return shown_length(exact(round(mm, 2)), design.units)
