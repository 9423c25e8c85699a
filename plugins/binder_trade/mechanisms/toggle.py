"""Two links whose knee is pushed straight, to their force and their reach."""

from __future__ import annotations

import math
from typing import Final

from binder_trade.explained import Step, amount, positive, within
from binder_trade.fits.printed import figures

TOGGLE: Final = "balance of forces at the knee, F / (2 tan angle)"


def toggle_force(push_n: float, angle_deg: float) -> tuple[float, Step]:
    """The force in N of two equal links whose knee is pushed, each `angle_deg` from straight.

    Raises NotDefined at nothing: it grows without end there. Source: `TOGGLE`.
    """
    angle = math.radians(within(angle_deg, 0.05, 89, "the angle of the links", "°"))
    force = amount(push_n, "the push in N") / (2 * math.tan(angle))
    return force, Step("force of the toggle", "F / (2 tan angle)", figures(force, "N"), TOGGLE)


def toggle_reach(link_mm: float, angle_deg: float) -> float:
    """How far, mm, the ends of two equal links are short of straight: 2 l (1 − cos angle)."""
    angle = math.radians(within(angle_deg, 0, 89, "the angle of the links", "°"))
    return 2 * positive(link_mm, "a link") * (1 - math.cos(angle))
