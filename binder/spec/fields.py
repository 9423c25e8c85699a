"""Field types of the spec's models: each reads its own raw text, with the sizes at hand."""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import dataclass, field
from fractions import Fraction
from typing import Annotated

from pydantic import ValidationInfo, WithJsonSchema

from binder.diagnostics import Diagnostic
from binder.parameters import Environment, ExpressionFault, parse, remarks_on
from binder.parameters.near import did_you_mean
from binder.source import Written
from binder.spec import codes
from binder.spec.forms import FORMS
from binder.spec.pieces import Piece, read_piece, split_at
from binder.spec.read_by import ReadBy
from binder.spec.refusal import refused
from binder.spec.values import Member, Position, Reference, Size, Stock, Taper
from binder.units import (
    ANGLE,
    LENGTH,
    NUMBER,
    Dimension,
    Misread,
    Quantity,
    ThreadName,
    read_thread,
    shown,
)

LEAST_LENGTH = Fraction(1, 1000)
MOST_LENGTH = Fraction(10_000)
_BARE = re.compile(r"-?[0-9]+(\.[0-9]+)?")
_NAME = re.compile(r"[A-Za-z][A-Za-z0-9_-]*")
_REFERENCE = re.compile(r"([A-Za-z][A-Za-z0-9_-]*)(?:\.([A-Za-z][A-Za-z0-9_-]*))?")
_MEMBER = re.compile(r"(?:([0-9]{1,3}) off )?([A-Za-z][A-Za-z0-9_-]*)")
_ALONG = re.compile(r"(.{1,200}?) ((?:from|above|below|left of|right of) .{1,100})")
_WHOLE = re.compile(r"[0-9]{1,6}")
MOST_WORDS = 4000
MOST_PIECES = 999


@dataclass(frozen=True, slots=True)
class Reading:
    """What a field may look at while it reads: the sizes, and the unit of bare numbers.

    `used` gathers the names of the sizes that fields ask for, and `remarks` what is doubtful
    about the sums in them. `bare_help` is the way out
    that is offered for a bare number, after that of writing a unit.
    """

    environment: Environment
    bare_unit: str = ""
    bare_help: str = ", or state `bare_numbers: mm` under `model`"
    used: set[str] = field(default_factory=set)
    remarks: list[Diagnostic] = field(default_factory=list)


def written(value: object, what: str) -> Written:
    """The raw text of a scalar, or a refusal that names what was expected."""
    if isinstance(value, Written):
        return value
    found = "nothing" if value is None else "a list" if isinstance(value, list) else "a table"
    raise refused(codes.WRONG_SHAPE, f"expected {what}, found {found}", f"write {what} here")


def evaluated(text: Written, info: ValidationInfo) -> Quantity:
    """The quantity that an expression comes to; faults of the expression are refusals."""
    reading: Reading = info.context  # type: ignore[assignment]
    try:
        expression = parse(str(text))
        reading.used.update(expression.names)
        quantity = expression.evaluate(reading.environment)
    except ExpressionFault as fault:
        raise refused(fault.code, fault.message, fault.help, fault.start, fault.length) from None
    reading.remarks.extend(remarks_on(expression, text, reading.environment))
    return quantity


def _with_unit(text: Written, info: ValidationInfo, dimension: Dimension) -> Quantity:
    reading: Reading = info.context  # type: ignore[assignment]
    if dimension == LENGTH and _BARE.fullmatch(text):
        if not reading.bare_unit:
            raise refused(
                codes.UNIT_MISSING,
                f"{text} has no unit",
                f"write {text} mm or {text} in{reading.bare_help}",
            )
        return parse(f"{text} {reading.bare_unit}").evaluate(reading.environment)
    quantity = evaluated(text, info)
    if quantity.dimension != dimension:
        raise refused(
            codes.WRONG_DIMENSION,
            f"{dimension.title} is wanted here, this is {quantity.dimension.title}",
            "give it a unit, or look at the sizes that it is made of",
        )
    return quantity


