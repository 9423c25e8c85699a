"""Turns the end of a joint into its written feature and the surface it stands on."""

from __future__ import annotations

from binder.api import Design, End, Fabrication, Part, PlaceFact
from binder_plugins.seals.facts import Side


def side_of(end: End, design: Design) -> Side:
    """What is known of one end."""
    item = design.item(end.item)
    is_made = isinstance(item, (Part, Fabrication))
    written = item.features if isinstance(item, (Part, Fabrication)) else ()
    feature = next((one for one in written if one.name == end.place), None)
    place = design.facts.about(PlaceFact, str(end))
    under = place
    if feature is not None:
        on = getattr(feature.entry, "on", None)
        under = design.facts.about(PlaceFact, f"{end.item}.{on}") if on else None
    return Side(end, feature, place, under, is_made)
