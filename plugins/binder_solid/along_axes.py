"""Forms to how far they reach along the axes of their part, without the kernel."""

from __future__ import annotations

from itertools import product

from .forms import Box, Cone, Cylinder, Form, Raised
from .lines import corners
from .space import placed

Span = tuple[float, float]
Spans = tuple[Span, Span, Span]


def spans_of(form: Form) -> Spans | None:
    """From where to where in mm on x, y and z; None for what is no box, outline or round bar.

    What is round is told by the square about it.
    """
    match form:
        case Raised(outline, height):
            flat, high = corners(outline), height
        case Box(length, width, height):
            flat, high = _corners((0.0, length), (0.0, width)), height
        case Cylinder(radius, height):
            flat, high = _corners((-radius, radius), (-radius, radius)), height
        case Cone(radius, end, height):
            wide = max(radius, end)
            flat, high = _corners((-wide, wide), (-wide, wide)), height
        case _:
            return None
    spots = [placed((x, y, z), form.frame) for x, y in flat for z in (0.0, high)]
    x, y, z = ((min(found), max(found)) for found in zip(*spots, strict=True))
    return x, y, z


def _corners(along: Span, across: Span) -> tuple[tuple[float, float], ...]:
    return tuple(product(along, across))
