"""Dividing: turns of the crank and holes on a circle, for so many divisions or an angle."""

from binder_trade.explained import NotDefined, Step
from binder_trade.gears.dividing.compound import CompoundIndexing, compound
from binder_trade.gears.dividing.dial import Dial, Setting, dial
from binder_trade.gears.dividing.differential import Differential, differential
from binder_trade.gears.dividing.owned import (
    Divider,
    can_divide,
    dial_for,
    divided,
    minutes_text,
    place_words,
)
from binder_trade.gears.dividing.plates import Plates, circles, plates_sold
from binder_trade.gears.dividing.simple import (
    Indexing,
    Nearest,
    can_index,
    index,
    index_angle,
    nearest,
)

__all__ = [
    "CompoundIndexing",
    "Dial",
    "Differential",
    "Divider",
    "Indexing",
    "Nearest",
    "NotDefined",
    "Plates",
    "Setting",
    "Step",
    "can_divide",
    "can_index",
    "circles",
    "compound",
    "dial",
    "dial_for",
    "differential",
    "divided",
    "index",
    "index_angle",
    "minutes_text",
    "nearest",
    "place_words",
    "plates_sold",
]
