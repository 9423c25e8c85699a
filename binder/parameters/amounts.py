"""Literal amounts: `7 1/2 in`, `1½ in`, `0.5 thou`, `6mm`, exact."""

from __future__ import annotations

import re
from dataclasses import dataclass
from difflib import get_close_matches
from fractions import Fraction

from binder.parameters import codes
from binder.parameters.faults import ExpressionFault
from binder.units import NUMBER, UNIT_WORDS, Quantity

PIXEL_WORD = "px"
_VULGAR = {
    "½": Fraction(1, 2), "¼": Fraction(1, 4), "¾": Fraction(3, 4),
    "⅛": Fraction(1, 8), "⅜": Fraction(3, 8), "⅝": Fraction(5, 8), "⅞": Fraction(7, 8),
    "⅓": Fraction(1, 3), "⅔": Fraction(2, 3),
}  # fmt: skip
_SIGNS = "".join(_VULGAR)
_NUMBER = re.compile(
    rf"(?P<whole>[0-9]+)\s?(?P<vulgar>[{_SIGNS}])"
    rf"|(?P<sign>[{_SIGNS}])"
    r"|(?P<mixed>[0-9]+)\s+(?P<top>[0-9]+)\s?[/⁄]\s?(?P<under>[0-9]+)(?![0-9.])"
    r"|(?P<num>[0-9]+)\s?[/⁄]\s?(?P<den>[0-9]+)(?![0-9.])"
    r"|(?P<plain>[0-9]+(?:\.[0-9]+)?|\.[0-9]+)(?:[eE](?P<power>[+-]?[0-9]+))?"
)
_UNIT = re.compile(r"[ \t]*(?P<word>[A-Za-zµμ°·²³\"″”'′’]+(?:/[A-Za-z²³]+[0-9²³]?)?[0-9]?)")
_COMMA = re.compile(r"[0-9]+,[0-9]+")
_FEET = re.compile(r"(?P<feet>[0-9]+)\s?['′’]\s?(?P<inches>[0-9]+(?:\.[0-9]+)?)\s?[\"″”]")
# A name may follow a number only through a sign, so these words after a number are units
# misspelt, and a known name there is a product without its sign.
MOST_DIGITS = 40


@dataclass(frozen=True, slots=True)
class Amount:
    """An amount that was read, its text and how many characters it took."""

    quantity: Quantity
    text: str
    length: int


def amount_at(text: str, place: int) -> Amount | None:
    """The amount that begins at a place; None where none does."""
    if not (text[place].isascii() and (text[place].isdigit() or text[place] == ".")) and (
        text[place] not in _VULGAR
    ):
        return None
    _refuse_comma(text, place)
    feet = _FEET.match(text, place)
    if feet:
        mm = (int(feet["feet"]) * 12 + Fraction(feet["inches"])) * UNIT_WORDS["in"].factor
        return Amount(Quantity(mm, UNIT_WORDS["in"].dimension), feet[0], len(feet[0]))
    found = _NUMBER.match(text, place)
    if not found:
        return None
    if len(found[0]) > MOST_DIGITS:
        raise ExpressionFault(
            codes.NUMBER_TOO_LONG, "a number with too many digits", "", place, len(found[0])
        )
    number = _value(found, place)
    return _with_unit(text, place, found.end(), number)


def _refuse_comma(text: str, place: int) -> None:
    comma = _COMMA.match(text, place)
    if comma:
        raise ExpressionFault(
            codes.DECIMAL_COMMA,
            f"'{comma[0]}' has a comma in it",
            f"write {comma[0].replace(',', '.')}",
            place,
            len(comma[0]),
        )


def _value(found: re.Match[str], place: int) -> Fraction:
    if found["vulgar"]:
        return int(found["whole"]) + _VULGAR[found["vulgar"]]
    if found["sign"]:
        return _VULGAR[found["sign"]]
    top, under = found["top"] or found["num"], found["under"] or found["den"]
    if under:
        if not int(under):
            raise ExpressionFault(
                codes.DIVISION_BY_ZERO, "a fraction over zero", "", place, len(found[0])
            )
        return int(found["mixed"] or 0) + Fraction(int(top), int(under))
    power = found["power"]
    if power and len(power.lstrip("+-")) > 2:  # noqa: PLR2004 - two figures of exponent
        raise ExpressionFault(
            codes.NUMBER_TOO_LONG, "an exponent of more than two digits", "", place, len(found[0])
        )
    return Fraction(found["plain"]) * Fraction(10) ** int(power or 0)


def _with_unit(text: str, place: int, end: int, number: Fraction) -> Amount:
    unit = _UNIT.match(text, end)
    if unit is None:
        if text[end : end + 1] == ".":
            raise ExpressionFault(
                codes.SIGN_UNKNOWN, "a number with two points", "", place, end + 1 - place
            )
        return Amount(Quantity(number, NUMBER), text[place:end], end - place)
    word = _longest_unit(unit["word"])
    if word is None:
        raise _unknown_unit(unit["word"], text[place:end].strip(), unit.start("word"))
    stop = unit.start("word") + len(word)
    if word == PIXEL_WORD:
        return Amount(Quantity(number, NUMBER), text[place:stop], stop - place)
    known = UNIT_WORDS[word]
    return Amount(Quantity(number * known.factor, known.dimension), text[place:stop], stop - place)


def _longest_unit(word: str) -> str | None:
    """The unit that a word is, or begins with before a division (`12 mm/a`)."""
    for candidate in (word, word.split("/", maxsplit=1)[0]):
        if candidate in UNIT_WORDS or candidate == PIXEL_WORD:
            return candidate
    return None


def _unknown_unit(word: str, number: str, place: int) -> ExpressionFault:
    near = get_close_matches(word, UNIT_WORDS, n=1, cutoff=0.6)
    hint = f"; or did you mean the unit '{near[0]}'?" if near else ""
    return ExpressionFault(
        codes.UNIT_UNKNOWN,
        f"'{word}' is no unit",
        f"to multiply write {number} * {word}{hint}",
        place,
        len(word),
    )
