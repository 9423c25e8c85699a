"""A thread up to the end that is parted off: the die runs on past the line by its lead.

What a die leaves half cut at the end of its way would lie just where a nut must go on.
"""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from binder.api import ThreadFact
from binder_plugins.operations.around import is_thread
from binder_plugins.operations.shoulders import LEAD

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from binder_plugins.operations.facts import Act
    from binder_plugins.operations.turning import Turning
    from binder_solid.facts import Located

_SAME_MM = 1e-6
_PAST = ", past the line of parting off"
_WHY = ", since a die leaves its last turns half cut"


def past_line(turning: Turning, one: Located) -> float:
    """How far in mm a die goes on past the finished end on the chuck's side; 0 where it need not.

    So it is for a thread that begins at the free end's side and ends with the piece.
    """
    work, free = turning.work, turning.plan.free
    fact = work.design.facts.about(ThreadFact, f"{work.name}.{one.name}")
    if not turning.plan.is_parted or not is_thread(one) or fact is None or len(one.spots) != 1:
        return 0.0
    place = turning.step_at(one)
    step = turning.steps[place]
    x, half = one.spots[0][0], (one.length or 0.0) / 2
    start, end = (x - half, x + half) if one.length else (step.start, step.end)
    left = start if free == "right" else turning.length - end
    front = turning.steps[place + 1 :] if free == "right" else turning.steps[:place]
    most = step.across + _SAME_MM
    if left > _SAME_MM or any(max(it.across, it.end_across) > most for it in front):
        return 0.0
    return LEAD * float(fact.pitch)


def past_most(turning: Turning) -> float:
    """The most in mm that a die of the first grip goes past the line; 0 without one."""
    found = (past_line(turning, one) for one in turning.edges(turning.plan.free, first=True))
    return max(found, default=0.0)


def run_past(turning: Turning, cut: Iterable[Act], threads: Iterable[Located]) -> Iterator[Act]:
    """The acts of a grip, those of a thread up to the line told to go on past it."""
    over = {one.name: past_line(turning, one) for one in threads}
    for act in cut:
        said = past_words(act.act) if over.get(act.feature) else ""
        far = turning.work.mm(turning.length + over.get(act.feature, 0.0))
        yield replace(act, what=f"{act.what}; on to {far} from the end{said}") if said else act


def past_words(act: str) -> str:
    """How far its turning and its die go for a thread up to the line; '' for any other act."""
    return {"turn": _PAST, "die": f"{_PAST}{_WHY}"}.get(act, "")


def far_chamfers(turning: Turning) -> Iterator[Act]:
    """The end at which such a thread was cut off is broken, so that a nut goes on there too."""
    work, free = turning.work, turning.plan.free
    for one in turning.edges(free, first=True):
        if past_line(turning, one):
            yield work.act(
                "chamfer",
                "chamfer this end to the core of the thread",
                machine=turning.lathe,
                feature=one.name,
                size=turning.steps[turning.step_at(one)].across,
                end=turning.plan.other,
                tags=("back",),
            )
