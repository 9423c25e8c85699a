"""What is done to an item besides cutting: heat, then the bright finish and the last measures."""

from __future__ import annotations

from typing import TYPE_CHECKING

from binder.api import TreatmentFact, TreatmentStep
from binder_plugins.operations.facts import Act, Grip, SetUp

if TYPE_CHECKING:
    from collections.abc import Iterator

    from binder_plugins.operations.work import Work

_HEARTH = Grip("tongs or clean wire", "bench", "where a scale mark does no harm")


def treatment(work: Work) -> TreatmentFact:
    """All that is asked for, an empty one where nothing is."""
    return work.design.facts.about(TreatmentFact, work.name) or TreatmentFact(work.name)


def softened(work: Work) -> Iterator[SetUp]:
    """Softening and easing of the stock, before anything is cut in it."""
    acts = [_act(work, step) for step in treatment(work).first]
    if acts:
        yield SetUp(1, "bench", "", _HEARTH, "", tuple(acts))


def hardened(work: Work) -> Iterator[SetUp]:
    """Hardening and tempering in one go; left between them it may crack overnight."""
    acts = [_act(work, step) for step in treatment(work).heat]
    if acts:
        until = "the temper has run" if len(acts) > 1 else ""
        yield SetUp(1, "bench", "", _HEARTH, "", tuple(acts), until=until)


def brightened(work: Work) -> list[Act]:
    """What scale and heat leave on the fits, then the polish of the rest."""
    told = treatment(work)
    acts: list[Act] = []
    fits = _fits(work) if told.heat else []
    if fits:
        words = f"scale off; try the {', '.join(fits)}, lap or polish to size: the heat moved it"
        acts.append(work.act("polish", words, feature="fits", tags=("hard",)))
    return [*acts, *(_act(work, step) for step in told.bright)]


def _fits(work: Work) -> list[str]:
    places = [
        place
        for place, halves in work.halves.items()
        if place and any(one.lower is not None for one in halves)
    ]
    return [place.replace("_", " ") for place in places]


def _act(work: Work, step: TreatmentStep) -> Act:
    """The act of a step, timed by the table that tells it."""
    work.numbered += 1
    return Act(
        id=f"{work.name} {work.numbered}",
        act=step.act,
        what=step.what,
        feature=step.act,
        tool=step.tool,
        ready=step.ready,
        run=step.run,
        alone=60 * step.wait_h,
        spoils=step.spoils,
        at=work.item.at,
    )
