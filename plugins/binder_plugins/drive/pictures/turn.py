"""Heights over one turn to a diagram: degrees along, millimetres up."""

from __future__ import annotations

from collections.abc import Sequence

from binder.api import Anchor, Drawing, DrawnLabel, Line, Polyline, Stroke

_WIDE, _HIGH = 130.0, 34.0
_LEFT, _TOP = 24.0, 6.0
_QUARTERS = (0, 90, 180, 270, 360)


def turn_of(name: str, heights: Sequence[float]) -> Drawing:
    """The curve with its ends marked in degrees and in mm."""
    low, high = min(heights), max(heights)
    scale = _HIGH / (high - low) if high > low else 1.0
    floor = _TOP + _HIGH
    shapes: list[Line | Polyline | DrawnLabel] = [
        Line(_LEFT, floor, _LEFT + _WIDE, floor, Stroke.THIN),
        Line(_LEFT, _TOP, _LEFT, floor, Stroke.THIN),
        Line(_LEFT, _TOP, _LEFT + _WIDE, _TOP, Stroke.CENTRE),
        DrawnLabel(_LEFT - 2, _TOP + 1.2, f"{high - low:.3g} mm", 3.0, Anchor.END),
        DrawnLabel(_LEFT - 2, floor + 1.2, "0", 3.0, Anchor.END),
    ]
    for angle in _QUARTERS:
        x = _LEFT + _WIDE * angle / 360
        shapes.append(Line(x, floor, x, floor + 1.5, Stroke.THIN))
        shapes.append(DrawnLabel(x, floor + 6, f"{angle}°", 3.0, Anchor.MIDDLE))
    count = len(heights) - 1
    points = tuple(
        (_LEFT + _WIDE * number / count, floor - (height - low) * scale)
        for number, height in enumerate(heights)
    )
    shapes.append(Polyline(points))
    return Drawing(_LEFT + _WIDE + 10, floor + 9, tuple(shapes))
