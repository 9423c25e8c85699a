"""Tapped holes to findings where another hole of the same part cuts through their thread.

A hole that opens into the thread's end, lies on its axis, is wider than it (a bore that a grub
screw is tapped into) or pins the screw is meant to meet it, and is no finding.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator
from dataclasses import dataclass

from binder.api import Design, Diagnostic, Feature, Labelled, Span, exact, shown_length
from binder_plugins.threads import codes
from binder_plugins.threads.found import Found, by_item, written_at
from binder_solid.facts import FormFact, Located
from binder_solid.forms import Vector

_HOLES = ("drilled", "reamed", "bored", "tapped")
_PINNED = ("pinned", "dowelled")
_ALONG = 0.999  # of a whole turn: beyond it two axes run the same way
_NEAR_MM = 0.05


@dataclass(frozen=True, slots=True)
class Run:
    """A hole as a line into the metal: where it starts, which way, how deep, its radius; mm."""

    feature: Feature
    start: Vector
    way: Vector
    deep: float
    radius: float


@dataclass(frozen=True, slots=True)
class Meeting:
    """Where two lines are nearest: along the one, along the other, and how far apart; mm."""

    along: float
    other: float
    apart: float


def check_crossing(found: Iterable[Found], design: Design) -> Iterator[Diagnostic]:
    """Each pair of a tapped hole and a hole that cuts through it, once."""
    tapped = {item: threads for item, threads in by_item(found).items() if _inside(threads)}
    said: set[frozenset[tuple[str, str]]] = set()
    for item, threads in tapped.items():
        form = design.facts.about(FormFact, item)
        if form is None:
            continue
        runs = list(_runs(form, design))
        for one in _inside(threads):
            for other, meeting in _crossed(one, runs, design):
                pair = frozenset(((item, one.feature.name), (item, other.feature.name)))
                if pair not in said:
                    said.add(pair)
                    yield _finding(one, other, meeting, design)


def _inside(threads: list[Found]) -> list[Found]:
    return [one for one in threads if one.is_internal]


def _runs(form: FormFact, design: Design) -> Iterator[Run]:
    owner = design.parts.get(form.subject)
    features = {one.name: one for one in owner.features} if owner is not None else {}
    for located in form.located:
        feature = features.get(located.name)
        if feature is None or feature.is_dummy or located.kind not in _HOLES:
            continue
        if located.diameter is None or getattr(feature.entry, "lean", None) is not None:
            continue
        for number, spot in enumerate(located.spots):
            way = _way_in(located, number)
            through = sum(abs(one) * size for one, size in zip(way, form.size, strict=True))
            deep = min(located.depth, through) if located.depth is not None else through
            yield Run(feature, spot, way, deep, located.diameter / 2)


def _way_in(located: Located, number: int) -> Vector:
    """Into the metal: towards the axis from a rim, from the far end the other way."""
    first, here = located.spots[0], located.spots[number]
    a, b, c = located.frame.z
    if located.face == "across" and number > 0:
        far = math.hypot(here[1], here[2]) or 1.0
        return (0.0, -here[1] / far, -here[2] / far)
    axis = max(range(3), key=lambda one: abs(located.frame.z[one]))
    is_first_end = abs(first[axis] - here[axis]) < _NEAR_MM
    return (-a, -b, -c) if is_first_end else (a, b, c)


def _crossed(one: Found, runs: list[Run], design: Design) -> Iterator[tuple[Run, Meeting]]:
    """The first place of each feature that cuts through the thread."""
    named: set[str] = set()
    for thread in (run for run in runs if run.feature.name == one.feature.name):
        for other in runs:
            name = other.feature.name
            if name == one.feature.name or name in named or _is_meant(one, other, design):
                continue
            meeting = _nearest(thread, other)
            if meeting is not None and _cuts(thread, other, meeting):
                named.add(name)
                yield other, meeting


def _is_meant(one: Found, other: Run, design: Design) -> bool:
    """A bore wider than the screw, that is for no screw itself, or the hole of a pin."""
    place = (other.feature.owner, other.feature.name)
    implying = design.joints.get(other.feature.implied_by)
    joints = [
        joint
        for joint in design.joints_at(other.feature.owner)
        if any((end.item, end.place) == place for end in joint.ends)
    ]
    if any(joint.kind in _PINNED for joint in (*joints, *((implying,) if implying else ()))):
        return True
    is_for_screw = other.feature.kind == "tapped" or bool(other.feature.implied_by)
    return other.radius > one.thread.major_mm / 2 + _NEAR_MM and not is_for_screw


def _nearest(one: Run, other: Run) -> Meeting | None:
    """The nearest points of two lines that cross at an angle, None where they run alike."""
    cos = _dot(one.way, other.way)
    if abs(cos) > _ALONG:
        return None
    between = _less(one.start, other.start)
    a, b = _dot(one.way, between), _dot(other.way, between)
    turn = 1 - cos * cos
    along, across = (cos * b - a) / turn, (b - cos * a) / turn
    apart = math.dist(_at(one, along), _at(other, across))
    return Meeting(along, across, apart)


def _cuts(thread: Run, other: Run, meeting: Meeting) -> bool:
    """The hole takes metal out of the full thread, and does not merely end in its side."""
    if meeting.apart >= thread.radius + other.radius - _NEAR_MM:
        return False
    is_in_thread = -_NEAR_MM < meeting.along - other.radius < thread.deep - _NEAR_MM
    goes_past = other.deep > meeting.other + thread.radius - _NEAR_MM
    return is_in_thread and goes_past and meeting.other > 0


def _finding(one: Found, other: Run, meeting: Meeting, design: Design) -> Diagnostic:
    free = meeting.along - other.radius
    room = shown_length(exact(math.floor(free * 10) / 10), design.units)
    shorter = f"end the thread {room} deep, before the hole; or " if free >= 0.1 else ""
    deep = shown_length(exact(round(meeting.along, 2)), design.units)
    name = other.feature.name
    return codes.CROSS_HOLE_MEETS_THREAD.at(
        one.at,
        f"'{name}' cuts through the thread {one.thread.designation} of '{one.feature.name}' in "
        f"'{one.feature.owner}', {deep} down",
        related=(Labelled(_written_at(other.feature, design), "the hole"),),
        help=f"{shorter}move one of the two by "
        f"{shown_length(exact(round(_missing(one, other, meeting), 1)), design.units)}",
    )


def _written_at(feature: Feature, design: Design) -> Span:
    return written_at(feature, design) if feature.kind == "tapped" else feature.at


def _missing(one: Found, other: Run, meeting: Meeting) -> float:
    """Sideways till the two clear each other by a quarter of the thread."""
    clear = one.thread.major_mm / 2 + other.radius + one.thread.major_mm / 4
    return clear - meeting.apart


def _dot(a: Vector, b: Vector) -> float:
    return sum(one * two for one, two in zip(a, b, strict=True))


def _less(a: Vector, b: Vector) -> Vector:
    return (a[0] - b[0], a[1] - b[1], a[2] - b[2])


def _at(run: Run, along: float) -> Vector:
    x, y, z = (place + along * way for place, way in zip(run.start, run.way, strict=True))
    return (x, y, z)
