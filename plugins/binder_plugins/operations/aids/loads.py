"""The load that a model is tried under: it is weighed out before, in the shares that are told."""

from __future__ import annotations

from typing import TYPE_CHECKING

from binder.api import CordFact, TaskKind

if TYPE_CHECKING:
    from collections.abc import Iterator

    from binder.api import Design, Task


def loads_for(task: Task, design: Design) -> Iterator[str]:
    """What hangs in a cord while the whole is run in and tested, and when it is up for good."""
    is_whole = f"run {task.item}" in design.tasks
    if is_whole and (task.kind is TaskKind.TEST or task.id == f"close {task.item}"):
        found = (one.load for one in design.facts.all(CordFact) if one.load)
        for load in dict.fromkeys(found):
            yield f"load of {load}, weighed, in two quarters and a half"
