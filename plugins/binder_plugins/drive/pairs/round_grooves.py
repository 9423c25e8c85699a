"""The grooves of a round belt to what their leaves say: round at the bottom, as the cord is."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import Design, HalfFact, Size, exact, shown_length


def round_grooves(design: Design) -> Iterator[HalfFact]:
    """A row for each groove of the pulleys of a round belt whose size is told."""
    for joint in design.joints.values():
        section = getattr(joint.entry, "section", None)
        is_round = str(getattr(joint.entry, "belt", "")) == "round"
        if joint.kind != "belted" or not is_round or not isinstance(section, Size):
            continue
        wide, radius = (
            shown_length(exact(size), design.units) for size in (section.mm, section.mm / 2)
        )
        for end in joint.ends:
            part = design.parts.get(end.item)
            for feature in part.features if part is not None else ():
                if feature.kind == "grooved":
                    yield HalfFact(
                        subject=f"{joint.name}: {end.item}.{feature.name}",
                        joint=joint.name,
                        item=end.item,
                        place=feature.name,
                        what=f"groove {wide} wide, round at its bottom, R {radius}",
                        mate=joint.held_by or joint.ends[-1].item,
                        how="the cord beds in it without a corner that cuts it",
                        is_master=False,
                    )
