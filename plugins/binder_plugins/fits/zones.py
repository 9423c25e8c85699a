"""The limits of a hole and its shaft to a drawing: both zones to scale over the zero line."""

from __future__ import annotations

from binder.api import Anchor, Drawing, DrawnBox, DrawnLabel, Line, Stroke, text_width
from binder_plugins.fits.facts import Half, MadeFit
from binder_plugins.fits.figures import size

_TALL = 26.0
_LETTER = 2.5
_TOP = 4.0
_ZONE, _BETWEEN = 13.0, 5.0
_EDGE, _GAP, _ASIDE = 0.5, 1.0, 1.5
_LEAST_UM = 5.0
_THIN = 0.4
# How far a figure stays clear of the zero line, the overshoot of a round digit included.
_CLEAR = 0.8
_APART = 0.5


def zones(fit: MadeFit, units: str) -> Drawing:
    """The zones of both halves against the nominal size, one scale for both."""
    marks = [0.0, fit.hole.upper_um, fit.hole.lower_um, fit.shaft.upper_um, fit.shaft.lower_um]
    high, low = max(marks), min(marks)
    scale = _TALL / max(high - low, _LEAST_UM)
    zero = _TOP + high * scale
    nominal = size(fit.mm, units)
    start = _EDGE + text_width(nominal, _LETTER) + _GAP
    hole_x = start + _GAP + _figures(fit.hole, units) + _ASIDE
    shaft_x = hole_x + _ZONE + _BETWEEN
    width = shaft_x + _ZONE + _ASIDE + _figures(fit.shaft, units) + _EDGE
    shapes = (
        Line(start, zero, width, zero, Stroke.CENTRE),
        DrawnLabel(start - _GAP, zero + _LETTER / 2, nominal, _LETTER, Anchor.END),
        *_zone(fit.hole, hole_x, "hole", 0.1, zero, scale, units),
        *_zone(fit.shaft, shaft_x, "shaft", 0.35, zero, scale, units),
    )
    return Drawing(width, _TOP + _TALL + 9.0, shapes)


def _figures(half: Half, units: str) -> float:
    """How wide the wider of a half's two deviations is written."""
    return max(text_width(_dev(um, units), _LETTER) for um in (half.upper_um, half.lower_um))


def _zone(
    half: Half, x: float, name: str, tint: float, zero: float, scale: float, units: str
) -> tuple[DrawnBox | DrawnLabel, ...]:
    top = zero - half.upper_um * scale
    tall = max((half.upper_um - half.lower_um) * scale, _THIN)
    side, anchor = (
        (x - _ASIDE, Anchor.END) if name == "hole" else (x + _ZONE + _ASIDE, Anchor.START)
    )
    word = f"{name} {half.cls}".strip()
    high = top + 1.0
    low = max(top + tall, high + _APART) + _LETTER
    over, under = _off_line(high, zero), _off_line(low, zero, below=True)
    upper = DrawnLabel(side, over, _dev(half.upper_um, units), _LETTER, anchor)
    lower = DrawnLabel(side, under, _dev(half.lower_um, units), _LETTER, anchor)
    label = DrawnLabel(x + _ZONE / 2, _TOP + _TALL + 7.5, word, _LETTER, Anchor.MIDDLE)
    return (DrawnBox(x, top, _ZONE, tall, tint), upper, lower, label)


def _off_line(baseline: float, zero: float, *, below: bool = False) -> float:
    """The baseline of a figure, moved so far that the zero line does not run through it."""
    is_clear = baseline + _CLEAR <= zero or baseline - _LETTER >= zero + _CLEAR
    if is_clear:
        return baseline
    return zero + _CLEAR + _LETTER if below else zero - _CLEAR


def _dev(um: float, units: str) -> str:
    sign = "+" if um > 0 else "−" if um < 0 else ""
    return f"{sign}{size(abs(um) / 1000, units)}" if um else "0"
