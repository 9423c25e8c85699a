"""Tapers: cones of any kind, taper pins and their holes, Morse sockets."""

from binder_trade.explained import NotDefined, Step
from binder_trade.tapers.morse import Morse, morse
from binder_trade.tapers.pins import (
    PinHole,
    drill_for,
    inch_pin,
    largest_for_shaft,
    metric_pin,
    mixed,
)
from binder_trade.tapers.taper import (
    Holding,
    Taper,
    from_angle,
    from_diameters,
    from_ratio,
    holding,
    interference_at,
    press_on,
    set_over,
    sine_packing,
)

__all__ = [
    "Holding",
    "Morse",
    "NotDefined",
    "PinHole",
    "Step",
    "Taper",
    "drill_for",
    "from_angle",
    "from_diameters",
    "from_ratio",
    "holding",
    "inch_pin",
    "interference_at",
    "largest_for_shaft",
    "metric_pin",
    "mixed",
    "morse",
    "press_on",
    "set_over",
    "sine_packing",
]
