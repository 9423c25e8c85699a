"""Activities and what each waits for to early and late times, floats and the critical path.

Source: the critical path method, forward and backward pass, as in any textbook of it.
"""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from binder_trade.explained import NotDefined

_SAME = 1e-9


@dataclass(frozen=True, slots=True)
class Activity:
    """Something that takes time (of any one unit) and waits for the `after` to be finished."""

    id: str
    duration: float
    after: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class Times:
    """When an activity can start and finish, and when it must, counted from 0.

    `total_float` is the delay that does not move the end, `free_float` that which moves no
    other activity.
    """

    early_start: float
    early_finish: float
    late_start: float
    late_finish: float
    total_float: float
    free_float: float

    @property
    def is_critical(self) -> bool:
        """Whether any delay moves the end."""
        return self.total_float <= _SAME


@dataclass(frozen=True, slots=True)
class Network:
    """The times of each activity by its id, the length of the whole, and what it hangs on.

    `critical` are all activities without float, `path` one chain of them from start to end.
    """

    times: Mapping[str, Times]
    length: float
    critical: tuple[str, ...]
    path: tuple[str, ...]


def critical_path(activities: Sequence[Activity]) -> Network:
    """The network of activities.

    Raises `NotDefined` for a duration that is none, an id twice, a wait for something
    unknown, or a ring. Cost: linear in activities and waits.
    """
    waits = _checked(activities)
    order = _ordered(activities, waits)
    early = [0.0] * len(order)
    for number in order:
        start = max((early[one] for one in waits[number]), default=0.0)
        early[number] = start + activities[number].duration
    length = max(early, default=0.0)
    late = [length] * len(order)
    follows = [length] * len(order)
    for number in reversed(order):
        duration = activities[number].duration
        must, can = late[number] - duration, early[number] - duration
        for one in waits[number]:
            late[one] = min(late[one], must)
            follows[one] = min(follows[one], can)
    times = list(map(_times, activities, early, late, follows))
    critical = [number for number in order if times[number].is_critical]
    return Network(
        {one.id: found for one, found in zip(activities, times, strict=True)},
        length,
        tuple(activities[number].id for number in critical),
        tuple(activities[number].id for number in _one_path(waits, times, critical, length)),
    )


def _times(one: Activity, early: float, late: float, follows: float) -> Times:
    start = early - one.duration
    return Times(start, early, late - one.duration, late, late - early, follows - early)


def _checked(activities: Sequence[Activity]) -> list[list[int]]:
    """The places of those that each one waits for."""
    place = {one.id: number for number, one in enumerate(activities)}
    if len(place) < len(activities):
        raise NotDefined("two activities have the same name", "name each one by itself")
    waits: list[list[int]] = []
    for one in activities:
        if not math.isfinite(one.duration) or one.duration < 0:
            raise NotDefined(
                f"'{one.id}' takes {one.duration:g}, which is no time", "give nothing or more"
            )
        after = dict.fromkeys(one.after)
        for name in after:
            if name not in place:
                raise NotDefined(f"'{one.id}' waits for '{name}', which is unknown", "name it")
        waits.append([place[name] for name in after])
    return waits


def _ordered(activities: Sequence[Activity], waits: Sequence[Sequence[int]]) -> list[int]:
    """The places of the activities, each behind all that it waits for."""
    left = [len(row) for row in waits]
    later: list[list[int]] = [[] for _ in waits]
    for number, row in enumerate(waits):
        for earlier in row:
            later[earlier].append(number)
    order = [number for number, count in enumerate(left) if not count]
    for number in order:
        for other in later[number]:
            left[other] -= 1
            if not left[other]:
                order.append(other)
    if len(order) < len(waits):
        stuck = next(number for number, count in enumerate(left) if count)
        raise NotDefined(
            f"'{activities[stuck].id}' waits in a ring", "drop one of the waits of the ring"
        )
    return order


def _one_path(
    waits: Sequence[Sequence[int]],
    times: Sequence[Times],
    critical: Sequence[int],
    length: float,
) -> list[int]:
    """Back from the critical activity that ends last, one without duration if there is one."""
    last = [one for one in critical if abs(times[one].early_finish - length) <= _SAME]
    if not last:
        return []
    path = [last[-1]]
    while True:
        start = times[path[-1]].early_start
        before = [
            one
            for one in waits[path[-1]]
            if times[one].is_critical and abs(times[one].early_finish - start) <= _SAME
        ]
        if not before:
            return path[::-1]
        path.append(before[0])
