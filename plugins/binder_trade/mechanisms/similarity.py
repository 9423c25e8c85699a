"""A scale and the prototype's speed to what the model should run at, and how sizes scale."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Final

from binder_trade.explained import Step, amount, within

FROUDE: Final = "Froude's similarity: time goes by the root of the scale"
LOOKS: Final = "common practice, no source: between the prototype's speed and the root of the scale"


@dataclass(frozen=True, slots=True)
class ScaleSpeed:
    """Speeds of a model in r/min for a prototype's.

    `froude_rpm` swings and falls as the prototype did, seen slowed down; `looks_right_rpm` is a
    range from the prototype's own speed to that.
    """

    prototype_rpm: float
    scale: float
    froude_rpm: float
    looks_right_rpm: tuple[float, float]
    steps: tuple[Step, ...]


@dataclass(frozen=True, slots=True)
class Scaled:
    """How many times as much the prototype has as a model at 1 : scale of the same material."""

    length: float
    area: float
    volume: float
    inertia: float
    stress_same_pressure: float


def scale_speed(prototype_rpm: float, scale: float) -> ScaleSpeed:
    """What a model at 1 : scale should run at; r/min. Source: `FROUDE`, `LOOKS`."""
    speed = amount(prototype_rpm, "the prototype's speed in r/min")
    size = within(scale, 1, 1000, "the scale (16 for 1 : 16)")
    froude = speed * math.sqrt(size)
    steps = (
        Step("by similarity", "n × √scale", f"{froude:.0f} r/min", FROUDE),
        Step("looks right", "n to n × √scale", f"{speed:.0f} to {froude:.0f} r/min", LOOKS),
    )
    return ScaleSpeed(speed, size, froude, (speed, froude), steps)


def scaled(scale: float) -> Scaled:
    """The powers of a scale: length, area, volume (and mass), inertia, stress."""
    size = within(scale, 1e-3, 1000, "the scale")
    return Scaled(size, size**2, size**3, size**5, 1.0)
