"""Turns the size of a spring pin or split pin, which is its hole's, into the pin."""

from __future__ import annotations

from dataclasses import dataclass

from binder_trade.hardware.bands import key_over_to, upper_band
from binder_trade.hardware.listing import Listed, Row, Table, table
from binder_trade.hardware.steps_sold import steps_within


@dataclass(frozen=True, slots=True, kw_only=True)
class SpringPin(Listed):
    """A slotted spring (roll) pin, mm: `d_mm` is the hole; `free_mm` the pin before driving.

    The hole is to `hole_class`, `hole_upper_um` over its size at most; `shear_kn` is the least
    load that shears the pin across two sections.
    """

    d_mm: float
    free_mm: float
    free_least_mm: float
    wall_mm: float
    chamfer_mm: float
    hole_class: str
    hole_upper_um: float
    shear_kn: float
    lengths_mm: tuple[float, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class SplitPin(Listed):
    """A split pin, mm: `d_mm` is the hole, `wire_mm` both legs, for bolts over one size to another.

    `eye_mm` is the greatest width of the eye, `end_mm` how far one leg is longer.
    """

    d_mm: float
    wire_mm: float
    eye_mm: float
    end_mm: float
    bolt_over_mm: float
    bolt_to_mm: float
    lengths_mm: tuple[float, ...]


def spring_pin(d_mm: float) -> SpringPin:
    """A heavy slotted spring pin by the diameter of its hole, mm (ISO 8752); raises NotListed."""
    of = table("pins.yaml", "spring")
    key = of.at(d_mm, "a spring pin of")
    row = of.rows[key]
    return SpringPin(
        d_mm=d_mm,
        free_mm=row["free"],
        free_least_mm=row["free_least"],
        wall_mm=row["wall"],
        chamfer_mm=row["a"],
        hole_class="H12",
        hole_upper_um=upper_band(table("pins.yaml", "H12"), d_mm, "a hole of")["upper_um"],
        shear_kn=row["shear_kn"],
        lengths_mm=steps_within(of.words["list"], row),
        standard=of.standard,
        status=of.status_of(key),
    )


def split_pin(d_mm: float) -> SplitPin:
    """A split pin by the diameter of its hole, mm (ISO 1234); raises NotListed."""
    of = table("pins.yaml", "split")
    return _split(of, of.at(d_mm, "a split pin of"))


def split_pin_for(bolt_mm: float) -> SplitPin:
    """The split pin for a bolt or clevis of a diameter, mm (ISO 1234); raises NotListed."""
    of = table("pins.yaml", "split")
    return _split(of, key_over_to(of, bolt_mm, "a split pin for a bolt of", to="to_bolt"))


def _split(of: Table, key: str) -> SplitPin:
    row: Row = of.rows[key]
    return SplitPin(
        d_mm=float(key),
        wire_mm=row["wire"],
        eye_mm=row["eye"],
        end_mm=row["ends"],
        bolt_over_mm=row["over"],
        bolt_to_mm=row["to_bolt"],
        lengths_mm=steps_within(of.words["list"], row),
        standard=of.standard,
        status=of.status_of(key),
    )
