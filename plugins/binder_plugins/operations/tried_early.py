"""Bores that a mandrel is turned to: tried and written down as soon as they are reamed.

Behind the mandrel it is too late: there would be no figure to turn it to. Common practice, no
source.
"""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from binder_making.measuring import MATE, noted_for_mandrel

if TYPE_CHECKING:
    from collections.abc import Sequence

    from binder.api import HalfFact
    from binder_plugins.operations.facts import Act, Grip, SetUp
    from binder_plugins.operations.work import Work

_FINISHING = frozenset({"ream", "bore", "drill", "lap"})
_SAME_MM = 1e-3


def tried_early(work: Work, setups: Sequence[SetUp]) -> list[SetUp]:
    """The set-ups, each bore tried where it is finished if a later grip is a mandrel in it."""
    done = list(setups)
    for number, setup in enumerate(setups):
        if not is_on_mandrel(setup.grip):
            continue
        found = _finished(work, done[:number], setup.grip)
        if found is None:
            continue
        at, act = found
        if any(one.act == "measure" and one.feature == act.feature for one in done[at].acts):
            continue
        if (gate := _gate(work, act)) is not None:
            acts = list(done[at].acts)
            acts.insert(acts.index(act) + 1, gate)
            done[at] = replace(done[at], acts=tuple(acts))
    return done


def is_on_mandrel(grip: Grip) -> bool:
    """Whether work is carried by a mandrel that is turned for its bore, in lathe or divider."""
    return grip.on.startswith("its bore") and "mandrel" in grip.holder


def is_written(place: str, setups: Sequence[SetUp]) -> bool:
    """Whether a place has been measured and written down in one of these set-ups."""
    acts = (act for setup in setups for act in setup.acts)
    return any(act.act == "measure" and act.feature == place for act in acts)


def _finished(work: Work, setups: Sequence[SetUp], grip: Grip) -> tuple[int, Act] | None:
    """The set-up and the act that finished the bore in which the mandrel carries the work."""
    located = work.form.located if work.form is not None else ()
    names = {
        one.name
        for one in located
        if one.depth is None
        and one.kind in {"reamed", "bored", "drilled"}
        and (not grip.across or abs((one.diameter or 0.0) - grip.across) < _SAME_MM)
    }
    for number in reversed(range(len(setups))):
        for act in reversed(setups[number].acts):
            if act.act in _FINISHING and act.feature in names and act.measure:
                return number, act
    return None


def _gate(work: Work, made: Act) -> Act | None:
    """The trying of the bore; none where its mate is all that tells it."""
    halves = work.halves.get(made.feature, ())
    if MATE in made.measure:
        return None
    mine = _masters(halves)
    words = noted_for_mandrel(
        f"the {made.feature.replace('_', ' ')}", made.measure, is_master=bool(mine)
    )
    tags = ("master", "early") if mine else ("early",)
    act = work.act("measure", words, feature=made.feature, tool=made.measure, tags=tags)
    return replace(act, joints=mine or act.joints)


def _masters(halves: Sequence[HalfFact]) -> tuple[str, ...]:
    return tuple(one.joint for one in halves if one.is_master)
