"""A thread that a larger hole meets from the other end: it is tapped through, not to a floor."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from binder_plugins.operations.hole_kinds import Where
from binder_plugins.operations.holes import hole_acts
from binder_plugins.operations.tapped import thread_of

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from binder_plugins.operations.facts import Act
    from binder_plugins.operations.work import Work
    from binder_solid.facts import FormFact, Located

# The drill goes past the thread by one diameter of it, for the tap's lead and the chips; common
# practice, no source.
_PAST = 1.0
_SAME = 1e-6
_HOLES = frozenset({"drilled", "reamed", "bored"})


def relief_of(thread: Located, form: FormFact) -> Located | None:
    """The hole on the axis that comes from the other end and meets a thread, if there is one."""
    if thread.kind != "tapped" or thread.depth is None:
        return None
    across = thread.diameter or 0.0
    return next(
        (
            one
            for one in form.located
            if one.kind in _HOLES
            and one.face == thread.face == "axis"
            and one.depth is not None
            and one.frame.z[0] * thread.frame.z[0] < 0
            and (one.diameter or 0.0) > across
            and one.depth + thread.depth >= form.size[0] - _SAME
        ),
        None,
    )


def relieved_acts(
    work: Work, form: FormFact, thread: Located, relief: Located, where: Where
) -> Iterator[Act]:
    """The acts of such a thread: its drill goes past it, or into the hole that is there."""
    deep, said = thread.depth or 0.0, relief.name.replace("_", " ")
    is_there = "back" in where.tags
    past = deep if is_there else deep + _PAST * (thread.diameter or 0.0)
    shown = replace(thread, depth=None if is_there else past)
    for act in hole_acts(work, shown, replace(where, deep=past, is_open=True)):
        if act.act != "tap":
            yield act
            continue
        ending = (
            f"through into the {said}" if is_there else f"on past it: the {said} takes the rest"
        )
        yield replace(act, what=f"{act.what}; {work.mm(deep)} of full thread, {ending}")


def cleared(work: Work, form: FormFact, late: Iterable[Located]) -> Iterator[Act]:
    """The tap once more, where a hole that meets a thread is drilled after it.

    At the bench, from the end at which the thread begins: from the other a tap starts across it.
    """
    reliefs = list(late)
    for one in form.located:
        relief = relief_of(one, form)
        if relief is None or relief not in reliefs:
            continue
        begins = "right" if one.frame.z[0] > 0 else "left"
        yield work.act(
            "chase",
            f"run the tap through the {one.name.replace('_', ' ')} once more, by hand from the "
            f"{begins}-hand end: the {relief.name.replace('_', ' ')} leaves a burr in it",
            feature=one.name,
            tool=f"{thread_of(one)} taps, tap wrench",
        )
