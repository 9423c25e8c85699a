"""A curve over one turn to a diagram: degrees along, its own unit up."""

from __future__ import annotations

from binder.api import Anchor, Drawing, DrawnLabel, Line, Polyline, Stroke
from binder_plugins.drive.duties.duty import Curve

_WIDE, _HIGH = 130.0, 34.0
_LEFT, _TOP = 30.0, 6.0
_QUARTERS = (0, 90, 180, 270, 360)
_LABEL_MM = 4.0


def turn_of(curve: Curve) -> Drawing:
    """The curve with its ends marked, and the line of nothing where it goes below it."""
    low, high = min(curve.heights), max(curve.heights)
    is_signed = low < 0 < high
    base = low if is_signed else 0.0
    # What only goes to and fro is counted from its own end; speeds have a nothing of their own.
    span = high - low
    scale = _HIGH / span if span > 0 else 1.0
    floor = _TOP + _HIGH
    shapes: list[Line | Polyline | DrawnLabel] = [
        Line(_LEFT, floor, _LEFT + _WIDE, floor, Stroke.THIN),
        Line(_LEFT, _TOP, _LEFT, floor, Stroke.THIN),
        Line(_LEFT, _TOP, _LEFT + _WIDE, _TOP, Stroke.CENTRE),
        _level(_TOP, f"{high if is_signed else span:.3g} {curve.unit}"),
        _level(floor, f"{base:.3g}"),
    ]
    if is_signed:
        zero = floor + low * scale
        shapes.append(Line(_LEFT, zero, _LEFT + _WIDE, zero, Stroke.THIN))
        if min(zero - _TOP, floor - zero) > _LABEL_MM:
            shapes.append(_level(zero, "0"))
    for angle in _QUARTERS:
        x = _LEFT + _WIDE * angle / 360
        shapes.append(Line(x, floor, x, floor + 1.5, Stroke.THIN))
        shapes.append(DrawnLabel(x, floor + 6, f"{angle}°", 3.0, Anchor.MIDDLE))
    count = len(curve.heights) - 1
    points = tuple(
        (_LEFT + _WIDE * number / count, floor - (height - low) * scale)
        for number, height in enumerate(curve.heights)
    )
    shapes.append(Polyline(points))
    return Drawing(_LEFT + _WIDE + 10, floor + 9, tuple(shapes))


def _level(y: float, words: str) -> DrawnLabel:
    return DrawnLabel(_LEFT - 2, y + 1.2, words, 3.0, Anchor.END)
