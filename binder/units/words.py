"""Unit words as makers write them, each with its exact factor to mm, g, s, degrees and K."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from fractions import Fraction
from types import MappingProxyType

from binder.units import dimension as kind
from binder.units.dimension import Dimension


@dataclass(frozen=True, slots=True)
class Unit:
    """A unit: its factor to base units, its name in pint, and the words for it, first as printed.

    Factors follow from five definitions: the inch is 25.4 mm (international inch, 1959),
    the pound 453.59237 g, standard gravity 9806.65 mm/s² (3rd CGPM, 1901), the turn 360
    degrees, the day 86,400 s.
    """

    factor: Fraction
    dimension: Dimension
    pint: str
    words: tuple[str, ...]


INCH = Fraction("25.4")
FOOT = 12 * INCH
_METRE = Fraction(1000)
_POUND = Fraction("453.59237")
_GRAVITY = Fraction("9806.65")
_NEWTON = Fraction(10**6)
_POUND_FORCE = _POUND * _GRAVITY


def _unit(factor: Fraction | int, dimension: Dimension, pint: str, words: str) -> Unit:
    return Unit(Fraction(factor), dimension, pint, tuple(words.split()))


UNITS = (
    _unit(1, kind.LENGTH, "millimeter", "mm millimetre millimetres"),
    _unit(10, kind.LENGTH, "centimeter", "cm"),
    _unit(_METRE, kind.LENGTH, "meter", "m metre metres"),
    _unit(Fraction(1, 1000), kind.LENGTH, "micrometer", "\u00b5m \u03bcm um micron microns"),
    _unit(INCH, kind.LENGTH, "inch", 'in inch inches " \u2033 \u201d'),
    _unit(FOOT, kind.LENGTH, "foot", "ft foot feet ' \u2032 \u2019"),
    _unit(INCH / 1000, kind.LENGTH, "thou", "thou"),
    _unit(3 * FOOT, kind.LENGTH, "yard", "yd yard yards"),
    _unit(1, kind.AREA, "millimeter ** 2", "mm² mm2"),
    _unit(100, kind.AREA, "centimeter ** 2", "cm² cm2"),
    _unit(INCH**2, kind.AREA, "inch ** 2", "in² in2"),
    _unit(1, kind.VOLUME, "millimeter ** 3", "mm³ mm3"),
    _unit(1000, kind.VOLUME, "centimeter ** 3", "cm³ cm3"),
    _unit(INCH**3, kind.VOLUME, "inch ** 3", "in³ in3"),
    _unit(1, kind.ANGLE, "degree", "° deg degrees"),
    _unit(360, kind.ANGLE, "turn", "turn turns rev"),
    _unit(1, kind.MASS, "gram", "g"),
    _unit(1000, kind.MASS, "kilogram", "kg"),
    _unit(_POUND / 16, kind.MASS, "ounce", "oz"),
    _unit(_POUND, kind.MASS, "pound", "lb lbs"),
    _unit(1, kind.TIME, "second", "s sec"),
    _unit(60, kind.TIME, "minute", "min"),
    _unit(3600, kind.TIME, "hour", "h hour hours"),
    _unit(86_400, kind.TIME, "day", "day days"),
    _unit(1, kind.TEMPERATURE, "kelvin", "K"),
    _unit(6, kind.SPEED, "revolutions_per_minute", "r/min rev/min rpm"),
    _unit(1, kind.VELOCITY, "millimeter / second", "mm/s"),
    _unit(Fraction(1, 60), kind.VELOCITY, "millimeter / minute", "mm/min"),
    _unit(_METRE, kind.VELOCITY, "meter / second", "m/s"),
    _unit(_METRE / 60, kind.VELOCITY, "meter / minute", "m/min"),
    _unit(FOOT / 60, kind.VELOCITY, "foot / minute", "ft/min"),
    _unit(_NEWTON, kind.FORCE, "newton", "N"),
    _unit(1000 * _NEWTON, kind.FORCE, "kilonewton", "kN"),
    _unit(_POUND_FORCE, kind.FORCE, "pound_force", "lbf"),
    _unit(1000 * _GRAVITY, kind.FORCE, "kilogram_force", "kgf"),
    _unit(1000 * _NEWTON, kind.TORQUE, "newton * meter", "N·m Nm"),
    _unit(_NEWTON, kind.TORQUE, "newton * millimeter", "N·mm Nmm"),
    _unit(_POUND_FORCE * INCH, kind.TORQUE, "pound_force * inch", "lbf·in"),
    _unit(_POUND_FORCE * FOOT, kind.TORQUE, "pound_force * foot", "lbf·ft"),
    _unit(_NEWTON, kind.PRESSURE, "megapascal", "MPa N/mm² N/mm2"),
    _unit(1000, kind.PRESSURE, "kilopascal", "kPa"),
    _unit(_POUND_FORCE / INCH**2, kind.PRESSURE, "psi", "psi"),
    _unit(10**9, kind.POWER, "watt", "W"),
    _unit(_NEWTON, kind.STIFFNESS, "newton / millimeter", "N/mm"),
    _unit(Fraction(1, 1000), kind.DENSITY, "gram / centimeter ** 3", "g/cm³ g/cm3"),
    _unit(Fraction(1, 10**6), kind.DENSITY, "kilogram / meter ** 3", "kg/m³ kg/m3"),
)

UNIT_WORDS: Mapping[str, Unit] = MappingProxyType(
    {word: unit for unit in UNITS for word in unit.words}
)
