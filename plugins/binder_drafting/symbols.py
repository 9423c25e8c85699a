"""Signs that are drawn and not written: the method of projection, and a worked surface."""

from __future__ import annotations

from binder.api import DrawnDisc, DrawnShape, Line, Polyline, Stroke
from binder_drafting.plane import Point

_SHORT_LEG = 3.5
_LONG_LEG = 7.5


def projection_symbol(at: Point, tall: float, *, first_angle: bool) -> tuple[DrawnShape, ...]:
    """The cone and its end view, `tall` mm high about a middle left point (ISO 5456-2, 5456-1).

    The small end is at the left. Seen from there it hides nothing, so both circles are outlines;
    first angle puts that view to the right of the cone, third angle to the left.
    """
    x, y = at
    radius = tall / 2
    cone, rings = (x, x + tall * 1.9) if first_angle else (x + tall * 1.4, x + radius)
    sides = (
        (cone, y - radius / 2),
        (cone + tall, y - radius),
        (cone + tall, y + radius),
        (cone, y + radius / 2),
        (cone, y - radius / 2),
    )
    past = 1.0
    return (
        Polyline(sides, Stroke.SYMBOL),
        DrawnDisc(rings, y, radius, stroke=Stroke.SYMBOL),
        DrawnDisc(rings, y, radius / 2, stroke=Stroke.SYMBOL),
        Line(cone - past, y, cone + tall + past, y, Stroke.CENTRE),
        Line(rings - radius - past, y, rings + radius + past, y, Stroke.CENTRE),
        Line(rings, y - radius - past, rings, y + radius + past, Stroke.CENTRE),
    )


def symbol_width(tall: float) -> float:
    """How wide the symbol of projection is."""
    return 2.4 * tall


def surface_symbol(tip: Point, width: float) -> tuple[DrawnShape, ...]:
    """The sign of a surface from which metal is taken, for words of that width (ISO 21920-1).

    Its proportions for letters of 2.5 mm are from memory: legs 3.5 and 7.5 mm high at 60°.
    """
    x, y = tip
    run, long = _SHORT_LEG / 3**0.5, _LONG_LEG / 3**0.5
    return (
        Polyline(((x - run, y - _SHORT_LEG), (x, y), (x + long, y - _LONG_LEG)), Stroke.THIN),
        Line(x - run, y - _SHORT_LEG, x + run, y - _SHORT_LEG, Stroke.THIN),
        Line(x + long, y - _LONG_LEG, x + long + width + 2.0, y - _LONG_LEG, Stroke.THIN),
    )


def surface_words_at(tip: Point) -> Point:
    """Where the words of the sign begin: under its upper line."""
    return (tip[0] + _LONG_LEG / 3**0.5 + 1.0, tip[1] - _LONG_LEG + 3.4)
