"""What the drawing says ("H7", "H7/g6") to letters and grades, or a refusal that helps."""

from __future__ import annotations

import re

from binder_trade.explained import NotDefined
from binder_trade.limits.quoted import shown
from binder_trade.limits.tables import table
from binder_trade.limits.tolerances import GRADES, require_grade

_CLASS = re.compile(r"(?P<letter>[A-Za-z]+)(?P<grade>[0-9]*)")
_TURNED = re.compile(r"(?P<grade>[0-9]+)(?P<letter>[A-Za-z]+)")
_LEFT_OUT = {"i": ("h", "js"), "l": ("k", "m"), "o": ("n", "p"), "q": ("p", "r"), "w": ("v", "x")}


def shaft_letters() -> frozenset[str]:
    """Every letter of a shaft; a hole has the same in capitals (ISO 286-1:2010, clause 4)."""
    tabled = {*table("shafts_on_bands").rows, *table("shafts_on_steps").rows}
    return frozenset(tabled | {"j", "js"})


def read_class(text: str) -> tuple[str, str]:
    """The letter and the grade of a tolerance class; blanks do not count.

    Raises:
        NotDefined: the text is no class of ISO 286.

    Source: ISO 286-1:2010, clause 4.
    """
    written = "".join(text.split())
    if not written:
        raise NotDefined("no class is written", "write a letter and a grade, as H7 or g6")
    found = _CLASS.fullmatch(written)
    if not found:
        raise _not_a_class(written)
    _require_letter(found["letter"])
    if not found["grade"]:
        raise NotDefined(
            f"{found['letter']} has no grade", f"write the grade behind it, as {found['letter']}7"
        )
    require_grade(found["grade"])
    return found["letter"], found["grade"]


def read_fit(text: str) -> tuple[str, str]:
    """The class of the hole and the class of the shaft of a fit, as "H7 / g6".

    Raises:
        NotDefined: the text is no fit, the hole does not come first, or a class is unknown.

    Source: ISO 286-1:2010, clause 5.
    """
    halves = text.split("/")
    if len(halves) != 2:
        raise NotDefined(
            f"{shown(text)} is not a fit", "write the hole, a stroke and the shaft, as H7/g6"
        )
    first, second = ("".join(read_class(half)) for half in halves)
    if first[0].islower() and second[0].isupper():
        raise NotDefined("the hole comes before the shaft", f"write {second}/{first}")
    if first[0].islower():
        raise NotDefined(f"{first}/{second} has no hole", f"give a hole, as H7/{second}")
    if second[0].isupper():
        raise NotDefined(f"{first}/{second} has no shaft", f"give a shaft, as {first}/h6")
    return first, second


def _require_letter(letter: str) -> None:
    low = letter.lower()
    if low in _LEFT_OUT:
        before, after = (near if letter == low else near.upper() for near in _LEFT_OUT[low])
        raise NotDefined(
            f"there is no {letter} in ISO 286: it is left out so that nobody misreads it",
            f"use its neighbour {before} or {after}",
        )
    if low not in shaft_letters():
        raise NotDefined(
            f"there is no {shown(letter)} in ISO 286", "holes are A to ZC, shafts a to zc"
        )
    if letter not in (low, low.upper()):
        raise NotDefined(
            f"{letter} mixes capitals and small letters",
            f"write {low.upper()} for a hole, {low} for a shaft",
        )


def _not_a_class(written: str) -> NotDefined:
    turned = _TURNED.fullmatch(written)
    if turned and turned["grade"] in GRADES and turned["letter"].lower() in shaft_letters():
        return NotDefined(
            f"in {shown(written)} the grade comes first, as on a screw thread",
            f"write {turned['letter']}{turned['grade']}",
        )
    if "/" in written:
        return NotDefined(f"{shown(written)} is a fit, not a class", "give one half of it, as H7")
    return NotDefined(f"{shown(written)} is not a class", "write a letter and a grade, as H7 or g6")
