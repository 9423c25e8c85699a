"""Thrust along a shaft: which way it goes, and the shoulder, collar or wheel that takes it."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from binder.api import Design, Located, PlaceFact, ShaftFact, TurningFact
from binder_plugins.drive.carrying.bearings import is_rolling
from binder_plugins.drive.carrying.facts import Taken
from binder_plugins.drive.carrying.line import Bush, Line, Reach
from binder_plugins.drive.carrying.pulls import Pull
from binder_plugins.drive.standing import Axis, axis_of, passes

# What a face may stand inside its bearing in the model, by its end float, and still meet it.
_SLACK_MM = 0.5
_LEAST_N = 0.05


@dataclass(frozen=True, slots=True)
class Thrust:
    """A force in N along a shaft: 1 to its right end, -1 to its left; `is_sure` if only so."""

    joint: str
    size: float
    way: int
    is_sure: bool


def thrust_of(
    pull: Pull, reach: Reach, hand: int, body: TurningFact, line: Line, design: Design
) -> Thrust:
    """The thrust of a pull: away from where the axes meet, else as the hand says."""
    apex = _apex(pull, body, line, design) if pull.is_apart else None
    if apex is None:
        return Thrust(pull.joint, pull.thrust, hand, is_sure=False)
    return Thrust(pull.joint, pull.thrust, 1 if sum(reach) / 2 > apex else -1, is_sure=True)


def _apex(pull: Pull, body: TurningFact, line: Line, design: Design) -> float | None:
    """Where the axis of the other wheel passes, in mm along the shaft."""
    joint = design.joints[pull.joint]
    others = [end.item for end in joint.ends if end.item not in body.items]
    mates = next(
        (one.items for one in design.facts.all(TurningFact) if set(others) & set(one.items)), ()
    )
    other = axis_of(mates, design)
    if line.frame is None or other is None:
        return None
    return passes(Axis(line.frame.origin, line.frame.x), other)


def taken(thrusts: Sequence[Sequence[Thrust]], line: Line, design: Design) -> tuple[Taken, ...]:
    """For each end towards which a thrust goes the most of it, and what takes it."""
    found = []
    for way in (1, -1):
        pushing = [[one for one in case if one.way == way] for case in thrusts]
        most = max(pushing, key=lambda case: sum(one.size for one in case), default=[])
        size = sum(one.size for one in most)
        if size >= _LEAST_N:
            by = tuple(dict.fromkeys(one.joint for one in most))
            found.append(Taken(size, way, by, _taker(line, way, design)))
    return tuple(found)


def _taker(line: Line, way: int, design: Design) -> str | None:
    """What stops the shaft that way, '' for nothing; None where that is not known.

    By the row on the shaft where there is one, else by the nearest face that does not go through
    a bearing.
    """
    row = design.facts.about(ShaftFact, line.shaft)
    if row is not None:
        return _by_row(row, way, design)
    if line.is_bored or any(not bush.across or _is_inside(bush, line) for bush in line.bushes):
        return None
    rolling = next((one.item for one in line.bushes if is_rolling(one.item, design)), None)
    if rolling is not None:
        return _title(rolling, design)
    faces = [face for bush in line.bushes for face in _faces(bush, line, way, design)]
    return min(faces)[1] if faces else ""


def _is_inside(bush: Bush, line: Line) -> bool:
    """Whether a piece stands in a bush: then nothing told its place along the shaft."""
    others = (reach for item, reach in line.stands.items() if item != line.shaft)
    return any(low < bush.high - _SLACK_MM and bush.low + _SLACK_MM < high for low, high in others)


def _by_row(row: ShaftFact, way: int, design: Design) -> str | None:
    """Its stops: between two bearings each meets the one before it, outside them the other."""
    if row.located is Located.NOT or not row.stops:
        return None  # that it can slide is a finding of its own
    is_inside = row.located is Located.INSIDE
    piece = row.pieces[row.stops[-1 if (way > 0) == is_inside else 0]]
    return _title(piece.item, design)


def _faces(bush: Bush, line: Line, way: int, design: Design) -> Iterator[tuple[float, str]]:
    """How far off in mm each face is that comes up against a bush, and its name."""
    joint = design.joints[bush.joint]
    places = [design.facts.about(PlaceFact, str(end)) for end in joint.ends]
    if any(one is not None and one.form == "hole" and not one.is_through for one in places):
        is_right = bush.middle > line.long / 2
        if is_right == (way > 0):
            yield 0.0, f"the floor of {_title(bush.item, design)}"
    start = 0.0
    for size, across in line.steps:
        gap = bush.low - start - size if way > 0 else start - bush.high
        if bush.across is not None and across > bush.across and gap > -_SLACK_MM:
            yield gap, f"a shoulder of its own against {_title(bush.item, design)}"
        start += size
    for item, (low, high) in line.stands.items():
        gap = bush.low - high if way > 0 else low - bush.high
        if item != line.shaft and gap > -_SLACK_MM:
            yield gap, f"{_title(item, design)} against {_title(bush.item, design)}"


def _title(name: str, design: Design) -> str:
    item = design.item(name)
    return f"the {item.title}" if item is not None else name
