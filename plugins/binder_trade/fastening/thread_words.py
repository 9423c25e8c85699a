"""The thread of a fastener, read off its name and written in the one way that tables use.

A number after `M3 x` is a pitch where it is at most 0.3 of the diameter, else the length: the
coarsest pitch of the series is a quarter of its diameter, and nothing is sold that short.
"""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from typing import Final

from binder_trade.fastening.cursor import Cursor
from binder_trade.fastening.faults import Unreadable, quoted
from binder_trade.fastening.sizes import UNITS

_PITCH_SHARE: Final = Fraction(3, 10)
_INCH_FAMILIES: Final = {
    "bsw": "BSW",
    "whit": "BSW",
    "whitworth": "BSW",
    "bsf": "BSF",
    "bsb": "brass",
    "me": "ME",
    "bsp": "BSP",
    "bspp": "BSP",
    "unc": "UNC",
    "unf": "UNF",
    "unef": "UNEF",
    "uns": "UNS",
}
_ME_PITCHES: Final = (26, 32, 40, 60)
# Size to threads per inch, ASME B1.1 coarse and fine series, from memory.
_COARSE: Final = frozenset(
    {"1-64", "2-56", "3-48", "4-40", "5-40", "6-32", "8-32", "10-24", "12-24", "1/4-20"}
    | {"5/16-18", "3/8-16", "7/16-14", "1/2-13", "9/16-12", "5/8-11", "3/4-10"}
)
_FINE: Final = frozenset(
    {"0-80", "1-72", "2-64", "3-56", "4-48", "5-44", "6-40", "8-36", "10-32", "12-28", "1/4-28"}
    | {"5/16-24", "3/8-24", "7/16-20", "1/2-20", "9/16-18", "5/8-18", "3/4-16"}
)


@dataclass(frozen=True, slots=True)
class ThreadWords:
    """A thread's designation, and the system that bare lengths after it are in ('' if none)."""

    text: str
    length_unit: str
    takes_whole_inches: bool = True


def take_thread(cursor: Cursor) -> ThreadWords | None:
    """Takes a thread if one comes next; raises Unreadable for one that breaks off."""
    return _metric(cursor) or _numbered(cursor) or _ba(cursor) or _inch(cursor)


def _metric(cursor: Cursor) -> ThreadWords | None:
    if cursor.ahead().text != "m" or cursor.ahead(1).kind != "number":
        return None
    diameter = cursor.ahead(1).text
    cursor.place += 2
    pitch = cursor.ahead(1)
    is_pitch = (
        cursor.ahead().text == "x"
        and pitch.kind == "number"
        and cursor.ahead(2).text != "/"
        and 0 < Fraction(pitch.text) <= _PITCH_SHARE * Fraction(diameter)
    )
    if not is_pitch:
        return ThreadWords(f"M{diameter}", "mm")
    cursor.place += 2
    cursor.take("mm")
    return ThreadWords(f"M{diameter} x {pitch.text}", "mm")


def _numbered(cursor: Cursor) -> ThreadWords | None:
    """`no. 6`: the gauge of a wood screw, unless BA or a number of threads follows."""
    start = cursor.place
    if not (cursor.take("no") or cursor.take("nos") or cursor.take("number")):
        return None
    cursor.take(".")
    number = cursor.ahead()
    if number.kind != "number" or "." in number.text:
        raise Unreadable(f"{quoted(cursor.text)} has 'no.' without a number", "write no. 6")
    if cursor.ahead(1).text in ("ba", "-"):
        found = _ba(cursor) or _inch(cursor)
        cursor.place = cursor.place if found else start
        return found
    cursor.place += 1
    return ThreadWords(f"no. {int(number.text)}", "in")


def _ba(cursor: Cursor) -> ThreadWords | None:
    """BA screws are bought in inches and in millimetres, so a bare whole number says neither."""
    if cursor.ahead().kind != "number" or cursor.ahead(1).text != "ba":
        return None
    number = cursor.ahead().text
    cursor.place += 2
    if "." in number:
        raise Unreadable(f"there is no {number} BA", "BA threads have whole numbers, 0 to 25")
    return ThreadWords(f"{int(number)} BA", "in", takes_whole_inches=False)


def _inch(cursor: Cursor) -> ThreadWords | None:
    start = cursor.place
    size = cursor.size()
    if size is None or size.unit in ("mm", "thou"):
        cursor.place = start
        return None
    gap = cursor.ahead().text
    pitch = cursor.ahead(1)
    is_paired = gap in ("-", "x") and pitch.kind == "number" and "." not in pitch.text
    if is_paired and cursor.ahead(2).text != "/":
        found = _paired(cursor, size.text, int(pitch.text), gap)
    else:
        found = _single(cursor, size.text)
    if found is None:
        cursor.place = start
    return found


def _single(cursor: Cursor, diameter: str) -> ThreadWords | None:
    """`1/4 BSW`: the family gives the pitch."""
    family = _INCH_FAMILIES.get(cursor.ahead().text)
    if family is None:
        return None
    cursor.place += 1
    if family in ("UNC", "UNF", "BSW", "BSF", "BSP"):
        return ThreadWords(f"{diameter} {family}", "in")
    raise Unreadable(
        f"{diameter} {family} does not say how many threads to the inch",
        f"write {diameter} x 40 {family}",
    )


def _paired(cursor: Cursor, diameter: str, tpi: int, gap: str) -> ThreadWords | None:
    """`4-40 UNC`, `1/4 x 40 ME`: size and threads per inch."""
    after = cursor.ahead(2).text
    says_tpi = after in ("tpi", "t")
    family = _INCH_FAMILIES.get(cursor.ahead(3).text if says_tpi else after, "")
    is_unified = gap == "-" or family.startswith("UN")
    is_fine_series = "/" in diameter and tpi in _ME_PITCHES and after not in UNITS
    if not (is_unified or family or says_tpi or is_fine_series):
        return None
    cursor.place += 2 + says_tpi + bool(family)
    if is_unified:
        pair = f"{diameter}-{tpi}"
        return ThreadWords(f"{pair} {family or _series(pair)}".strip(), "in")
    if family in ("BSW", "BSF", "BSP"):
        return ThreadWords(f"{diameter} {family}", "in")
    return ThreadWords(f"{diameter} x {tpi} {family}".strip(), "in")


def _series(pair: str) -> str:
    if pair in _COARSE:
        return "UNC"
    return "UNF" if pair in _FINE else ""
