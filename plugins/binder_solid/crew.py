"""Jobs done by several processes at once, each bounded in time, none able to sink the others."""

from __future__ import annotations

import math
import time
from collections import deque
from collections.abc import Sequence
from dataclasses import dataclass, field
from multiprocessing import get_context
from multiprocessing.connection import Connection, wait
from multiprocessing.context import SpawnProcess

from .jobs import Job, Outcome, Refused
from .work import worked

_READY = "ready"
_START = 60.0  # seconds in which a process must have loaded the kernel


class NoCrew(Exception):
    """No process can be started here, so the work is to be done by this one."""


@dataclass(slots=True)
class _Hand:
    """A process, the line to it, the job that it has, and when its time is up."""

    process: SpawnProcess
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
    """Does one job after the other as they come down the line, until it is closed."""
    from .kernel import measure, project, section

    line.send((_READY, measure.__name__, project.__name__, section.__name__))
    while True:
        try:
            job = line.recv()
        except EOFError:
            return
        line.send(worked(job))


def _hired() -> _Hand:
    context = get_context("spawn")
    try:
        ours, theirs = context.Pipe()
        process = context.Process(target=serve, args=(theirs,), daemon=True)
        process.start()
    except (OSError, RuntimeError) as fault:
        raise NoCrew(str(fault)) from fault
    theirs.close()
    return _Hand(process, ours, time.monotonic() + _START)


def _dismiss(hand: _Hand) -> None:
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
