"""The grooves that a belt asks for, where the maker left them to suit."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import Design, Feature, Part, Size, implied_feature, made_size
from binder_plugins.drive.pairs.facts import BeltFact

_DEEP = 0.5  # of the cord: the belt lies half in, its middle at the rim; common practice


def grooves_of(belt: BeltFact, design: Design) -> Iterator[Feature]:
    """Each groove left `to suit`, as wide as the cord and half as deep."""
    joint = design.joints[belt.subject]
    if belt.belt != "round" or not belt.section:
        return
    for end in joint.ends:
        part = design.parts.get(end.item)
        for feature in part.features if isinstance(part, Part) else ():
            if feature.kind == "grooved" and not isinstance(
                getattr(feature.entry, "grooved", None), Size
            ):
                yield implied_feature(
                    design, joint, end.item, feature.name, "grooved",
                    grooved=made_size(belt.section, joint),
                    depth=made_size(_DEEP * belt.section, joint),
                    on=getattr(feature.entry, "on", None) or "",
                )  # fmt: skip
