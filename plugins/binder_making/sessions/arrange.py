"""The jobs of one evening to a better turn of them: risky ones early, cures at the end."""

from __future__ import annotations

from collections.abc import Sequence

from binder_making.sessions.job import Job


def arranged(jobs: Sequence[Job]) -> list[Job]:
    """The jobs with cures moved to the end, and then a risky one at the end moved ahead.

    Nothing passes a job that it waits for, nor leaves its set-up, nor comes between a job that
    must not be left and the next.
    """
    found = list(jobs)
    for job in [one for one in found if one.cure_minutes]:
        _to_the_end(found, job)
    if found and found[-1].is_risky:
        _ahead(found)
    return found


def _to_the_end(found: list[Job], job: Job) -> None:
    """A cure goes to the end where nothing of the evening waits for it."""
    place = found.index(job)
    behind = found[place + 1 :]
    is_bound = any(_follows(one, job) or one.cure_minutes for one in behind)
    # A job in the middle of a set-up would make it be mounted twice.
    splits = bool(job.setup) and any(one.setup == job.setup for one in behind)
    is_held = not found[-1].is_safe_after or (place > 0 and not found[place - 1].is_safe_after)
    if not is_bound and not splits and not is_held:
        found.append(found.pop(place))


def _ahead(found: list[Job]) -> None:
    """The risky job at the end goes before those of its set-up that may follow it."""
    job = found[-1]
    place = len(found) - 1
    while place > 0 and _may_pass(job, found[place - 1]):
        place -= 1
    while place < len(found) - 1 and place and not found[place - 1].is_safe_after:
        place += 1
    if place < len(found) - 1:
        found.insert(place, found.pop())


def _may_pass(job: Job, earlier: Job) -> bool:
    is_free = earlier.id not in job.after and not earlier.cure_minutes
    return is_free and earlier.setup == job.setup and earlier.is_safe_after and not earlier.is_risky


def _follows(one: Job, job: Job) -> bool:
    return job.id in one.after
