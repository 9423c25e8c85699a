"""A drill by its name and diameter, and what is raised where no drill serves."""

from __future__ import annotations

import math
from dataclasses import dataclass

from binder_trade.explained import NotDefined

SMALLEST_MM = 0.05
LARGEST_MM = 200.0


@dataclass(frozen=True, slots=True)
class Drill:
    """A drill by the name on its shank or box.

    That is `3.3 mm`, `no. 34 drill`, `letter F drill` or `7/64 in`. `mm` is its diameter;
    `system` is metric, metric as sold, number, letter, fraction or owned.
    """

    name: str
    mm: float
    system: str


class NoDrill(NotDefined):
    """No drill of that name or for that hole: `reason` says why, `way_out` what would serve."""


def hole_size(mm: float, what: str = "the hole") -> float:
    """The diameter in mm, refused with `NoDrill` where no twist drill could make it."""
    if math.isfinite(mm) and SMALLEST_MM <= mm <= LARGEST_MM:
        return mm
    reason = f"{what} of {mm:g} mm is nothing that a twist drill makes"
    raise NoDrill(reason, f"give a diameter from {SMALLEST_MM:g} to {LARGEST_MM:g} mm")
