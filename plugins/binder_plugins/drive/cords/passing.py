"""How long it takes to wind the whole height up, and down again."""

from __future__ import annotations

from binder.api import Design, Joint, PlaceFact, Size
from binder_plugins.drive.judging.running import turning_of
from binder_plugins.drive.train.strength import drum_radius, rope_of, tackle_of
from binder_trade.explained import NotDefined
from binder_trade.mechanisms.drum import drum


def pass_min(joint: Joint, design: Design) -> float:
    """Minutes for one pass up and down at the least speed of the drum; 0 where nothing tells it.

    Turns of the drum for the height and all its lines, over its turns in a minute.
    """
    height, rope = getattr(joint.entry, "height", None), rope_of(joint, design)
    radius, body = drum_radius(joint, design), turning_of(joint.ends[0].item, design)
    place = design.facts.about(PlaceFact, str(joint.ends[0]))
    speeds = [abs(one) for one in body.speeds if one] if body is not None else []
    if not isinstance(height, Size) or not rope or radius is None or not speeds:
        return 0.0
    if place is None or place.length is None:
        return 0.0
    try:
        lifted = height.mm * tackle_of(joint).falls
        turns = drum(2 * radius - rope, float(place.length), rope, lifted, dead_turns=0.0).turns
    except NotDefined:
        return 0.0
    return 2 * turns / min(speeds)
