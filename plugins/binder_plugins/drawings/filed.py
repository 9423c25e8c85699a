"""What is filed in words alone to a callout at its place, so that the view is no bare bar."""

from __future__ import annotations

from typing import TYPE_CHECKING

from binder.api import Position, filed_stretch, shown_length
from binder_drafting import Note
from binder_solid.rounded import RoundedFact
from binder_solid.views import flat

if TYPE_CHECKING:
    from collections.abc import Iterator

    from binder.api import Design, Feature
    from binder_solid.facts import FormFact
    from binder_solid.forms import Vector

_ENDS = ("left", "right")
_FROM = {"from left": "left", "from right": "right"}


def filed_notes(fact: FormFact, views: tuple[str, ...], design: Design) -> Iterator[Note]:
    """A callout for each shape that is filed on an end, or so far from one, of flat work."""
    part = design.parts.get(fact.subject)
    if part is None or fact.stretches or "front" not in views:
        return
    for one in part.features:
        spot = _spot(one, fact) if one.kind == "filed" else None
        if spot is not None:
            lines = (f"{one.name.replace('_', ' ')}: filed as in the table", *_told(one, design))
            yield Note(f"{one.owner}.{one.name}.filed", "front", flat(spot, "front"), lines)


def _at(one: Feature) -> Position | None:
    """The first place that is told by its distance from an end."""
    at = getattr(one.entry, "at", None)
    found = at.all if isinstance(at, Position) else ()
    return next((each for each in found if each.distance and each.rest in _FROM), None)


def _spot(one: Feature, fact: FormFact) -> Vector | None:
    long, wide, high = fact.size
    at, on = _at(one), str(getattr(one.entry, "on", None) or "")
    if at is not None and at.distance is not None:
        far = at.distance.mm
        return (far if at.rest == "from left" else long - far, wide / 2, high)
    if on in _ENDS:
        return (0.0 if on == "left" else long, wide / 2, high / 2)
    return None


def _told(one: Feature, design: Design) -> Iterator[str]:
    at = _at(one)
    if at is not None and at.distance is not None:
        size = shown_length(at.distance.exact, design.units).removesuffix(" mm")
        yield f"its middle {size} {at.rest}"
    found = filed_stretch(one)
    if found is not None:
        start, end, side = found
        sizes = (shown_length(far, design.units).removesuffix(" mm") for far in (start, end))
        yield f"{' to '.join(sizes)} from {side}"
    section = design.facts.about(RoundedFact, f"{one.owner}.{one.name}")
    if section is not None:
        yield from (line.replace(" mm", "") for line in section.told(design) if line)
