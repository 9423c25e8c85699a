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
    by_id = _checked(activities)
    order = _ordered(by_id)
    early: dict[str, float] = {}
    for name in order:
        start = max((early[one] for one in by_id[name].after), default=0.0)
        early[name] = start + by_id[name].duration
    length = max(early.values(), default=0.0)
    late = dict.fromkeys(order, length)
    follows = dict.fromkeys(order, length)
    for name in reversed(order):
        one = by_id[name]
        for earlier in one.after:
            late[earlier] = min(late[earlier], late[name] - one.duration)
            follows[earlier] = min(follows[earlier], early[name] - one.duration)
    times = {name: _times(by_id[name], early[name], late[name], follows[name]) for name in by_id}
    critical = tuple(name for name in order if times[name].is_critical)
    return Network(times, length, critical, _one_path(by_id, times, critical, length))


def _times(one: Activity, early: float, late: float, follows: float) -> Times:
    start = early - one.duration
    return Times(start, early, late - one.duration, late, late - early, follows - early)


def _checked(activities: Sequence[Activity]) -> dict[str, Activity]:
    by_id = {one.id: one for one in activities}
    if len(by_id) < len(activities):
        raise NotDefined("two activities have the same name", "name each one by itself")
    for one in activities:
        if not math.isfinite(one.duration) or one.duration < 0:
            raise NotDefined(
                f"'{one.id}' takes {one.duration:g}, which is no time", "give nothing or more"
            )
        for name in one.after:
            if name not in by_id:
                raise NotDefined(f"'{one.id}' waits for '{name}', which is unknown", "name it")
    return by_id


def _ordered(by_id: Mapping[str, Activity]) -> list[str]:
    waits = {name: len(set(one.after)) for name, one in by_id.items()}
    later: dict[str, list[str]] = {name: [] for name in by_id}
    for name, one in by_id.items():
        for earlier in dict.fromkeys(one.after):
            later[earlier].append(name)
    order = [name for name, count in waits.items() if not count]
    for name in order:
        for other in later[name]:
            waits[other] -= 1
            if not waits[other]:
                order.append(other)
    if len(order) < len(by_id):
        stuck = next(name for name, count in waits.items() if count)
        raise NotDefined(f"'{stuck}' waits in a ring", "drop one of the waits of the ring")
    return order


def _one_path(
    by_id: Mapping[str, Activity],
    times: Mapping[str, Times],
    critical: tuple[str, ...],
    length: float,
) -> tuple[str, ...]:
    """Back from the critical activity that ends last, one without duration if there is one."""
    last = [name for name in critical if abs(times[name].early_finish - length) <= _SAME]
    if not last:
        return ()
    path = [last[-1]]
    while True:
        start = times[path[-1]].early_start
        before = [
            name
            for name in by_id[path[-1]].after
            if times[name].is_critical and abs(times[name].early_finish - start) <= _SAME
        ]
        if not before:
            return tuple(reversed(path))
        path.append(before[0])
