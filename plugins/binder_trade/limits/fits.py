"""A hole and a shaft of one nominal size to the clearance between them."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from binder_trade.limits.class_limits import Limits, limits
from binder_trade.limits.reading import read_fit

Kind = Literal["clearance", "transition", "interference"]


@dataclass(frozen=True, slots=True)
class Fit:
    """A hole, a shaft and the clearance between them in µm; below zero is interference."""

    hole: Limits
    shaft: Limits
    clearance_max_um: float
    clearance_min_um: float
    kind: Kind

    @property
    def designation(self) -> str:
        """The fit as the drawing has it, as H7/g6."""
        return f"{self.hole.cls}/{self.shaft.cls}"


def fit(nominal_mm: float, hole: str, shaft: str) -> Fit:
    """The fit of a hole's class and a shaft's class at a size in mm.

    It is a clearance fit if there is never interference, an interference fit if there is never
    clearance, else a transition fit.

    Raises:
        NotDefined: the classes are not a hole and a shaft, or are not defined at that size.

    Source: ISO 286-1:2010, clause 3.3 (clearance is hole less shaft).
    """
    hole_cls, shaft_cls = read_fit(f"{hole}/{shaft}")
    bore, pin = limits(nominal_mm, hole_cls), limits(nominal_mm, shaft_cls)
    largest = bore.upper_um - pin.lower_um
    smallest = bore.lower_um - pin.upper_um
    return Fit(bore, pin, largest, smallest, kind_of(largest, smallest))


def kind_of(clearance_max_um: float, clearance_min_um: float) -> Kind:
    """The kind of fit that the greatest and the least clearance in µm make."""
    if clearance_min_um >= 0:
        return "clearance"
    return "interference" if clearance_max_um <= 0 else "transition"
