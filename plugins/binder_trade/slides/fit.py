"""Turns the width of a slide into the sideways play that a hand feels as sliding freely."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

from binder_trade.explained import Step, mm, positive

_INCH: Final = 25.4
_THOU: Final = 0.0254
SOURCE: Final = "rule of fits of a model engineers' handbook, allowances of slide and close run"


@dataclass(frozen=True, slots=True)
class HandSliding:
    """Least and most sideways play of a slide moved by hand; mm."""

    least_mm: float
    most_mm: float
    steps: tuple[Step, ...]


def hand_sliding(width_mm: float) -> HandSliding:
    """The play of a hand-sliding fit without a gib, from the width across the flats; mm.

    Source: "hole to size, shaft varies", slide −(0.3 + 0.45 D) and close run −(0.6 + 0.8 D)
    thou with D in inches; taken here for flat widths too, as is common practice.
    """
    inches = positive(width_mm, "the width of the slide") / _INCH
    least, most = (0.3 + 0.45 * inches) * _THOU, (0.6 + 0.8 * inches) * _THOU
    return HandSliding(
        least,
        most,
        (
            Step("least play", "(0.3 + 0.45 D) thou, D in inches", mm(least), SOURCE),
            Step("most play", "(0.6 + 0.8 D) thou, D in inches", mm(most), SOURCE),
        ),
    )
