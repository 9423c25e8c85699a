"""The words of a question at the bench to sizes, or to why they are none."""

from __future__ import annotations

import re

from binder.api.lengths import parse_size
from binder.diagnostics import Span
from binder.parameters import ExpressionFault
from binder.parameters.faults import quoted
from binder.units import LENGTH, Dimension, Quantity

COMMAND_LINE = Span("<command line>", 0, 0, 0, 0)
_COMMA = re.compile(r"([0-9]),(?=[0-9])")


class NotSizeError(ValueError):
    """Words that are no size: `reason` quotes them, `way_out` says how they are written."""

    def __init__(self, reason: str, way_out: str) -> None:
        super().__init__(f"{reason}; {way_out}")
        self.reason = reason
        self.way_out = way_out


def asked_size(text: str, example: str = "12 mm", dimension: Dimension = LENGTH) -> Quantity:
    """The exact quantity of a size as typed; NotSizeError for one of another dimension, or none."""
    pointed = with_point(text)
    if pointed:
        raise NotSizeError(f"{said_back(text)} has a comma", pointed)
    try:
        quantity = parse_size(text)
    except ExpressionFault as fault:
        raise NotSizeError(f"{said_back(text)} is no size", f"write it as {example}") from fault
    if quantity.dimension != dimension:
        raise NotSizeError(f"{said_back(text)} is not {dimension.title}", f"write it as {example}")
    return quantity


def with_point(text: str) -> str:
    """`write 12.5 mm, with a point` for words with a decimal comma, else ''."""
    plain = " ".join(text.split())
    if not _COMMA.search(plain):
        return ""
    return f"write {quoted(_COMMA.sub(lambda found: f'{found[1]}.', plain))}, with a point"


def said_back(text: str) -> str:
    """The words in quotation marks as an answer repeats them: on one line, cut short."""
    return f"'{quoted(' '.join(text.split()))}'"
