"""Threads on the outside of turned work: turned to size, chamfered, and cut by the die."""

from __future__ import annotations

from typing import TYPE_CHECKING

from binder.api import ThreadFact
from binder_plugins.operations.on_steps import step_of
from binder_plugins.operations.shoulders import begins, thickness, to_shoulder

if TYPE_CHECKING:
    from collections.abc import Iterator

    from binder_plugins.operations.facts import Act
    from binder_plugins.operations.work import Work
    from binder_solid.facts import FormFact, Located


# How the half of a thread that is fitted with the die begins.
_OPENED = "open the die"
# What the length of a thread is taken as where it is not told, in mm.
_UNTOLD_MM = 5.0


def thread_acts(
    work: Work, form: FormFact, one: Located, lathe: str, end: str, tags: tuple[str, ...]
) -> Iterator[Act]:
    """Turned to size where that is told, the end chamfered, then the die."""
    long, to = one.length or _UNTOLD_MM, _turned_to(work, one)
    if to:
        yield work.act(
            "turn",
            f"turn to ⌀{to} × {work.mm(long)}{begins(work, form, one)} for the thread",
            machine=lathe,
            feature=one.name,
            size=thickness(form, one.frame.origin[0]),
            start=thickness(form, one.frame.origin[0]) + 0.3,
            deep=long,
            end=end,
            tags=(*tags, "outside", "for-thread"),
            meets=(step_of(form, one), *_neighbours(form, one)),
        )
    yield work.act(
        "chamfer",
        "chamfer the end to the core of the thread",
        machine=lathe,
        feature=one.name,
        size=thickness(form, one.frame.origin[0]),
        end=end,
        tags=tags,
    )
    yield _die(work, form, one, end, tags)


def _die(work: Work, form: FormFact, one: Located, end: str, tags: tuple[str, ...]) -> Act:
    """The die over a thread, in the tailstock holder where it is owned."""
    thread = one.note.split(",")[0].split("×")[-1].strip().removeprefix("thread ")
    dies = work.design.workshop.owns_die(thread)
    ending = f", {work.mm(one.length)} long" if one.length else ""
    return work.act(
        "die",
        f"cut the thread {thread}{ending}{_fitted(work, one)}{to_shoulder(work, form, one)}",
        feature=one.name,
        tool=f"{thread} die in the tailstock holder" if dies else f"{thread} die",
        amount=one.length or _UNTOLD_MM,
        end=end,
        tags=tags,
        meets=(step_of(form, one), *_neighbours(form, one)),
        times=1,
    )


def _fitted(work: Work, one: Located) -> str:
    """How the die is set for the mate, as the half says it after its sizes."""
    half = work.half(one.name)
    how = half.how if half is not None else ""
    return f": {how}" if how.startswith(_OPENED) else ""


def _turned_to(work: Work, one: Located) -> str:
    """The size under a die, as `2.95 mm`: a little less than the thread's outside."""
    for half in work.halves.get(one.name, ()):
        if "turn to " in half.what:
            return half.what.split("turn to ")[1]
    fact = work.design.facts.about(ThreadFact, f"{work.name}.{one.name}")
    return work.mm(fact.turn_to) if fact is not None and fact.turn_to else ""


def _neighbours(form: FormFact, one: Located) -> Iterator[str]:
    """Undercuts and cross cuts on the step that carries a thread."""
    for other in form.located:
        if (
            other.name != one.name
            and other.face != "axis"
            and step_of(form, other) == step_of(form, one)
        ):
            yield other.name
