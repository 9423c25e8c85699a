"""Bodies that turn: their axes in the model, and their copies at any angle."""

from __future__ import annotations

import math
from collections.abc import Callable, Collection, Iterator
from dataclasses import dataclass
from functools import partial

from binder.api import Design, Part
from binder_plugins.drive.facts import TrainFact, TurningFact
from binder_plugins.drive.standing import Axis, axis_of
from binder_solid.forms import Frame, Vector
from binder_solid.placed import PlacedFact
from binder_solid.space import cross, dot, length, minus, plus

_NEAR_MM = 0.02
_ROUND = ("turned", "disc", "gear", "pulley", "wheel", "sprocket", "tube")


@dataclass(frozen=True, slots=True)
class Moving:
    """A body that moves: its copies, and where each stands when the driving shaft has turned.

    `frame` takes a copy and an angle in radians: of the driving shaft, or of `own`, the body
    that moves this one and makes a whole turn where the driving shaft may make less. `axis` is
    that of a body which turns right round, None for one that slides or rocks.
    """

    name: str
    items: tuple[str, ...]
    copies: tuple[PlacedFact, ...]
    own: str
    turns: float
    frame: Callable[[PlacedFact, float], Frame]
    axis: Axis | None = None

    def at(self, copy: PlacedFact, radians: float) -> Frame:
        """Where a copy stands when the driving shaft has turned so far."""
        return self.frame(copy, radians * self.turns)


def turning_bodies(design: Design) -> Iterator[Moving]:
    """Each body of the train that has an axis and copies that stand."""
    train = design.facts.about(TrainFact, "")
    mover = _speed(train.mover_bodies[0], design) if train is not None else None
    if train is None or not mover:
        return
    for name in train.order:
        body = design.facts.about(TurningFact, name)
        speed = _speed(name, design)
        axis = axis_of(body.items, design) if body is not None else None
        if body is None or axis is None or not speed:
            continue
        copies = copies_of(body.items, design)
        if copies:
            turned = partial(at_angle, axis)
            yield Moving(name, body.items, copies, name, speed / mover, turned, axis)


def copies_of(items: Collection[str], design: Design) -> tuple[PlacedFact, ...]:
    """The copies of some items that stand in the model."""
    return tuple(one for one in design.facts.all(PlacedFact) if one.item in items)


def _speed(name: str, design: Design) -> float | None:
    body = design.facts.about(TurningFact, name)
    return body.speeds[0] if body is not None and body.speeds else None


def at_angle(axis: Axis, copy: PlacedFact, radians: float) -> Frame:
    """Where a copy stands when its body has turned so far."""
    arm = minus(copy.frame.origin, axis.origin)
    return Frame(
        plus(axis.origin, _spun(arm, axis.way, radians)),
        _spun(copy.frame.z, axis.way, radians),
        _spun(copy.frame.x, axis.way, radians),
    )


def _spun(vector: Vector, way: Vector, radians: float) -> Vector:
    """A vector turned about a direction (Rodrigues)."""
    cosine, sine = math.cos(radians), math.sin(radians)
    flat = plus((0.0, 0.0, 0.0), vector, cosine)
    turned = plus(flat, cross(way, vector), sine)
    return plus(turned, way, dot(way, vector) * (1 - cosine))


def is_round_about(copy: PlacedFact, axis: Axis, design: Design) -> bool:
    """Whether a copy takes the same room at every angle: round work on its own axis.

    A flat or a slot in it only takes away.
    """
    part = design.parts.get(copy.item)
    if not isinstance(part, Part) or part.shape_kind not in _ROUND:
        return False
    arm = minus(copy.frame.origin, axis.origin)
    aside = plus(arm, axis.way, -dot(arm, axis.way))
    return length(aside) < _NEAR_MM and abs(abs(dot(copy.frame.x, axis.way)) - 1) < 1e-6
