"""What a quantity measures, as whole exponents of five base kinds."""

from __future__ import annotations

from typing import NamedTuple

from binder.units.faults import DimensionTooHighError

MOST_EXPONENT = 3


class Dimension(NamedTuple):
    """Exponents of length, mass, time, temperature and angle; all 0 is a plain number.

    Angle counts as a kind of its own, so that 30 degrees and the number 30 differ.
    """

    length: int = 0
    mass: int = 0
    time: int = 0
    temperature: int = 0
    angle: int = 0

    def times(self, other: Dimension) -> Dimension:
        """The dimension of a product; DimensionTooHighError past the third power."""
        if other is NUMBER:
            return self
        return _bounded(Dimension(*(a + b for a, b in zip(self, other, strict=True))))

    def over(self, other: Dimension) -> Dimension:
        """The dimension of a quotient; DimensionTooHighError past the third power."""
        if other is NUMBER:
            return self
        return _bounded(Dimension(*(a - b for a, b in zip(self, other, strict=True))))

    @property
    def is_length(self) -> bool:
        """Whether this is a plain length."""
        return self == LENGTH

    @property
    def title(self) -> str:
        """The dimension in a maker's words, with its article: `a length`."""
        return _TITLES.get(self) or _spelt(self)


def _bounded(dimension: Dimension) -> Dimension:
    if max(dimension) > MOST_EXPONENT or min(dimension) < -MOST_EXPONENT:
        raise DimensionTooHighError(_spelt(dimension))
    return NUMBER if dimension == NUMBER else dimension


_POWERS = {1: "", 2: " squared", 3: " cubed"}


def _spelt(dimension: Dimension) -> str:
    """`a length squared by mass per time`, for what has no plain name."""
    pairs = tuple(zip(Dimension._fields, dimension, strict=True))
    over = " by ".join(_power(name, power) for name, power in pairs if power > 0)
    under = " and ".join(_power(name, -power) for name, power in pairs if power < 0)
    return f"a {over or 'number'}" + (f" per {under}" if under else "")


def _power(name: str, power: int) -> str:
    return name + _POWERS.get(power, f" to the power {power}")


NUMBER = Dimension()
LENGTH = Dimension(length=1)
AREA = Dimension(length=2)
VOLUME = Dimension(length=3)
ANGLE = Dimension(angle=1)
MASS = Dimension(mass=1)
TIME = Dimension(time=1)
TEMPERATURE = Dimension(temperature=1)
SPEED = Dimension(angle=1, time=-1)
VELOCITY = Dimension(length=1, time=-1)
ACCELERATION = Dimension(length=1, time=-2)
FORCE = Dimension(length=1, mass=1, time=-2)
TORQUE = Dimension(length=2, mass=1, time=-2)
PRESSURE = Dimension(length=-1, mass=1, time=-2)
POWER = Dimension(length=2, mass=1, time=-3)
STIFFNESS = Dimension(mass=1, time=-2)
DENSITY = Dimension(length=-3, mass=1)

_TITLES = {
    NUMBER: "a plain number",
    LENGTH: "a length",
    AREA: "an area",
    VOLUME: "a volume",
    ANGLE: "an angle",
    MASS: "a mass",
    TIME: "a time",
    TEMPERATURE: "a difference of temperature",
    SPEED: "a speed of turning",
    VELOCITY: "a speed along a path",
    ACCELERATION: "an acceleration",
    FORCE: "a force",
    TORQUE: "a torque",
    PRESSURE: "a pressure",
    POWER: "a power",
    STIFFNESS: "a spring rate",
    DENSITY: "a density",
}
