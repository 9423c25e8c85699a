"""The limits of a hole and its shaft to a drawing: both zones to scale over the zero line."""

from __future__ import annotations

from binder.api import Anchor, Drawing, DrawnBox, DrawnLabel, Line, Stroke
from binder_plugins.fits.facts import Half, MadeFit
from binder_plugins.fits.figures import size

_WIDTH = 72.0
_TALL = 26.0
_LETTER = 2.5
_TOP = 4.0
_HOLE_X, _SHAFT_X, _ZONE = 27.0, 45.0, 13.0
_LEAST_UM = 5.0
_THIN = 0.4
# Digits stand so far over their baseline, as a share of the letter's height; and clear of a line.
_DIGIT = 0.75
_CLEAR = 0.6


def zones(fit: MadeFit, units: str) -> Drawing:
    """The zones of both halves against the nominal size, one scale for both."""
    marks = [0.0, fit.hole.upper_um, fit.hole.lower_um, fit.shaft.upper_um, fit.shaft.lower_um]
    high, low = max(marks), min(marks)
    scale = _TALL / max(high - low, _LEAST_UM)
    zero = _TOP + high * scale
    shapes = (
        Line(12.0, zero, _WIDTH - 2, zero, Stroke.CENTRE),
        DrawnLabel(11.0, zero + _LETTER / 2, size(fit.mm, units), _LETTER, Anchor.END),
        *_zone(fit.hole, _HOLE_X, "hole", 0.1, zero, scale, units),
        *_zone(fit.shaft, _SHAFT_X, "shaft", 0.35, zero, scale, units),
    )
    return Drawing(_WIDTH, _TOP + _TALL + 9.0, shapes)


def _zone(
    half: Half, x: float, name: str, tint: float, zero: float, scale: float, units: str
) -> tuple[DrawnBox | DrawnLabel, ...]:
    top = zero - half.upper_um * scale
    tall = max((half.upper_um - half.lower_um) * scale, _THIN)
    side, anchor = (x - 1.5, Anchor.END) if name == "hole" else (x + _ZONE + 1.5, Anchor.START)
    word = f"{name} {half.cls}".strip()
    over, under = _off_line(top + 1.0, zero), _off_line(top + tall + _LETTER, zero, below=True)
    upper = DrawnLabel(side, over, _dev(half.upper_um, units), _LETTER, anchor)
    lower = DrawnLabel(side, under, _dev(half.lower_um, units), _LETTER, anchor)
    label = DrawnLabel(x + _ZONE / 2, _TOP + _TALL + 7.5, word, _LETTER, Anchor.MIDDLE)
    return (DrawnBox(x, top, _ZONE, tall, tint), upper, lower, label)


def _off_line(baseline: float, zero: float, *, below: bool = False) -> float:
    """The baseline of a figure, moved so far that the zero line does not run through it."""
    is_clear = baseline + _CLEAR <= zero or baseline - _DIGIT * _LETTER >= zero + _CLEAR
    if is_clear:
        return baseline
    return zero + _CLEAR + _DIGIT * _LETTER if below else zero - _CLEAR


def _dev(um: float, units: str) -> str:
    sign = "+" if um > 0 else "−" if um < 0 else ""
    return f"{sign}{size(abs(um) / 1000, units)}" if um else "0"
