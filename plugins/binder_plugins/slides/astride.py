"""The gib lies on one side, so that what slides stands off the middle of its slot."""

from __future__ import annotations

from typing import TYPE_CHECKING

from binder.api import OffMiddleFact, Position, exact, made_at, made_places, shown_length

if TYPE_CHECKING:
    from binder_plugins.slides.facts import SlideFact

# The two sides of a slot that runs along its part, by the face that it is cut in, first the one
# where the gib lies unless the joint says otherwise; common practice, no source: the screws are
# got at from behind, or from above where the weight rests on the flank below.
_LEVEL, _UPRIGHT = ("back", "front"), ("top", "underside")
_SIDES = {
    "top": _LEVEL,
    "underside": _LEVEL,
    **dict.fromkeys(("front", "back", "left", "right"), _UPRIGHT),
}
_WAYS = {
    "back": (0.0, 1.0, 0.0),
    "front": (0.0, -1.0, 0.0),
    "top": (0.0, 0.0, 1.0),
    "underside": (0.0, 0.0, -1.0),
}


def sides_of(fact: SlideFact) -> tuple[str, str] | None:
    """The side of the slot's part on which the gib lies, and the other; None if none is known.

    The drawing, the template and the words all take it from here.
    """
    place = fact.female.place
    is_known = place is not None and place.width is not None
    if fact.slide is None or not fact.slide.gib_mm or not is_known or face_of(fact) not in _SIDES:
        return None
    usual = _SIDES[face_of(fact)]
    return usual[::-1] if fact.entry.gib_side == usual[1] else usual


def known_sides(fact: SlideFact) -> tuple[str, ...]:
    """The sides on which a gib of this slot can lie, the usual one first."""
    return _SIDES.get(face_of(fact), ())


def gib_side(fact: SlideFact) -> str:
    """The side of the slot's part on which the gib lies; '' where there is none, or no telling."""
    sides = sides_of(fact)
    return sides[0] if sides is not None else ""


def face_of(fact: SlideFact) -> str:
    """The face of its part in which the slot is cut."""
    entry = fact.female.entry
    return str((entry.on if entry is not None else None) or fact.female.end.place or "top")


def off_mm(fact: SlideFact) -> float:
    """How far in mm the tail stands off the middle of its slot, the gib nipped: half the gap."""
    slide = fact.slide
    return (slide.female.narrow_mm - slide.male.narrow_mm) / 2 if slide is not None else 0.0


def shifted_mm(fact: SlideFact) -> float:
    """How far in mm the slot is cut off the middle of its part, so that the tail runs on it.

    Towards the gib; nothing where the maker says the slot's place across, or its size.
    """
    entry = fact.female.entry
    is_written = entry is not None and entry.dovetailed != "to suit"
    return 0.0 if is_written or _across(fact) or not gib_side(fact) else off_mm(fact)


def beside_mm(fact: SlideFact) -> float:
    """From the middle of the slot to the side of its part where the gib lies, in mm."""
    sides, place = sides_of(fact), fact.female.place
    if sides is None or place is None or place.width is None:
        return _half_of_least(fact)
    written = _across(fact)
    if written is None or written.distance is None:
        return float(place.width) / 2 - shifted_mm(fact)
    far = written.distance.mm
    return far if written.rest == f"from {sides[0]}" else float(place.width) - far


def _half_of_least(fact: SlideFact) -> float:
    """Half the narrower way of the face: which way a slot runs in it nobody tells."""
    place = fact.female.place
    sides = (place.length, place.width) if place is not None else ()
    return min((float(one) for one in sides if one is not None), default=0.0) / 2


def _across(fact: SlideFact) -> Position | None:
    """Where across its face the maker puts the slot."""
    entry, sides = fact.female.entry, sides_of(fact)
    at = entry.at if entry is not None else None
    if at is None or sides is None:
        return None
    wanted = [f"from {one}" for one in sides]
    return next((one for one in at.all if one.rest in wanted), None)


def along_of(fact: SlideFact) -> Position | None:
    """Where along its run the maker puts the middle of the slot."""
    at = fact.female.entry.at if fact.female.entry is not None else None
    away = {f"from {one}" for one in known_sides(fact)}
    told = at.all if at is not None else ()
    return next((one for one in told if one.distance is not None and one.rest not in away), None)


def place_of(fact: SlideFact, old: Position | None) -> Position | None:
    """Where the slot is cut: as written, and so far across that the tail runs on the middle."""
    off, place, sides = shifted_mm(fact), fact.female.place, sides_of(fact)
    if not off or sides is None or place is None or place.width is None:
        return old
    # From the flank that the tail bears on, to a thousandth: an offset of two halves.
    across = made_at(exact(round(float(place.width) / 2 + off, 3)), sides[1], fact.joint)
    named = [one for one in old.all if one.distance is not None] if old is not None else []
    return made_places((*named, across), fact.joint) if named else across


def off_middle(fact: SlideFact) -> OffMiddleFact | None:
    """For the arrangement: where in its slot the slide stands."""
    side = gib_side(fact)
    if not side:
        return None
    x, y, z = (-off_mm(fact) * way for way in _WAYS[side])
    return OffMiddleFact(str(fact.female.end), (x, y, z))


def side_words(fact: SlideFact, units: str) -> str:
    """`in the back of the slot; the tail bears on its front flank, 0.966 mm off its middle`."""
    sides = sides_of(fact)
    if sides is None:
        return ""
    side, other = sides
    off = shown_length(exact(round(off_mm(fact), 3)), units)
    part = fact.female.end.item.replace("_", " ")
    bears = f"towards the {side} of the {part}; the tail bears on the {other} flank"
    middle = f"its middle {off} to the {other} of the slot's"
    on = f", on that of the {part}" if shifted_mm(fact) else ""
    return f"{bears}, {middle}{on}"
