"""Prime movers, loads, flywheels and the prototype: what may be written of each."""

from __future__ import annotations

from typing import Annotated

from pydantic import Field

from binder.api import (
    Count,
    Flag,
    Force,
    JointEntry,
    Length,
    Mass,
    Number,
    OneOf,
    Power,
    Speed,
    Torque,
)

MOST_SPEEDS = 6
Mover = Annotated[
    str, OneOf("a prime mover", "hand", "motor", "engine", "spring", "weight", "wind", "water")
]
Travelling = Annotated[str, OneOf("what travels", "screw", "nut")]
Toward = Annotated[str, OneOf("a way of the slide", "toward", "away")]
Hand = Annotated[str, OneOf("a hand", "left", "right")]
Way = Annotated[str, OneOf("a way round", "clockwise", "anticlockwise")]


class MoverEntry(JointEntry):
    """What turns a shaft: by hand, motor or another mover, at one speed or several.

    Its strength is a `torque`, a `power`, or a `force` at a `radius`. `way` is as seen from
    the side that all shafts of the model are looked at.
    """

    by: Mover
    speeds: Annotated[list[Speed], Field(min_length=1, max_length=MOST_SPEEDS)]
    torque: Torque | None = None
    power: Power | None = None
    force: Force | None = None
    radius: Length | None = None
    way: Way | None = None


class WorkEntry(JointEntry):
    """What a shaft has to do: the `torque` or `power` that it takes, the speed and way wanted."""

    torque: Torque | None = None
    power: Power | None = None
    least: Speed | None = None
    most: Speed | None = None
    way: Way | None = None
    exactly: Number | None = None


class SteadyEntry(JointEntry):
    """A flywheel, by its rim where the part does not tell: how even it has to run.

    `swing` is the share of the speed that may be lost and won in one turn; `energy` follows
    from the load that comes and goes.
    """

    outside: Length | None = None
    mass: Mass | None = None
    swing: Number | None = None


class PrototypeEntry(JointEntry):
    """What the shaft of the prototype turned at."""

    speed: Speed
    exact: Flag = False


class FeedEntry(JointEntry):
    """A feed screw and its dial: `divisions`, and the `travel` from end to end.

    The lead is that of its thread where a joint says that it leads, by its `starts`. The nut
    travels, or the screw with its slide (`what_travels`); `clockwise` is the way wanted, as seen
    from the wheel.
    """

    divisions: Count | None = None
    travel: Length | None = None
    lead: Length | None = None
    starts: Count | None = None
    hand: Hand | None = None
    what_travels: Travelling | None = None
    clockwise: Toward | None = None
