"""Heads that are riveted from between plates, or driven home, to what would shut them in."""

from __future__ import annotations

from binder.api import Design, HardwareFact, Joint, JointFact, NumberOff
from binder_solid.driver_way import DRIVEN, beside_heads
from binder_solid.straddling import sits_in_one


def is_riveted_inside(joint: Joint, design: Design) -> bool:
    """Whether a hinge is riveted in one of several plates, and its head reached from between."""
    own = any(one.joint == joint.name and one.kept for one in design.facts.all(HardwareFact))
    return own and joint.kind == "hinged" and bool(plates_of(joint, design))


def plates_of(joint: Joint, design: Design) -> list[str]:
    """The plates of which a hinge sits in one copy alone."""
    return [item for item in joint.items if sits_in_one(item, joint, design)]


def closes_plates(fixing: Joint, hinge: Joint, design: Design) -> bool:
    """Whether a fixing puts up the plates in one of which a hinge is riveted."""
    fact = design.facts.about(JointFact, fixing.name)
    is_fixing = fact is not None and fact.group == "fixing" and not fact.is_hot
    plates = set(plates_of(hinge, design)) & set(fixing.items)
    others = [one for one in fixing.items if one not in plates]
    is_put_up = any(_off(one, design) < _off(plate, design) for one in others for plate in plates)
    return is_fixing and bool(plates) and is_put_up


def barred_by(screwed: Joint, other: Joint, design: Design) -> bool:
    """Whether another joint puts a part over a head or nut, where no driver or spanner gets by."""
    brought = set(other.items) - set(screwed.items)
    if screwed.kind not in DRIVEN or not brought or not set(other.items) & set(screwed.items):
        return False
    return any(each.bars and each.item in brought for each in beside_heads(screwed, design))


def _off(item: str, design: Design) -> int:
    number = design.facts.about(NumberOff, item)
    return number.count if number is not None else 1
