"""Screws where the parts stand: from where to where each runs in what it goes through."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from binder.api import Design, HardwareFact, Joint
from binder_plugins.fasteners.asking import Asked, asked
from binder_plugins.fasteners.near_grain import screws_through, shank_mm
from binder_solid.forms import Vector
from binder_solid.placed import PlacedFact
from binder_solid.space import dot, frame_y, minus, plus

_HELD = frozenset({"screwed", "buttoned", "bolted"})
# What lies as close as this, in mm, touches; a coat or a gasket may be between.
_TOUCHES = 0.6
_ACROSS = 1e-6


@dataclass(frozen=True, slots=True)
class Body:
    """What of a screw lies in one copy of a part: its axis in the model, how thick it is, in mm."""

    joint: Joint
    copy: PlacedFact
    start: Vector
    end: Vector
    across: float


def bodies(design: Design) -> Iterator[Body]:
    """The screws and bolts of all joints, part by part; nothing where a part has no place."""
    for joint in design.joints.values():
        facts = [one for one in design.facts.all(HardwareFact) if one.joint == joint.name]
        across = _across(joint, facts, design) if joint.kind in _HELD else None
        if across is None:
            continue
        deep = max((one.engagement or 0.0 for one in facts), default=0.0)
        copies = [one for one in design.facts.all(PlacedFact) if one.item in joint.items]
        for copy in copies:
            mates = [one for one in copies if one.item != copy.item]
            for point, way in screws_through(copy, joint, design):
                for held, start, end in _runs(point, way, copy, mates, deep):
                    at = plus(point, way, start), plus(point, way, end)
                    yield Body(joint, held, *at, across)


def _across(joint: Joint, facts: list[HardwareFact], design: Design) -> float | None:
    """How thick its screws are in mm; None where that is not known."""
    wood = next((mm for one in facts if (mm := shank_mm(one.what)) is not None), None)
    if wood is not None or not facts:
        return wood
    said = asked(joint, design)
    return said.diameter_mm if isinstance(said, Asked) else None


def _runs(
    point: Vector, way: Vector, copy: PlacedFact, mates: list[PlacedFact], deep: float
) -> Iterator[tuple[PlacedFact, float, float]]:
    """Along the axis of a hole: through its own part, then as deep as it holds in the next."""
    own = _within(point, way, copy)
    if own is None:
        return
    yield copy, *own
    for mate in mates:
        there = _within(point, way, mate)
        if there is None or not deep:
            continue
        if abs(there[0] - own[1]) < _TOUCHES:
            yield mate, there[0], min(there[0] + deep, there[1])
        elif abs(there[1] - own[0]) < _TOUCHES:
            yield mate, max(there[1] - deep, there[0]), there[1]


def _within(point: Vector, way: Vector, one: PlacedFact) -> tuple[float, float] | None:
    """From where to where in mm along a line a copy reaches, by its box; None beside it."""
    off = minus(point, one.frame.origin)
    low, high = float("-inf"), float("inf")
    axes = (one.frame.x, frame_y(one.frame), one.frame.z)
    for axis, least, most in zip(axes, *one.corners, strict=True):
        at, along = dot(off, axis), dot(way, axis)
        if abs(along) < _ACROSS:
            if not least < at < most:
                return None
            continue
        ends = sorted(((least - at) / along, (most - at) / along))
        low, high = max(low, ends[0]), min(high, ends[1])
    return (low, high) if low < high else None
