"""The pilot holes of wood screws, which are drilled where the parts are put together."""

from __future__ import annotations

import re
from dataclasses import dataclass
from typing import TYPE_CHECKING

from binder.api import Design, HalfFact, HardwareFact, Joint, exact, shown_length
from binder_solid.facts import FormFact, Located
from binder_solid.stands_on import stands_on

if TYPE_CHECKING:
    from collections.abc import Iterator

_PILOT, _OFF = "pilot hole ", re.compile(r"(\d+) off")
# Drills so near in mm make one size; common practice, no source.
_SAME_DRILL = 0.02
_PENCIL = "with a pencil, right round, and prick the middle of each ring"


@dataclass(frozen=True, slots=True)
class Pilots:
    """The pilot holes that one joint has drilled in a part: `count` of a drill's `size`.

    `deep` is as printed, '' where nobody knows; `mate` is the title of what they are spotted
    from, and `where` tells how that stands on the part.
    """

    half: HalfFact
    count: int
    size: str
    deep: str
    mate: str
    where: str


def pilots_in(item: str, design: Design) -> Iterator[Pilots]:
    """The pilot holes of a part, which have no place of their own: their mate is the jig."""
    for half in design.facts.all(HalfFact):
        joint = design.joints.get(half.joint)
        if half.item != item or joint is None or not half.what.startswith(_PILOT):
            continue
        mate = next((one for one in joint.items if one != item), "")
        many = _OFF.search(half.what)
        yield Pilots(
            half,
            int(many[1]) if many is not None else 1,
            half.what.removeprefix(_PILOT).partition(",")[0],
            _deep(joint, design).strip(", ").removesuffix(" deep"),
            _title(mate, design),
            stands_on(mate, item, design),
        )


def _title(name: str, design: Design) -> str:
    item = design.item(name)
    return item.title if item is not None else name


def piloted(joint: Joint, design: Design) -> str:
    """`hold it in its place, ..., spot through its holes ..., take it off, drill ..., then `.

    What is done before the screws of a joint; nothing where it wants no pilot holes. Lengths in
    the units of the model.
    """
    spot, drill = pilot_spots(joint, design), pilot_drilling(joint, design)
    return f"{spot}, take it off, {drill}, then " if spot else ""


def pilot_spots(joint: Joint, design: Design) -> str:
    """`hold it in its place, its edges ..., spot through its holes with the point of ...`.

    The drill of the holes themselves is led by them; a thinner one wanders in them by half of what
    it is thinner. Common practice, no source.
    """
    half = _pilot(joint, design)
    if half is None:
        return ""
    mate = next((one for one in joint.items if one != half.item), "")
    place = stands_on(mate, half.item, design)
    held = f"hold it in its place, {place}" if place else "hold it in its place"
    holes = _holes(joint, mate, design)
    is_slotted = any(one.kind == "slotted" for one in holes)
    its = f"of the {_title(mate, design)}"
    through = f"in the middle of each slot {its}" if is_slotted else f"through the holes {its}"
    by = _led(holes, design)
    fills = "it from side to side" if is_slotted else "them"
    with_it = f"with the point of a {by}, which fills {fills}" if by else _PENCIL
    return f"{held}, spot {through} {with_it}"


def pilot_drilling(joint: Joint, design: Design) -> str:
    """`drill the base on the spots with a 2 mm drill, 16 mm deep`, where pilot holes are wanted."""
    half = _pilot(joint, design)
    if half is None:
        return ""
    size = half.what.removeprefix(_PILOT).partition(",")[0]
    drill = size if size.endswith("drill") else f"a {size} drill"
    steel = ", run a steel screw in and out of each" if "steel screw" in half.how else ""
    wood = _title(half.item, design)
    return f"drill the {wood} on the spots with {drill}{_deep(joint, design)}{steel}"


def _pilot(joint: Joint, design: Design) -> HalfFact | None:
    """The half in the wood."""
    found = (one for one in design.facts.all(HalfFact) if one.joint == joint.name)
    return next((one for one in found if one.what.startswith(_PILOT)), None)


def _deep(joint: Joint, design: Design) -> str:
    """How far the screw goes into the wood."""
    found = (one.engagement for one in design.facts.all(HardwareFact) if one.joint == joint.name)
    deep = next((one for one in found if one), None)
    return f", {shown_length(exact(round(deep)), design.units)} deep" if deep else ""


def _holes(joint: Joint, mate: str, design: Design) -> tuple[Located, ...]:
    """What the screws go through: asked for by the joint, or named in it."""
    part, form = design.parts.get(mate), design.facts.about(FormFact, mate)
    names = {end.place for end in joint.ends if end.item == mate}
    names |= {one.name for one in (part.features if part else ()) if one.implied_by == joint.name}
    through = ("drilled", "slotted")
    located = form.located if form is not None else ()
    return tuple(one for one in located if one.name in names and one.kind in through)


def _led(holes: tuple[Located, ...], design: Design) -> str:
    """The drill that just goes through the holes, `3.6 mm drill`; nothing where none does."""
    sizes = [one.diameter for one in holes if one.diameter]
    near = exact(_SAME_DRILL)
    found = design.workshop.nearest_drill(exact(min(sizes)), near) if sizes else None
    return f"{found.name.removesuffix(' drill')} drill" if found is not None else ""
