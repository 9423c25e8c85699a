"""Completes what a designation states into a thread, or says why nobody makes it."""

from __future__ import annotations

import re
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING, Final

from binder_trade.threads.basic import INCH
from binder_trade.threads.inches import is_close, number_mm
from binder_trade.threads.moving import moving
from binder_trade.threads.refusal import (
    refuse_number,
    refuse_pitch,
    refuse_size,
    refuse_two_pitches,
    refuse_value,
)
from binder_trade.threads.series import all_threads
from binder_trade.threads.thread import MOVING, Thread
from binder_trade.threads.unlisted import unlisted

if TYPE_CHECKING:
    from fractions import Fraction

_NUMBER: Final = re.compile(r"[0-9]{1,2}")
_CALLED_BY_NUMBER: Final = ("BA", "BSP")
_LEAST: Final = 1e-6
_MOST: Final = 1e6


@dataclass(frozen=True, slots=True)
class _Wanted:
    """What is asked for: a family, its size by diameter or by name, and perhaps a pitch."""

    family: str
    major_mm: float | None
    number: str
    pitch_mm: float | None


def thread(
    family: str,
    major_mm: float | Fraction | None = None,
    number: str = "",
    pitch_mm: float | Fraction | None = None,
    tpi: int | None = None,
    *,
    is_left_hand: bool = False,
    starts: int = 1,
) -> Thread:
    """The thread that a designation states, sizes in mm: M6 gets its pitch, 2 BA its all.

    Raises NotMade for a thread that nobody makes, naming the nearest that is made. Sources:
    the standard of each family, as data/series.yaml names it.
    """
    if family in MOVING:
        size = None if major_mm is None else _checked(major_mm, "diameter")
        found = moving(family, size, _pitch(pitch_mm, tpi), starts)
    else:
        found = _fixing(family, major_mm, number, _pitch(pitch_mm, tpi))
    if not is_left_hand:
        return found
    return replace(found, designation=f"{found.designation} LH", is_left_hand=True)


def _fixing(
    family: str, major_mm: float | Fraction | None, number: str, pitch_mm: float | None
) -> Thread:
    """The thread of a family that is listed."""
    listed = all_threads(family)
    wanted = _Wanted(family, *_size(family, major_mm, number), pitch_mm)
    if number.strip() and family.startswith("UN"):
        wanted = _in_inches(wanted, number, listed)
    return _with_pitch(wanted, listed) or _unlisted(wanted, _of_size(wanted, listed))


def _size(family: str, major_mm: float | Fraction | None, number: str) -> tuple[float | None, str]:
    """The diameter, or the number where the family is called by numbers."""
    called = " ".join(number.split())
    if not called:
        if major_mm is None:
            raise refuse_size(family, None, "")
        return _checked(major_mm, "diameter"), ""
    if family in _CALLED_BY_NUMBER:
        return None, called
    found = number_mm(int(called)) if _NUMBER.fullmatch(called) else None
    if found is None or not family.startswith("UN"):
        raise refuse_number(family, called)
    return found, ""


def _in_inches(numbered: _Wanted, number: str, listed: tuple[Thread, ...]) -> _Wanted:
    """1-24 UNS means 1 in, since no numbered size has that pitch and a size in inches has."""
    inches = replace(numbered, major_mm=int(number) * INCH)
    if numbered.pitch_mm is None or _with_pitch(numbered, listed):
        return numbered
    return inches if _with_pitch(inches, listed) else numbered


def _with_pitch(wanted: _Wanted, listed: tuple[Thread, ...]) -> Thread | None:
    """The listed thread of the size and pitch wanted, the usual one where none is stated."""
    for one in _of_size(wanted, listed):
        if wanted.pitch_mm is None and one.is_coarse:
            return one
        if wanted.pitch_mm is not None and is_close(one.pitch_mm, wanted.pitch_mm):
            return one
    return None


def _pitch(pitch_mm: float | Fraction | None, tpi: int | None) -> float | None:
    pitch = None if pitch_mm is None else _checked(pitch_mm, "pitch")
    if tpi is None:
        return pitch
    of_count = INCH / _checked(tpi, "number of threads to the inch")
    if pitch is not None and not is_close(pitch, of_count):
        raise refuse_two_pitches(pitch, of_count)
    return of_count


def _checked(value: float | Fraction, what: str) -> float:
    try:
        size = float(value)
    except OverflowError:
        raise refuse_value(what) from None
    if not _LEAST <= size <= _MOST:
        raise refuse_value(what)
    return size


def _of_size(wanted: _Wanted, listed: tuple[Thread, ...]) -> tuple[Thread, ...]:
    if wanted.major_mm is None:
        name = f"G {wanted.number}" if wanted.family == "BSP" else f"{wanted.number} BA"
        return tuple(one for one in listed if one.designation == name)
    major = wanted.major_mm
    return tuple(one for one in listed if is_close(one.major_mm, major))


def _unlisted(wanted: _Wanted, of_size: tuple[Thread, ...]) -> Thread:
    """What no list has and can be cut all the same. Raises NotMade where it cannot."""
    pitch = wanted.pitch_mm
    if wanted.major_mm is not None and pitch is not None:
        special = unlisted(wanted.family, wanted.major_mm, pitch)
        if special is not None:
            return _unless_elsewhere(special)
    if of_size:
        raise refuse_pitch(of_size, pitch)
    raise refuse_size(wanted.family, wanted.major_mm, wanted.number)


def _unless_elsewhere(special: Thread) -> Thread:
    """A unified special, unless a series has that pitch: then it goes by that name."""
    if special.family == "UNS":
        for family in ("UNC", "UNF", "UNEF"):
            for one in all_threads(family):
                if is_close(one.major_mm, special.major_mm) and one.tpi == special.tpi:
                    raise refuse_pitch((one,), special.pitch_mm, asked=special)
    return special
