"""The names of threads as makers write them, read by their grammar."""

from __future__ import annotations

import re
from dataclasses import dataclass
from fractions import Fraction

from binder.units.words import INCH

MOST_CHARACTERS = 60
MOST_PER_INCH = 200
_LEAST_NUMBERED_TPI = 24
_LARGEST_NUMBERED = 12
_LARGEST_BA = 25
_MOST_STARTS = 12
_MOST_PIPE_INCHES = 6


@dataclass(frozen=True, slots=True)
class ThreadName:
    """A thread by its designation, exact in mm; what the designation does not state is None.

    `family` is metric, BA, BSW, BSF, BSP, ME, brass, UNC, UNF, UNEF or UNS, or Tr, square or
    Acme for a screw that moves. `number` holds a size that is a name and no length: `2` of
    2 BA, `4` of no. 4-40 UNC, `1/8` of 1/8 BSP. `starts` threads run beside one another.
    """

    family: str
    major_mm: Fraction | None
    number: str
    pitch_mm: Fraction | None
    tpi: int | None
    text: str
    is_left_hand: bool = False
    starts: int = 1


@dataclass(frozen=True, slots=True)
class Misread:
    """Why a text is no designation."""

    reason: str


_INCHES = (
    r"(?P<size>[0-9]{1,2} [0-9]{1,2}/[0-9]{1,2}|[0-9]{1,2}/[0-9]{1,2}"
    r"|[0-9]{0,2}\.[0-9]{1,4}|[0-9]{1,2})"
)
_TPI = r"(?P<tpi>[0-9]{1,3})(?: ?tpi)?"
_TIMES = r" ?[x\u00d7*-] ?"
_HAND = r"(?P<left> (?:LH|left hand))?"


def _grammar(text: str) -> re.Pattern[str]:
    return re.compile(text + _HAND, re.IGNORECASE | re.ASCII)


_METRIC = _grammar(
    r"M ?(?P<size>[0-9]{1,3}(?:\.[0-9]{1,3})?)"
    r"(?: ?[x\u00d7*] ?(?P<pitch>[0-9]{1,2}(?:\.[0-9]{1,3})?)(?: ?mm)?)?"
)
_MOVING = _grammar(
    r"(?P<form>Tr|square) ?(?P<size>[0-9]{1,3}(?:\.[0-9]{1,3})?)"
    r" ?[x\u00d7*] ?(?P<lead>[0-9]{1,2}(?:\.[0-9]{1,3})?)(?: ?mm)?"
    r"(?: ?\(?P ?(?P<pitch>[0-9]{1,2}(?:\.[0-9]{1,3})?)\)?)?"
)
_ACME = _grammar(rf"{_INCHES}(?: in|\")?{_TIMES}{_TPI} ?(?P<family>Acme)")
_BA = _grammar(r"(?:no\.? ?)?(?P<number>[0-9]{1,2}) ?BA")
_PIPE = _grammar(rf"(?:G ?{_INCHES}|{_INCHES.replace('size', 'other')}(?: in|\")? ?BSP)")
_UNIFIED = _grammar(
    rf"(?P<no>no\.? ?|\# ?)?{_INCHES}(?: in|\")?{_TIMES}{_TPI} ?(?P<family>UNC|UNF|UNEF|UNS)"
)
_WHITWORTH = _grammar(rf"{_INCHES}(?: in|\")?(?:{_TIMES}{_TPI})? ?(?P<family>BSW|BSF)")
_MODEL = _grammar(rf"{_INCHES}(?: in|\")?{_TIMES}{_TPI}(?: ?(?P<family>ME|brass))?")

_CUSTOM = {32: "ME", 40: "ME", 26: "brass"}
_SPELT = {"me": "ME", "brass": "brass"}


def read_thread(text: str) -> ThreadName | Misread:
    """The thread that a designation names, or why it names none.

    The grammar follows ISO 965-1 (metric), BS 93 (BA), BS 84 (BSW, BSF), ISO 228-1 (BSP),
    ASME B1.1 (unified), ISO 2903 (Tr, with its lead before its pitch) and ASME B1.5 (Acme);
    `1/4 x 40` and `1/4 x 32` are read as the model engineers' series and 26 to the inch as the
    brass thread (common practice, no source).
    """
    plain = " ".join(text.split())
    if len(plain) > MOST_CHARACTERS:
        return Misread("it is too long for a thread")
    for grammar, reader in _THREADS:
        found = grammar.fullmatch(plain)
        if found:
            return reader(found, plain)
    return Misread("write it as M3, M3 x 0.5, 2 BA, 1/4 x 40 ME, 1/4-20 UNC or 1/8 BSP")


