"""Jobs in their order to evenings, each with one family of set-ups and a safe stop.

The order is cut where the sum of all faults is least: a set-up left in the chuck over night,
families mixed, a risky act last, a cure that is not last, time left over. Only within an
evening may jobs change their turn. What waits for a cure is never done on the same evening.
"""

from __future__ import annotations

from collections.abc import Collection, Sequence
from dataclasses import dataclass
from itertools import groupby
from typing import Final

from binder_making.sessions.arrange import arranged
from binder_making.sessions.dating import dated
from binder_making.sessions.job import Day, Evening, Job, Lengths
from binder_trade.explained import NotDefined

_MOST_JOBS: Final = 60
# What a fault weighs, in minutes that one would give to be rid of it (common practice).
_EVENING: Final = 30.0
_NOT_SAFE: Final = 400.0
_TOO_LONG: Final = 1000.0
_RISKY_LAST: Final = 150.0
_SETUP_LEFT: Final = 60.0
_FAMILY: Final = 25.0
_DAYS_MIXED: Final = 120.0
_CURE_NOT_LAST: Final = 20.0


@dataclass(frozen=True, slots=True)
class _Cut:
    """The best way to pack the jobs up to a place: its cost, and where the last evening begins."""

    cost: float
    start: int


def evenings(jobs: Sequence[Job], lengths: Lengths | None = None) -> tuple[Evening, ...]:
    """The evenings for jobs that stand in an order that can be worked.

    Equal input gives equal evenings; cost grows linearly with the jobs. Raises `NotDefined`
    where a job waits for one behind it, takes no time that can be, or an evening has none.
    """
    asked = lengths or Lengths()
    _check(jobs, asked)
    cuts = _best_cuts(jobs, asked.useful_min)
    chunks: list[list[Job]] = []
    end = len(jobs)
    while end:
        chunks.append(arranged(jobs[cuts[end].start : end]))
        end = cuts[end].start
    chunks.reverse()
    packed = (
        _evening(number, chunk, chunks[number] if number < len(chunks) else [], asked)
        for number, chunk in enumerate(chunks, 1)
    )
    return dated(tuple(packed), jobs)


def _best_cuts(jobs: Sequence[Job], useful: float) -> list[_Cut]:
    cuts = [_Cut(0.0, 0)]
    waiting = _waiting_for_cures(jobs)
    for end in range(1, len(jobs) + 1):
        end_cost = _end_cost(jobs, end)
        best: _Cut | None = None
        chunk = _Growing()
        for start in range(end - 1, max(end - 1 - _MOST_JOBS, -1), -1):
            job = jobs[start]
            if not chunk.takes(job, useful) or waiting.get(start, end) < end:
                break
            faults = chunk.faults(useful) + end_cost
            if chunk.cures or jobs[end - 1].is_risky:
                faults = _cost(jobs, start, end, useful - chunk.minutes)
            cost = cuts[start].cost + faults
            if best is None or cost < best.cost - 1e-9:
                best = _Cut(cost, start)
        cuts.append(best or _Cut(cuts[end - 1].cost, end - 1))
    return cuts


def _waiting_for_cures(jobs: Sequence[Job]) -> dict[int, int]:
    """The place of each job that cures, with that of the first which waits for it."""
    cures = {job.id: place for place, job in enumerate(jobs) if job.cure_minutes}
    first: dict[int, int] = {}
    if cures:
        for place, job in enumerate(jobs):
            for name in job.after:
                if name in cures:
                    first.setdefault(cures[name], place)
    return first


class _Growing:
    """The jobs of an evening as it grows from its end to its beginning."""

    __slots__ = ("_count", "_days", "_family", "_runs", "cures", "minutes")

    def __init__(self) -> None:
        self.minutes = 0.0
        self.cures = 0
        self._count = 0
        self._runs = 0
        self._family = ""
        self._days: list[Day] = []

    def takes(self, job: Job, useful: float) -> bool:
        """Puts a job in front; False where it has no room."""
        if self._count and self.minutes + job.minutes > useful:
            return False
        self._count += 1
        self.minutes += job.minutes
        self.cures += bool(job.cure_minutes)
        if job.family and job.family != self._family:
            self._runs += 1
            self._family = job.family
        if job.day not in self._days:
            self._days.append(job.day)
        return True

    def faults(self, useful: float) -> float:
        """What all but the end weighs, where no job changes its turn."""
        spare = useful - self.minutes
        cost = _EVENING + (_TOO_LONG if spare < 0 else 0.1 * spare)
        return cost + _FAMILY * max(self._runs - 1, 0) + _mixed(self._days)


