"""The work as a graph: tasks, and what must come before what."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

from binder.diagnostics import NOWHERE, Span


class TaskKind(StrEnum):
    """What is done in a task."""

    MEASURE = "measure"
    MAKE = "make"
    JOIN = "join"
    ASSEMBLE = "assemble"
    TEST = "test"
    STRIP = "strip"
    FINISH = "finish"


@dataclass(frozen=True, slots=True)
class Task:
    """One piece of work: `item` is what it is done to; `detail` is one line for the list."""

    id: str
    title: str
    kind: TaskKind
    item: str
    detail: str = ""
    at: Span = NOWHERE


@dataclass(frozen=True, slots=True)
class Before:
    """`earlier` comes before `later` because of `reason`; `is_must` or only preferred."""

    earlier: str
    later: str
    reason: str
    is_must: bool = True
    at: Span = NOWHERE
