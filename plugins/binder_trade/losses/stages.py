"""The stages of a train to the part of the power that comes through."""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import Any, Final

from binder.api import load_data
from binder_trade.explained import NotDefined, Step, within
from binder_trade.gears.worm import back_efficiency, efficiency

WORM: Final = (
    "η = tan λ (c − μ tan λ) / (c tan λ + μ), c = cos of the pressure angle; Jindal, Machine Design"
)
# Friction that holds at rest, and so much more of it, holds a worm that is shaken.
_SHAKEN: Final = 1.5


@dataclass(frozen=True, slots=True)
class Loss:
    """What a stage loses as a part of one: least, usual, most."""

    stage: str
    least: float
    usual: float
    most: float
    source: str


@dataclass(frozen=True, slots=True)
class Through:
    """The part of the power that comes through: least, usual, most, as parts of one."""

    least: float
    usual: float
    most: float
    steps: tuple[Step, ...]


@dataclass(frozen=True, slots=True)
class WormLoss:
    """A worm's efficiency as driver, as a part of one; driven back it is `back` (0: it holds)."""

    forward: float
    back: float
    holds: bool
    holds_when_shaken: bool
    steps: tuple[Step, ...]


def stages() -> tuple[str, ...]:
    """The kinds of stage whose loss is kept."""
    return tuple(_rows())


def loss(stage: str) -> Loss:
    """What a stage of this kind usually loses. Raises NotDefined for one that is not kept."""
    if stage not in _rows():
        raise NotDefined(f"no loss known for “{stage[:40]}”", "one of: " + ", ".join(_rows()))
    row = _rows()[stage]
    return Loss(stage, row["least"], row["usual"], row["most"], row["source"])


def through(kinds: Sequence[str | Loss]) -> Through:
    """What comes through stages in a row, each by its name or its own Loss."""
    losses = [loss(each) if isinstance(each, str) else each for each in kinds]
    product = math.prod(1 - each.usual for each in losses)
    steps = (
        *(
            Step(each.stage, "usual loss", f"{each.usual * 100:g} %", each.source)
            for each in losses
        ),
        Step("comes through", "∏ (1 − loss)", f"{product * 100:.0f} %", "losses multiply"),
    )
    return Through(
        math.prod(1 - each.most for each in losses),
        product,
        math.prod(1 - each.least for each in losses),
        steps,
    )


def worm_loss(lead_deg: float, friction: float, pressure_deg: float = 20.0) -> WormLoss:
    """A worm's efficiency by its lead angle and friction; driven back it is 2 − 1/η or nothing.

    `pressure_deg` is the angle in the normal plane. `holds_when_shaken` wants half as much
    friction again as holds at rest. Raises NotDefined. Source: `WORM`.
    """
    within(lead_deg, 0.1, 60, "the lead angle", "°")
    mu = within(friction, 0, 0.5, "the friction")
    within(pressure_deg, 0, 45, "the pressure angle", "°")
    forward = efficiency(lead_deg, mu, pressure_deg)
    if forward <= 0:
        raise NotDefined("friction jams a worm as steep as this", "take fewer starts")
    driven = back_efficiency(lead_deg, mu, pressure_deg)
    back = max(0.0, driven)
    steps = (
        Step(
            "efficiency as driver",
            "tan λ (c − μ tan λ) / (c tan λ + μ), c = cos of the pressure angle",
            f"{forward * 100:.0f} %",
            WORM,
        ),
        Step(
            "driven back",
            "holds where μ ≥ cos of the pressure angle × tan λ",
            "holds" if back == 0 else f"{back * 100:.0f} %",
            WORM,
        ),
    )
    shaken = back_efficiency(lead_deg, mu / _SHAKEN, pressure_deg)
    return WormLoss(forward, back, driven <= 0, shaken <= 0, steps)


def _rows() -> Mapping[str, Any]:
    rows: Mapping[str, Any] = load_data("binder_trade.losses", "stages.yaml")["rows"]
    return rows
