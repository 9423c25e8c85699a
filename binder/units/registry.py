"""Our quantities to pint's and back, through the one registry; pint loads at the first call."""

from __future__ import annotations

from fractions import Fraction
from functools import cache
from typing import TYPE_CHECKING

from binder.units.dimension import Dimension
from binder.units.quantity import Quantity, bounded

if TYPE_CHECKING:
    from pint import UnitRegistry
    from pint.facets.plain import PlainQuantity

_BASE = ("millimeter", "gram", "second", "kelvin", "degree")
_ROOT = ("meter", "gram", "second", "kelvin", "radian")


@cache
def registry() -> UnitRegistry[PlainQuantity[Fraction]]:
    """The registry, with exact fractions. Give it our own fixed unit names, never a spec's text."""
    from pint import UnitRegistry

    return UnitRegistry(non_int_type=Fraction, cache_folder=None)


def to_pint(quantity: Quantity) -> PlainQuantity[Fraction]:
    """A pint quantity in mm, g, s, K and degrees; the errors stay behind."""
    units = zip(_BASE, quantity.dimension, strict=True)
    written = " * ".join(f"{name} ** {power}" for name, power in units if power)
    return registry().Quantity(quantity.amount, written or "dimensionless")


def from_pint(value: PlainQuantity[Fraction]) -> Quantity:
    """Our quantity for a pint quantity of lengths, masses, times, temperatures and angles.

    ValueError where it measures anything else.
    """
    root = registry().Quantity(Fraction(value.magnitude), value.units).to_root_units()
    powers = {name: Fraction(str(power)) for name, power in root.unit_items()}
    if not set(powers) <= set(_ROOT) or any(power.denominator > 1 for power in powers.values()):
        raise ValueError("a unit outside length, mass, time, temperature and angle")
    dimension = Dimension(*(powers.get(name, Fraction(0)).numerator for name in _ROOT))
    amount = Fraction(root.magnitude)
    for power, factor in zip(dimension, _factors(), strict=True):
        amount *= factor**power
    return bounded(Quantity(amount, dimension))


@cache
def _factors() -> tuple[Fraction, ...]:
    """How many of our base units pint's root units hold, in the order of dimensions."""
    units = zip(_ROOT, _BASE, strict=True)
    return tuple(
        1 / Fraction(registry().Quantity(Fraction(1), base).to(root).magnitude)
        for root, base in units
    )
