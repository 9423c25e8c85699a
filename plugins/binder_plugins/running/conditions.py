"""A joint to what it has that a remedy speaks of: a spring, a gib, points, loose screws."""

from __future__ import annotations

import re
from collections.abc import Iterator

from binder.api import Design, FitFact, HardwareFact, Joint
from binder_plugins.running.centres import are_centres_fixed
from binder_plugins.running.moving import walls_of
from binder_solid.float_tried import end_floats
from binder_solid.placed import MotionFact
from binder_solid.screw_ends import screw_ends

# The cosine and the sine of an axis's lean from upright, to which it still counts as one or other.
_UPRIGHT, _LYING = 0.9, 0.5
_SCREWED = frozenset({"screwed", "bolted", "clamped", "studded"})


def has_of(joint: Joint, design: Design) -> frozenset[str]:
    """The conditions of the tables that a joint meets: screws, spring, gib, grub, points, nut.

    And how its axis stands: upright or lying, neither where that is not known or it leans; floats
    where it wants play along it, ends where it is told how far a screw is wound; riveted where
    nothing can be slacked; fixed_centres where one part has the bores of both shafts.
    """
    near = _words_near(joint, design)
    words = {word for word in ("spring", "gib") if re.search(rf"\b{word}", near)}
    if re.search(r"\b(grub|set) screw", _words(joint)):
        words.add("grub")
    walls = set(walls_of(joint, design))
    if any(one.kind in _SCREWED and walls & set(one.items) for one in design.joints.values()):
        words.add("screws")
    pointed = tuple(_pointed(joint, design))
    if pointed:
        words.add("points")
    if any(_is_nipped(item, design) for item in pointed):
        words.add("nut")
    if any(joint.name in one.joints for one in end_floats(design)):
        words.add("floats")
    if screw_ends(joint, design) is not None:
        words.add("ends")
    if _is_riveted(joint, design):
        words.add("riveted")
    if are_centres_fixed(joint, design):
        words.add("fixed_centres")
    return frozenset(words | _stands(joint, design))


def _stands(joint: Joint, design: Design) -> set[str]:
    """How its axis stands in the model; one joint may stand both ways at two places."""
    ups = {abs(one.way[2]) for one in design.facts.all(MotionFact) if one.joint == joint.name}
    if ups and min(ups) > _UPRIGHT:
        return {"upright"}
    return {"lying"} if ups and max(ups) < _LYING else set()


def _is_riveted(joint: Joint, design: Design) -> bool:
    """Whether its pin is closed by hammering: its own, or one that is bought or cut for it."""
    fit = design.facts.about(FitFact, joint.name)
    pins = (fit.shaft.partition(".")[0],) if fit is not None else joint.items
    if any(one.kind == "riveted" for pin in pins for one in design.joints_at(pin)):
        return True
    hardware = (one for one in design.facts.all(HardwareFact) if one.joint == joint.name)
    return any(re.search(r"\brivet", f"{one.what} {one.why} {one.kept}") for one in hardware)


def _pointed(joint: Joint, design: Design) -> Iterator[str]:
    """The items whose points turn in centre holes: they have no pin, shoulder or bore to ease."""
    for end in joint.ends:
        owner = design.parts.get(end.item) or design.fabrications.get(end.item)
        features = owner.features if owner is not None else ()
        if any(one.kind == "centred" and str(end) == f"{end.item}.{one.name}" for one in features):
            yield from (item for item in joint.items if item != end.item)


def _is_nipped(item: str, design: Design) -> bool:
    """Whether it is a screw that a nut of its own locks."""
    return any(one.kind == "threaded" and one.held_by for one in design.joints_at(item))


def _words_near(joint: Joint, design: Design) -> str:
    """What is said of a joint and of the joints beside it, and what their items are called."""
    own = set(joint.items)
    return " ".join(
        f"{_words(one)} {' '.join(_titles(one, design))}"
        for one in design.joints.values()
        if own & set(one.items)
    )


def _words(joint: Joint) -> str:
    names = ("fastener", "feel", "note", "held_by", "held")
    said = (getattr(joint.entry, name, None) for name in names)
    return " ".join(str(one) for one in said if one).lower()


def _titles(joint: Joint, design: Design) -> Iterator[str]:
    for name in joint.items:
        item = design.item(name)
        yield f"{name} {item.title if item is not None else ''}".replace("_", " ").lower()
