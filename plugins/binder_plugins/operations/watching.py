"""What running in takes in hand: the line over each thread that is locked later, and its trial."""

from __future__ import annotations

from typing import TYPE_CHECKING

from binder_solid.filled import locking
from binder_solid.float_tried import EndFloat, end_floats
from binder_solid.watched import slip_line, slips_unseen

if TYPE_CHECKING:
    from collections.abc import Iterator

    from binder.api import Design, Joint, Task

_RUN = "run "


def watched(task: Task, design: Design) -> list[Joint]:
    """The joints that are watched while a task runs the model in: those locked when it has run."""
    if not task.id.startswith(_RUN):
        return []
    return [joint for joint in design.joints.values() if locking(joint)]


def lines_drawn(task: Task, design: Design) -> str:
    """The lines that are drawn and watched in a task; '' for none."""
    return "; ".join(slip_line(joint, design) for joint in watched(task, design))


def floats_watched(task: Task, design: Design) -> Iterator[EndFloat]:
    """The end floats that are read again where a line may stay whole over a loose thread."""
    unseen = {one.name for one in watched(task, design) if slips_unseen(one, design)}
    yield from (one for one in end_floats(design) if one.joints & unseen)
