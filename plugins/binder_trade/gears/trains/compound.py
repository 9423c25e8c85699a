"""A train of meshes reckoned through: speed, way round, torque and power on each shaft."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction
from math import pi
from typing import Final

from binder_trade.explained import NotDefined, Step, within

RULE: Final = "speeds as driver teeth / driven teeth, torques the other way, less losses"


@dataclass(frozen=True, slots=True)
class MeshOf:
    """A driver and what it drives; `reverses` is False for an internal gear or with an idler."""

    driver: int
    driven: int
    reverses: bool = True
    efficiency: float = 1.0


@dataclass(frozen=True, slots=True)
class Shaft:
    """A shaft of the train: r/min (under nothing: against the first), N mm, W."""

    rpm: float
    torque_n_mm: float
    power_w: float


@dataclass(frozen=True, slots=True)
class TrainRun:
    """The whole train; `ratio` is turns of the last shaft for one of the first, with its sign."""

    ratio: Fraction
    efficiency: float
    shafts: tuple[Shaft, ...]
    steps: tuple[Step, ...]


def run_train(meshes: Sequence[MeshOf], rpm: float, torque_n_mm: float = 0.0) -> TrainRun:
    """Each shaft of a compound train, the first driven so fast and so hard; r/min, N mm.

    Raises NotDefined for a train of nothing or a wheel without teeth. Source: product of pairs.
    """
    if not meshes:
        raise NotDefined("a train of no wheels", "give at least one pair")
    ratio, kept = Fraction(1), 1.0
    shafts = [_shaft(rpm, torque_n_mm)]
    steps: list[Step] = []
    for mesh in meshes:
        ratio *= _one(mesh)
        kept *= within(mesh.efficiency, 0.01, 1, "an efficiency")
        shafts.append(_shaft(rpm * float(ratio), torque_n_mm / float(abs(ratio)) * kept))
        steps.append(Step("speed", f"n × {mesh.driver} / {mesh.driven}", _rpm(shafts[-1]), RULE))
    steps.append(Step("ratio", "product of the pairs", f"{ratio}".replace("-", "−"), RULE))
    return TrainRun(ratio, kept, tuple(shafts), tuple(steps))


def _one(mesh: MeshOf) -> Fraction:
    for teeth in (mesh.driver, mesh.driven):
        within(teeth, 1, 2000, "a number of teeth")
    part = Fraction(mesh.driver, mesh.driven)
    return -part if mesh.reverses else part


def _shaft(rpm: float, torque: float) -> Shaft:
    return Shaft(rpm, torque, torque * abs(rpm) * 2 * pi / 60_000)


def _rpm(shaft: Shaft) -> str:
    return f"{shaft.rpm:.2f} r/min".replace("-", "−")
