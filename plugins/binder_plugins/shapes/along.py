"""Where a hole across turned work lies along it, where its own words do not say how far."""

from __future__ import annotations

from typing import TYPE_CHECKING

from binder_solid.facts import FormFact

if TYPE_CHECKING:
    from binder.api import Design, Feature

_SAME = 1e-6


def along(owner: str, feature: Feature, design: Design) -> str:
    """`3 mm from the right-hand end`, as the drawing shows it; nothing where `at` tells it."""
    form = design.facts.about(FormFact, owner)
    at = getattr(feature.entry, "at", None)
    if form is None or any(one.distance is not None for one in (at.all if at is not None else ())):
        return ""
    for one in form.located:
        if one.name == feature.name and one.face == "across":
            for told in (told for told in one.told if told.along == "x"):
                end = "left" if abs(told.start) < _SAME else "right"
                return f"{told.text} from the {end}-hand end"
    return ""
