"""Turns a size, shaft or number into a Woodruff key and the cutter that it wants."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from binder_trade.hardware.bands import key_over_to
from binder_trade.hardware.listing import MM_PER_INCH, Listed, Table, plain, table

_STANDS_OUT_IN = 0.005
_HUB_CLEARS_IN = 0.006


@dataclass(frozen=True, slots=True, kw_only=True)
class Woodruff(Listed):
    """A metric Woodruff key, mm: width, height, diameter (of the cutter too), keyways' depths."""

    b_mm: float
    h_mm: float
    cutter_mm: float
    shaft_depth_mm: float
    hub_depth_mm: float
    over_mm: float
    to_mm: float


@dataclass(frozen=True, slots=True, kw_only=True)
class InchWoodruff(Listed):
    """An inch Woodruff key by number, mm: width, diameter (of the cutter too), greatest height.

    The seat leaves half the width and 0.005 in of the key above the shaft; the keyway of the
    hub is half the width and 0.006 in deep; both may be 0.005 in deeper (ANSI B17.2, from
    memory; these rules give its printed depths).
    """

    number: str
    width_mm: float
    diameter_mm: float
    height_mm: float

    @property
    def b_mm(self) -> float:
        """The width, as of a metric key."""
        return self.width_mm

    @property
    def cutter_mm(self) -> float:
        """The diameter of the cutter."""
        return self.diameter_mm

    @property
    def shaft_depth_mm(self) -> float:
        """How deep the seat is in the shaft."""
        return self.height_mm - self.width_mm / 2 - _STANDS_OUT_IN * MM_PER_INCH

    @property
    def hub_depth_mm(self) -> float:
        """How deep the keyway is in the hub."""
        return self.width_mm / 2 + _HUB_CLEARS_IN * MM_PER_INCH


def woodruff(b_mm: float, h_mm: float) -> Woodruff:
    """A Woodruff key by width and height, mm (ISO 3912, DIN 6888); raises NotListed."""
    of = table("keys.yaml", "woodruff")
    size = f"{plain(b_mm)} × {plain(h_mm)}"
    of.row(size, f"a Woodruff key {size}")
    return _key(of, size)


def woodruff_for(shaft_mm: float) -> Woodruff:
    """The Woodruff key for a shaft that carries torque, mm (ISO 3912, series 1).

    Raises NotListed.
    """
    of = table("keys.yaml", "woodruff")
    return _key(of, key_over_to(of, shaft_mm, "a Woodruff key for a shaft of", to="to_shaft"))


def woodruff_number(number: str) -> InchWoodruff:
    """A Woodruff key by its American number, such as 404 or 202.5, mm; raises NotListed.

    The last two whole digits are eighths of an inch of diameter, those before them thirty-seconds
    of width; the height is read in the table. Source: ANSI B17.2.
    """
    of = table("keys.yaml", "inch woodruff")
    row = of.row(number, f"Woodruff key no. {number[:20]}")
    whole, _, half = number.partition(".")
    eighths = Fraction(f"{whole[-2:]}.{half or 0}")
    return InchWoodruff(
        number=number,
        width_mm=float(Fraction(int(whole[:-2]), 32)) * MM_PER_INCH,
        diameter_mm=float(eighths / 8) * MM_PER_INCH,
        height_mm=row["height"],
        standard=of.standard,
        status=of.status_of(number),
    )


def _key(of: Table, size: str) -> Woodruff:
    row = of.rows[size]
    return Woodruff(
        b_mm=row["b"],
        h_mm=row["h"],
        cutter_mm=row["cutter"],
        shaft_depth_mm=row["t1"],
        hub_depth_mm=row["t2"],
        over_mm=row["over"],
        to_mm=row["to_shaft"],
        standard=of.standard,
        status=of.status_of(size),
    )
