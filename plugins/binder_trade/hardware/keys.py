"""Turns the diameter of a shaft into its parallel key, and a fit into limits of the keyway."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from types import MappingProxyType

from binder_trade.hardware.bands import key_over_to, upper_band
from binder_trade.hardware.listing import Listed, NotListed, listing, table
from binder_trade.hardware.steps_sold import steps_within

# ISO/R 773: the class of the keyway's width by the fit; close is the same in shaft and hub.
WIDTH_FITS: Mapping[str, str] = MappingProxyType(
    {
        "close": "P9",
        "normal shaft": "N9",
        "normal hub": "JS9",
        "free shaft": "H9",
        "free hub": "D10",
    }
)


@dataclass(frozen=True, slots=True, kw_only=True)
class ParallelKey(Listed):
    """A parallel key, mm, for shafts over one diameter up to another; keyways' depths.

    Both depths have a tolerance upwards, `depth_plus_mm`.
    """

    b_mm: float
    h_mm: float
    shaft_depth_mm: float
    hub_depth_mm: float
    depth_plus_mm: float
    over_mm: float
    to_mm: float
    lengths_mm: tuple[float, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class KeywayWidth(Listed):
    """The limits of a keyway's width, micrometres from its nominal width in mm."""

    b_mm: float
    fit: str
    tolerance: str
    upper_um: float
    lower_um: float


def parallel_key(shaft_mm: float) -> ParallelKey:
    """The parallel key for a shaft, mm; a shaft at a boundary takes the smaller key.

    Raises NotListed. Source: ISO/R 773 (BS 4235-1, DIN 6885-1), table 1.
    """
    of = table("keys.yaml", "parallel")
    key = key_over_to(of, shaft_mm, "a shaft of", to="to_shaft")
    row = of.rows[key]
    return ParallelKey(
        b_mm=row["b"],
        h_mm=row["h"],
        shaft_depth_mm=row["t1"],
        hub_depth_mm=row["t2"],
        depth_plus_mm=row["plus"],
        over_mm=row["over"],
        to_mm=row["to_shaft"],
        lengths_mm=steps_within(of.words["list"], row),
        standard=of.standard,
        status=of.status_of(key),
    )


def keyway_width(b_mm: float, fit: str) -> KeywayWidth:
    """The limits of a keyway's width for a fit (WIDTH_FITS), micrometres; raises NotListed.

    Source: ISO/R 773, with the limits of ISO 286-2.
    """
    if fit not in WIDTH_FITS:
        raise NotListed(f"{fit[:20]!r} is no fit of a key", f"listed: {listing(WIDTH_FITS)}")
    of = table("keys.yaml", WIDTH_FITS[fit])
    row = upper_band(of, b_mm, "a keyway of")
    return KeywayWidth(
        b_mm=b_mm,
        fit=fit,
        tolerance=of.name,
        upper_um=row["upper_um"],
        lower_um=row["lower_um"],
        standard="ISO/R 773",
        status=of.status,
    )
