"""Numbers with their units, as makers write them, to exact quantities."""

from __future__ import annotations

import re
from dataclasses import dataclass
from fractions import Fraction

from binder.diagnostics import Code
from binder.parameters import codes
from binder.parameters.faults import ExpressionFault, quoted
from binder.parameters.near import did_you_mean
from binder.units import NUMBER, UNIT_WORDS, Quantity, TooManyDigitsError, Unit
from binder.units.quantity import bounded

SPACE = "[ \t\u00a0\u2009\u202f]"
PIXEL_WORD = "px"

_VULGAR = {
    "\u00bd": Fraction(1, 2),
    "\u2153": Fraction(1, 3),
    "\u2154": Fraction(2, 3),
    "\u00bc": Fraction(1, 4),
    "\u00be": Fraction(3, 4),
    "\u215b": Fraction(1, 8),
    "\u215c": Fraction(3, 8),
    "\u215d": Fraction(5, 8),
    "\u215e": Fraction(7, 8),
}
_UNIT = "|".join(
    re.escape(word) + ("(?![A-Za-z0-9_\u00b2\u00b3])" if word[-1].isalnum() else "")
    for word in sorted((*UNIT_WORDS, PIXEL_WORD), key=len, reverse=True)
)
_STROKE = "[/\u2044]"
_NUMBER = re.compile(
    rf"""
      (?P<whole>[0-9]+){SPACE}+(?P<top>[0-9]+){_STROKE}(?P<bottom>[0-9]+)(?![0-9.,_])
    | (?:(?P<before>[0-9]+){SPACE}?)?(?P<vulgar>[{"".join(_VULGAR)}])
    | (?P<over>[0-9]+){_STROKE}(?P<under>[0-9]+)(?={SPACE}*(?:{_UNIT}))
    | (?P<decimal>(?:[0-9]+(?:\.[0-9]+)?|\.[0-9]+)(?:[eE](?P<exponent>[+-]?[0-9]+))?)
    """,
    re.VERBOSE,
)
_DASHED = re.compile(rf"([0-9]+)-([0-9]+/[0-9]+){SPACE}?({_UNIT})")
_SUFFIX = re.compile(rf"{SPACE}*(?:(?P<unit>{_UNIT})|(?P<word>[A-Za-z\u00b5\u03bc\u00b0]+))")
_RUN_ON = re.compile(r"[0-9._]+")
_MOST_EXPONENT_FIGURES = 2
FEWER = "write a size that a bench can hold, as 12 mm"


@dataclass(frozen=True, slots=True)
class Number:
    """A number from `start` to `end` of a text; `unit` is None for a plain one or for pixels."""

    amount: Fraction
    unit: Unit | None
    is_pixels: bool
    start: int
    end: int

    @property
    def quantity(self) -> Quantity:
        """What it amounts to in base units."""
        if self.unit is None:
            return Quantity(self.amount, NUMBER)
        return Quantity(self.amount * self.unit.factor, self.unit.dimension)


def read_number(text: str, start: int) -> Number | None:
    """The number that begins here, with its unit; None where none does; ExpressionFault."""
    found = _NUMBER.match(text, start)
    if found is None:
        return None
    amount = _amount(found)
    _must_end(text, found)
    unit, is_pixels, end = _unit(text, found)
    number = Number(amount, unit, is_pixels, start, end)
    try:
        bounded(number.quantity)
    except TooManyDigitsError:
        raise _fault(
            codes.NUMBER_TOO_LARGE, "this number has too many figures", found, FEWER
        ) from None
    return number


def refuse_dashed(text: str, start: int) -> None:
    """ExpressionFault where `7-1/2 in` begins here."""
    found = _DASHED.match(text, start)
    if found:
        better = f"{found[1]} {found[2]} {found[3]}"
        message = f"{quoted(found[0])} is {found[1]} less {found[2]} {found[3]}"
        raise _fault(codes.DASHED_FRACTION, message, found, f"write {better}")


def _amount(found: re.Match[str]) -> Fraction:
    if found["decimal"] is not None:
        exponent = (found["exponent"] or "").lstrip("+-")
        if len(exponent) > _MOST_EXPONENT_FIGURES:
            message = f"an exponent of {len(exponent)} figures is too much"
            raise _fault(codes.NUMBER_TOO_LARGE, message, found, FEWER)
        return _decimal(found["decimal"]) if not exponent else Fraction(found["decimal"])
    if found["vulgar"] is not None:
        return int(found["before"] or 0) + _VULGAR[found["vulgar"]]
    if found["whole"] is not None:
        return int(found["whole"]) + _fraction(found, "top", "bottom")
    return _fraction(found, "over", "under")


def _decimal(text: str) -> Fraction:
    """What Fraction(text) gives, without its own regular expression."""
    whole, _, decimals = text.partition(".")
    return Fraction(int(whole + decimals), 10 ** len(decimals))


def _fraction(found: re.Match[str], top: str, bottom: str) -> Fraction:
    over, under = int(found[top]), int(found[bottom])
    if not under:
        message = f"{quoted(found[0])} divides by nothing"
        raise _fault(codes.DIVIDED_BY_ZERO, message, found, "give the fraction its lower number")
    if top == "top" and over >= under:
        message = f"{quoted(found[0])} is no mixed number"
        help = f"{found[top]}/{found[bottom]} is one or more: write the whole sum as one fraction"
        raise _fault(codes.NUMBER_MALFORMED, message, found, help)
    return Fraction(over, under)


def _must_end(text: str, found: re.Match[str]) -> None:
    """ExpressionFault where more figures, a point or a line follow: 1.2.3, 5., 1_000."""
    more = _RUN_ON.match(text, found.end())
    if more:
        whole = text[found.start() : more.end()]
        raise ExpressionFault(
            codes.NUMBER_MALFORMED,
            f"{quoted(whole)} is no number",
            found.start(),
            len(whole),
            "write it with figures and at most one point, as 12.5",
        )


def _unit(text: str, number: re.Match[str]) -> tuple[Unit | None, bool, int]:
    """The unit after a number, whether it is pixels, and where it ends."""
    found = _SUFFIX.match(text, number.end())
    if found is None:
        return None, False, number.end()
    if found["word"] is not None:
        raise _unknown_unit(text, number[0], found.start("word"))
    word = found["unit"]
    return UNIT_WORDS.get(word), word == PIXEL_WORD, found.end()


_WORD = re.compile(r"[A-Za-z0-9_\u00b5\u03bc\u00b0\u00b2\u00b3]+")


def _unknown_unit(text: str, number: str, start: int) -> ExpressionFault:
    whole = _WORD.match(text, start)
    word = whole[0] if whole else text[start]
    if word == "drill":
        help = "write no. 34 drill for a numbered drill"
    else:
        near = did_you_mean(word, (*UNIT_WORDS, PIXEL_WORD))
        times = f"to multiply by a size of that name, write {number} * {quoted(word)}"
        help = f"{near} {times}".strip()
    message = f"{quoted(word)} is no unit"
    return ExpressionFault(codes.UNIT_UNKNOWN, message, start, len(word), help)


def _fault(code: Code, message: str, found: re.Match[str], help: str = "") -> ExpressionFault:
    return ExpressionFault(code, message, found.start(), len(found[0]), help)
