"""Where the copies of a part stand on a face of another, told from its edges."""

from __future__ import annotations

from typing import TYPE_CHECKING

from binder_solid.placed import PlacedFact
from binder_solid.space import dot, frame_y, minus
from binder_solid.stands_at import corners_of, shown_mm

if TYPE_CHECKING:
    from collections.abc import Iterator

    from binder.api import Design

_NEAR = 1e-3
_ENDS = (("left", "right"), ("front", "back"), ("underside", "top"))


def stands_on(item: str, onto: str, design: Design) -> str:
    """`its edges 20 mm off the left and 30 mm off the front of the base`; '' if not known.

    One place for each copy, all from the left, front and underside, as they are marked out; where
    a part hangs over that end of the face, from the other.
    """
    bases = [one for one in design.facts.all(PlacedFact) if one.item == onto]
    copies = [one for one in design.facts.all(PlacedFact) if one.item == item]
    if len(bases) != 1 or not copies:
        return ""
    places = [" and ".join(_edges(copy, bases[0], design)) for copy in copies]
    found = design.item(onto)
    title = found.title if found is not None else onto
    first, *more = (f"{place} of the {title}" for place in places)
    return "; another's ".join((f"its edges {first}", *more)) if all(places) else ""


def _edges(copy: PlacedFact, base: PlacedFact, design: Design) -> Iterator[str]:
    """Along each axis of the face, how far the part stands in from the end of it."""
    axes = (base.frame.x, frame_y(base.frame), base.frame.z)
    spots = list(corners_of(copy))
    for number, (axis, ends) in enumerate(zip(axes, _ENDS, strict=True)):
        along = [dot(minus(spot, base.frame.origin), axis) for spot in spots]
        least, most = (corner[number] for corner in base.corners)
        if max(along) < least + _NEAR or min(along) > most - _NEAR:
            continue
        gaps = (min(along) - least, most - max(along))
        inside = [(gap, end) for gap, end in zip(gaps, ends, strict=True) if gap > -_NEAR]
        if inside:
            gap, end = inside[0]
            yield f"{shown_mm(gap, design)} off the {end}"
