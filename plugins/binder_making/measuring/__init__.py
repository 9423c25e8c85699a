"""Measuring: which owned instrument can judge a size, and sizes over pins."""

from binder_making.measuring.judging import Grade, Instrument, Verdict, judge
from binder_making.measuring.pins import (
    Plugs,
    centres,
    chord,
    over_pins,
    over_two,
    pitch_circle,
    plugs,
)

__all__ = [
    "Grade",
    "Instrument",
    "Plugs",
    "Verdict",
    "centres",
    "chord",
    "judge",
    "over_pins",
    "over_two",
    "pitch_circle",
    "plugs",
]
