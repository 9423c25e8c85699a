"""The way round of each shaft as the model stands, where a trip wheel or a pawl tells it."""

from __future__ import annotations

from typing import TYPE_CHECKING

from binder.api import Design, TurningFact
from binder_solid.facts import FormFact
from binder_solid.placed import PlacedFact

if TYPE_CHECKING:
    from collections.abc import Mapping

    from binder_solid.forms import Vector

_ALONG = 0.999
# Whether a wheel turns the way that its stopping faces look, by the kind of its drive.
_SENSE = {"trips": 1, "ratchets": -1}
# Where one looks from, and along which axis of the model: x to the right, y to the back, z upwards.
_LOOKS = (("front", (0.0, 1.0, 0.0)), ("left", (1.0, 0.0, 0.0)), ("top", (0.0, 0.0, -1.0)))


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


def seen(way: Vector, sign: int = 1) -> str:
    """A turn about an axis, right-handed along `way`, in words; '' where it lies askew."""
    for side, look in _LOOKS:
        along = sign * sum(a * b for a, b in zip(way, look, strict=True))
        if abs(along) > _ALONG:
            return f"{'clockwise' if along > 0 else 'anticlockwise'}, from the {side}"
    return ""


def way_of(item: str, design: Design) -> Vector | None:
    """About which axis of the model, right-handed, a toothed wheel turns; None where not placed.

    Its stopping faces look clockwise from the wheel's own right (`RATCHET_HAND`).
    """
    form = design.facts.about(FormFact, item)
    for one in design.facts.all(PlacedFact):
        if one.item == item and form is not None and form.shape == "ratchet":
            x, y, z = one.frame.x
            return (-x, -y, -z)
    return None


def _sign(fact: TurningFact) -> int:
    speed = next((one for one in fact.speeds if one), 0.0)
    return (speed > 0) - (speed < 0)
