"""The grooves of a round belt to what their leaves say: round at the bottom, as the cord is."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import (
    Design,
    Fact,
    Feature,
    HalfFact,
    Joint,
    RoundBottomFact,
    Size,
    exact,
    shown_length,
)


def round_grooves(design: Design) -> Iterator[Fact]:
    """A row of the leaf, and the form, for each groove of the pulleys of a round belt."""
    for joint in design.joints.values():
        section = getattr(joint.entry, "section", None)
        is_round = str(getattr(joint.entry, "belt", "")) == "round"
        if joint.kind != "belted" or not is_round or not isinstance(section, Size):
            continue
        for end in joint.ends:
            part = design.parts.get(end.item)
            for feature in part.features if part is not None else ():
                if feature.kind == "grooved":
                    yield RoundBottomFact(f"{end.item}.{feature.name}")
                    yield _half(joint, feature, section, design)


def _half(joint: Joint, feature: Feature, section: Size, design: Design) -> HalfFact:
    told = getattr(feature.entry, feature.kind, None)
    mm = told.mm if isinstance(told, Size) else section.mm
    wide, radius = (shown_length(exact(size), design.units) for size in (mm, mm / 2))
    return HalfFact(
        subject=f"{joint.name}: {feature.owner}.{feature.name}",
        joint=joint.name,
        item=feature.owner,
        place=feature.name,
        what=f"groove {wide} wide, round at its bottom, R {radius}",
        mate=joint.held_by or joint.ends[-1].item,
        how="the cord beds in it without a corner that cuts it",
        is_master=False,
    )
