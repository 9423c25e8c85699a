"""How far from an end threads and grooves go in a bar that is left as bought there."""

from __future__ import annotations

from typing import TYPE_CHECKING

from binder.api import ThreadFact

if TYPE_CHECKING:
    from binder_plugins.operations.turning import Turning
    from binder_solid.facts import Located, Stretch

# What is left clear of the tool, in mm; common practice, no source.
SHORT = 3.0
# A die runs on behind a thread for so many pitches; common practice, no source.
_DIE_PITCHES = 3.0


def cut_reach(turning: Turning, end: str) -> float:
    """How far from an end threads and grooves in a bar as bought go, in mm; 0 without.

    A die needs more room than a tool: three pitches behind the last thread.
    """
    found = [0.0]
    for one in turning.around:
        if (
            not turning.is_turned_at(one)
            and turning.is_near(one, end)
            and one.kind in {"screwed", "grooved", "knurled", "undercut"}
        ):
            step = turning.steps[turning.step_at(one)]
            found.append(from_end(turning, step, one, end) + _die_room(turning, one))
    return max(found)


def _die_room(turning: Turning, one: Located) -> float:
    """What a die wants of room over what any tool gets, in mm; common practice, no source."""
    fact = turning.work.design.facts.about(ThreadFact, f"{turning.work.name}.{one.name}")
    return max(_DIE_PITCHES * fact.pitch - SHORT, 0.0) if fact is not None else 0.0


def from_end(turning: Turning, step: Stretch, one: Located, end: str) -> float:
    """How far from an end a thread or groove on a step goes, in mm."""
    whole = step.end - step.start
    before = step.start if end == "left" else turning.length - step.end
    if one.kind == "screwed":
        return before + min(one.length or whole, whole)
    if one.kind == "knurled":
        return before + whole
    return before + (whole / 2 if len(one.spots) == 1 else 3.0)
