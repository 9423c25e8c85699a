"""A pair of wheels to whether their shafts can be shifted, or both run in bores of one part."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import Design, Joint, TurningFact
from binder_plugins.running.moving import walls_of

_BEARINGS = ("runs_in", "swivels", "hinged")


def are_centres_fixed(joint: Joint, design: Design) -> bool:
    """Whether one part has the bores of both shafts, and no slot to shift one of them along."""
    if joint.kind != "meshes" or len(joint.items) < 2:
        return False
    sides = [set(_walls(_body(item, design), design)) for item in joint.items[:2]]
    shared = sides[0] & sides[1]
    return bool(shared) and not any(_is_slotted(item, design) for item in shared)


def _body(item: str, design: Design) -> tuple[str, ...]:
    """All that turns as one with a wheel."""
    for fact in design.facts.all(TurningFact):
        if item in fact.items:
            return fact.items
    return (item,)


def _walls(body: tuple[str, ...], design: Design) -> Iterator[str]:
    """What a body runs in, outwards from its bearings."""
    for joint in design.joints.values():
        if joint.kind in _BEARINGS and not set(body).isdisjoint(joint.items):
            yield from (one for one in walls_of(joint, design) if one not in body)


def _is_slotted(item: str, design: Design) -> bool:
    owner = design.parts.get(item) or design.fabrications.get(item)
    return any(one.kind == "slotted" for one in (owner.features if owner is not None else ()))
