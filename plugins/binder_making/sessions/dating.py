"""Evenings to the days on which they can be: a long cure pushes what waits for it."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from math import ceil
from typing import Final

from binder_making.sessions.job import Evening, Job

_DAY_MIN: Final = 24 * 60.0


def dated(evenings: Sequence[Evening], jobs: Sequence[Job]) -> tuple[Evening, ...]:
    """Each evening with its earliest day, where there is one evening to a day.

    Cost grows linearly with the jobs and what they wait for.
    """
    by_id = {job.id: job for job in jobs}
    ready: dict[str, int] = {}
    found: list[Evening] = []
    for one in evenings:
        waited = [
            (ready[name], name) for job in one.jobs for name in by_id[job].after if name in ready
        ]
        next_day = found[-1].day + 1 if found else 1
        until, name = max(waited, default=(0, ""))
        day = max(next_day, until)
        found.append(replace(one, day=day, held_by=name if until > next_day else ""))
        for cure in one.cures:
            ready[cure] = day + ceil(by_id[cure].cure_minutes / _DAY_MIN)
    return tuple(found)
