"""The steps of a sum, as the bench wants them explained."""

from __future__ import annotations

from typing import Final

from binder_trade.explained import Step

COMMON_PRACTICE: Final = "common practice, no source"


def step(name: str, formula: str, value: str, source: str = COMMON_PRACTICE) -> Step:
    """One line of a sum; what has no other source is common practice."""
    return Step(name, formula, value, source)


def mm(value: float) -> str:
    """A length in print: `12.5 mm`, to a hundredth at most."""
    text = f"{value:.2f}".rstrip("0").rstrip(".")
    return f"{'0' if text in {'-0', ''} else text} mm"
