"""The raw text of a scalar to a quantity, with the sizes at hand."""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import dataclass, field
from fractions import Fraction

from pydantic import ValidationInfo

from binder.diagnostics import Diagnostic
from binder.parameters import Environment, ExpressionFault, parse, remarks_on
from binder.source import Written
from binder.spec import codes
from binder.spec.refusal import refused
from binder.spec.values import Size
from binder.units import LENGTH, Dimension, Quantity, shown

LEAST_LENGTH = Fraction(1, 1000)
MOST_LENGTH = Fraction(10_000)
_BARE = re.compile(r"-?[0-9]+(\.[0-9]+)?")


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