def _end_cost(jobs: Sequence[Job], end: int) -> float:
    """What it weighs to end with a job that is not risky, where the next one follows."""
    return _stop_cost(jobs[end - 1], jobs[end] if end < len(jobs) else None)


def _stop_cost(last: Job, following: Job | None) -> float:
    is_left = following is not None and bool(last.setup) and following.setup == last.setup
    return (0.0 if last.is_safe_after else _NOT_SAFE) + (_SETUP_LEFT if is_left else 0.0)


def _cost(jobs: Sequence[Job], start: int, end: int, spare: float) -> float:
    """The faults of an evening in which jobs may change their turn."""
    chunk = arranged(jobs[start:end])
    last = chunk[-1]
    cost = _EVENING + (_TOO_LONG if spare < 0 else 0.1 * spare)
    cost += _stop_cost(last, jobs[end] if end < len(jobs) else None)
    cost += _RISKY_LAST if last.is_risky and len(chunk) > 1 else 0.0
    cost += _FAMILY * max(len(_families(chunk)) - 1, 0)
    cost += _mixed({job.day for job in chunk})
    return cost + _CURE_NOT_LAST * _cures_not_last(chunk)


def _mixed(days: Collection[Day]) -> float:
    """What it weighs that work which wants a day of its own shares an evening."""
    return _DAYS_MIXED * max(len([day for day in days if day is not Day.ANY]) - 1, 0)


def _cures_not_last(chunk: Sequence[Job]) -> int:
    last = max((n for n, job in enumerate(chunk) if not job.cure_minutes), default=-1)
    return sum(1 for job in chunk[:last] if job.cure_minutes)


def _families(chunk: Sequence[Job]) -> list[str]:
    return [name for name, _ in groupby(job.family for job in chunk if job.family)]


def _evening(number: int, chunk: list[Job], following: list[Job], asked: Lengths) -> Evening:
    minutes = sum(job.minutes for job in chunk)
    return Evening(
        number,
        tuple(job.id for job in chunk),
        minutes,
        asked.useful_min - minutes,
        tuple(dict.fromkeys(_families(chunk))),
        _tools(chunk),
        tuple(job.gate for job in chunk if job.gate),
        tuple(job.id for job in chunk if job.cure_minutes),
        _tools([job for job in following if not _goes_on(chunk[-1], job)]),
        tuple(_remarks(chunk, following, asked.useful_min - minutes)),
    )


def _goes_on(last: Job, job: Job) -> bool:
    """Whether a job goes on in the grip of the last one, with all that lies there for it."""
    return bool(last.setup) and job.setup == last.setup


def _tools(chunk: Sequence[Job]) -> tuple[str, ...]:
    return tuple(dict.fromkeys(tool for job in chunk for tool in job.tools))


def _remarks(chunk: list[Job], following: list[Job], spare: float) -> list[str]:
    last = chunk[-1]
    goes_on = bool(following) and _goes_on(last, following[0])
    found = []
    if spare < 0:
        found.append(f"takes {-spare:.0f} min more than an evening has: begin early")
    # The next evening goes on with the same grip: there it may be stopped, if nothing is moved.
    if not last.is_safe_after and following and not goes_on:
        found.append(f"{last.name} must not be left as it is: go on until it is safe")
    if last.is_risky and len(chunk) > 1:
        found.append(f"{last.name} is risky: leave it for the next evening if you are tired")
    if goes_on:
        stop = f"{last.stop}, and " if last.stop else ""
        found.append(f"{stop}leave the work in its grip: it must not be disturbed")
    if Day.HEAT in {job.day for job in chunk}:
        found.append("heat: stay until everything is cold")
    return found


def _check(jobs: Sequence[Job], asked: Lengths) -> None:
    if asked.useful_min <= 0:
        raise NotDefined("an evening leaves no time to work", "make it longer")
    seen: set[str] = set()
    names = {job.id for job in jobs}
    for job in jobs:
        if not 0 <= job.minutes <= 1e5 or not 0 <= job.cure_minutes <= 1e6:
            raise NotDefined(f"'{job.id}' takes no time that can be", "give minutes")
        behind = [name for name in job.after if name in names and name not in seen]
        if behind or job.id in seen:
            raise NotDefined(
                f"'{job.id}' stands twice or waits for what comes later", "put them in order"
            )
        seen.add(job.id)
