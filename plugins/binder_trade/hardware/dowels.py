"""Turns the diameter of a parallel pin into its limits, chamfer and lengths."""

from __future__ import annotations

from dataclasses import dataclass

from binder_trade.hardware.bands import upper_band
from binder_trade.hardware.listing import Listed, NotListed, table
from binder_trade.hardware.steps_sold import steps_within

PIN_TOLERANCES = ("m6", "h8")


@dataclass(frozen=True, slots=True, kw_only=True)
class Dowel(Listed):
    """A parallel pin, mm; its limits in micrometres from the nominal diameter."""

    d_mm: float
    chamfer_mm: float
    tolerance: str
    upper_um: float
    lower_um: float
    lengths_mm: tuple[float, ...]


def dowel(d_mm: float, *, hardened: bool = False, tolerance: str = "m6") -> Dowel:
    """A parallel pin: soft (ISO 2338, m6 or h8) or hardened (ISO 8734, m6), mm.

    Raises NotListed.
    """
    of = table("dowels.yaml", "hardened" if hardened else "soft")
    if hardened and tolerance != "m6":
        raise NotListed(
            f"ISO 8734 lists no pin to {tolerance[:10]}", "take m6, or a soft pin to h8"
        )
    key = of.at(d_mm, "a pin of")
    upper, lower = dowel_limits_um(d_mm, tolerance)
    return Dowel(
        d_mm=d_mm,
        chamfer_mm=of.rows[key]["c"],
        tolerance=tolerance,
        upper_um=upper,
        lower_um=lower,
        lengths_mm=steps_within(of.words["list"], of.rows[key]),
        standard=of.standard,
        status=of.status_of(key),
    )


def dowel_limits_um(d_mm: float, tolerance: str) -> tuple[float, float]:
    """Upper and lower limit of a pin, micrometres, to m6 or h8 (ISO 286-2); raises NotListed."""
    if tolerance not in PIN_TOLERANCES:
        raise NotListed(f"pins are not made to {tolerance[:10]}", "listed: m6, h8")
    row = upper_band(table("dowels.yaml", tolerance), d_mm, "a pin of")
    return row["upper_um"], row["lower_um"]
