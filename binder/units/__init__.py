"""Exact quantities, the words for them, and how they are printed; pint loads only when asked."""

from binder.units.designations import Misread, ThreadName, read_thread
from binder.units.dimension import (
    ACCELERATION,
    ANGLE,
    AREA,
    DENSITY,
    FORCE,
    LENGTH,
    MASS,
    NUMBER,
    POWER,
    PRESSURE,
    SPEED,
    STIFFNESS,
    TEMPERATURE,
    TIME,
    TORQUE,
    VELOCITY,
    VOLUME,
    Dimension,
)
from binder.units.display import shown
from binder.units.faults import (
    DimensionsDifferError,
    DimensionTooHighError,
    QuantityError,
    TooManyDigitsError,
    TooManySourcesError,
)
from binder.units.gauges import GaugeName, read_gauge
from binder.units.quantity import Quantity
from binder.units.registry import from_pint, to_pint
from binder.units.words import INCH, UNIT_WORDS, Unit

__all__ = [
    "ACCELERATION",
    "ANGLE",
    "AREA",
    "DENSITY",
    "FORCE",
    "INCH",
    "LENGTH",
    "MASS",
    "NUMBER",
    "POWER",
    "PRESSURE",
    "SPEED",
    "STIFFNESS",
    "TEMPERATURE",
    "TIME",
    "TORQUE",
    "UNIT_WORDS",
    "VELOCITY",
    "VOLUME",
    "Dimension",
    "DimensionTooHighError",
    "DimensionsDifferError",
    "GaugeName",
    "Misread",
    "Quantity",
    "QuantityError",
    "ThreadName",
    "TooManyDigitsError",
    "TooManySourcesError",
    "Unit",
    "from_pint",
    "read_gauge",
    "read_thread",
    "shown",
    "to_pint",
]