def size_reader(
    dimension: Dimension, least: Fraction | None, most: Fraction | None
) -> Callable[[object, ValidationInfo], Size]:
    """A reader of sizes of one dimension within bounds, both allowed; None for no bound."""

    def read(value: object, info: ValidationInfo) -> Size:
        if isinstance(value, Size):
            return value
        text = written(value, dimension.title)
        quantity = _with_unit(text, info, dimension)
        if (least is not None and quantity.amount < least) or (
            most is not None and quantity.amount > most
        ):
            raise refused(
                codes.OUT_OF_RANGE,
                f"{shown(quantity)} is out of range",
                f"it must lie {_bounds(dimension, least, most)}",
            )
        return Size(quantity, text)

    return read


def _bounds(dimension: Dimension, least: Fraction | None, most: Fraction | None) -> str:
    low = None if least is None else shown(Quantity(least, dimension))
    high = None if most is None else shown(Quantity(most, dimension))
    if low and high:
        return f"between {low} and {high}"
    return f"at or over {low}" if low else f"at or under {high}"


def read_words(value: object) -> Written:
    """A line or a few of plain text."""
    text = written(value, "words")
    if len(text) > MOST_WORDS:
        raise refused(
            codes.TEXT_TOO_LONG,
            f"{len(text)} characters are too many here",
            f"keep it under {MOST_WORDS}",
        )
    if not text.strip():
        raise refused(codes.TEXT_EMPTY, "there are no words here", "write some, or drop the key")
    return text


def read_name(value: object) -> Written:
    """One word that names something."""
    text = written(value, "a name")
    if not _NAME.fullmatch(text):
        raise refused(
            codes.BAD_NAME,
            f"'{text}' cannot be a name",
            "use letters, figures, _ and -, beginning with a letter",
        )
    return text


def read_flag(value: object) -> bool:
    """`true` or `false`, and nothing else that YAML might take for them."""
    text = written(value, "true or false")
    if text not in ("true", "false"):
        raise refused(
            codes.NOT_TRUE_OR_FALSE, f"'{text}' is neither true nor false", "write true or false"
        )
    return text == "true"


def read_count(value: object) -> int:
    """A whole number from 1 to 999."""
    text = written(value, "a whole number")
    if not _WHOLE.fullmatch(text) or not 1 <= int(text) <= MOST_PIECES:
        raise refused(
            codes.BAD_COUNT,
            f"'{text}' is not a number of pieces",
            "write a whole number from 1 to 999",
        )
    return int(text)


def read_reference(value: object) -> Reference:
    """`item` or `item.place`."""
    text = written(value, "a part and a feature, as crank.bore")
    found = _REFERENCE.fullmatch(text)
    if not found:
        raise refused(
            codes.BAD_REFERENCE,
            f"'{text}' names no part or feature",
            "write a part, or a part and a feature, as crank.bore",
        )
    return Reference(found[1], found[2] or "", text)


def read_member(value: object) -> Member:
    """`item`, or `2 off item`."""
    text = written(value, "a part, as crank or 2 off crank")
    found = _MEMBER.fullmatch(text)
    if not found or found[1] in ("0", "00", "000"):
        raise refused(
            codes.BAD_MEMBER,
            f"'{text}' names no part",
            "write the part's name, or `2 off` and its name",
        )
    return Member(found[2], int(found[1] or 1), text.span)


def read_stock(value: object, info: ValidationInfo) -> Stock:
    """A form as sold, with its sizes before it: `25 mm x 6 mm flat bar`, or `round bar`."""
    text = written(value, "stock, as 20 mm round bar")
    form = next((name for name in FORMS if text == name or text.endswith(" " + name)), None)
    if form is None:
        raise refused(
            codes.STOCK_UNKNOWN,
            f"'{text}' is no form of stock",
            did_you_mean(_last_words(text), FORMS) or f"one of: {', '.join(FORMS)}",
        )
    sizes = text.removesuffix(form)
    return Stock(form, _sizes(text, sizes, form, info) if sizes.strip() else (), text)


def _last_words(text: str) -> str:
    return " ".join(text.split()[-2:])


def _sizes(text: Written, sizes: str, form: str, info: ValidationInfo) -> tuple[Size, ...]:
    wanted = FORMS[form].sizes
    pieces = split_at(sizes, " [x×] ")
    if len(pieces) != len(wanted):
        raise refused(
            codes.STOCK_SIZES,
            f"{form} is told by {' x '.join(wanted) or 'no size'}",
            f"as in `{' x '.join('6 mm' for _ in wanted)} {form}`",
        )
    read = size_reader(LENGTH, LEAST_LENGTH, MOST_LENGTH)
    return tuple(read_piece(text, piece, lambda part: read(part, info)) for piece in pieces)


