"""The way round of each shaft as the model stands, where a trip wheel or a pawl tells it."""

from __future__ import annotations

from typing import TYPE_CHECKING

from binder.api import Design, TurningFact
from binder_solid.tripped import seen, way_of

if TYPE_CHECKING:
    from collections.abc import Mapping

# Whether a wheel turns the way that its stopping faces look, by the kind of its drive.
_SENSE = {"trips": 1, "ratchets": -1}


def ways_round(design: Design) -> Mapping[str, str]:
    """`anticlockwise, from the front` by the name of the body that turns; empty where not known.

    A wheel that trips goes the way that the stopping faces of its teeth look, for these take the
    lever; one that a pawl holds goes the other way, in which the teeth slip under it. The other
    shafts go as the train has them against it.
    """
    for joint in design.joints.values():
        sense = _SENSE.get(joint.kind)
        way = way_of(joint.ends[0].item, design) if sense else None
        if way is None or sense is None:
            continue
        bodies = design.facts.all(TurningFact)
        wheel = next((one for one in bodies if joint.ends[0].item in one.items), None)
        if wheel is not None and wheel.has_way and _sign(wheel):
            told = {one.subject: seen(way, sense * _sign(one) * _sign(wheel))
                    for one in bodies if one.has_way and _sign(one)}  # fmt: skip
            return {name: words for name, words in told.items() if words}
    return {}


def _sign(fact: TurningFact) -> int:
    speed = next((one for one in fact.speeds if one), 0.0)
    return (speed > 0) - (speed < 0)
