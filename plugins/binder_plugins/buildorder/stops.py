"""What is bonded on a shaft as a stop, and of which nobody told how long it is."""

from __future__ import annotations

from binder.api import Design, Joint, Located, ShaftFact, shown_length


def stop_at(joint: Joint, design: Design) -> str:
    """`the stepped pulley is set 64.15 mm from its inner face` for the first of two outer stops.

    Only where the other one can still be moved; '' for what is no stop.
    """
    for fact in design.facts.all(ShaftFact):
        if fact.located is not Located.OUTSIDE or fact.span is None or len(fact.stops) != 2:
            continue
        stops = [fact.pieces[n] for n in fact.stops]
        other = next((one for one in stops if one.joint != joint.name), None)
        kept = None if other is None else design.joints.get(other.joint)
        is_stop = joint.name in {one.joint for one in stops}
        if other is None or kept is None or kept.kind != "clamped" or not is_stop:
            continue
        apart = shown_length(fact.span + (fact.least + fact.most) / 2, design.units)
        return f"anywhere on its seat; the {other.title} is set {apart} from its inner face"
    return ""
