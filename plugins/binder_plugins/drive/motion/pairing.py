"""What moves, and what it could reach: pairs that are worth a look at every position."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from binder.api import Design
from binder_plugins.drive.motion.axes import Moving, is_round_about
from binder_plugins.drive.motion.reach import Swept, can_meet, ring_of, swept
from binder_solid.forms import Frame
from binder_solid.placed import PlacedFact

STEPS = 24
"""Positions of one turn that are looked at: every 15°."""


@dataclass(frozen=True, slots=True)
class Pair:
    """Two copies that could meet: `first` moves with `body`, `second` with `other` or stands."""

    first: PlacedFact
    second: PlacedFact
    body: Moving
    other: Moving | None

    @property
    def key(self) -> frozenset[str]:
        """The two by name."""
        return frozenset((self.first.subject, self.second.subject))

    def frames(self, number: int) -> tuple[Frame, Frame]:
        """Where both stand at a position: a whole turn of what moves, where the other stands."""
        turned = 2 * math.pi * number / STEPS
        if self.other is None:
            return self.body.frame(self.first, turned), self.second.frame
        return self.body.at(self.first, turned), self.other.at(self.second, turned)


def pairs_of(bodies: Sequence[Moving], design: Design) -> Iterator[Pair]:
    """All pairs that no joint brings together and that could meet, each once."""
    told: set[frozenset[str]] = set()
    moving = {copy.subject: body for body in bodies for copy in body.copies}
    boxes: dict[str, Swept] = {}
    for body in bodies:
        for copy in body.copies:
            for other in design.facts.all(PlacedFact):
                pair = Pair(copy, other, body, moving.get(other.subject))
                if other.item in body.items or pair.key in told:
                    continue
                if _are_joined(copy.item, other.item, design):
                    continue
                if _could_meet(pair, boxes, design):
                    told.add(pair.key)
                    yield pair


def _are_joined(one: str, other: str, design: Design) -> bool:
    """Whether a joint says how the two meet: then they touch, or share room as drawn."""
    return any({one, other} <= set(joint.items) for joint in design.joints.values())


def _could_meet(pair: Pair, boxes: dict[str, Swept], design: Design) -> bool:
    axis = pair.body.axis
    if axis is not None and is_round_about(pair.first, axis, design):
        # What is round takes the same room at every angle: the other one has to come to it.
        if pair.other is None or _is_round(pair, design):
            return False
    elif axis is not None and (pair.other is None or pair.other.axis is not None):
        beside = pair.other.axis if pair.other is not None else None
        return can_meet(ring_of(pair.first, axis), axis, pair.second, beside)
    return _box(pair.first, pair.body, boxes).meets(_box(pair.second, pair.other, boxes))


def _is_round(pair: Pair, design: Design) -> bool:
    axis = pair.other.axis if pair.other is not None else None
    return axis is not None and is_round_about(pair.second, axis, design)


def _box(copy: PlacedFact, body: Moving | None, boxes: dict[str, Swept]) -> Swept:
    if copy.subject not in boxes:
        turns = range(STEPS) if body is not None else ()
        places = [body.frame(copy, 2 * math.pi * n / STEPS) for n in turns] if body else []
        boxes[copy.subject] = swept(copy, places or [copy.frame])
    return boxes[copy.subject]
