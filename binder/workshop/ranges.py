"""Ranges of lengths and speeds, as `2 mm to 80 mm` or `350 r/min`."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from fractions import Fraction
from typing import Annotated

from pydantic import ValidationInfo, WithJsonSchema

from binder.diagnostics import Span
from binder.source import Written
from binder.spec.pieces import read_piece, split_at
from binder.spec.read_by import ReadBy
from binder.spec.reading import MOST_LENGTH, size_reader, written
from binder.spec.refusal import refused
from binder.spec.values import Size
from binder.units import LENGTH, SPEED, UNIT_WORDS, shown
from binder.workshop import codes
from binder.workshop.many import OneOrMany

BOTH_ENDS = 2
PER_TURN = UNIT_WORDS["r/min"].factor
_read_length = size_reader(LENGTH, Fraction(0), MOST_LENGTH)
_read_speed = size_reader(SPEED, PER_TURN / 10, 100_000 * PER_TURN)


@dataclass(frozen=True, slots=True)
class Range:
    """From one size to another, both included; the two are one where one was written."""

    least: Size
    most: Size
    text: Written

    def holds(self, amount: Fraction) -> bool:
        """Whether an amount, in base units, lies in it."""
        return self.least.exact <= amount <= self.most.exact

    @property
    def span(self) -> Span:
        """Where it was written."""
        return self.text.span


def range_reader(
    read: Callable[[object, ValidationInfo], Size], what: str, *, may_be_one: bool
) -> Callable[[object, ValidationInfo], Range]:
    """A reader of ranges whose ends are read by `read`, or of a single size where it may be."""

    def read_range(value: object, info: ValidationInfo) -> Range:
        text = written(value, what)
        pieces = split_at(text, " to ")
        if len(pieces) != BOTH_ENDS and not (may_be_one and len(pieces) == 1):
            raise refused(codes.BAD_RANGE, f"'{text}' is no range", f"write {what}")
        ends = [read_piece(text, piece, lambda part: read(part, info)) for piece in pieces]
        if len(ends) == BOTH_ENDS and ends[0].exact >= ends[1].exact:
            raise refused(
                codes.RANGE_BACKWARDS,
                f"{shown(ends[0].quantity)} is not below {shown(ends[1].quantity)}",
                "write the smaller end first",
            )
        return Range(ends[0], ends[-1], text)

    return read_range


_SPEED_WORDS = "350 r/min or 80 r/min to 2500 r/min"
LengthRange = Annotated[
    Range,
    ReadBy(range_reader(_read_length, "two ends, as 2 mm to 80 mm", may_be_one=False)),
    WithJsonSchema({"type": "string"}),
]
Speeds = Annotated[
    tuple[Range, ...],
    OneOrMany(
        range_reader(_read_speed, f"speeds, as {_SPEED_WORDS}", may_be_one=True),
        {"type": "string", "description": _SPEED_WORDS},
    ),
]
