"""Jobs done by several processes at once, each bounded in time, none able to sink the others.

Where the kernel may be loaded once and the process split (Linux, one thread), it is: loading it
anew in each costs as much as fifty parts. Elsewhere each process starts empty.
"""

from __future__ import annotations

import math
import sys
import time
from collections import deque
from collections.abc import Sequence
from contextlib import suppress
from dataclasses import dataclass, field
from multiprocessing import get_context
from multiprocessing.connection import Connection, wait
from multiprocessing.context import ForkProcess, SpawnProcess
from pathlib import Path

from .jobs import Job, Outcome, Refused
from .work import worked

_READY = "ready"
_START = 60.0  # seconds in which a process must have loaded the kernel


class NoCrew(Exception):
    """No process can be started here, so the work is to be done by this one."""


@dataclass(slots=True)
class _Hand:
    """A process, the line to it, the job that it has, and when its time is up."""

    process: SpawnProcess | ForkProcess
    line: Connection
    deadline: float
    job: int | None = None
    is_ready: bool = False


@dataclass(slots=True)
class _Crew:
    jobs: Sequence[Job]
    patience: float
    left: deque[int]
    hands: list[_Hand] = field(default_factory=list)
    done: dict[int, Outcome] = field(default_factory=dict)


def worked_by_several(jobs: Sequence[Job], workers: int, patience: float) -> tuple[Outcome, ...]:
    """Does jobs in so many processes, each job within so many seconds; raises NoCrew."""
    crew = _Crew(jobs, patience, deque(range(len(jobs))))
    try:
        crew.hands = [_hired() for _ in range(min(workers, len(jobs)))]
        while len(crew.done) < len(jobs):
            _step(crew)
    finally:
        for hand in crew.hands:
            _dismiss(hand)
    return tuple(crew.done[number] for number in range(len(jobs)))


def serve(line: Connection) -> None:
    """Does one job after the other as they come down the line, until it is closed or says None."""
    from .kernel import measure, project, section

    line.send((_READY, measure.__name__, project.__name__, section.__name__))
    while True:
        try:
            job = line.recv()
        except EOFError:
            return
        if job is None:
            return
        line.send(worked(job))


def may_split() -> bool:
    """Whether a copy of this process is whole: it has no other thread whose locks it might hold."""
    threads = Path("/proc/self/task")
    return sys.platform == "linux" and threads.is_dir() and len(list(threads.iterdir())) == 1


def _hired() -> _Hand:
    try:
        ours, theirs = get_context("spawn").Pipe()
        process = _process(theirs)
        process.start()
    except (OSError, RuntimeError) as fault:
        raise NoCrew(str(fault)) from fault
    theirs.close()
    return _Hand(process, ours, time.monotonic() + _START)


def _process(theirs: Connection) -> SpawnProcess | ForkProcess:
    if not may_split():
        return get_context("spawn").Process(target=serve, args=(theirs,), daemon=True)
    from .kernel import measure, project, section  # noqa: F401  (loaded before the split)

    if not may_split():
        return get_context("spawn").Process(target=serve, args=(theirs,), daemon=True)
    return get_context("fork").Process(target=serve, args=(theirs,), daemon=True)


def _dismiss(hand: _Hand) -> None:
    # A split process holds copies of the other lines: closing ours alone would not be heard.
    with suppress(OSError):
        hand.line.send(None)
    hand.line.close()
    if hand.job is not None or not hand.is_ready:
        hand.process.kill()
    hand.process.join()


def _step(crew: _Crew) -> None:
    """Waits for the next word from any hand, or for the first whose time is up."""
    until = min(hand.deadline for hand in crew.hands)
    heard = wait([hand.line for hand in crew.hands], max(0.0, until - time.monotonic()))
    for hand in list(crew.hands):
        if hand.line in heard:
            _hear(crew, hand)
        elif hand.deadline <= time.monotonic():
            _lose(crew, hand, f"took longer than {crew.patience:g} s")


def _hear(crew: _Crew, hand: _Hand) -> None:
    try:
        word = hand.line.recv()
    except (EOFError, OSError):
        _lose(crew, hand, "the kernel broke down over it")
        return
    if hand.job is None:
        hand.is_ready = True
    else:
        crew.done[hand.job] = word
    _give(crew, hand)


def _give(crew: _Crew, hand: _Hand) -> None:
    hand.job = crew.left.popleft() if crew.left else None
    hand.deadline = time.monotonic() + crew.patience if hand.job is not None else math.inf
    if hand.job is not None:
        hand.line.send(crew.jobs[hand.job])


def _lose(crew: _Crew, hand: _Hand, reason: str) -> None:
    """Sends a hand away that broke down or takes too long, and hires another in its place."""
    crew.hands.remove(hand)
    _dismiss(hand)
    if not hand.is_ready:
        raise NoCrew("a process could not load the kernel")
    if hand.job is not None:
        crew.done[hand.job] = Refused(reason, "form")
    if crew.left:
        crew.hands.append(_hired())