def read_position(value: object, info: ValidationInfo) -> Position:
    """`6 mm from flange`, `height above base`, or plain words (`middle`)."""
    text = written(value, "a place, as 6 mm from flange")
    found = _ALONG.fullmatch(text)
    if not found:
        return Position(text)
    read = size_reader(LENGTH, -MOST_LENGTH, MOST_LENGTH)
    distance = read_piece(text, Piece(0, found[1]), lambda piece: read(piece, info))
    return Position(text, distance, found[2])


def read_thread_name(value: object) -> ThreadName:
    """A thread by its designation."""
    text = written(value, "a thread, as M3 or 2 BA")
    found = read_thread(text)
    if isinstance(found, Misread):
        raise refused(codes.THREAD_UNKNOWN, f"'{text}' names no thread", found.reason)
    return found


def read_length_or(word: str) -> Callable[[object, ValidationInfo], Size | Written]:
    """A reader of a length, or of one word that stands for it."""
    read = size_reader(LENGTH, LEAST_LENGTH, MOST_LENGTH)

    def read_either(value: object, info: ValidationInfo) -> Size | Written:
        return value if isinstance(value, Written) and value == word else read(value, info)

    return read_either


def read_taper(value: object, info: ValidationInfo) -> Taper:
    """`22 mm to 16 mm`: the diameters at both ends."""
    text = written(value, "a taper, as 22 mm to 16 mm")
    ends = split_at(text, " to ")
    if len(ends) != 2:
        raise refused(
            codes.BAD_TAPER,
            f"'{text}' is no taper",
            "write the diameters at its ends, as 22 mm to 16 mm",
        )
    read = size_reader(LENGTH, LEAST_LENGTH, MOST_LENGTH)
    start, end = (read_piece(text, piece, lambda part: read(part, info)) for piece in ends)
    return Taper(start, end, text.span)


def _text_schema(description: str) -> WithJsonSchema:
    return WithJsonSchema({"type": ["string", "number"], "description": description})


Length = Annotated[
    Size,
    ReadBy(size_reader(LENGTH, LEAST_LENGTH, MOST_LENGTH)),
    _text_schema("a length: 12 mm, 1/2 in, 0.8 * bar"),
]
Offset = Annotated[
    Size,
    ReadBy(size_reader(LENGTH, -MOST_LENGTH, MOST_LENGTH)),
    _text_schema("a distance, which may be zero or negative"),
]
Angle = Annotated[
    Size,
    ReadBy(size_reader(ANGLE, Fraction(-360), Fraction(360))),
    _text_schema("an angle: 30 deg"),
]
Number = Annotated[
    Size,
    ReadBy(size_reader(NUMBER, None, None)),
    _text_schema("a plain number"),
]
LengthOrRest = Annotated[
    Size | Written,
    ReadBy(read_length_or("rest")),
    _text_schema("a length, or `rest` for what is left over"),
]
LengthOrThrough = Annotated[
    Size | Written,
    ReadBy(read_length_or("through")),
    _text_schema("a depth, or `through`"),
]
At = Annotated[Position, ReadBy(read_position), _text_schema("6 mm from flange")]
Thread = Annotated[ThreadName, ReadBy(read_thread_name), _text_schema("M3, 2 BA")]
Words = Annotated[Written, ReadBy(read_words), _text_schema("plain text")]
Name = Annotated[Written, ReadBy(read_name), _text_schema("a name")]
Flag = Annotated[bool, ReadBy(read_flag), WithJsonSchema({"type": "boolean"})]
Count = Annotated[
    int,
    ReadBy(read_count),
    WithJsonSchema({"type": "integer", "minimum": 1, "maximum": 999}),
]
Ref = Annotated[Reference, ReadBy(read_reference), _text_schema("part.feature")]
MemberOf = Annotated[Member, ReadBy(read_member), _text_schema("2 off part")]
StockOf = Annotated[Stock, ReadBy(read_stock), _text_schema("20 mm round bar")]
TaperOf = Annotated[Taper, ReadBy(read_taper), _text_schema("22 mm to 16 mm")]
