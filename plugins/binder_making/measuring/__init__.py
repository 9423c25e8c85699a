"""Measuring: which owned instrument can judge a size, and sizes over pins."""

from binder_making.measuring.bottoms import fed_mm, reached_by
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
from binder_making.measuring.telling import (
    MATE,
    PLUG,
    by_shanks,
    is_tried,
    noted,
    noted_for_mandrel,
    told_by,
)

__all__ = [
    "MATE",
    "PLUG",
    "Grade",
    "Instrument",
    "Plugs",
    "Verdict",
    "by_shanks",
    "centres",
    "chord",
    "fed_mm",
    "is_tried",
    "judge",
    "noted",
    "noted_for_mandrel",
    "over_pins",
    "over_two",
    "pitch_circle",
    "plugs",
    "reached_by",
    "told_by",
]
