"""Grooves that a keeper runs in: their place is taken from its hole in the mate, which is there.

A keeper that fills its groove leaves no room for the free lengths between the groove and the hole:
in the place that is drawn it does not go in. Common practice, no source.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from binder_plugins.operations.floors import floor_chamfers, floor_leg
from binder_plugins.operations.hole_tools import drill_name
from binder_plugins.operations.on_steps import step_of
from binder_solid.facts import FormFact
from binder_solid.space import cross, dot, minus

if TYPE_CHECKING:
    from collections.abc import Iterator

    from binder.api import Joint
    from binder_plugins.operations.facts import Act
    from binder_plugins.operations.turning import Turning
    from binder_plugins.operations.work import Work
    from binder_solid.facts import Located

_BORED = frozenset({"drilled", "reamed", "bored"})
_SQUARE = 1e-3


@dataclass(frozen=True, slots=True)
class Keeper:
    """The mate that is tried on, the words for it, and the drill that goes down its hole."""

    words: str
    tool: str


def keeper_of(work: Work, groove: Located, step: str) -> Keeper | None:
    """How a groove gets its place, where a keeper through a mate that is made first runs in it."""
    if groove.kind != "grooved" or len(groove.spots) != 1:
        return None
    for joint in _kept(work, step):
        for end in joint.ends:
            form = work.design.facts.about(FormFact, end.item)
            bore = _named(form, end.place) if form is not None else None
            if end.item == work.name or form is None or bore is None:
                continue
            hole = next((one for one in form.located if _crosses(one, bore)), None)
            if hole is None or (hole.diameter or 0.0) > (groove.diameter or 0.0):
                continue
            return _told(work, step, end.item, hole)
    return None


def floor_edges(turning: Turning, end: str, tags: tuple[str, ...]) -> Iterator[Act]:
    """The chamfer of an end that reaches its floor, where no groove has had it broken before.

    The groove's place was marked with the tip on that edge: filed again, the tip sits deeper.
    """
    step = turning.steps[0 if end == "left" else -1]
    grooves = (one for one in turning.form.located if step_of(turning.form, one) == step.name)
    if not any(keeper_of(turning.work, one, step.name) for one in grooves):
        yield from floor_chamfers(turning, end, tags)


def _kept(work: Work, step: str) -> Iterator[Joint]:
    """The joints of a step that something keeps, and whose other half is there before it."""
    half = work.half(step)
    for joint in work.design.joints_at(work.name):
        is_here = any(end.item == work.name and end.place == step for end in joint.ends)
        if is_here and joint.held_by and half is not None and not half.is_master:
            yield joint


def _named(form: FormFact, place: str) -> Located | None:
    return next((one for one in form.located if one.name == place and one.kind in _BORED), None)


def _crosses(hole: Located, bore: Located) -> bool:
    """Whether a hole goes square across a bore, through it or through its side."""
    if hole is bore or hole.kind not in _BORED or not hole.diameter or not bore.diameter:
        return False
    if abs(dot(hole.frame.z, bore.frame.z)) > _SQUARE:
        return False
    across = (hole.diameter + bore.diameter) / 2
    away = minus(hole.spots[0], bore.spots[0])
    deep = -dot(away, bore.frame.z)
    beside = abs(dot(away, cross(hole.frame.z, bore.frame.z)))
    return beside < across and 0.0 < deep < (bore.depth or deep + 1.0)


def _told(work: Work, step: str, mate: str, hole: Located) -> Keeper:
    item, steps = work.design.item(mate), work.form.stretches if work.form is not None else ()
    title = item.title if item is not None else mate
    leg = max((floor_leg(work, one) for one in steps if one.name == step), default=0.0)
    eased = f"break the end {work.mm(leg)} × 45° with a fine file, " if leg else ""
    drill = drill_name(work, hole.diameter or 0.0, fitted=False)
    words = (
        f"stop the lathe, any centre back, {eased}push the {title} on as far as it goes, turn a "
        f"{drill} with the fingers down its {hole.name.replace('_', ' ')} hole till it marks this, "
        "take it off, any centre up again: "
    )
    return Keeper(words, f"{drill}{', fine file' if leg else ''}")
