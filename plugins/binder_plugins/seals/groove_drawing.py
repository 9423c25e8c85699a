"""Turns an O-ring groove into the drawing of its section."""

from __future__ import annotations

from binder.api import (
    Anchor,
    Drawing,
    DrawnDisc,
    DrawnLabel,
    Line,
    Polyline,
    Stroke,
    exact,
    shown_length,
)
from binder_plugins.seals.facts import RingFact

_WIDTH = 170.0
_GROOVE = 30.0  # the groove as it is drawn, across
_SURFACE = 30.0
_MIDDLE = 85.0


def groove_drawing(fact: RingFact, units: str) -> Drawing:
    """The groove enlarged with the free ring in it, and the surface it presses on above."""
    housing = fact.groove.housing
    scale = _GROOVE / housing.width_mm
    half, deep = _GROOVE / 2, fact.depth_mm * scale
    gap = max(0.0, housing.depth_mm - fact.depth_mm) * scale
    floor = _SURFACE + deep
    left, right = _MIDDLE - 60, _MIDDLE + 60
    radius = fact.groove.ring.cord_mm * scale / 2
    points = (
        (left, _SURFACE),
        (_MIDDLE - half, _SURFACE),
        (_MIDDLE - half, floor),
        (_MIDDLE + half, floor),
        (_MIDDLE + half, _SURFACE),
        (right, _SURFACE),
    )
    mate = _SURFACE - max(gap, 0.8)
    width = shown_length(exact(housing.width_mm), units)
    depth = shown_length(exact(fact.depth_mm), units)
    ring = fact.groove.ring.name
    return Drawing(
        _WIDTH,
        floor + 14,
        (
            DrawnDisc(_MIDDLE, floor - radius, radius, 0.15, Stroke.THIN),
            Polyline(points),
            Line(left, mate, right, mate),
            Line(_MIDDLE, floor + 6, _MIDDLE - half, floor + 6, Stroke.ARROW),
            Line(_MIDDLE, floor + 6, _MIDDLE + half, floor + 6, Stroke.ARROW),
            DrawnLabel(_MIDDLE, floor + 12, width, 3.0, Anchor.MIDDLE),
            Line(_MIDDLE + half + 8, _SURFACE + deep / 2, _MIDDLE + half + 8, floor, Stroke.ARROW),
            Line(_MIDDLE + half + 8, floor - deep / 2, _MIDDLE + half + 8, _SURFACE, Stroke.ARROW),
            Line(_MIDDLE + half, floor, _MIDDLE + half + 11, floor, Stroke.THIN),
            DrawnLabel(_MIDDLE + half + 12, _SURFACE + deep / 2 + 1.2, depth, 3.0),
            DrawnLabel(_MIDDLE - half - 6, floor - 2, f"{ring}, free", 3.0, Anchor.END),
        ),
    )
