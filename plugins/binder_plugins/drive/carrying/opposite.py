"""Two wheels of a drive as they stand: how far out of line they are along their shafts."""

from __future__ import annotations

from collections.abc import Collection
from dataclasses import dataclass

from binder.api import Design, End, Joint, Passed, ShaftFact, TurningFact
from binder_plugins.drive.carrying.mates import wheels_of
from binder_plugins.drive.carrying.planes import own_plane
from binder_plugins.drive.carrying.row import Reach, row_of
from binder_plugins.drive.motion.reach import ring_of
from binder_plugins.drive.standing import Axis, axis_of, between
from binder_solid.placed import PlacedFact
from binder_solid.space import dot, minus, placed


@dataclass(frozen=True, slots=True)
class Opposite:
    """Where the two run, along one line, and how far their axes stand apart (None: not known).

    `play` is what the end floats of both shafts let them wander; mm all.
    """

    joint: Joint
    first: End
    second: End
    one: Reach
    other: Reach
    apart: float | None
    play: float

    @property
    def offset(self) -> float:
        """From the middle of the one to that of the other."""
        return abs(sum(self.one) - sum(self.other)) / 2

    @property
    def sticks_out(self) -> float:
        """How far the narrower reaches past the wider."""
        narrow, wide = sorted((self.one, self.other), key=lambda each: each[1] - each[0])
        return max(0.0, narrow[1] - wide[1], wide[0] - narrow[0])

    @property
    def width(self) -> float:
        """The width of the narrower."""
        return min(one[1] - one[0] for one in (self.one, self.other))


def opposite(one: Passed, step: int, design: Design) -> Opposite | None:
    """The two wheels of a drive on one of its steps; None where nothing tells where they stand."""
    found = wheels_of(one, design)
    bodies = [design.facts.about(TurningFact, name) for name in (one.driver, one.driven)]
    if found is None or bodies[0] is None or bodies[1] is None:
        return None
    joint, first, second = found
    play = sum(play_of(body.items, design) for body in bodies if body is not None)
    axes = [axis_of(body.items, design) for body in bodies if body is not None]
    if axes[0] is not None and axes[1] is not None:
        apart = between(axes[0], axes[1])
        if apart is None:
            return None
        reaches = [
            _in_model(joint, end, step, axes[0], own, design)
            for end, own in zip((first, second), axes, strict=True)
            if own is not None
        ]
        if reaches[0] is not None and reaches[1] is not None:
            return Opposite(joint, first, second, reaches[0], reaches[1], apart, play)
    return _by_rows(joint, first, second, play, design)


def _in_model(
    joint: Joint, end: End, step: int, line: Axis, own: Axis, design: Design
) -> Reach | None:
    """Where a wheel runs, along a line in the model; of several copies the one on its own axis."""
    copies = [one for one in design.facts.all(PlacedFact) if one.item == end.item]
    if not copies:
        return None
    copy = min(copies, key=lambda one: ring_of(one, own).inside)
    groove = own_plane(joint, end, step, design)
    if groove is None:
        ring = ring_of(copy, line)
        return ring.low, ring.high
    points = [placed((at, 0.0, 0.0), copy.frame) for at in groove]
    along = [dot(minus(point, line.origin), line.way) for point in points]
    return min(along), max(along)


def _by_rows(joint: Joint, first: End, second: End, play: float, design: Design) -> Opposite | None:
    """By the rows of both shafts, where one and the same piece carries their left ends."""
    reaches, carriers = [], []
    for end in (first, second):
        shaft = next(
            (
                fact.subject
                for fact in design.facts.all(ShaftFact)
                if any(piece.item == end.item for piece in fact.pieces)
            ),
            "",
        )
        row = row_of(shaft, design)
        if row is None or end.item not in row.stands:
            return None
        reaches.append(row.from_carrier(row.stands[end.item]))
        carriers.append(row.carrier)
    if carriers[0] != carriers[1]:
        return None
    return Opposite(joint, first, second, reaches[0], reaches[1], None, play)


def play_of(items: Collection[str], design: Design) -> float:
    """What the end float of a shaft lets its body wander along its axis, in mm."""
    rows = (row_of(name, design) for name in items)
    return next((row.play for row in rows if row is not None), 0.0)
