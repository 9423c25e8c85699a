"""Lengths as a duty prints them: four figures, in the units of the model."""

from __future__ import annotations

from binder.api import Design

INCH = 25.4


def is_inch(design: Design) -> bool:
    """Whether the model is drawn in inches."""
    return str(design.units).startswith("in")


def size(mm: float, design: Design) -> str:
    """`12.3 mm` or `0.484 in`."""
    return f"{mm / INCH:.4g} in" if is_inch(design) else f"{mm:.4g} mm"
