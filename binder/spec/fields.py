"""Field types of the spec's models: each reads its own raw text, with the sizes at hand."""

from __future__ import annotations

from fractions import Fraction
from typing import Annotated

from pydantic import WithJsonSchema

from binder.source import Written
from binder.spec.read_by import ReadBy
from binder.spec.readers import (
    read_count,
    read_flag,
    read_length_or,
    read_length_to_come,
    read_member,
    read_name,
    read_position,
    read_range,
    read_reference,
    read_stock,
    read_taper,
    read_thread_name,
    read_thread_or_suit,
    read_words,
)
from binder.spec.reading import LEAST_LENGTH, MOST_LENGTH, size_reader
from binder.spec.values import SUIT, Member, Position, Reference, Size, Stock, Taper
from binder.units import ANGLE, FORCE, LENGTH, MASS, NUMBER, POWER, SPEED, TORQUE, ThreadName


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
Speed = Annotated[
    Size,
    ReadBy(size_reader(SPEED, Fraction(0), None)),
    _text_schema("a speed of turning: 300 r/min"),
]
Torque = Annotated[
    Size,
    ReadBy(size_reader(TORQUE, Fraction(0), None)),
    _text_schema("a torque: 0.2 N m"),
]
Power = Annotated[
    Size,
    ReadBy(size_reader(POWER, Fraction(0), None)),
    _text_schema("a power: 10 W"),
]
Mass = Annotated[
    Size,
    ReadBy(size_reader(MASS, Fraction(0), None)),
    _text_schema("a mass: 500 g"),
]
Force = Annotated[
    Size,
    ReadBy(size_reader(FORCE, Fraction(0), None)),
    _text_schema("a force: 20 N"),
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
LengthOrSuit = Annotated[
    Size | Written,
    ReadBy(read_length_or(SUIT)),
    _text_schema("a length, or `to suit` where a joint says it"),
]
LengthToCome = Annotated[
    Size,
    ReadBy(read_length_to_come),
    _text_schema("a length, or `to suit` where a drive says it"),
]
At = Annotated[Position, ReadBy(read_position), _text_schema("6 mm from flange")]
Thread = Annotated[ThreadName, ReadBy(read_thread_name), _text_schema("M3, 2 BA")]
ThreadOrSuit = Annotated[
    ThreadName | Written,
    ReadBy(read_thread_or_suit),
    _text_schema("M3, 2 BA, or `to suit` where a joint says it"),
]
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
RangeOf = Annotated[Taper, ReadBy(read_range), _text_schema("a least and a most: 0.1 mm to 0.2 mm")]
TaperOf = Annotated[Taper, ReadBy(read_taper), _text_schema("22 mm to 16 mm")]
