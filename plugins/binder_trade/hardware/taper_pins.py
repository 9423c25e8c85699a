"""Turns the size of a taper pin into its ends: metric by the small end, inch by its number."""

from __future__ import annotations

from dataclasses import dataclass
from math import isfinite

from binder_trade.hardware.listing import Listed, NotListed, plain, table
from binder_trade.hardware.steps_sold import steps_within

METRIC_TAPER = 50.0
INCH_TAPER = 48.0
_SHARE = 0.25


@dataclass(frozen=True, slots=True, kw_only=True)
class TaperPin(Listed):
    """A metric taper pin, mm: `d_mm` is its small end, the taper 1 in `taper` on diameter."""

    d_mm: float
    taper: float
    dome_mm: float
    lengths_mm: tuple[float, ...]

    def large_end_mm(self, length_mm: float) -> float:
        """Diameter of the large end of a pin of a length, mm; raises NotListed."""
        return self.d_mm + _length(length_mm) / self.taper


@dataclass(frozen=True, slots=True, kw_only=True)
class InchTaperPin(Listed):
    """An inch taper pin by number: its large end in mm, the taper 1 in `taper` on diameter."""

    number: str
    large_end_mm: float
    taper: float
    lengths_mm: tuple[float, ...]

    def small_end_mm(self, length_mm: float) -> float:
        """Diameter of the small end of a pin of a length, mm; raises NotListed."""
        return self.large_end_mm - _length(length_mm) / self.taper


def taper_pin(d_mm: float) -> TaperPin:
    """A taper pin of 1:50 by its small end, mm (ISO 2339); raises NotListed."""
    of = table("pins.yaml", "taper")
    key = of.at(d_mm, "a taper pin of")
    return TaperPin(
        d_mm=d_mm,
        taper=METRIC_TAPER,
        dome_mm=of.rows[key]["dome"],
        lengths_mm=steps_within(of.words["list"], of.rows[key]),
        standard=of.standard,
        status=of.status_of(key),
    )


def taper_pin_for(shaft_mm: float) -> TaperPin:
    """The thickest taper pin of no more than a quarter of its shaft, mm; raises NotListed.

    Source: common practice (a quarter of the shaft; a third is the most).
    """
    of = table("pins.yaml", "taper")
    able = [key for key in of.rows if float(key) <= shaft_mm * _SHARE]
    if not able:
        reason = f"{of.standard} lists no taper pin thin enough for a shaft of {plain(shaft_mm)} mm"
        raise NotListed(reason, f"the thinnest is {min(of.rows, key=float)} mm")
    return taper_pin(max(float(key) for key in able))


def inch_taper_pin(number: str) -> InchTaperPin:
    """A taper pin of 1:48 by its number, such as 0 or 2/0 (ASME B18.8.2); raises NotListed."""
    of = table("pins.yaml", "inch taper")
    row = of.row(number, f"taper pin no. {number[:20]}")
    return InchTaperPin(
        number=number,
        large_end_mm=row["large"],
        taper=INCH_TAPER,
        lengths_mm=steps_within(of.words["list"], row),
        standard=of.standard,
        status=of.status_of(number),
    )


def _length(length_mm: float) -> float:
    if not (isfinite(length_mm) and length_mm > 0):
        raise NotListed("a pin's length is a size above nothing", "give it in mm")
    return length_mm
