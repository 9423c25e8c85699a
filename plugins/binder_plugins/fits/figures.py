"""Sizes and deviations of a fit to the text that stands on the page."""

from __future__ import annotations

from fractions import Fraction

from binder.api import shown_length
from binder_plugins.fits.facts import Half, MadeFit

_MM_PER_INCH = 25.4


def size(mm: float, units: str) -> str:
    """A size as a micrometer of that system reads: `5.990` or `0.2358`."""
    value, places = (mm / _MM_PER_INCH, 4) if units == "inch" else (mm, 3)
    return f"{round(value, places) + 0.0:.{places}f}"  # no zero with a minus before it


def with_unit(mm: float, units: str) -> str:
    """A size with its unit: `5.990 mm`."""
    return f"{size(mm, units)} {'in' if units == 'inch' else 'mm'}"


def signed(mm: float, units: str) -> str:
    """A difference with its sign: `− 0.016`."""
    return f"{'−' if size(mm, units).startswith('-') else '+'} {size(abs(mm), units)}"


def range_of(low_um: float, high_um: float, units: str) -> str:
    """Two clearances: `0.010 to 0.034 mm clear`, `0.007 to 0.027 mm nip`."""
    unit = "in" if units == "inch" else "mm"
    if low_um >= 0:
        return f"{size(low_um / 1000, units)} to {size(high_um / 1000, units)} {unit} clear"
    if high_um <= 0:
        return f"{size(-high_um / 1000, units)} to {size(-low_um / 1000, units)} {unit} nip"
    nip, clear = size(-low_um / 1000, units), size(high_um / 1000, units)
    return f"{nip} nip to {clear} {unit} clear"


def limits_of(fit: MadeFit, half: Half) -> tuple[float, float]:
    """The least and the greatest size of a half, in mm; of a rod that is eased, as it comes."""
    return fit.mm + half.lower_um / 1000, fit.mm + half.upper_um / 1000


def added_mm(fit: MadeFit, half: Half) -> tuple[float, float] | None:
    """The least and most that a half made to its mate differs from it, in mm; else None."""
    if half is not (fit.shaft if fit.suit == "shaft" else fit.hole if fit.suit else None):
        return None
    low, high = fit.least_um / 1000, fit.most_um / 1000
    return (-high, -low) if half is fit.shaft else (low, high)


def nominal(mm: Fraction, units: str) -> str:
    """`⌀6 mm`."""
    return f"⌀{shown_length(mm, units)}"


_VERBS = {
    "reamed": "ream",
    "drilled": "drill",
    "bored": "bore",
    "lapped": "lap",
    "turned": "turn",
    "shaft lapped": "finish",
}


def to_size(fit: MadeFit, half: Half, units: str) -> str:
    """What a half is made to: `ream ⌀6 mm H7, 6.000 to 6.012`."""
    if not half.has_limits or half.is_ruled:
        return _target(fit, half, units)
    low, high = limits_of(fit, half)
    cls = f" {half.cls}" if half.cls else ""
    what = nominal(_own_size(fit, half), units)
    verb = _VERBS.get(half.way)
    if verb is None and low == high:
        return f"{what}, {half.way}: measure it"
    text = f"{what}{cls}, {size(low, units)} to {size(high, units)}"
    return f"{verb} {text}" if verb else f"{text}, as bought"


def _target(fit: MadeFit, half: Half, units: str) -> str:
    """What is made to the measured other half, where limits would promise too much."""
    verb = "bore" if half is fit.hole else "ease" if half.is_fixed else "turn"
    other = "shaft" if half is fit.hole else "bore"
    low, high = fit.least_um / 1000, fit.most_um / 1000
    if half is fit.shaft:
        low, high = -low, -high
    off = span(low, high, units)
    return f"{verb} {nominal(fit.nominal, units)} to suit: {off} the measured {other}"


def span(near: float, far: float, units: str) -> str:
    """`0.010 to 0.034 mm under`, the less first: a sign before a range reads as a limit's sign."""
    near, far = sorted((near, far), key=abs)
    first, last = signed(near, units), signed(far, units)
    here, there = ("over" if one[0] == "+" else "under" for one in (first, last))
    unit = "in" if units == "inch" else "mm"
    if here == there or not float(first[2:]):
        return f"{first[2:]} to {last[2:]} {unit} {there}"
    return f"{first[2:]} {unit} {here} to {last[2:]} {unit} {there}"


def _own_size(fit: MadeFit, half: Half) -> Fraction:
    """A half's own size where the two were written apart."""
    own = half.place.diameter
    return own if fit.written_um is not None and own is not None else fit.nominal


def how(fit: MadeFit, which: str, units: str) -> str:
    """How a half is made: to its limits, to the other, or as it comes."""
    half = fit.hole if which == "hole" else fit.shaft
    if fit.suit == which:
        other = "bore" if which == "shaft" else "shaft"
        if half.is_fixed and fit.wanted_um > 0:
            least = size(fit.wanted_um / 1000, units)
            under = span(-fit.least_um / 1000, -fit.most_um / 1000, units)
            tight = f"eased if it is less than {least} under the measured {other}"
            return f"{tight}, until it is {under}"
        if half.is_fixed:
            return f"eased only if it is tight in the measured {other}"
        return f"to suit the measured {other}"
    if half.way == "bought" or half.way not in _VERBS:
        return "as it comes: measure it"
    # Measured is what the other half is made to; two of their own sizes go by their limits.
    return f"{half.way}, measure it" if half.is_fixed and fit.suit else f"{half.way} to size"
