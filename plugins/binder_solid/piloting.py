"""The pilot holes of wood screws, which are drilled where the parts are put together."""

from __future__ import annotations

from binder.api import Design, HalfFact, HardwareFact, Joint, exact, shown_length
from binder_solid.stands_on import stands_on

_PILOT = "pilot hole "


def piloted(joint: Joint, design: Design) -> str:
    """`hold it in its place, its edges ..., spot through its holes, drill ...` before the screws.

    Nothing where the joint wants none. Lengths in the units of the model.
    """
    half = next(
        (
            one
            for one in design.facts.all(HalfFact)
            if one.joint == joint.name and one.what.startswith(_PILOT)
        ),
        None,
    )
    if half is None:
        return ""
    item = design.item(half.item)
    size = half.what.removeprefix(_PILOT).partition(",")[0]
    drill = size if size.endswith("drill") else f"a {size} drill"
    mate = next((one for one in joint.items if one != half.item), "")
    place = stands_on(mate, half.item, design)
    held = f"hold it in its place, {place}" if place else "hold it in its place"
    steel = "run a steel screw in and out of each, " if "steel screw" in half.how else ""
    wood = item.title if item is not None else half.item
    is_slotted = _is_slotted(joint, mate, design)
    through = "in the middle of each slot" if is_slotted else "through its holes"
    return (
        f"{held}, spot {through}, drill the {wood} with {drill}{_deep(joint, design)}, {steel}then "
    )


def _deep(joint: Joint, design: Design) -> str:
    """How far the screw goes into the wood."""
    found = (one.engagement for one in design.facts.all(HardwareFact) if one.joint == joint.name)
    deep = next((one for one in found if one), None)
    return f", {shown_length(exact(round(deep)), design.units)} deep" if deep else ""


def _is_slotted(joint: Joint, mate: str, design: Design) -> bool:
    """Whether the screws stand in slots, so that the wood may move under them."""
    part = design.parts.get(mate)
    own = [one for one in part.features if one.implied_by == joint.name] if part else []
    return any(one.kind == "slotted" for one in own)
