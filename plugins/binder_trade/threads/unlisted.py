"""Threads that no list has and that can be cut all the same."""

from __future__ import annotations

from typing import Final

from binder_trade.threads.basic import INCH, Size, build
from binder_trade.threads.inches import is_close, spoken, spoken_number
from binder_trade.threads.series import (
    all_threads,
    inch_designation,
    metric_designation,
    table,
)
from binder_trade.threads.thread import Thread

_LEAST_CORE: Final = 0.6
_SERIES_TPI: Final = {"ME": (32, 40, 60), "brass": (26,)}
_LARGEST_MM: Final = {"ME": INCH, "brass": 2 * INCH, "UNS": 2 * INCH}
_SMALLEST_FRACTION_MM: Final = 6.0
# What lathes and tap makers cut (common practice, no source).
_SPECIAL_TPI: Final = (
    *(6, 7, 8, 9, 10, 11, 12, 13, 14, 16, 18, 20, 24, 27, 28, 32, 36, 40, 44, 48, 56, 64, 72, 80),
)


def unlisted(family: str, major_mm: float, pitch_mm: float) -> Thread | None:
    """The thread of a diameter and pitch in mm that can be cut though no list has it.

    A metric diameter of the list may have a pitch finer than its listed ones (ISO 261); the
    constant-pitch series go on any 1/64 in whose core stays 0.6 of the diameter, and a
    unified special on any unified diameter likewise (common practice, no source).
    """
    if family == "metric":
        return _finer_metric(major_mm, pitch_mm)
    if family in _LARGEST_MM:
        return _special_inch(family, major_mm, pitch_mm)
    return None


def _finer_metric(major_mm: float, pitch_mm: float) -> Thread | None:
    largest = next(
        (
            most
            for pitch, most in table("metric_finer")["rows"].items()
            if is_close(pitch, pitch_mm)
        ),
        None,
    )
    listed = [one for one in all_threads("metric") if is_close(one.major_mm, major_mm)]
    if largest is None or not listed or major_mm > largest:
        return None
    finest = min(one.pitch_mm for one in listed)
    if pitch_mm >= finest:
        return None
    text = metric_designation(listed[0].major_mm, pitch_mm, is_coarse=False)
    return build(Size("metric", text, listed[0].major_mm, pitch_mm))


def _special_inch(family: str, major_mm: float, pitch_mm: float) -> Thread | None:
    tpi = round(INCH / pitch_mm)
    if tpi not in _SERIES_TPI.get(family, _SPECIAL_TPI) or not is_close(INCH / tpi, pitch_mm):
        return None
    name = _unified_name(major_mm) if family == "UNS" else spoken(major_mm)
    if name is None or major_mm > _LARGEST_MM[family]:
        return None
    thread = build(Size(family, inch_designation(family, name, tpi), major_mm, INCH / tpi, tpi))
    return thread if thread.minor_external_mm >= _LEAST_CORE * major_mm else None


def _unified_name(major_mm: float) -> str | None:
    """The number of a numbered size, or a fraction of sixteenths from 1/4 in up."""
    number = spoken_number(major_mm)
    if number is not None or major_mm < _SMALLEST_FRACTION_MM:
        return number
    return spoken(major_mm, 16)
