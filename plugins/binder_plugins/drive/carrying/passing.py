"""The torque that each drive of the train hands on, at each setting."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from binder.api import Design, Passed, TrainFact, TurningFact

THE_LOAD = "the load that is told"
THE_MOVER = "the most that the mover gives, since no load is told"
WEIGHTS = "weights and belts at rest, since neither load nor strength is told"


@dataclass(frozen=True, slots=True)
class Passing:
    """What comes in at each body in N·mm, a figure for each setting, and where it comes from."""

    basis: str
    into: Mapping[str, tuple[float, ...]]


def passing(train: TrainFact, design: Design) -> Passing:
    """By the loads; where none is told, what the movers give, with the losses on the way."""
    bodies = {name: body for name in train.order if (body := design.facts.about(TurningFact, name))}
    if any(torque for body in bodies.values() for torque in body.torques):
        return Passing(
            THE_LOAD,
            {name: tuple(one or 0.0 for one in body.torques) for name, body in bodies.items()},
        )
    given = _given(train)
    if not given:
        return Passing(WEIGHTS, {name: (0.0,) * len(train.settings) for name in bodies})
    settings = range(len(train.settings))
    columns = [_outwards(train, given, bodies, number) for number in settings]
    return Passing(THE_MOVER, {name: tuple(one[name] for one in columns) for name in bodies})


def _given(train: TrainFact) -> Mapping[str, float]:
    given: dict[str, float] = {}
    for body, strength in zip(train.mover_bodies, train.strength, strict=False):
        if strength:
            given[body] = given.get(body, 0.0) + strength
    return given


def _outwards(
    train: TrainFact, given: Mapping[str, float], bodies: Mapping[str, TurningFact], number: int
) -> dict[str, float]:
    """From the movers to the last shaft; where the train branches each branch gets it all."""
    found = {name: given.get(name, 0.0) for name in bodies}
    for one in train.passed:
        if one.driver in found and one.driven in found:
            ratio = ratio_at(one, number, bodies)
            if ratio and not found[one.driven]:
                found[one.driven] = found[one.driver] * one.kept / ratio
    return found


def ratio_at(one: Passed, number: int, bodies: Mapping[str, TurningFact]) -> float:
    """The speed of the driven body over that of the driver at a setting, nothing if unsettled."""
    speeds = [bodies[name].speeds[number] for name in (one.driver, one.driven)]
    if speeds[0] is None or speeds[1] is None or not speeds[0]:
        return 0.0
    return abs(speeds[1] / speeds[0])


def step_at(one: Passed, ratio: float) -> int:
    """Which of its own steps a drive runs on at this ratio."""
    return min(range(len(one.ratios)), key=lambda n: abs(abs(one.ratios[n]) - ratio))
