"""Completes what a designation states into a thread, or says why nobody makes it."""

from __future__ import annotations

import re
from dataclasses import dataclass
from math import isfinite
from typing import TYPE_CHECKING, Final, Protocol

from binder_trade.threads.basic import INCH, Size, build
from binder_trade.threads.inches import is_close, number_mm
from binder_trade.threads.refusal import (
    refuse_number,
    refuse_pitch,
    refuse_size,
    refuse_two_pitches,
    refuse_value,
)
from binder_trade.threads.series import all_threads
from binder_trade.threads.thread import Thread
from binder_trade.threads.unlisted import unlisted

if TYPE_CHECKING:
    from fractions import Fraction

_NUMBER: Final = re.compile(r"[0-9]{1,2}")
_CALLED_BY_NUMBER: Final = ("BA", "BSP")


class Named(Protocol):
    """What a name of a thread carries when its grammar has been read; sizes in mm."""

    @property
    def family(self) -> str:
        """The family, as `metric` or `BSF`."""

    @property
    def major_mm(self) -> Fraction | None:
        """The diameter, where the name states one."""

    @property
    def number(self) -> str:
        """A size that is a name and no length: `2` of 2 BA, `1/8` of 1/8 BSP."""

    @property
    def pitch_mm(self) -> Fraction | None:
        """The pitch, where the name states one."""

    @property
    def tpi(self) -> int | None:
        """The threads to the inch, where the name states them."""

    @property
    def is_left_hand(self) -> bool:
        """Whether the name says left hand."""


@dataclass(frozen=True, slots=True)
class _Wanted:
    """What is asked for: a family, its size by diameter or by name, and perhaps a pitch."""

    family: str
    major_mm: float | None
    number: str
    pitch_mm: float | None


def from_name(name: Named) -> Thread:
    """The thread that a name means. Raises NotMade as `thread` does."""
    return thread(
        name.family,
        name.major_mm,
        name.number,
        name.pitch_mm,
        name.tpi,
        is_left_hand=name.is_left_hand,
    )


def thread(
    family: str,
    major_mm: float | Fraction | None = None,
    number: str = "",
    pitch_mm: float | Fraction | None = None,
    tpi: int | None = None,
    *,
    is_left_hand: bool = False,
) -> Thread:
    """The thread that a designation states, sizes in mm: M6 gets its pitch, 2 BA its all.

    Raises NotMade for a thread that nobody makes, naming the nearest that is made. Sources:
    the standard of each family, as data/series.yaml names it.
    """
    listed = all_threads(family)
    wanted = _Wanted(family, *_size(family, major_mm, number), _pitch(pitch_mm, tpi))
    found = _chosen(wanted, _of_size(wanted, listed))
    return _left(found) if is_left_hand else found


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
    if not isfinite(size) or size <= 0:
        raise refuse_value(what)
    return size


def _of_size(wanted: _Wanted, listed: tuple[Thread, ...]) -> tuple[Thread, ...]:
    if wanted.major_mm is None:
        name = f"G {wanted.number}" if wanted.family == "BSP" else f"{wanted.number} BA"
        return tuple(one for one in listed if one.designation == name)
    major = wanted.major_mm
    return tuple(one for one in listed if is_close(one.major_mm, major))


def _chosen(wanted: _Wanted, of_size: tuple[Thread, ...]) -> Thread:
    pitch = wanted.pitch_mm
    for one in of_size:
        if one.is_coarse if pitch is None else is_close(one.pitch_mm, pitch):
            return one
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


def _left(found: Thread) -> Thread:
    size = Size(
        found.family,
        found.designation,
        found.major_mm,
        found.pitch_mm,
        found.tpi,
        found.is_coarse,
    )
    return build(size, is_left_hand=True)
