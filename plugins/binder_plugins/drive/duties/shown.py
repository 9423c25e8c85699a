"""Figures as the drive prints them: lengths in the units of the model, and no powers of ten."""

from __future__ import annotations

from math import floor, log10

from binder.api import Design

INCH = 25.4
_SAME = 1e-9


def is_inch(design: Design) -> bool:
    """Whether the model is drawn in inches."""
    return str(design.units).startswith("in")


def size(mm: float, design: Design) -> str:
    """`12.3 mm` or `0.484 in`."""
    return f"{mm / INCH:.4g} in" if is_inch(design) else f"{mm:.4g} mm"


def figure(value: float) -> str:
    """Three figures, or all before the point, and never as a power of ten."""
    return f"{value:.3g}" if 0.001 <= value < 1000 else f"{value:.0f}" if value else "0"


def at_most(value: float) -> str:
    """What may not be gone over, in two figures and rounded down."""
    step = 10 ** (floor(log10(value)) - 1)
    return f"{floor(value / step + _SAME) * step:.0f}"


def two_figures(value: float) -> str:
    """A limit that is known no better, and never as a power of ten."""
    return f"{float(f'{value:.2g}'):.0f}"
