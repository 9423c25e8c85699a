"""A thread that goes up to a shoulder: a die leaves its last turns half cut."""

from __future__ import annotations

from typing import TYPE_CHECKING

from binder.api import ThreadFact

if TYPE_CHECKING:
    from binder_plugins.operations.work import Work
    from binder_solid.facts import FormFact, Located, Stretch

# The lead of a die in pitches: so near to a shoulder it cuts no full thread. Common practice,
# no source.
_LEAD = 2.0
_SAME = 1e-6


def to_shoulder(work: Work, form: FormFact, thread: Located) -> str:
    """What is done where a thread ends at a larger step and no undercut lets the die run out."""
    fact = work.design.facts.about(ThreadFact, f"{work.name}.{thread.name}")
    if fact is None or not thread.length:
        return ""
    lead, half = _LEAD * fact.pitch, thread.length / 2
    ends = {
        wall
        for x, *_ in thread.spots
        for wall in _walls(form, x)
        if abs(abs(wall - x) - half) < lead - _SAME
    }
    grooves = [spot[0] for one in form.located if one.kind == "undercut" for spot in one.spots]
    if not ends or all(any(abs(g - wall) < lead + fact.major for g in grooves) for wall in ends):
        return ""
    return "; then turn the die round, and run its plain side up to the shoulder for the last turns"


def _walls(form: FormFact, x: float) -> list[float]:
    """Where the step at a place borders on one that is no thinner."""
    steps = form.stretches
    place = next((n for n, s in enumerate(steps) if s.start - _SAME <= x <= s.end + _SAME), None)
    if place is None:
        return []
    step = steps[place]
    found = []
    if place and _is_wall(steps[place - 1].end_across, step):
        found.append(step.start)
    if place + 1 < len(steps) and _is_wall(steps[place + 1].across, step):
        found.append(step.end)
    return found


def _is_wall(across: float, step: Stretch) -> bool:
    """Whether a die does not run on: a bar of the thread's own size stops it, or is threaded."""
    return across >= max(step.across, step.end_across) - _SAME
