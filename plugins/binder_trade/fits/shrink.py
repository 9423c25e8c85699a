"""An interference to the heat, or the cold, that lets a ring drop on its shaft."""

from __future__ import annotations

from dataclasses import dataclass

from binder_trade.explained import NotDefined, Step, not_negative, positive, within
from binder_trade.fits.metals import Metal
from binder_trade.fits.printed import SUM, figures, micrometres

# Clearance to drop a hot ring on: a thousandth of the diameter, DIN 7190-1 (from memory).
_CLEARANCE_PART = 0.001
_COLDEST_DEG = -273.15
_TEMPER = ((-78.0, "dry ice"), (-196.0, "liquid nitrogen"))
SOURCE = "free expansion"


@dataclass(frozen=True, slots=True)
class Heat:
    """How hot, or how cold, one half must be: °C, and the change from the shop's temperature."""

    temperature_deg: float
    change_k: float
    gap_mm: float
    says: str
    steps: tuple[Step, ...]


def heat_ring(
    diameter_mm: float,
    interference_mm: float,
    ring: Metal,
    clearance_mm: float | None = None,
    room_deg: float = 20.0,
) -> Heat:
    """How hot a ring must be in °C to drop over its shaft with a clearance in mm.

    Without a clearance given it is a thousandth of the diameter. Raises NotDefined. The diameter
    is that of the joint: a book's example that divides by the outside comes out too cool.
    Source: free expansion; clearance DIN 7190-1 clause 8.2 (from memory).
    """
    diameter, gap = _gap(diameter_mm, interference_mm, clearance_mm)
    rise = gap / (ring.expansion_per_k * diameter)
    hot = within(room_deg, -273.15, 100.0, "the shop's temperature") + rise
    if hot > 1000:
        raise NotDefined(
            f"{ring.name} would have to be {hot:.0f} °C hot",
            "less interference, or cool the shaft as well",
        )
    return Heat(hot, rise, gap, _hot_says(hot), _steps(gap, rise, hot, ring))


def cool_shaft(
    diameter_mm: float,
    interference_mm: float,
    shaft: Metal,
    clearance_mm: float | None = None,
    room_deg: float = 20.0,
) -> Heat:
    """How cold a shaft must be in °C to drop into its ring with a clearance in mm.

    Raises NotDefined below absolute zero. Source: free contraction with the expansion near room
    temperature; metals contract less when very cold (steel to −196 °C by about a quarter less,
    from memory), so try it with a gauge first.
    """
    diameter, gap = _gap(diameter_mm, interference_mm, clearance_mm)
    fall = gap / (shaft.expansion_per_k * diameter)
    cold = within(room_deg, -273.15, 100.0, "the shop's temperature") - fall
    if cold < _COLDEST_DEG:
        raise NotDefined("no cold is cold enough for that", "less interference, or heat the ring")
    return Heat(cold, -fall, gap, _cold_says(cold), _steps(gap, -fall, cold, shaft))


def _gap(
    diameter_mm: float, interference_mm: float, clearance_mm: float | None
) -> tuple[float, float]:
    diameter = positive(diameter_mm, "the joint diameter")
    interference = positive(interference_mm, "the interference")
    room = diameter * _CLEARANCE_PART if clearance_mm is None else clearance_mm
    return diameter, interference + not_negative(room, "the clearance to drop it on")


def _hot_says(hot: float) -> str:
    if hot <= 100:
        return "boiling water will do"
    if hot <= 250:
        return "a kitchen oven or hot oil will do"
    if hot <= 300:
        return "a torch, evenly; steel turns blue"
    return "a torch; hardened and tempered steel loses its temper"


def _cold_says(cold: float) -> str:
    if cold >= -18:
        return "the freezer will do"
    for least, means in _TEMPER:
        if cold >= least:
            return f"{means} is needed"
    return "colder than liquid nitrogen: heat the ring as well"


def _steps(gap: float, change: float, result: float, metal: Metal) -> tuple[Step, ...]:
    return (
        Step("gap to make", "interference + clearance", micrometres(gap * 1000), SUM),
        Step("change", "gap ÷ (expansion × d)", figures(change, "K"), SOURCE),
        Step("temperature", "shop + change", f"{result:.0f} °C", metal.source),
    )
