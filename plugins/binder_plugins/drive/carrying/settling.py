"""The train to what each of its shafts carries, and to what there is to set turning."""

from __future__ import annotations

from collections.abc import Iterator

from binder.api import Contribution, Design, Fact, TrainFact, TurningFact, Working
from binder_plugins.drive.carrying.facts import CarriedFact, InertiaFact
from binder_plugins.drive.carrying.inertia import inertia_fact
from binder_plugins.drive.carrying.passing import passing
from binder_plugins.drive.carrying.shaft import carried_fact
from binder_plugins.drive.carrying.weights import weigh
from binder_trade.explained import Step


def settle_shafts(design: Design) -> Contribution:
    """Facts and workings of each body that the drive reaches.

    Nothing where no mover is told: its speeds are then those of one turn, and no real ones.
    """
    train = design.facts.about(TrainFact, "")
    if train is None or train.is_relative:
        return Contribution()
    bodies = [one for name in train.order if (one := design.facts.about(TurningFact, name))]
    weighed = {
        body.subject: {item: weigh(item, body.items, design) for item in body.items}
        for body in bodies
    }
    given = passing(train, design)
    carried = [carried_fact(body, train, given, weighed[body.subject], design) for body in bodies]
    inertia = inertia_fact(train, weighed, design)
    facts: list[Fact] = [*carried, *([inertia] if inertia is not None else [])]
    return Contribution(facts=facts, workings=[*_workings(facts, train, design)])


def _workings(facts: list[Fact], train: TrainFact, design: Design) -> Iterator[Working]:
    for fact in facts:
        if isinstance(fact, CarriedFact):
            yield from _of(fact.shaft or fact.subject, fact.steps, design)
        elif isinstance(fact, InertiaFact):
            yield from _of(train.movers[0], fact.steps, design)


def _of(name: str, steps: tuple[Step, ...], design: Design) -> Iterator[Working]:
    known = design.item(name) or design.joints.get(name)
    if known is None:
        return
    for step in steps:
        yield Working(
            id=f"{name.replace(' ', '_')}.{step.name.replace(' ', '_')}",
            title=f"{step.name} of '{name}'",
            given=(),
            formula=step.formula,
            result=step.value,
            source=step.source,
            span=known.at,
        )
