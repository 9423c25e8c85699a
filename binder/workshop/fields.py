"""Field types that a workshop file has beyond those of a spec."""

from __future__ import annotations

import re
from collections.abc import Callable
from decimal import Decimal
from fractions import Fraction
from typing import Annotated, Any

from pydantic import ValidationInfo, WithJsonSchema

from binder.spec.read_by import ReadBy
from binder.spec.reading import LEAST_LENGTH, MOST_LENGTH, size_reader, written
from binder.spec.refusal import refused
from binder.spec.values import Size
from binder.units import (
    ANGLE,
    INCH,
    LENGTH,
    NUMBER,
    POWER,
    TIME,
    UNIT_WORDS,
    Misread,
    Quantity,
    read_thread,
)
from binder.workshop import codes
from binder.workshop.many import OneOrMany

_TPI = re.compile(r"([0-9]{1,3}(?:\.[0-9]{1,3})?) ?tpi")
_PRICE = re.compile(r"[0-9]{1,7}(?:\.[0-9]{1,2})?")
_WHOLE = re.compile(r"[0-9]{1,6}")
_WATT = UNIT_WORDS["W"].factor
_HOUR = UNIT_WORDS["h"].factor
_text: dict[str, Any] = {"type": ["string", "number"]}
_read_pitch_length = size_reader(LENGTH, LEAST_LENGTH, Fraction(200))


def read_pitch(value: object, info: ValidationInfo) -> Size:
    """`1.5 mm`, or `8 tpi` for threads to the inch; the size is the pitch, a length."""
    text = written(value, "a pitch, as 1.5 mm or 8 tpi")
    found = _TPI.fullmatch(text)
    if found and Fraction(found[1]) > 0:
        return Size(Quantity(INCH / Fraction(found[1]), LENGTH), text)
    if found or re.fullmatch(r"[0-9.]+", text):
        raise refused(codes.BAD_PITCH, f"'{text}' is no pitch", "write it as 1.5 mm or as 8 tpi")
    return _read_pitch_length(text, info)


def read_price(value: object) -> Decimal:
    """An amount of money with two decimals at most, without its currency."""
    text = written(value, "a price, as 12.50")
    if not _PRICE.fullmatch(text):
        raise refused(codes.BAD_PRICE, f"'{text}' is no price", "write the amount alone, as 12.50")
    return Decimal(text)


def whole_reader(what: str, least: int, most: int) -> Callable[[object, ValidationInfo], int]:
    """A reader of whole numbers of something, from least to most."""

    def read(value: object, _: ValidationInfo) -> int:
        text = written(value, f"a number of {what}")
        if not _WHOLE.fullmatch(text) or not least <= int(text) <= most:
            raise refused(
                codes.BAD_NUMBER,
                f"'{text}' is no number of {what}",
                f"write a whole number from {least} to {most}",
            )
        return int(text)

    return read


def same_thread(designation: str) -> tuple[object, ...]:
    """What two spellings of one designation have in common.

    A pitch that is stated and one that is left out differ: the standard series that would
    make them one are not known here.
    """
    name = read_thread(designation)
    if isinstance(name, Misread):
        return ("", "".join(designation.split()).casefold())
    return (name.family, name.major_mm, name.number, name.pitch_mm, name.starts, name.is_left_hand)


def _wholes(what: str, least: int, most: int) -> OneOrMany:
    return OneOrMany(whole_reader(what, least, most), {"type": "integer"})


PitchOf = Annotated[Size, ReadBy(read_pitch), WithJsonSchema(_text)]
Pitches = Annotated[tuple[Size, ...], OneOrMany(read_pitch, _text)]
Lengths = Annotated[
    tuple[Size, ...], OneOrMany(size_reader(LENGTH, LEAST_LENGTH, MOST_LENGTH), _text)
]
Allowance = Annotated[
    Size,
    ReadBy(size_reader(LENGTH, Fraction(0), Fraction(500))),
    WithJsonSchema(_text),
]
CutterAngle = Annotated[
    Size,
    ReadBy(size_reader(ANGLE, Fraction(1), Fraction(179))),
    WithJsonSchema(_text),
]
Turn = Annotated[
    Size,
    ReadBy(size_reader(ANGLE, Fraction(1, 3600), Fraction(90))),
    WithJsonSchema(_text),
]
PowerOf = Annotated[
    Size,
    ReadBy(size_reader(POWER, _WATT, 100_000 * _WATT)),
    WithJsonSchema(_text),
]
Evening = Annotated[
    Size,
    ReadBy(size_reader(TIME, _HOUR / 4, 16 * _HOUR)),
    WithJsonSchema(_text),
]
Pace = Annotated[
    Size,
    ReadBy(size_reader(NUMBER, Fraction(1, 10), Fraction(20))),
    WithJsonSchema(_text),
]
Price = Annotated[Decimal, ReadBy(read_price), WithJsonSchema(_text)]
Teeth = Annotated[tuple[int, ...], _wholes("teeth", 8, 300)]
Holes = Annotated[tuple[int, ...], _wholes("holes", 2, 500)]
CutterNumbers = Annotated[tuple[int, ...], _wholes("the cutters of a set", 1, 8)]
Ratio = Annotated[int, ReadBy(whole_reader("turns", 1, 360)), WithJsonSchema({"type": "integer"})]
Jaws = Annotated[int, ReadBy(whole_reader("jaws", 2, 6)), WithJsonSchema({"type": "integer"})]
