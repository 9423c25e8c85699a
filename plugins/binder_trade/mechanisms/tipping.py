"""A load past the edge of a base to how safely the weight on the base holds it down."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Final

from binder_trade.explained import Step

LEVER: Final = "law of the lever about the edge"
SAFE: Final = 2.0
"""How many times over the weight should hold what tips: common practice, no source."""
_GRAVITY = 9.80665  # m/s², standard (3rd CGPM, 1901)


@dataclass(frozen=True, slots=True)
class Tipping:
    """What turns the model over about an edge and what holds it, both in N·mm, with the steps."""

    tips_nmm: float
    holds_nmm: float
    steps: tuple[Step, ...]

    @property
    def times(self) -> float:
        """How many times over it is held."""
        return self.holds_nmm / self.tips_nmm


def tipping(load_n: float, past_mm: float, weights: Sequence[tuple[float, float]]) -> Tipping:
    """A load `past_mm` past the edge against weights (mass in kg, mm inside of the edge).

    A weight that itself stands past the edge has a negative arm. Source: `LEVER`.
    """
    tips = load_n * past_mm
    holds = sum(mass * _GRAVITY * arm for mass, arm in weights)
    mass = sum(one for one, _ in weights)
    middle = holds / (mass * _GRAVITY) if mass else 0.0
    steps = (
        Step("load tips with", "load × how far past the edge",
             f"{load_n:.3g} N × {past_mm:.3g} mm = {tips:.3g} N·mm", LEVER),
        Step("weight holds with", "mass × g × its middle inside of the edge",
             f"{mass:.3g} kg × {_GRAVITY:.4g} m/s² × {middle:.3g} mm = {holds:.3g} N·mm", LEVER),
    )  # fmt: skip
    return Tipping(tips, holds, steps)
