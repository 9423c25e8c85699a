"""The gib lies on one side, so that what slides stands off the middle of its slot."""

from __future__ import annotations

from typing import TYPE_CHECKING

from binder.api import OffMiddleFact, Position, exact, made_at, made_places, shown_length

if TYPE_CHECKING:
    from binder_plugins.slides.facts import SlideFact

# The side of the gib in a slot that runs along its part; common practice, no source: the screws
# are got at from behind, and the tail bears on the flank that the work is measured from.
_SIDE, _OTHER = "back", "front"
_FACES = ("top", "underside")
_ACROSS = ("from front", "from back")


def gib_side(fact: SlideFact) -> str:
    """The side of the slot's part on which the gib lies; '' where there is none, or no telling."""
    if fact.slide is None or not fact.slide.gib_mm or _face(fact) not in _FACES:
        return ""
    place = fact.female.place
    return _SIDE if place is not None and place.width is not None else ""


def _face(fact: SlideFact) -> str:
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
    at = entry.at if entry is not None else None
    is_placed = any(one.rest in _ACROSS for one in at.all) if at is not None else False
    is_written = entry is not None and entry.dovetailed != "to suit"
    return 0.0 if is_placed or is_written or not gib_side(fact) else off_mm(fact)


def place_of(fact: SlideFact, old: Position | None) -> Position | None:
    """Where the slot is cut: as written, and so far across that the tail runs on the middle."""
    off, place = shifted_mm(fact), fact.female.place
    if not off or place is None or place.width is None:
        return old
    # From the flank that the tail bears on, to a thousandth: an offset of two halves.
    across = made_at(exact(round(float(place.width) / 2 + off, 3)), _OTHER, fact.joint)
    named = [one for one in old.all if one.distance is not None] if old is not None else []
    return made_places((*named, across), fact.joint) if named else across


def off_middle(fact: SlideFact) -> OffMiddleFact | None:
    """For the arrangement: where in its slot the slide stands."""
    if not gib_side(fact):
        return None
    return OffMiddleFact(str(fact.female.end), (0.0, -off_mm(fact), 0.0))


def side_words(fact: SlideFact, units: str) -> str:
    """`in the back of the slot; the tail bears on its front flank, 0.966 mm off its middle`."""
    if not gib_side(fact):
        return ""
    off = shown_length(exact(round(off_mm(fact), 3)), units)
    part = fact.female.end.item.replace("_", " ")
    bears = f"towards the {_SIDE} of the {part}; the tail bears on the {_OTHER} flank"
    middle = f"its middle {off} to the {_OTHER} of the slot's"
    on = f", on that of the {part}" if shifted_mm(fact) else ""
    return f"{bears}, {middle}{on}"