def _metric(found: re.Match[str], text: str) -> ThreadName | Misread:
    major = Fraction(found["size"])
    pitch = Fraction(found["pitch"]) if found["pitch"] else None
    if not major:
        return Misread("a thread of no diameter cannot be cut")
    if pitch is not None and not 0 < pitch < major:
        return Misread(f"a pitch of {found['pitch']} mm does not suit {found['size']} mm")
    return ThreadName("metric", major, "", pitch, None, text, bool(found["left"]))


def _moving(found: re.Match[str], text: str) -> ThreadName | Misread:
    """`Tr 10 x 2`, or with two starts `Tr 10 x 4 P2`: its lead, then its pitch."""
    major, lead = Fraction(found["size"]), Fraction(found["lead"])
    pitch = Fraction(found["pitch"]) if found["pitch"] else lead
    if not 0 < pitch < major:
        return Misread(f"a pitch of {found['pitch'] or found['lead']} mm does not suit it")
    starts = lead / pitch
    if starts.denominator > 1 or not 1 <= starts <= _MOST_STARTS:
        return Misread(f"a lead of {found['lead']} mm is no whole number of such pitches")
    family = "Tr" if found["form"].casefold() == "tr" else "square"
    hand = bool(found["left"])
    return ThreadName(family, major, "", pitch, None, text, hand, int(starts))


def _acme(found: re.Match[str], text: str) -> ThreadName | Misread:
    return _inch_thread(found, "Acme", text)


def _ba(found: re.Match[str], text: str) -> ThreadName | Misread:
    number = int(found["number"])
    if number > _LARGEST_BA:
        return Misread(f"BA sizes run from 0 to {_LARGEST_BA}")
    return ThreadName("BA", None, str(number), None, None, text, bool(found["left"]))


def _pipe(found: re.Match[str], text: str) -> ThreadName | Misread:
    size = found["size"] or found["other"]
    inches = _inches(size)
    if not inches or inches > _MOST_PIPE_INCHES:
        return Misread(f"{size} is no size of pipe")
    return ThreadName("BSP", None, size, None, None, text, bool(found["left"]))


def _unified(found: re.Match[str], text: str) -> ThreadName | Misread:
    size, tpi = found["size"], int(found["tpi"])
    numbered = bool(found["no"]) or (size.isdigit() and tpi >= _LEAST_NUMBERED_TPI)
    if not numbered:
        return _inch_thread(found, found["family"].upper(), text)
    if not size.isdigit() or int(size) > _LARGEST_NUMBERED:
        return Misread(f"numbered sizes run from no. 0 to no. {_LARGEST_NUMBERED}")
    pitch = _pitch(tpi)
    if pitch is None:
        return Misread(f"{tpi} threads to the inch cannot be cut")
    number = str(int(size))
    return ThreadName(found["family"].upper(), None, number, pitch, tpi, text, bool(found["left"]))


def _whitworth(found: re.Match[str], text: str) -> ThreadName | Misread:
    return _inch_thread(found, found["family"].upper(), text)


def _model(found: re.Match[str], text: str) -> ThreadName | Misread:
    tpi = int(found["tpi"])
    family = _SPELT[found["family"].lower()] if found["family"] else _CUSTOM.get(tpi)
    if not found["family"] and "-" in text:
        return Misread(f"say which {text} is meant: UNC, UNF, UNEF, BSW, BSF or ME")
    if family is None:
        return Misread(f"{tpi} to the inch is cut in several forms: add BSW, BSF, UNC, UNF or ME")
    return _inch_thread(found, family, text)


def _inch_thread(found: re.Match[str], family: str, text: str) -> ThreadName | Misread:
    inches = _inches(found["size"])
    if not inches:
        return Misread(f"{found['size']} in is no diameter")
    tpi = int(found["tpi"]) if found["tpi"] else None
    pitch = None if tpi is None else _pitch(tpi)
    if tpi is not None and (pitch is None or pitch >= inches * INCH):
        return Misread(f"{tpi} threads to the inch do not suit {found['size']} in")
    return ThreadName(family, inches * INCH, "", pitch, tpi, text, bool(found["left"]))


def _pitch(tpi: int) -> Fraction | None:
    return INCH / tpi if 0 < tpi <= MOST_PER_INCH else None


def _inches(size: str) -> Fraction | None:
    """`1 1/4`, `3/8`, `0.25` or `1` exactly; None where a denominator is nought."""
    try:
        return sum((Fraction(piece) for piece in size.split()), Fraction(0))
    except ZeroDivisionError:
        return None


_THREADS = (
    (_METRIC, _metric),
    (_MOVING, _moving),
    (_ACME, _acme),
    (_BA, _ba),
    (_PIPE, _pipe),
    (_UNIFIED, _unified),
    (_WHITWORTH, _whitworth),
    (_MODEL, _model),
)
