"""What is brushed off, wiped and drawn out against a stop: tools that no act names with its own.

All: common practice, no source. That swarf is brushed off, and that rags with spirit on them go
into a closed tin, is what the cautions over that work say.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from binder.api import TaskTime
from binder_plugins.operations.tasks import is_wiped

if TYPE_CHECKING:
    from collections.abc import Iterator

    from binder.api import Design, Task
    from binder_plugins.operations.facts import SetUp

BRUSH, RAG = "swarf brush", "clean rag"
WITH_SPIRIT = f"{RAG}, metal tin with a lid"
_STOP = "stop for the bar"
_CHIPS = frozenset({"lathe", "mill", "drill"})


def cleared(setup: SetUp) -> Iterator[str]:
    """The brush that chips come off with at a machine, and what a bar is drawn out against."""
    if setup.place in _CHIPS:
        yield BRUSH
    if setup.is_stick:
        yield _STOP


def wiped(task: Task, design: Design) -> str:
    """What a task is brushed and wiped with: before the first run all bores and threads are."""
    if task.id.startswith("run "):
        return f"{BRUSH}, {RAG}"
    return WITH_SPIRIT if is_wiped(design.facts.about(TaskTime, task.id), design) else ""
