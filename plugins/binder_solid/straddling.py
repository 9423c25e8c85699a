"""Plates of which there are several: how far apart they stand, and what sits in one alone."""

from __future__ import annotations

from fractions import Fraction
from typing import TYPE_CHECKING

from binder.api import NumberOff, PlaceFact

if TYPE_CHECKING:
    from collections.abc import Iterator

    from binder.api import Design, Joint

# What is held between two plates leaves them less than this, in mm, and less than its own
# thickness again; else it hangs on one of them. Common practice, no source.
_ROOM = Fraction(2)
_SUNK = ("pressed", "retained", "glued", "soft_soldered", "silver_soldered")


def apart_of(item: str, design: Design) -> Fraction | None:
    """The clear distance between the copies of a plate in mm; None where nothing tells it.

    Told by a shouldered pin that is riveted in them, or by the `apart` of a shaft in them.
    """
    return next((one for one in (*_by_pins(item, design), *_by_shafts(item, design))), None)


def _by_pins(item: str, design: Design) -> Iterator[Fraction]:
    """What a shouldered pin keeps between two plates that stand on its tails."""
    for joint in design.joints.values():
        if joint.kind != "riveted" or item not in joint.items:
            continue
        for end in joint.ends:
            part = design.parts.get(end.item)
            if part is None or not isinstance(part.shape, list) or len(part.shape) < 3:
                continue
            if end.place in (part.shape[0].name, part.shape[-1].name):
                between = [
                    design.facts.about(PlaceFact, f"{end.item}.{step.name}")
                    for step in part.shape[1:-1]
                ]
                longs = [one.length for one in between if one is not None and one.length]
                if len(longs) == len(between):
                    yield sum(longs, Fraction(0))


def _by_shafts(item: str, design: Design) -> Iterator[Fraction]:
    """The distance between two bearings that are this plate, or sit in it."""
    carried = {item}
    for joint in design.joints.values():
        if joint.kind in _SUNK and item in joint.items:
            carried |= set(joint.items)
    listed = getattr(design.spec.written, "shafts", None) or {}
    for name, entry in listed.items():
        if name in carried or entry.apart is None:
            continue
        row = [one.item for one in entry.along]
        if sum(one in carried for one in row) > 1:
            yield entry.apart.exact


def sits_in_one(item: str, joint: Joint, design: Design) -> bool:
    """Whether a hinge sits in one copy of a plate, since the next stands too far off for its pin.

    `item` is the plate; what hinges on it is told by the other ends of the joint.
    """
    number = design.facts.about(NumberOff, item)
    apart = apart_of(item, design)
    if number is None or number.count < 2 or apart is None:
        return False
    places = [design.facts.about(PlaceFact, str(end)) for end in joint.ends if end.item != item]
    thick = [one.thickness for one in places if one is not None and one.thickness]
    between = sum(thick, Fraction(0))
    return bool(thick) and apart > max(between + _ROOM, 2 * between)
