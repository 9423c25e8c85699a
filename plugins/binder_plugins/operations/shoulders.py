"""Where a thread ends on the metal: a die leaves its last turns half cut, and must be stopped."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from binder.api import ThreadFact

if TYPE_CHECKING:
    from binder_plugins.operations.work import Work
    from binder_solid.facts import FormFact, Located, Stretch

# The lead of a die in pitches: so near to a shoulder it cuts no full thread. Common practice,
# no source.
LEAD = 2.0
# What a step must stand above the thread's outside, in pitches, to stop the face of a die: its
# own threads are opened by a chamfer as wide. Common practice, no source.
_STOPS = 0.5
_SAME = 1e-6
# A thread that begins so near to the tip in mm begins there.
_AT_TIP_MM = 0.05
_ROUND = "turn the die round"


def to_shoulder(work: Work, form: FormFact, thread: Located) -> str:
    """What is done where a thread ends at metal that no undercut lets the die run out before.

    A shoulder stops the die; bar of the thread's own size does not, it would be cut on.
    """
    fact = work.design.facts.about(ThreadFact, f"{work.name}.{thread.name}")
    if fact is None or not thread.length:
        return ""
    lead = LEAD * fact.pitch
    grooves = [spot[0] for one in form.located if one.kind == "undercut" for spot in one.spots]
    ends = [
        one
        for one in _ends(form, thread, lead)
        if all(abs(groove - one.at) >= lead + fact.major for groove in grooves)
    ]
    if not ends:
        return ""
    if min(one.across for one in ends) >= fact.major + 2 * _STOPS * fact.pitch - _SAME:
        return f"; then {_ROUND}, and run its plain side up to the shoulder for the last turns"
    turns, far = round(thread.length / fact.pitch), work.mm(_tip_to(form, thread)[1])
    counted = (
        f"; no shoulder stops the die: scribe the thread's end first, {far} from the tip, and "
        f"count about {turns} turns from the first bite"
    )
    is_round = any(one.is_wall for one in ends) or _comes_home(work, thread, lead)
    return f"{counted}; {_ROUND} for the last ones" if is_round else counted


def begins(work: Work, form: FormFact, thread: Located) -> str:
    """From where to where a thread lies that does not begin at the tip, or ''."""
    near, far = _tip_to(form, thread)
    if near < _AT_TIP_MM:
        return ""
    return f", from {work.mm(near)} to {work.mm(far)} off the tip,"


def _tip_to(form: FormFact, thread: Located) -> tuple[float, float]:
    """How far a thread's two ends lie from the tip over which the die comes, both in mm.

    That is the end with nothing thicker than the thread before it; of two such the nearer.
    """
    half, x = (thread.length or 0.0) / 2, thread.spots[0][0]
    steps, thick = form.stretches, thickness(form, x)
    ends = [
        (x - half - steps[0].start, [one.across for one in steps if one.end <= x]),
        (steps[-1].end - x - half, [one.across for one in steps if one.start >= x]),
    ]
    near = min((any(one > thick + _SAME for one in before), off) for off, before in ends)[1]
    return max(near, 0.0), max(near, 0.0) + 2 * half


def thickness(form: FormFact, x: float) -> float:
    """Of the step that a thread is on, in mm."""
    found = (s.across for s in form.stretches if s.start - _SAME <= x <= s.end + _SAME)
    return next(found, form.size[1])


def _comes_home(work: Work, thread: Located, lead: float) -> bool:
    """Whether a mate is screwed so far on that it meets what a die leaves half cut."""
    for name in work.joints_at(thread.name):
        joint = work.design.joints[name]
        mates = (work.design.facts.about(ThreadFact, str(end)) for end in joint.ends)
        deep = [one.full_depth for one in mates if one is not None and one.is_internal]
        is_fast = joint.kind == "threaded"
        if is_fast and any(d is None or float(d) > (thread.length or 0.0) - lead for d in deep):
            return True
    return False


@dataclass(frozen=True, slots=True)
class _End:
    """Where a thread ends at metal `across` thick, both in mm; a wall, or its own bar."""

    at: float
    across: float
    is_wall: bool


def _ends(form: FormFact, thread: Located, lead: float) -> list[_End]:
    half = (thread.length or 0.0) / 2
    found: list[_End] = []
    for x, *_ in thread.spots:
        place = next(
            (n for n, s in enumerate(form.stretches) if s.start - _SAME <= x <= s.end + _SAME), None
        )
        if place is None:
            continue
        near = [one for one in _walls(form, place) if abs(abs(one.at - x) - half) < lead - _SAME]
        found += near or _on_its_bar(form.stretches[place], x, half)
    return found


def _on_its_bar(step: Stretch, x: float, half: float) -> list[_End]:
    """The ends of a thread that lie within its own step."""
    inner = (at for at in (x - half, x + half) if step.start + _SAME < at < step.end - _SAME)
    return [_End(at, step.across, is_wall=False) for at in inner]


def _walls(form: FormFact, place: int) -> list[_End]:
    """Where a step borders on one that is no thinner."""
    steps = form.stretches
    step, found = steps[place], []
    if place and _is_wall(steps[place - 1].end_across, step):
        found.append(_End(step.start, steps[place - 1].end_across, is_wall=True))
    if place + 1 < len(steps) and _is_wall(steps[place + 1].across, step):
        found.append(_End(step.end, steps[place + 1].across, is_wall=True))
    return found


def _is_wall(across: float, step: Stretch) -> bool:
    """Whether a die does not run on: a bar of the thread's own size stops it, or is threaded."""
    return across >= max(step.across, step.end_across) - _SAME
