"""A trip wheel and its lever as they stand: which way round it turns, and where it pushes how."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import TYPE_CHECKING

from binder_solid.facts import FormFact
from binder_solid.placed import PlacedFact
from binder_solid.space import cross, dot, minus, placed, plus

if TYPE_CHECKING:
    from binder.api import Design, Joint
    from binder_solid.forms import Vector

_ALONG = 0.999
# Where one looks from, and along which axis of the model: x to the right, y to the back, z upwards.
_LOOKS = (("front", (0.0, 1.0, 0.0)), ("left", (1.0, 0.0, 0.0)), ("top", (0.0, 0.0, -1.0)))
_SIDES = (("left", "right"), ("front", "back"), ("underside", "top"))
# Flatter than this a push is across the lever and tells nothing. Share of the push.
_ACROSS = 0.3


@dataclass(frozen=True, slots=True)
class Tripped:
    """Where the wheel takes the lever, `at` mm from the end with the head, and how.

    `long` is the lever in mm, `side` that of the wheel on which it does, `turns` its way round
    in words ('' where it lies askew), `is_down` whether it pushes that place down.
    """

    at: float
    long: float
    side: str
    turns: str
    is_down: bool


def tripped(joint: Joint, design: Design) -> Tripped | None:
    """How the wheel of a trip works its lever; None where that cannot be told."""
    way = way_of(joint.ends[0].item, design)
    wheel, lever = (_copy(end.item, design) for end in (joint.ends[0], joint.ends[-1]))
    if joint.kind != "trips" or way is None or wheel is None or lever is None:
        return None
    centre = _middle(wheel)
    head, tail = sorted(_ends(lever), key=lambda end: -math.dist(end, centre))
    long = math.dist(head, tail)
    along = tuple(each / long for each in minus(tail, head))
    at = min(max(dot(minus(centre, head), along), 0.0), long)  # type: ignore[arg-type]
    arm = minus(plus(head, along, at), centre)  # type: ignore[arg-type]
    push = cross(way, arm)
    size = math.hypot(*push)
    if size == 0.0 or abs(push[2]) < _ACROSS * size:
        return None
    axis = max(range(3), key=lambda n: abs(arm[n]))
    return Tripped(at, long, _SIDES[axis][arm[axis] > 0], seen(way), push[2] < 0)


def trip_words(joint: Joint, design: Design) -> str:
    """`; the cam turns clockwise, from the front, and lifts the helve where ..., on its left`."""
    found = tripped(joint, design)
    if found is None:
        return ""
    wheel, lever = (_title(end.item, design) for end in (joint.ends[0], joint.ends[-1]))
    turns = f"turns {found.turns}, and " if found.turns else ""
    how = f"presses {lever} down" if found.is_down else f"lifts {lever}"
    return f"; {wheel} {turns}{how} where it takes it, on the {found.side} of the wheel"


def seen(way: Vector, sign: int = 1) -> str:
    """A turn about an axis, right-handed along `way`, in words; '' where it lies askew."""
    for side, look in _LOOKS:
        along = sign * dot(way, look)
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


def _copy(item: str, design: Design) -> PlacedFact | None:
    return next((one for one in design.facts.all(PlacedFact) if one.item == item), None)


def _middle(one: PlacedFact) -> Vector:
    (a, b, c), (d, e, f) = one.corners
    return placed(((a + d) / 2, (b + e) / 2, (c + f) / 2), one.frame)


def _ends(one: PlacedFact) -> tuple[Vector, Vector]:
    """The middles of the two ends of a lever, which is long in its own x."""
    (a, b, c), (d, e, f) = one.corners
    y, z = (b + e) / 2, (c + f) / 2
    return placed((a, y, z), one.frame), placed((d, y, z), one.frame)


def _title(name: str, design: Design) -> str:
    item = design.item(name)
    return f"the {item.title if item is not None else name}"
