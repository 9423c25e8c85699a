"""The steps of a sum, as the bench wants them explained."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

COMMON_PRACTICE: Final = "common practice, no source"


@dataclass(frozen=True, slots=True)
class Step:
    """One line of a sum: what it is, how it is worked out, what it gives and on whose word."""

    name: str
    formula: str
    value: str
    source: str = COMMON_PRACTICE


def mm(value: float) -> str:
    """A length in print: `12.5 mm`, to a hundredth at most."""
    text = f"{value:.2f}".rstrip("0").rstrip(".")
    return f"{'0' if text in {'-0', ''} else text} mm"
