"""Where a hole across turned work lies along it, where its own words do not say how far."""

from __future__ import annotations

from typing import TYPE_CHECKING

from binder.api import exact, shown_length
from binder_solid.clip_walls import holds_clip, outer_wall
from binder_solid.facts import FormFact
from binder_solid.open_ends import open_along

if TYPE_CHECKING:
    from binder.api import Design, Feature
    from binder_solid.facts import Located

_SAME = 1e-6


def along(owner: str, feature: Feature, design: Design) -> str:
    """`3 mm from the right-hand end`, as the drawing shows it; nothing where `at` tells it."""
    form = design.facts.about(FormFact, owner)
    for one in form.located if form is not None else ():
        if form is not None and one.name == feature.name and holds_clip(owner, one, design):
            return _to_wall(one, form, design)
    at = getattr(feature.entry, "at", None)
    if form is None or any(one.distance is not None for one in (at.all if at is not None else ())):
        return ""
    for one in form.located:
        if one.name == feature.name and one.face == "across":
            for told in (told for told in one.told if told.along == "x"):
                end = "left" if abs(told.start) < _SAME else "right"
                return f"{told.text} from the {end}-hand end"
    return ""


def open_in(owner: str, feature: Feature, design: Design) -> int | None:
    """The axis along which a slot in flat work runs from end to end; None for all else."""
    form = design.facts.about(FormFact, owner)
    if form is None or form.stretches:
        return None
    found = (one for one in form.located if one.name == feature.name)
    return next((open_along(one, form.size) for one in found if one.length is None), None)


def _to_wall(one: Located, form: FormFact, design: Design) -> str:
    """`its outer wall 0.7 mm from the left-hand end`: there its clip bears."""
    x, whole = one.spots[0][0], form.size[0]
    wall, end = outer_wall(one, x, whole), "left" if x <= whole / 2 else "right"
    away = exact(round(wall if end == "left" else whole - wall, 3))
    return f"its outer wall {shown_length(away, design.units)} from the {end}-hand end"
